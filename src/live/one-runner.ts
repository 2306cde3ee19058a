// One run at a time over all pages of a browser: two voices in one darkroom would be worse than none. The
// browser itself lets go for a page that dies, so nobody is ever locked out by one that did.

const NAME = "tankside-run";

/**
 * The way to let go again, or null where another page leads a run.
 * @param locks null where the browser has none: then nothing is held back.
 */
export function claimRun(
  locks: LockManager | null = navigator.locks ?? null,
): Promise<(() => void) | null> {
  if (locks === null) return Promise.resolve(() => {});
  return new Promise((resolve, reject) => {
    locks
      .request(NAME, { ifAvailable: true }, (lock) => {
        if (lock === null) return resolve(null);
        // Held for as long as this promise waits.
        return new Promise<void>((letGo) => resolve(() => letGo()));
      })
      .catch(reject);
  });
}

/** Whether a page of this browser leads a run. */
export async function runIsHeld(locks: LockManager | null): Promise<boolean> {
  const { held = [] } = (await locks?.query()) ?? {};
  return held.some(({ name }) => name === NAME);
}
