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
  /** Of a run that is kept already what was said stays: that is changed by `judge` alone. */
  keep(record: RunRecord): Promise<Written>;
  /** Refused also where the run has been taken out meanwhile. */
  judge(id: string, judgement: Judgement): Promise<Written>;
  /** What was not kept before is tried once more. */
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
  /** Those that the browser would not keep, or not all that was said of them. */
  held(): readonly RunRecord[];
  /** null where the browser would not, and all is as it was. */
  takeOut(id: string): Promise<TakenOut | null>;
  /** What was not kept holds for this page, but not where it has pictures: then nothing is put back. */
  putBack(taken: TakenOut): Promise<Written>;
}

/** A run as far as the browser would not keep it. */
interface Held {
  /** As it is to be shown. */
  readonly run: RunRecord;
  /** What was said of it since, and is to be said again of what is kept of it. */
  readonly said: Judgement;
}

/** For the first time that lines are made of all runs, ms. */
const PATIENCE = 20_000;

/** @param now ms since 1970, by the device's clock. */
export function runStore(open: OpenBase, now: () => number = Date.now): RunStore {
  const here = new Map<string, Held>();
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
    const mine = held().map(lineOf);
    const others = lines.filter(({ id }) => !here.has(id));
    return {
      kind: "found",
      lines: mine.length === 0 ? lines : newestFirst([...others, ...mine]),
      onlyHere: [...here.keys()],
      unread: runs - lines.length,
    };
  }

  /** One write after another, so that one that fails does not hold what a later one has changed. */
  let last: Promise<unknown> = Promise.resolve();
  function inTurn<Of>(write: () => Promise<Of>): Promise<Of> {
    const written = last.then(write);
    last = written.catch(() => {});
    return written;
  }

  /**
   * @param next what the run has come to; null: what it is.
   * @param says what is said of it now.
   */
  async function put(id: string, next: RunRecord | null, says: Judgement): Promise<Written> {
    function made(was: RunRecord | null): Held | null {
      const held = here.get(id);
      const run = next ?? held?.run ?? was;
      if (run === null) return null;
      const said = { ...held?.said, ...says };
      const before = was ?? held?.run ?? null;
      // What a newer version knew of it besides is not lost, and nothing that was said of it.
      const judged = { ...(before && judgementOf(before)), ...said };
      return { run: { ...was, ...run, ...judged, changedAt: now() }, said };
    }
    try {
      const isThere = await writing(change(open, id, (was) => made(was)?.run ?? null));
      if (isThere) here.delete(id);
      return isThere ? "kept" : "refused";
    } catch (error) {
      const [was] = await soon(readAll(open, [id])).catch((): readonly unknown[] => []);
      const held = made(isRunRecord(was) ? was : null);
      if (held !== null) here.set(id, held);
      return refusalOf(error);
    }
  }

  /** Once more, of whatever is held: there may be room by now. @returns whether any is kept. */
  async function keepHeld(): Promise<boolean> {
    const came = await Promise.all([...here.keys()].map((id) => inTurn(() => put(id, null, {}))));
    return came.includes("kept");
  }

  const held = () => [...here.values()].map(({ run }) => run);

  return {
    keep: (record) => inTurn(() => put(record.id, record, {})),
    judge: (id, judgement) => inTurn(() => put(id, null, judgement)),
    async lines() {
      try {
        const reads = async () => {
          const before = writes;
          read = await soon(readLines(await soon(open()), read), PATIENCE);
          readAt = before;
          return read;
        };
        const first = await reads();
        return found((await keepHeld()) ? await reads() : first);
      } catch {
        return { kind: "refused", lines: newestFirst(held().map(lineOf)) };
      }
    },
    known: () => (read === null || readAt !== writes ? null : found(read)),
    async newest(count) {
      const since = read?.lines[count - 1]?.begunAt ?? null;
      const kept = await soon(newestIn(open, count, since)).catch((): readonly RunRecord[] => []);
      const all = [...kept.filter(({ id }) => !here.has(id)), ...held()];
      return all.toSorted((a, b) => b.begunAt - a.begunAt).slice(0, count);
    },
    async read(ids) {
      const kept = await soon(readAll(open, ids)).catch((): readonly unknown[] => []);
      const all = new Map(kept.filter(isRunRecord).map((run) => [run.id, run]));
      for (const run of held()) all.set(run.id, run);
      return ids.flatMap((id) => all.get(id) ?? []);
    },
    held,
    takeOut: (id) =>
      inTurn(async () => {
        const held = here.get(id)?.run;
        try {
          const taken = await writing(takenFrom(open, id));
          here.delete(id);
          const run = held ?? taken?.run;
          return run === undefined ? null : { run, pictures: taken?.pictures ?? [] };
        } catch {
          if (held === undefined) return null;
          here.delete(id);
          return { run: held, pictures: [] };
        }
      }),
    putBack: (taken) =>
      inTurn(async () => {
        try {
          await writing(putInto(open, taken));
          return "kept";
        } catch (error) {
          // Held without its pictures, it would have lost them.
          if (taken.pictures.length === 0)
            here.set(taken.run.id, { run: taken.run, said: judgementOf(taken.run) });
          return refusalOf(error);
        }
      }),
  };
}
