// Tanks kept by name in, the acts a person can do with them out: keep this one, take another, forget one.
// Apart from the worksheet, which holds one tank and outlives none of them.
import { type ReadonlySignal, signal } from "@preact/signals";
import type { KeptTank, TankStore } from "../logbook/tank-store.ts";
import { tankTexts, withTank } from "./bench-acts.ts";
import { tankWords } from "./bench-words.ts";
import type { Draft } from "./draft.ts";

export interface TankShelf {
  readonly tanks: ReadonlySignal<readonly KeptTank[]>;
  /** Keeps the worksheet's tank under its own name. */
  keep(): Promise<void>;
  /** Fills a kept tank in. */
  take(label: string): void;
  forget(label: string): Promise<void>;
}

interface Sheet {
  readonly draft: ReadonlySignal<Draft>;
  readonly put: (draft: Draft, says: string | null) => void;
  readonly tell: (says: string) => void;
}

export function tankShelf(store: TankStore, { draft, put, tell }: Sheet): TankShelf {
  const tanks = signal<readonly KeptTank[]>([]);
  async function look(): Promise<void> {
    const found = await store.load();
    if (found.kind === "found") tanks.value = found.tanks;
  }
  void look();
  return {
    tanks,
    async keep() {
      const label = (draft.value["tank.label"] ?? "").trim();
      if (label === "") return tell(tankWords.needsName);
      const kept = await store.keep({ label, texts: tankTexts(draft.value) });
      await look();
      tell(kept ? tankWords.isKept(label) : tankWords.notKept);
    },
    take(label) {
      const tank = tanks.value.find((it) => it.label === label);
      if (tank) put(withTank(draft.value, tank.texts), tankWords.taken(label));
    },
    async forget(label) {
      const gone = await store.remove(label);
      await look();
      tell(gone ? tankWords.forgotten(label) : tankWords.notKept);
    },
  };
}
