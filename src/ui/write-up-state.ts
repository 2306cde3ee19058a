// Ports in, the kept runs out, and the acts a person can do to them. A note is kept as it is typed, a
// pause after the last key; what is taken out can be brought back for as long as the place is open.
import { computed, type ReadonlySignal, signal } from "@preact/signals";
import { type Judgement, judgementOf, type RunRecord } from "../logbook/run-record.ts";
import type { FoundRuns, RunStore } from "../logbook/run-store.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import type { Negatives } from "../trade/negatives.ts";
import { lateWords } from "./language.ts";
import { textOfRuns, titleOf } from "./write-up-model.ts";

export interface WriteUpPorts {
  readonly store: RunStore;
  /** Offers a text to the person as a file. */
  readonly saveFile: (name: string, text: string) => void;
  /** Fills in Work out with a worksheet, and goes there. */
  readonly useWorksheet: (worksheet: Worksheet) => void;
  /** Calls once, so many ms from now; returns the way to call it off. */
  readonly after: (ms: number, act: () => void) => () => void;
}

export interface WriteUp {
  /** null until the store has answered. */
  readonly found: ReadonlySignal<FoundRuns | null>;
  /** By run: whether what was typed last is kept. Nothing while it waits to be. */
  readonly notes: ReadonlySignal<{ readonly [id: string]: "kept" | "refused" | undefined }>;
  /** Taken out since the place was opened, the last one last. */
  readonly taken: ReadonlySignal<readonly RunRecord[]>;
  /** The run that was brought back last. */
  readonly returned: ReadonlySignal<string | null>;
  readonly notice: ReadonlySignal<string | null>;
  type(id: string, note: string): void;
  /** What was seen on its negatives, kept at once. */
  see(id: string, negatives: Negatives): void;
  takeOut(id: string): void;
  undo(): void;
  saveAll(): void;
  again(id: string): void;
  /** Keeps at once what is waiting to be kept: for the moment the place is left. */
  keepNow(): void;
}

/** A note is kept after so long a pause, ms. */
const KEEP_AFTER = 600;

export function openWriteUp({ store, saveFile, useWorksheet, after }: WriteUpPorts): WriteUp {
  const found = signal<FoundRuns | null>(null);
  const notes = signal<{ readonly [id: string]: "kept" | "refused" | undefined }>({});
  const taken = signal<readonly RunRecord[]>([]);
  const returned = signal<string | null>(null);
  /** In whatever words are in force when it is shown. */
  const says = signal<(() => string) | null>(null);
  /** Notes that wait to be kept: the way to call that off. */
  const waiting = new Map<string, () => void>();

  store.all().then((all) => {
    found.value = all;
  });

  const runs = () => found.value?.runs ?? [];
  const runOf = (id: string) => runs().find((run) => run.id === id);

  function become(next: readonly RunRecord[]): void {
    if (found.value !== null) found.value = { ...found.value, runs: next };
  }

  function keep(id: string): void {
    waiting.get(id)?.();
    waiting.delete(id);
    const run = runOf(id);
    if (run === undefined) return;
    const { note, negatives } = run;
    store.judge(id, judgementOf(run)).then((kept) => {
      // Something more may have been said meanwhile, which is another matter.
      const now = runOf(id);
      if (now?.note !== note || now.negatives !== negatives || waiting.has(id)) return;
      notes.value = { ...notes.value, [id]: kept ? "kept" : "refused" };
    });
  }

  function say(id: string, judgement: Judgement): void {
    become(runs().map((run) => (run.id === id ? { ...run, ...judgement } : run)));
    notes.value = { ...notes.value, [id]: undefined };
  }

  function putBack(run: RunRecord): void {
    const others = runs().filter(({ id }) => id !== run.id);
    become([...others, run].toSorted((a, b) => b.begunAt - a.begunAt));
  }

  return {
    found,
    notes,
    taken,
    returned,
    notice: computed(() => says.value?.() ?? null),
    see(id, negatives) {
      say(id, { negatives });
      keep(id);
    },
    type(id, note) {
      say(id, { note });
      waiting.get(id)?.();
      waiting.set(
        id,
        after(KEEP_AFTER, () => keep(id)),
      );
    },
    takeOut(id) {
      const run = runOf(id);
      if (run === undefined) return;
      waiting.get(id)?.();
      waiting.delete(id);
      become(runs().filter((other) => other !== run));
      taken.value = [...taken.value, run];
      says.value = () => lateWords.value.write.takenOut(titleOf(run));
      store.remove(id).then((removed) => {
        if (removed || !taken.value.includes(run)) return;
        taken.value = taken.value.filter((other) => other !== run);
        putBack(run);
        says.value = () => lateWords.value.write.notTakenOut(titleOf(run));
      });
    },
    undo() {
      const run = taken.value.at(-1);
      if (run === undefined) return;
      taken.value = taken.value.slice(0, -1);
      putBack(run);
      returned.value = run.id;
      const last = taken.value.at(-1);
      says.value = last === undefined ? null : () => lateWords.value.write.takenOut(titleOf(last));
      store.keep(run).then((kept) => {
        const now = found.value;
        if (kept || now?.kind !== "found") return;
        found.value = { ...now, onlyHere: [...now.onlyHere, run.id] };
      });
    },
    saveAll() {
      saveFile(lateWords.value.write.file, textOfRuns(runs()));
      says.value = () => lateWords.value.write.saved(lateWords.value.write.file);
    },
    again(id) {
      const run = runOf(id);
      if (run) useWorksheet(run.worksheet);
    },
    keepNow() {
      for (const id of [...waiting.keys()]) keep(id);
    },
  };
}
