// What is to be written to the base, with how long that may take, in; written, or not written and never after, out.
// Alone because whoever was told that nothing was kept must not find it kept, or gone, a moment later.
import { inOne, type OpenBase, type Shelf, type Writing } from "./base.ts";
import { PATIENCE, soon } from "./soon.ts";

/**
 * As `inOne`, of a base that may have to be opened. Another page, or a file that is being taken in, may hold the shelves
 * for longer than anyone waits.
 * @param patience ms. Rejects where it was not written by then, and all is as it was.
 */
export async function inTime<T>(
  open: OpenBase,
  shelves: readonly Shelf[],
  act: (writing: Writing) => Promise<T>,
  patience = PATIENCE,
): Promise<T> {
  const begun: Writing[] = [];
  let isGivenUp = false;

  async function written(): Promise<T> {
    const base = await open();
    if (isGivenUp) throw new Error("given up before it was begun");
    return inOne(base, shelves, (writing) => {
      begun.push(writing);
      return act(writing);
    });
  }

  const writing = written();
  try {
    return await soon(writing, patience);
  } catch (error) {
    isGivenUp = true;
    if (begun.every(isAborted)) throw error;
    // It has ended already, and what it came to is on its way.
    return writing;
  }
}

/** False where there is nothing left to abort. */
function isAborted(writing: Writing): boolean {
  try {
    writing.abort();
    return true;
  } catch {
    return false;
  }
}
