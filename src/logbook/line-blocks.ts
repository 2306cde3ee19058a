// Lines of runs in, some hundreds of them a record on their shelf of the base, and back. Alone for how they lie there: a
// browser hands over ten thousand small records several times as slowly as the same bytes in a few large ones.
import type { Writing } from "./base.ts";
import { isRunLine, LINES, type RunLine } from "./run-line.ts";

/**
 * Among so many records lines are dealt out by their runs' ids, for good. Of ten thousand runs each is 230 kB, and is
 * written anew with each of its lines; of more records all are read more slowly, of fewer each is written more slowly.
 */
const BLOCKS = 16;

/** Of which make the lines are. */
export const LINES_OF = "lines are of";
/** Noted anew by whatever changes a line, so that a page can tell whether those that it has read still hold. */
export const CHANGED = "lines were changed";

/** By FNV-1a: ids are anything, and all blocks are to be of about one size. */
function blockOf(id: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < id.length; i += 1) hash = Math.imul(hash ^ id.charCodeAt(i), 0x01000193);
  return String((hash >>> 0) % BLOCKS);
}

/** JSON, which is read faster than what a browser would make of the lines. */
const written = (lines: Iterable<RunLine>): string => JSON.stringify([...lines]);

/** null where it is no block of this version. */
function read(block: unknown): readonly RunLine[] | null {
  if (typeof block !== "string") return null;
  try {
    const lines: unknown = JSON.parse(block);
    return Array.isArray(lines) && lines.every(isRunLine) ? lines : null;
  } catch {
    return null;
  }
}

/** All lines of all blocks; null where any is not of this version, so that they are to be made anew. */
export function linesIn(blocks: readonly unknown[]): readonly RunLine[] | null {
  const lines: RunLine[] = [];
  for (const block of blocks) {
    const more = read(block);
    if (more === null) return null;
    for (const line of more) lines.push(line);
  }
  return lines;
}

/** To be called in every transaction that writes a run. @param lines by id; null: there is none any more. */
export async function changeLines(
  writing: Writing,
  lines: Iterable<readonly [id: string, line: RunLine | null]>,
): Promise<void> {
  const shelf = writing.objectStore("lines");
  const notes = writing.objectStore("notes");
  const byBlock = new Map<string, Map<string, RunLine | null>>();
  for (const [id, line] of lines) {
    const key = blockOf(id);
    const others = byBlock.get(key) ?? new Map<string, RunLine | null>();
    byBlock.set(key, others.set(id, line));
  }
  for (const [key, changes] of byBlock) {
    const kept: unknown = await shelf.get(key);
    const known = kept === undefined ? [] : read(kept);
    // Whoever reads them next makes them anew.
    if (known === null) await notes.delete(LINES_OF);
    const next = new Map((known ?? []).map((line) => [line.id, line]));
    for (const [id, line] of changes) {
      if (line === null) next.delete(id);
      else next.set(id, line);
    }
    if (next.size > 0) await shelf.put(written(next.values()), key);
    else if (kept !== undefined) await shelf.delete(key);
  }
  await notes.put(Math.random(), CHANGED);
}

/** All of them, in the place of whatever was there. */
export async function writeLines(writing: Writing, lines: readonly RunLine[]): Promise<void> {
  await writing.objectStore("lines").clear();
  await changeLines(
    writing,
    lines.map((line) => [line.id, line]),
  );
  await writing.objectStore("notes").put(LINES, LINES_OF);
}
