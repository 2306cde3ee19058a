// Ports in, the kept runs out, and the acts a person can do to them. A note is kept as it is typed, a
// pause after the last key; what is taken out can be brought back for as long as the page is open, and what came in
// with a file be taken back.
// Past 200 lines because all that can be done to the runs is done to the one list of them.
import { batch, computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import type { Picture } from "../logbook/picture.ts";
import type { PictureStore } from "../logbook/picture-store.ts";
import { lineOf, type RunLine } from "../logbook/run-line.ts";
import { type Judgement, judgementOf, type RunRecord } from "../logbook/run-record.ts";
import type { TakenOut } from "../logbook/run-shelf.ts";
import type { FoundRuns, RunStore, Written } from "../logbook/run-store.ts";
import { lateWords } from "./language.ts";
import { type Back, type Done, toldOf } from "./write-up-done.ts";
import { matching, nothingWanted, type Wanted } from "./write-up-find.ts";
import { titleOf } from "./write-up-model.ts";

export interface WriteUpPorts {
  readonly store: RunStore;
  readonly pictures: PictureStore;
  /** What can be undone, the last one last: for the page's life, whatever place is shown meanwhile. */
  readonly done: Signal<readonly Done[]>;
  /** What is shown of all else that is kept, anew. */
  readonly lookBeside: () => Promise<void>;
  /** Calls once, so many ms from now; returns the way to call it off. */
  readonly after: (ms: number, act: () => void) => () => void;
}

export interface WriteUp {
  /** null until the store has answered. */
  readonly found: ReadonlySignal<FoundRuns | null>;
  /** Whether all lines are there: until then `found` has the newest alone. */
  readonly whole: ReadonlySignal<boolean>;
  readonly wanted: ReadonlySignal<Wanted>;
  /** Those that fit, newest first. */
  readonly matches: ReadonlySignal<readonly RunLine[]>;
  /** The first of them, as many as are shown; a run that has not been read yet is left out. */
  readonly shown: ReadonlySignal<readonly RunRecord[]>;
  /** How many more of them there are. */
  readonly hidden: ReadonlySignal<number>;
  /** By run: whether what was said last is kept. Nothing while it waits to be. */
  readonly notes: ReadonlySignal<{ readonly [id: string]: Written | undefined }>;
  readonly done: ReadonlySignal<readonly Done[]>;
  /** The run that was brought back last. */
  readonly returned: ReadonlySignal<string | null>;
  readonly notice: ReadonlySignal<string | null>;
  /** Counts the pictures that went and came, so that whoever shows them looks again. */
  readonly pictured: ReadonlySignal<number>;
  find(wanted: Partial<Wanted>): void;
  more(): void;
  /** One that may not be shown. */
  read(id: string): Promise<RunRecord | null>;
  type(id: string, note: string): void;
  /** Something seen on its negatives, kept at once. */
  judge(id: string, judgement: Judgement): void;
  takeOut(id: string): Promise<void>;
  takeOutPicture(picture: Picture): Promise<void>;
  /** A file was taken in. */
  cameIn(back: Back): void;
  undo(): Promise<void>;
  tell(says: () => string): void;
  /** All anew, after much came at once. */
  lookAgain(): Promise<void>;
  /** Keeps at once what is waiting to be kept: for the moment the place is left. */
  keepNow(): Promise<void>;
}

/** A note is kept after so long a pause, ms. */
const KEEP_AFTER = 600;
/** Shown at once, and more at each press. */
export const PAGE = 10;

export function openWriteUp({ store, pictures, done, lookBeside, after }: WriteUpPorts): WriteUp {
  const found = signal<FoundRuns | null>(null);
  const whole = signal(false);
  const wanted = signal(nothingWanted);
  const most = signal(PAGE);
  /** Those that have been read. */
  const records = signal<ReadonlyMap<string, RunRecord>>(new Map());
  const notes = signal<{ readonly [id: string]: Written | undefined }>({});
  const returned = signal<string | null>(null);
  const pictured = signal(0);
  /** In whatever words are in force when it is shown. */
  const says = signal(toldOf(done.value.at(-1)));
  /** Notes that wait to be kept: the way to call that off. */
  const waiting = new Map<string, () => void>();

  const matches = computed(() => matching(found.value?.lines ?? [], wanted.value));
  const shown = computed(() =>
    matches.value.slice(0, most.value).flatMap(({ id }) => records.value.get(id) ?? []),
  );

  async function lookAgain(): Promise<void> {
    await showAll(await store.lines());
  }

  async function showAll(all: FoundRuns): Promise<void> {
    // Ten thousand lines that are the same are not gone through once more.
    const isNews = found.value?.lines !== all.lines;
    batch(() => {
      if (isNews) found.value = all;
      whole.value = true;
    });
    await readShown();
  }

  async function look(): Promise<void> {
    const known = store.known();
    const newest = await store.newest(PAGE);
    batch(() => {
      records.value = new Map(newest.map((run) => [run.id, run]));
      // What another page changed meanwhile is shown as soon as it is heard of.
      if (known !== null) void showAll(known);
      else if (newest.length > 0)
        found.value = { kind: "found", lines: newest.map(lineOf), onlyHere: [], unread: 0 };
    });
    await lookAgain();
  }
  void look();

  async function readShown(): Promise<void> {
    const ids = matches.value.slice(0, most.value).map(({ id }) => id);
    const unread = ids.filter((id) => !records.value.has(id));
    if (unread.length === 0) return;
    const read = await store.read(unread);
    records.value = new Map([...read.map((run) => [run.id, run] as const), ...records.value]);
  }

  function becomes(run: RunRecord): void {
    records.value = new Map(records.value).set(run.id, run);
    const now = found.value;
    if (now === null) return;
    const others = now.lines.filter(({ id }) => id !== run.id);
    const lines = [...others, lineOf(run)].toSorted((a, b) => b.begunAt - a.begunAt);
    found.value = { ...now, lines };
  }

  async function keep(id: string): Promise<void> {
    waiting.get(id)?.();
    waiting.delete(id);
    const run = records.value.get(id);
    if (run === undefined) return;
    const written = await store.judge(id, judgementOf(run));
    // Something more may have been said meanwhile, which is another matter.
    if (records.value.get(id) !== run || waiting.has(id)) return;
    notes.value = { ...notes.value, [id]: written };
  }

  function say(id: string, judgement: Judgement): void {
    const run = records.value.get(id);
    if (run === undefined) return;
    batch(() => {
      becomes({ ...run, ...judgement });
      notes.value = { ...notes.value, [id]: undefined };
    });
  }

  function does(next: Done): void {
    done.value = [...done.value, next];
    says.value = toldOf(next);
  }

  async function takeBack(back: Back): Promise<void> {
    // What is typed is kept first, so that it counts as changed.
    await keepNow();
    const came = await back();
    if (came.done) await lookAnew();
    batch(() => {
      if (came.done) done.value = done.value.slice(0, -1);
      says.value = came.says;
      pictured.value += 1;
    });
  }

  async function lookAnew(): Promise<void> {
    await keepNow();
    records.value = new Map();
    await Promise.all([lookAgain(), lookBeside()]);
  }

  async function keepNow(): Promise<void> {
    await Promise.all([...waiting.keys()].map(keep));
  }

  return {
    found,
    whole,
    wanted,
    matches,
    shown,
    hidden: computed(() => Math.max(0, matches.value.length - most.value)),
    notes,
    done,
    returned,
    pictured,
    notice: computed(() => says.value?.() ?? null),
    find(more) {
      batch(() => {
        wanted.value = { ...wanted.value, ...more };
        most.value = PAGE;
      });
      void readShown();
    },
    more() {
      most.value += PAGE;
      void readShown();
    },
    async read(id) {
      return records.value.get(id) ?? (await store.read([id]))[0] ?? null;
    },
    judge(id, judgement) {
      say(id, judgement);
      void keep(id);
    },
    type(id, note) {
      say(id, { note });
      waiting.get(id)?.();
      waiting.set(
        id,
        after(KEEP_AFTER, () => void keep(id)),
      );
    },
    async takeOut(id) {
      const run = records.value.get(id);
      if (run === undefined) return;
      waiting.get(id)?.();
      waiting.delete(id);
      const taken = await store.takeOut(id);
      if (taken === null) {
        says.value = () => lateWords.value.write.notTakenOut(titleOf(run));
        return;
      }
      batch(() => {
        const now = found.value;
        if (now !== null)
          found.value = { ...now, lines: now.lines.filter((line) => line.id !== id) };
        // With what was typed last, which nothing kept yet.
        const whole: TakenOut = { ...taken, run: { ...taken.run, ...judgementOf(run) } };
        does({ kind: "run", taken: whole });
      });
      await readShown();
    },
    async takeOutPicture(picture) {
      const went = await pictures.remove(picture);
      batch(() => {
        if (went) does({ kind: "picture", picture });
        else says.value = () => lateWords.value.pictures.notRemoved;
        pictured.value += 1;
      });
    },
    cameIn(back) {
      batch(() => {
        does({ kind: "file", back });
        pictured.value += 1;
      });
    },
    async undo() {
      const last = done.value.at(-1);
      if (last === undefined) return;
      if (last.kind === "file") return takeBack(last.back);
      const back =
        last.kind === "run" ? await store.putBack(last.taken) : await pictures.keep(last.picture);
      batch(() => {
        // A picture that finds no room stays where it can be asked for again, and a run with its own.
        if (last.kind === "picture" && back !== "kept") {
          says.value = () => lateWords.value.pictures.noRoom;
          return;
        }
        if (last.kind === "run" && back !== "kept" && last.taken.pictures.length > 0) {
          says.value = () => lateWords.value.write.notPutBack(titleOf(last.taken.run));
          return;
        }
        done.value = done.value.slice(0, -1);
        says.value = toldOf(done.value.at(-1));
        pictured.value += 1;
        if (last.kind === "picture") return;
        const { run } = last.taken;
        becomes(run);
        returned.value = run.id;
        const now = found.value;
        if (back !== "kept" && now?.kind === "found")
          found.value = { ...now, onlyHere: [...now.onlyHere, run.id] };
      });
    },
    tell(next) {
      says.value = next;
    },
    lookAgain: lookAnew,
    keepNow,
  };
}
