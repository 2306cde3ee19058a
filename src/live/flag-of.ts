// A run in, what the flag says of it out. Apart from the flag itself, which is read before anything of a run is fetched.
import { lastOf } from "./journal.ts";
import type { RunFlag } from "./run-flag.ts";
import type { Run } from "./run-shape.ts";

/** Null where it has ended, though it is still shown: there is nothing to be found again. */
export function flagOf(run: Pick<Run, "journal" | "position">): RunFlag | null {
  if (lastOf(run.journal().entries, "ended") !== undefined) return null;
  return run.position().section?.dark ? "dark" : "light";
}
