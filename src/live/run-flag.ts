// That a run is on, and whether in the dark, said where a page that is opened again can read it at once. Only a
// hint, to lose no time: what happened stands in the journal, which is asked in any case, a little later.

/** The head of index.html reads it under this name too, before anything is drawn. */
const FLAG = "tankside-run-is-on";

export type RunFlag = "light" | "dark";

export function mayBeUnfinished(): boolean {
  try {
    return localStorage.getItem(FLAG) !== null;
  } catch {
    return false;
  }
}

/** @param flag null where no run is on any more. */
export function flagRun(flag: RunFlag | null): void {
  try {
    if (flag === null) localStorage.removeItem(FLAG);
    else if (localStorage.getItem(FLAG) !== flag) localStorage.setItem(FLAG, flag);
  } catch {
    // Some browsers keep nothing: then there is nothing to be found again either.
  }
}
