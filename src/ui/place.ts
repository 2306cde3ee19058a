// The four places of the program, by what the person does in them, and what each is handed.
import type { ReadonlySignal } from "@preact/signals";
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";

export const placeIds = ["work-out", "walk-through", "lights-out", "write-up"] as const;
export type PlaceId = (typeof placeIds)[number];

/** What a place is given; both null while the worksheet cannot be used. The frame shows its `h1`. */
export interface PlaceProps {
  readonly worksheet: ReadonlySignal<Worksheet | null>;
  readonly plan: ReadonlySignal<Plan | null>;
}

/** Whether a location hash is meant as a worksheet in a link, of whatever version (plan/worksheet-link.ts). */
export const carriesWorksheet = (hash: string): boolean => /^#w\d+\./.test(hash);

/** The place that a location hash names (`"#lights-out"`), or null. */
export function placeAt(hash: string): PlaceId | null {
  return placeIds.find((id) => hash === `#${id}`) ?? null;
}
