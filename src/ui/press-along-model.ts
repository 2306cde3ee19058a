// Presses in, measured times out: three times over, a press as it begins and a press as it ends.
// Alone, and without a clock of its own, so that every order of presses can be tried.

/** What a pair of wet hands can measure by itself. */
export type Measured = "pour-in" | "pour-out" | "inversion";

export interface PressAlong {
  readonly what: Measured;
  /** ms, in order: begin, end, begin, end… */
  readonly presses: readonly number[];
  /** ms of the last thing that was pressed, whatever it was; before the first, of no time at all. */
  readonly touchedAt: number;
}

export type Stage =
  /** A press begins the time of this turn, 1 to 3. */
  | { readonly kind: "ready"; readonly turn: number }
  /** A press ends it. */
  | { readonly kind: "running"; readonly turn: number; readonly since: number }
  | { readonly kind: "done" };

/** Times to be measured. */
export const turns = 3;

/** Over and back so often between two presses: the pace is the time divided by it. */
const inversionsATurn = 4;

/** Wet fingers bounce, and no one pours so fast: within so many ms a touch is the last one again. */
const BOUNCE = 300;

export function startOf(what: Measured): PressAlong {
  return { what, presses: [], touchedAt: Number.NEGATIVE_INFINITY };
}

export function stageOf({ presses }: PressAlong): Stage {
  const turn = Math.floor(presses.length / 2) + 1;
  if (turn > turns) return { kind: "done" };
  const since = presses.length % 2 === 1 ? presses.at(-1) : undefined;
  return since === undefined ? { kind: "ready", turn } : { kind: "running", turn, since };
}

/** Seconds to a tenth, one for each turn that has ended; of inversions, for one of them. */
export function timesOf({ what, presses }: PressAlong): readonly number[] {
  const parts = what === "inversion" ? inversionsATurn : 1;
  return Array.from({ length: Math.floor(presses.length / 2) }, (_, turn) => {
    const [begun = 0, ended = 0] = presses.slice(2 * turn);
    return tenths((ended - begun) / parts);
  });
}

/** ms as seconds to a tenth. */
export function tenths(milliseconds: number): number {
  return Math.round(milliseconds / 100) / 10;
}

/** Whether a touch at this time is one of its own, not the last one's bounce. */
export function isFresh({ touchedAt }: PressAlong, at: number): boolean {
  return at - touchedAt >= BOUNCE;
}

/** The press at `at`, ms: a bounce, and any press after the last turn, changes nothing. */
export function press(along: PressAlong, at: number): PressAlong {
  if (!isFresh(along, at) || stageOf(along).kind === "done") return along;
  return { ...along, presses: [...along.presses, at], touchedAt: at };
}

/** The last press undone: after an end, the time goes on from its beginning. */
export function takeBack(along: PressAlong, at: number): PressAlong {
  if (!isFresh(along, at) || along.presses.length === 0) return along;
  return { ...along, presses: along.presses.slice(0, -1), touchedAt: at };
}

/** All three anew. */
export function again(along: PressAlong, at: number): PressAlong {
  return isFresh(along, at) ? { ...along, presses: [], touchedAt: at } : along;
}
