// That a run is on, said where a page that is opened again can read it at once. Only a hint, to lose no time:
// what happened stands in the journal, which is asked in any case, a little later.

const FLAG = "tankside-run-is-on";

export function mayBeUnfinished(): boolean {
  try {
    return localStorage.getItem(FLAG) !== null;
  } catch {
    return false;
  }
}

export function flagRun(on: boolean): void {
  try {
    if (on) localStorage.setItem(FLAG, "yes");
    else localStorage.removeItem(FLAG);
  } catch {
    // Some browsers keep nothing: then there is nothing to be found again either.
  }
}
