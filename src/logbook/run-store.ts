// The runs, kept in this browser, each with the line that lists show of it and the pictures of its negatives. A
// browser may refuse to keep anything: then they are held for as long as the page is open, and whoever asks is told.
import { type OpenBase, type Refusal, refusalOf } from "./base.ts";
import { lineOf, type RunLine } from "./run-line.ts";
import { isRunRecord, type Judgement, judgementOf, type RunRecord } from "./run-record.ts";
import {
  change,
  newestFirst,
  newestIn,
  putInto,
  type ReadLines,
  readAll,
  readLines,
  type TakenOut,
  takenFrom,
} from "./run-shelf.ts";
import { soon } from "./soon.ts";

/** A line for every run, newest first. */
export type FoundRuns =
  | {
      readonly kind: "found";
      readonly lines: readonly RunLine[];
      /** Ids of those that the browser would not keep: they go with the page. */
      readonly onlyHere: readonly string[];
      /** How many are kept in a shape of another make. They are left as they are. */
      readonly unread: number;
    }
  /** Nothing can be read; `lines` are those of this visit, and go with the page. */
  | { readonly kind: "refused"; readonly lines: readonly RunLine[] };

/** What came of asking a browser to keep something. */
export type Written = "kept" | Refusal;

/** Never rejects. What the browser would not keep holds for this page alone. */
export interface RunStore {
  /** A run that is kept already keeps what was said of it: that is changed by `judge` alone. */
  keep(record: RunRecord): Promise<Written>;
  /** Refused also where the run has been taken out meanwhile. */
  judge(id: string, judgement: Judgement): Promise<Written>;
  lines(): Promise<FoundRuns>;
  /**
   * All lines as they were last read in this visit; null where none were, or this page has written since. Another page
   * may have: `lines` tells.
   */
  known(): FoundRuns | null;
  /** So many of the newest, whole, long before all lines are read; none where nothing can be. */
  newest(count: number): Promise<readonly RunRecord[]>;
  /** In the order asked for; one that is not there is left out. */
  read(ids: readonly string[]): Promise<readonly RunRecord[]>;
  /** null where the browser would not, and all is as it was. */
  takeOut(id: string): Promise<TakenOut | null>;
  putBack(taken: TakenOut): Promise<Written>;
}

/** For the first time that lines are made of all runs, ms. */
const PATIENCE = 20_000;

/** @param now ms since 1970, by the device's clock. */
export function runStore(open: OpenBase, now: () => number = Date.now): RunStore {
  /** What the browser would not keep. */
  const here = new Map<string, RunRecord>();
  /** For the page's life: of ten thousand lines the reading takes longer than all else. */
  let read: ReadLines | null = null;
  /** Counted as this page begins to write, and as it has written; and what it came to as they were last read. */
  let writes = 0;
  let readAt = 0;

  async function writing<Of>(write: Promise<Of>): Promise<Of> {
    writes += 1;
    return write.finally(() => {
      writes += 1;
    });
  }

  function found({ lines, runs }: ReadLines): FoundRuns {
    const held = [...here.values()].map(lineOf);
    const others = lines.filter(({ id }) => !here.has(id));
    return {
      kind: "found",
      lines: held.length === 0 ? lines : newestFirst([...others, ...held]),
      onlyHere: [...here.keys()],
      unread: runs - lines.length,
    };
  }

  async function put(id: string, make: (was: RunRecord | null) => RunRecord): Promise<Written> {
    try {
      await soon(writing(change(open, id, make)));
      here.delete(id);
      return "kept";
    } catch (error) {
      here.set(id, make(here.get(id) ?? null));
      return refusalOf(error);
    }
  }

  return {
    keep: (record) =>
      put(record.id, (was) => {
        const of = here.get(record.id) ?? was;
        // What a newer version knew of it besides is not lost.
        return { ...was, ...record, ...(of && judgementOf(of)), changedAt: now() };
      }),
    async judge(id, judgement) {
      const judged = (run: RunRecord) => ({ ...run, ...judgement, changedAt: now() });
      const held = here.get(id);
      if (held) here.set(id, judged(held));
      try {
        const judging = writing(change(open, id, (was) => was && judged(was)));
        return (await soon(judging)) ? "kept" : "refused";
      } catch (error) {
        return refusalOf(error);
      }
    },
    async lines() {
      try {
        const before = writes;
        read = await soon(readLines(await soon(open()), read), PATIENCE);
        readAt = before;
        return found(read);
      } catch {
        return { kind: "refused", lines: newestFirst([...here.values()].map(lineOf)) };
      }
    },
    known: () => (read === null || readAt !== writes ? null : found(read)),
    async newest(count) {
      const since = read?.lines[count - 1]?.begunAt ?? null;
      const kept = await soon(newestIn(open, count, since)).catch((): readonly RunRecord[] => []);
      const all = [...kept.filter(({ id }) => !here.has(id)), ...here.values()];
      return all.toSorted((a, b) => b.begunAt - a.begunAt).slice(0, count);
    },
    async read(ids) {
      const kept = await soon(readAll(open, ids)).catch((): readonly unknown[] => []);
      const all = new Map(kept.filter(isRunRecord).map((run) => [run.id, run]));
      for (const [id, run] of here) all.set(id, run);
      return ids.flatMap((id) => all.get(id) ?? []);
    },
    async takeOut(id) {
      const held = here.get(id);
      here.delete(id);
      try {
        const taken = await soon(writing(takenFrom(await open(), id)));
        const run = held ?? taken?.run;
        return run === undefined ? null : { run, pictures: taken?.pictures ?? [] };
      } catch {
        return held === undefined ? null : { run: held, pictures: [] };
      }
    },
    async putBack({ run, pictures }) {
      try {
        await soon(writing(putInto(await open(), { run, pictures })));
        return "kept";
      } catch (error) {
        here.set(run.id, run);
        return refusalOf(error);
      }
    },
  };
}
