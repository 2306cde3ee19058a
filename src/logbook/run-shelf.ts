// What is read and written of runs on their shelf of the base: each by one transaction of its own, and rejected where
// the browser would not.
import { type Base, inOne, type OpenBase } from "./base.ts";
import { isPicture, keyOfPicture, keysOf, type Picture } from "./picture.ts";
import { isRunLine, LINES, lineOf } from "./run-line.ts";
import { isRunRecord, type RunRecord } from "./run-record.ts";

/** A run with its pictures, out of the store, to be put back as it was. */
export interface TakenOut {
  readonly run: RunRecord;
  readonly pictures: readonly Picture[];
}

const LINES_OF = "lines are of";

export async function newestIn(open: OpenBase, count: number): Promise<readonly RunRecord[]> {
  const reading = (await open()).transaction("runs");
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

/** Made anew of all runs where another version made them, or none has yet. */
export async function linesIn(base: Base) {
  const looking = base.transaction(["lines", "runs", "notes"]);
  const [of, kept, runs] = await Promise.all([
    looking.objectStore("notes").get(LINES_OF),
    looking.objectStore("lines").getAll(),
    looking.objectStore("runs").count(),
  ]);
  if (of === LINES) return { lines: kept.filter(isRunLine), runs };
  return inOne(base, ["lines", "runs", "notes"], async (making) => {
    const all = (await making.objectStore("runs").getAll()).filter(isRunRecord).map(lineOf);
    await making.objectStore("lines").clear();
    await Promise.all(all.map((line) => making.objectStore("lines").put(line, line.id)));
    await making.objectStore("notes").put(LINES, LINES_OF);
    return { lines: all, runs };
  });
}

export function takenFrom(base: Base, id: string): Promise<TakenOut | null> {
  return inOne(base, ["runs", "lines", "pictures"], async (taking) => {
    const run = await taking.objectStore("runs").get(id);
    const shelf = taking.objectStore("pictures");
    const keys = keysOf(id, await shelf.getAllKeys());
    const pictures = (await Promise.all(keys.map((key) => shelf.get(key)))).filter(isPicture);
    await taking.objectStore("runs").delete(id);
    await taking.objectStore("lines").delete(id);
    for (const picture of pictures) await shelf.delete(keyOfPicture(picture));
    return isRunRecord(run) ? { run, pictures } : null;
  });
}

export function putInto(base: Base, { run, pictures }: TakenOut): Promise<void> {
  return inOne(base, ["runs", "lines", "pictures"], async (putting) => {
    await putting.objectStore("runs").put(run, run.id);
    await putting.objectStore("lines").put(lineOf(run), run.id);
    for (const picture of pictures)
      await putting.objectStore("pictures").put(picture, keyOfPicture(picture));
  });
}

/** Reads and writes a run and its line at one go, so that neither a press nor a note is lost to the other. */
export async function change(
  open: OpenBase,
  id: string,
  make: (was: RunRecord | null) => RunRecord | null,
): Promise<boolean> {
  return inOne(await open(), ["runs", "lines"], async (writing) => {
    const was = await writing.objectStore("runs").get(id);
    const next = make(isRunRecord(was) ? was : null);
    if (next === null) return false;
    await writing.objectStore("runs").put(next, id);
    await writing.objectStore("lines").put(lineOf(next), id);
    return true;
  });
}
