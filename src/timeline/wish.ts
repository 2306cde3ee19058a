// What ought to be said, before anyone knows whether there is room for it: the shape of a wish, the
// weights by which wishes give way to one another, and the times that every wish keeps.
import type { Slots } from "../script/script.ts";
import type { CueKind } from "./score.ts";

export interface Wish {
  readonly key: string;
  readonly slots: Slots;
  readonly kind: CueKind;
  /** Index into the step's moments. */
  readonly moment: number | null;
  readonly earliest: number;
  readonly latestEnd: number;
  /** Where the listener likes it: as early as may be, or ending near a time. */
  readonly liked: { readonly by: "start" | "end"; readonly at: number };
  readonly weight: number;
  /** A nicety for learners: said at full detail only. */
  readonly nicety: boolean;
}

/** Weights order what gives way to what; only their ratios matter. Pour-outs outweigh all the rest together. */
export const weights = {
  pourOut: 100_000,
  pourIn: 1600,
  gate: 1200,
  agitate: 800,
  afterwards: 700,
  remaining: 400,
  tap: 300,
  soon: 150,
  nicety: 80,
} as const;

/** Seconds. A spoken preparation ends 3 s ahead of its moment; a little more clears the count-in. */
export const AHEAD = 3.2;
/** After a tone has died, the ear is given this long before words. */
export const SETTLE = 0.1;
/** The first words after a press begin here, once the press itself has been answered by its tone. */
export const AFTER_PRESS = 0.4;

/** What most wishes have in common. */
export const plain = { kind: "tell", moment: null, slots: {}, nicety: false } as const;
