// Tanks kept by name in, the acts a person can do with them out: keep this one, take another, forget one and have it back.
// Apart from the worksheet, which holds one tank and outlives none of them.
import { type ReadonlySignal, signal } from "@preact/signals";
import type { KeptTank, TankStore } from "../logbook/tank-store.ts";
import { tankTexts, withTank } from "./bench-acts.ts";
import type { Draft } from "./draft.ts";
import { words } from "./language.ts";

export interface TankShelf {
  readonly tanks: ReadonlySignal<readonly KeptTank[]>;
  /** Keeps the worksheet's tank under its own name. */
  keep(): Promise<void>;
  /** Fills a kept tank in. */
  take(label: string): void;
  forget(label: string): Promise<void>;
  /** The tank that was forgotten last, while it can be brought back as it was kept. */
  readonly gone: ReadonlySignal<KeptTank | null>;
  bringBack(): Promise<void>;
}

/** Something to tell, in whatever words are in force when it is shown. */
export type Says = () => string;

interface Sheet {
  readonly draft: ReadonlySignal<Draft>;
  readonly put: (draft: Draft, says: Says | null) => void;
  readonly tell: (says: Says) => void;
}

export function tankShelf(store: TankStore, { draft, put, tell }: Sheet): TankShelf {
  const tanks = signal<readonly KeptTank[]>([]);
  const gone = signal<KeptTank | null>(null);
  async function look(): Promise<void> {
    const found = await store.load();
    if (found.kind === "found") tanks.value = found.tanks;
  }
  async function keep(tank: KeptTank): Promise<void> {
    const { label } = tank;
    const kept = await store.keep(tank);
    // What is kept under its name now is not to be written over.
    if (kept && gone.value?.label === label) gone.value = null;
    await look();
    tell(() => (kept ? words.value.tanks.isKept(label) : words.value.tanks.notKept));
  }
  void look();
  return {
    tanks,
    async keep() {
      const label = (draft.value["tank.label"] ?? "").trim();
      if (label === "") return tell(() => words.value.tanks.needsName);
      await keep({ label, texts: tankTexts(draft.value) });
    },
    take(label) {
      const tank = tanks.value.find((it) => it.label === label);
      if (tank) put(withTank(draft.value, tank.texts), () => words.value.tanks.taken(label));
    },
    gone,
    async forget(label) {
      // Another page may have kept it anew.
      await look();
      const was = tanks.value.find((it) => it.label === label);
      const went = await store.remove(label);
      if (went && was !== undefined) gone.value = was;
      await look();
      tell(() => (went ? words.value.tanks.forgotten(label) : words.value.tanks.notKept));
    },
    async bringBack() {
      if (gone.value !== null) await keep(gone.value);
    },
  };
}
