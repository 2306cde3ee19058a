// A store in, by which senses a run reaches this person out, as a signal: asked before the first run, changed
// wherever it is shown.
import { type ReadonlySignal, signal } from "@preact/signals";
import type { SensesStore } from "../logbook/senses-store.ts";
import type { Senses } from "../voice/senses.ts";

export interface SensesChoice {
  readonly now: ReadonlySignal<Senses>;
  /** False where the browser will not keep it: then it holds until the page goes away. */
  change(part: Partial<Senses>): boolean;
}

export function openSenses(store: SensesStore): SensesChoice {
  const now = signal(store.load());
  return {
    now,
    change(part) {
      now.value = { ...now.value, ...part };
      return store.keep(now.value);
    },
  };
}
