// Write up: what came of the run, kept. Fetched when first opened; the frame shows its heading.
import type { PlaceProps } from "./place.ts";
import { placeWords } from "./words.ts";

export function WriteUp({ plan }: PlaceProps) {
  return <p>{plan.value ? placeWords["write-up"].hint : placeWords["work-out"].hint}</p>;
}
