// A picture of a run's negatives, as it is kept: an image, and what its owner says is to be seen in it.
import { isObject } from "../units/object.ts";

export interface Picture {
  readonly id: string;
  /** Id of its run. */
  readonly run: string;
  /** For those who do not see it; empty where nobody said. */
  readonly alt: string;
  /** UTC, ms since 1970. */
  readonly addedAt: number;
  /** When it was last described, UTC, ms since 1970. */
  readonly changedAt: number;
  /** Of the image, px. */
  readonly width: number;
  readonly height: number;
  readonly image: Blob;
}

/** Of one run beside each other, so that they are found without looking at any other's. */
export const keyOfPicture = ({ run, id }: Pick<Picture, "run" | "id">): string => `${run}/${id}`;

/** Of all keys, those of a run's pictures. */
export const keysOf = (run: string, keys: readonly string[]): readonly string[] =>
  keys.filter((key) => key.startsWith(`${run}/`));

export function isPicture(kept: unknown): kept is Picture {
  return (
    isObject(kept) &&
    typeof kept.id === "string" &&
    typeof kept.run === "string" &&
    typeof kept.alt === "string" &&
    typeof kept.addedAt === "number" &&
    typeof kept.changedAt === "number" &&
    typeof kept.width === "number" &&
    typeof kept.height === "number" &&
    kept.image instanceof Blob
  );
}
