// The runs, kept in this browser. A browser may refuse to keep anything: then they are held for as long
// as the page is open, and whoever asks is told so.

import { createStore, del, promisifyRequest, type UseStore, values } from "idb-keyval";
import { isRunRecord, type Judgement, judgementOf, type RunRecord } from "./run-record.ts";
import { soon } from "./soon.ts";

/** Every run, newest first. */
export type FoundRuns =
  | {
      readonly kind: "found";
      readonly runs: readonly RunRecord[];
      /** Ids of those that the browser would not keep: they go with the page. */
      readonly onlyHere: readonly string[];
      /** How many are kept in a shape of another make. They are left as they are. */
      readonly unread: number;
    }
  /** Nothing can be read; `runs` are those of this visit, and go with the page. */
  | { readonly kind: "refused"; readonly runs: readonly RunRecord[] };

/** Never rejects. False means that the browser would not: what was asked then holds for this page alone. */
export interface RunStore {
  /** A run that is kept already keeps what was said of it: that is changed by `judge` alone. */
  keep(record: RunRecord): Promise<boolean>;
  /** False also where the run has been taken out meanwhile. */
  judge(id: string, judgement: Judgement): Promise<boolean>;
  all(): Promise<FoundRuns>;
  remove(id: string): Promise<boolean>;
}

export function runStore(): RunStore {
  let opened: UseStore | null = null;
  // Opened at the first use, and inside a promise: `indexedDB` may be missing, or throw by its very name.
  const store = () => {
    opened ??= createStore("tankside-runs", "kept");
    return opened;
  };
  /** What the browser would not keep. */
  const here = new Map<string, RunRecord>();

  /** Reads and writes a run at one go, so that neither a press nor a note is lost to the other. */
  function change(id: string, make: (was: unknown) => RunRecord | null): Promise<boolean> {
    return store()("readwrite", async (runs) => {
      const next = make(await promisifyRequest(runs.get(id)));
      if (next === null) return false;
      runs.put(next, id);
      await promisifyRequest(runs.transaction);
      return true;
    });
  }

  return {
    async keep(record) {
      const { id } = record;
      try {
        await soon(
          change(id, (was) => {
            const kept = here.get(id) ?? (isRunRecord(was) ? was : record);
            return { ...record, ...judgementOf(kept) };
          }),
        );
        here.delete(id);
        return true;
      } catch {
        here.set(id, { ...record, ...judgementOf(here.get(id) ?? record) });
        return false;
      }
    },
    async judge(id, judgement) {
      const held = here.get(id);
      if (held) here.set(id, { ...held, ...judgement });
      try {
        return await soon(
          change(id, (was) => (isRunRecord(was) ? { ...was, ...judgement } : null)),
        );
      } catch {
        return false;
      }
    },
    async all() {
      try {
        const kept: readonly unknown[] = await soon(values(store()));
        const read = kept.filter(isRunRecord);
        const runs = read.filter(({ id }) => !here.has(id));
        return {
          kind: "found",
          runs: newestFirst([...runs, ...here.values()]),
          onlyHere: [...here.keys()],
          unread: kept.length - read.length,
        };
      } catch {
        return { kind: "refused", runs: newestFirst([...here.values()]) };
      }
    },
    async remove(id) {
      const held = here.delete(id);
      try {
        await soon(del(id, store()));
        return true;
      } catch {
        return held;
      }
    },
  };
}

function newestFirst(runs: readonly RunRecord[]): readonly RunRecord[] {
  return runs.toSorted((a, b) => b.begunAt - a.begunAt || (a.id < b.id ? 1 : -1));
}
