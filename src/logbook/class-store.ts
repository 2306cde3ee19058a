// The minute at which the class of a link's worksheet starts: kept in this browser so that a page loaded anew, the link
// long gone from its address, still counts down to it. A browser may refuse: then it holds for the page alone.

/** Never throws. */
export interface ClassStore {
  /** ms since 1970; null where none is kept, or it has passed. @param now ms since 1970, by the device's clock. */
  load(now: number): number | null;
  /** null: none is waited for any more. */
  keep(at: number | null): void;
}

const KEY = "tankside-class";

/** @param storage asked for at each use, since a browser may throw by its very name. */
export function classStore(storage: () => Storage): ClassStore {
  return {
    load(now) {
      try {
        const at = Number(storage().getItem(KEY));
        // What is no number is no time to come either.
        return at > now && Number.isFinite(new Date(at).getTime()) ? at : null;
      } catch {
        return null;
      }
    },
    keep(at) {
      try {
        if (at === null) storage().removeItem(KEY);
        else storage().setItem(KEY, String(at));
      } catch {
        // The page that is open has it all the same.
      }
    },
  };
}
