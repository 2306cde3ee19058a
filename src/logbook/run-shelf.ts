// What is read and written of runs on their shelf of the base: each by one transaction of its own, and rejected where
// the browser would not.
import { type Base, inOne, type OpenBase } from "./base.ts";
import { inTime } from "./in-time.ts";
import { CHANGED, changeLines, LINES_OF, linesIn, writeLines } from "./line-blocks.ts";
import { isPicture, keyOfPicture, keysOf, type Picture } from "./picture.ts";
import { LINES, lineOf, type RunLine } from "./run-line.ts";
import { isRunRecord, type RunRecord } from "./run-record.ts";

/** A run with its pictures, out of the store, to be put back as it was. */
export interface TakenOut {
  readonly run: RunRecord;
  readonly pictures: readonly Picture[];
}

/** All lines as they were read, the newest first. */
export interface ReadLines {
  readonly lines: readonly RunLine[];
  /** How many runs there were, those that have no line among them. */
  readonly runs: number;
  /** What was noted as they were read. */
  readonly changed: unknown;
}

/** @param since ms since 1970: so many have begun since then, if none was taken out; null where that is not known. */
export async function newestIn(
  open: OpenBase,
  count: number,
  since: number | null,
): Promise<readonly RunRecord[]> {
  const reading = (await open()).transaction("runs");
  if (since !== null) {
    // At one go: a browser takes as long for each step of a cursor as for all of these.
    const all = await reading.store.index("begunAt").getAll(IDBKeyRange.lowerBound(since));
    const known = all.filter(isRunRecord);
    if (known.length >= count) return known.toReversed().slice(0, count);
  }
  const newest: RunRecord[] = [];
  let at = await reading.store.index("begunAt").openCursor(null, "prev");
  while (at !== null && newest.length < count) {
    if (isRunRecord(at.value)) newest.push(at.value);
    at = await at.continue();
  }
  return newest;
}

export async function readAll(open: OpenBase, ids: readonly string[]): Promise<readonly unknown[]> {
  const reading = (await open()).transaction("runs");
  return Promise.all(ids.map((id) => reading.store.get(id)));
}

export const newestFirst = (lines: readonly RunLine[]): readonly RunLine[] =>
  lines.toSorted((a, b) => b.begunAt - a.begunAt || (a.id < b.id ? 1 : -1));

/**
 * Made anew of all runs where another version made them, or none has yet.
 * @param read what was read last: handed back where nothing has changed since.
 */
export async function readLines(base: Base, read: ReadLines | null): Promise<ReadLines> {
  const { store: notes } = base.transaction("notes");
  const [of, changed] = await Promise.all([notes.get(LINES_OF), notes.get(CHANGED)]);
  if (of !== LINES) return madeAnew(base);
  // Counting ten thousand runs takes a browser as long as reading all their lines.
  if (read !== null && read.changed === changed) return read;
  // What is changed in between is read already, and read once more the next time.
  const looking = base.transaction(["lines", "runs"]);
  const [blocks, runs] = await Promise.all([
    looking.objectStore("lines").getAll(),
    looking.objectStore("runs").count(),
  ]);
  const lines = linesIn(blocks);
  return lines === null ? madeAnew(base) : { lines: newestFirst(lines), runs, changed };
}

/** Where they cannot be kept they are handed over all the same: a full disk hides no run. */
async function madeAnew(base: Base): Promise<ReadLines> {
  const linesOf = (kept: readonly unknown[]) => kept.filter(isRunRecord).map(lineOf);
  try {
    return await inOne(base, ["lines", "runs", "notes"], async (making) => {
      const kept = await making.objectStore("runs").getAll();
      const all = linesOf(kept);
      await writeLines(making, all);
      const changed: unknown = await making.objectStore("notes").get(CHANGED);
      return { lines: newestFirst(all), runs: kept.length, changed };
    });
  } catch {
    const kept = await base.getAll("runs");
    return { lines: newestFirst(linesOf(kept)), runs: kept.length, changed: undefined };
  }
}

export function takenFrom(open: OpenBase, id: string): Promise<TakenOut | null> {
  return inTime(open, ["runs", "lines", "pictures", "notes"], async (taking) => {
    const run = await taking.objectStore("runs").get(id);
    const shelf = taking.objectStore("pictures");
    const keys = keysOf(id, await shelf.getAllKeys());
    const pictures = (await Promise.all(keys.map((key) => shelf.get(key)))).filter(isPicture);
    await taking.objectStore("runs").delete(id);
    await changeLines(taking, [[id, null]]);
    for (const picture of pictures) await shelf.delete(keyOfPicture(picture));
    return isRunRecord(run) ? { run, pictures } : null;
  });
}

/** A run's pictures are megabytes, ms. */
const PATIENCE_FOR_PICTURES = 10_000;

export function putInto(open: OpenBase, { run, pictures }: TakenOut): Promise<void> {
  const shelves = ["runs", "lines", "pictures", "notes"] as const;
  return inTime(
    open,
    shelves,
    async (putting) => {
      await putting.objectStore("runs").put(run, run.id);
      await changeLines(putting, [[run.id, lineOf(run)]]);
      for (const picture of pictures)
        await putting.objectStore("pictures").put(picture, keyOfPicture(picture));
    },
    pictures.length === 0 ? undefined : PATIENCE_FOR_PICTURES,
  );
}

/** Reads and writes a run and its line at one go, so that neither a press nor a note is lost to the other. */
export function change(
  open: OpenBase,
  id: string,
  make: (was: RunRecord | null) => RunRecord | null,
): Promise<boolean> {
  return inTime(open, ["runs", "lines", "notes"], async (writing) => {
    const was = await writing.objectStore("runs").get(id);
    const next = make(isRunRecord(was) ? was : null);
    if (next === null) return false;
    await writing.objectStore("runs").put(next, id);
    await changeLines(writing, [[id, lineOf(next)]]);
    return true;
  });
}
