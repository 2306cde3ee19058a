// What dry negatives look like in, what came about out, that which can still be mended first. The numbers at
// the film's edge were put there by its maker's light, not by the camera: they tell a fault of the developing
// from one of the exposing. Common practice; which other cause is likelier is for the person to say.

export const densities = ["clear", "thin", "good", "dense"] as const;
export const edges = ["none", "faint", "usual", "heavy"] as const;
export const marks = [
  "milky",
  "purple",
  "drying",
  "grey",
  "streaks",
  "spots",
  "moons",
  "patches",
] as const;

type Density = (typeof densities)[number];
type Edges = (typeof edges)[number];
type Mark = (typeof marks)[number];

/** As looked at against the light; null: not said. */
export interface Negatives {
  readonly density: Density | null;
  readonly edges: Edges | null;
  readonly marks: readonly Mark[];
}

export const nothingSeen: Negatives = { density: null, edges: null, marks: [] };

export type Cause =
  | "well"
  | "not-exposed"
  | "not-developed"
  | "under-exposed"
  | "under-developed"
  | "over-exposed"
  | "over-developed"
  /** Which of two, the numbers at the edge would tell. */
  | "clear-either"
  | "thin-either"
  | "dense-either"
  | Mark;

export function causesOf({ density, edges: numbers, marks: seen }: Negatives): readonly Cause[] {
  const faults: readonly Cause[] = marks.filter((mark) => seen.includes(mark));
  if (density === null) return faults;
  if (density === "good") return faults.length === 0 ? ["well"] : faults;
  const mendable = faults.filter((fault) => isMendable(fault));
  const rest = faults.filter((fault) => !isMendable(fault));
  return [...mendable, ofDensity(density, numbers), ...rest];
}

/** Whether it can still be put right on this film. */
export const isMendable = (cause: Cause): boolean =>
  cause === "milky" || cause === "purple" || cause === "drying";

function ofDensity(density: Exclude<Density, "good">, numbers: Edges | null): Cause {
  switch (density) {
    case "clear":
      if (numbers === null) return "clear-either";
      return numbers === "none" || numbers === "faint" ? "not-developed" : "not-exposed";
    case "thin":
      if (numbers === null) return "thin-either";
      return numbers === "none" || numbers === "faint" ? "under-developed" : "under-exposed";
    case "dense":
      // Some films have no numbers at their edge, and none grow faint by too much of anything.
      if (numbers === null || numbers === "none") return "dense-either";
      return numbers === "heavy" ? "over-developed" : "over-exposed";
  }
}
