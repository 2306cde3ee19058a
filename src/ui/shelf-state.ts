// The kept bottles in, the shelf and every act that a person or a run can do with it out. One for the page's
// life, so that Work out, the run and Write up see the same bottles.
import { computed, type ReadonlySignal, signal } from "@preact/signals";
import type { Act, Bottle, Contents, Entry } from "../logbook/bottle.ts";
import { type BottleState, type Refusal, refusalOf, stateOf } from "../logbook/bottle-state.ts";
import { type BottleStore, sameness, withEntries } from "../logbook/bottle-store.ts";
import { bottledBaths, drawsOf } from "../logbook/draws.ts";
import type { RunRecord } from "../logbook/run-record.ts";
import { type Day, dayAfter } from "../trade/keeping.ts";
import { lateWords } from "./language.ts";

export interface ShelfPorts {
  readonly store: BottleStore;
  /** The newest of the runs that are kept: what one of them could not write down when it ended is written down here. */
  readonly runs: () => Promise<readonly RunRecord[]>;
  /** ms since 1970, by the device's clock. */
  readonly now: () => number;
  readonly newId: () => string;
}

export type ShelfRefusal = Refusal | "name-taken" | "not-kept";

export interface Shelf {
  readonly kept: ReadonlySignal<"looking" | "found" | "refused">;
  /** All of them, the deleted ones too. */
  readonly bottles: ReadonlySignal<readonly Bottle[]>;
  readonly states: ReadonlySignal<readonly BottleState[]>;
  readonly unread: ReadonlySignal<number>;
  readonly notice: ReadonlySignal<string | null>;
  /** What the notice is about; `entry` while that can be undone from beside it. */
  readonly last: ReadonlySignal<{ readonly bottle: string; readonly entry: string | null } | null>;
  today(): Day;
  mix(contents: Contents): Promise<ShelfRefusal | null>;
  act(bottle: string, act: Act, on: Day, by?: string): Promise<ShelfRefusal | null>;
  undo(bottle: string, entry: string): Promise<ShelfRefusal | null>;
  redo(bottle: string, entry: string): Promise<ShelfRefusal | null>;
  /** Writes down what a run drew on; once, however often it is told. */
  draw(run: RunRecord): Promise<void>;
  /** Reads it anew: what is kept was changed by another than these acts. */
  lookAgain(): Promise<void>;
  /** Puts bottles on it as they are. */
  fill(bottles: readonly Bottle[]): Promise<void>;
}

/** A run that began so long ago and has not ended never will, ms. */
const A_DAY = 86_400_000;

export function openShelf({ store, runs, now, newId }: ShelfPorts): Shelf {
  const bottles = signal<readonly Bottle[]>([]);
  const kept = signal<"looking" | "found" | "refused">("looking");
  const unread = signal(0);
  const says = signal<(() => string) | null>(null);
  const last = signal<Shelf["last"]["value"]>(null);
  const states = computed(() => bottles.value.map(stateOf));

  async function look(): Promise<void> {
    const found = await store.load();
    if (found.kind === "found") {
      bottles.value = found.bottles;
      unread.value = found.unread;
    }
    kept.value = found.kind;
  }

  const nameOf = (id: string) => states.value.find((state) => state.id === id)?.contents.name ?? "";
  /** @param to what it is added to: it was written after all that stands there, though the clock was set back since. */
  const entryOf = (act: Act, on: Day, by = "", to?: Bottle): Entry => ({
    ...act,
    id: newId(),
    at: Math.max(now(), ...(to?.entries.map(({ at }) => at + 1) ?? [])),
    on,
    ...(by === "" ? {} : { by }),
  });
  const bottleOf = (id: string) => bottles.value.find((it) => it.id === id);

  function isTaken(name: string, but: string | null): boolean {
    return states.value.some((state) => state.id !== but && nameOnShelf(state) === name);
  }

  function told(did: boolean, tell: () => string): ShelfRefusal | null {
    says.value = did ? tell : () => lateWords.value.shelf.notKept;
    return did ? null : "not-kept";
  }

  async function write(bottle: string, entry: Entry, tell: () => string) {
    const did = await store.add(bottle, [entry]);
    await look();
    const undone = entry.kind === "undone" || entry.kind === "redone";
    last.value = { bottle, entry: did && !undone ? entry.id : null };
    return told(did, tell);
  }

  /** Refused where it would have two of one name stand there; two that stand there already are in nobody's way. */
  async function turn(kind: "undone" | "redone", id: string, of: string, tell: () => string) {
    const bottle = bottleOf(id);
    if (bottle === undefined) return told(false, tell);
    const entry = entryOf({ kind, entry: of }, dayOf(now()), "", bottle);
    const name = nameOnShelf(stateOf(withEntries(bottle, [entry])));
    if (name !== null && name !== nameOnShelf(stateOf(bottle)) && isTaken(name, id)) {
      last.value = { bottle: id, entry: null };
      says.value = () => lateWords.value.shelf.refusals["name-taken"];
      return "name-taken";
    }
    return write(id, entry, tell);
  }

  async function drawOn(some: readonly RunRecord[]): Promise<void> {
    let wrote = false;
    // By whichever bottle: its name may be another's by now, and what a run drew on it drew once.
    const drawn = new Set(bottles.value.flatMap(({ entries }) => entries.map(sameness)));
    for (const run of some) {
      const on = dayOf(run.begunAt);
      for (const { bottle, act } of drawsOf(run, bottles.value, on)) {
        const entry = entryOf(act, on, "", bottleOf(bottle));
        if (!drawn.has(sameness(entry))) wrote = (await store.add(bottle, [entry])) || wrote;
      }
    }
    if (wrote) await look();
  }

  async function catchUp(): Promise<void> {
    if (bottles.value.length === 0) return;
    const over = ({ ended, begunAt }: RunRecord) => ended !== null || begunAt < now() - A_DAY;
    const all = await runs();
    await drawOn(all.filter((run) => over(run) && bottledBaths(run.worksheet).length > 0));
  }

  const opened = look().then(catchUp);

  return {
    kept,
    bottles,
    states,
    unread,
    last,
    notice: computed(() => says.value?.() ?? null),
    today: () => dayOf(now()),
    async mix(contents) {
      if (isTaken(contents.name, null)) return "name-taken";
      const entry = entryOf({ kind: "mixed", contents }, contents.mixedOn, contents.by);
      const did = await store.begin({ tankside: 1, id: newId(), entries: [entry] });
      await look();
      last.value = null;
      return told(did, () => lateWords.value.shelf.kept(contents.name));
    },
    async act(bottle, act, on, by) {
      const state = states.value.find(({ id }) => id === bottle);
      if (state === undefined) return "not-kept";
      if (act.kind === "corrected" && isTaken(act.contents.name, bottle)) return "name-taken";
      const refusal = refusalOf(state, act, on);
      if (refusal !== null) return refusal;
      const entry = entryOf(act, on, by, bottleOf(bottle));
      return write(bottle, entry, () => lateWords.value.shelf.kept(nameOf(bottle)));
    },
    undo: (bottle, entry) =>
      turn("undone", bottle, entry, () => lateWords.value.shelf.taken(nameOf(bottle))),
    redo: (bottle, entry) =>
      turn("redone", bottle, entry, () => lateWords.value.shelf.kept(nameOf(bottle))),
    async draw(run) {
      if (bottledBaths(run.worksheet).length === 0) return;
      await opened;
      // Another page may have written meanwhile.
      await look();
      await drawOn([run]);
    },
    async lookAgain() {
      await opened;
      await look();
    },
    async fill(some) {
      const did = await Promise.all(some.map((bottle) => store.begin(bottle)));
      await look();
      if (did.includes(false)) told(false, () => "");
    },
  };
}

/** null where it does not stand there to be mixed up with another. */
function nameOnShelf({ contents, stands, removed }: BottleState): string | null {
  return removed || stands === "poured away" ? null : contents.name;
}

/** The day of the calendar on this device. */
export function dayOf(ms: number): Day {
  const at = new Date(ms);
  const utc = Date.UTC(at.getFullYear(), at.getMonth(), at.getDate());
  return dayAfter(new Date(utc).toISOString().slice(0, 10), { count: 0, unit: "days" });
}
