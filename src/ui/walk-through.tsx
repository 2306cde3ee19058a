// Walk through: each step with the lights on, and what it is for. Fetched when first opened; the frame shows its heading.
import type { PlaceProps } from "./place.ts";
import { placeWords } from "./words.ts";

export function WalkThrough({ plan }: PlaceProps) {
  return <p>{plan.value ? placeWords["walk-through"].hint : placeWords["work-out"].hint}</p>;
}
