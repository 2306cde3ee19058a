// A store in, the pedals and other buttons of this device out, as a signal: learnt, and forgotten.
import { type ReadonlySignal, signal } from "@preact/signals";
import { type Pedal, pedalOf } from "../live/pedal.ts";
import type { PedalStore } from "../logbook/pedal-store.ts";

export interface Pedals {
  readonly all: ReadonlySignal<readonly Pedal[]>;
  /** Those learnt before stay, but for what is now known better. False where the browser will not keep it. */
  learn(pedals: readonly Pedal[]): boolean;
  forget(pedal: Pedal): boolean;
}

/** The oldest goes, where there are more. */
const MOST = 8;

export function openPedals(store: PedalStore): Pedals {
  const all = signal<readonly Pedal[]>(store.load());

  function become(pedals: readonly Pedal[]): boolean {
    all.value = pedals;
    return store.keep(pedals);
  }

  return {
    all,
    learn: (pedals) =>
      become(
        [...all.value.filter((each) => pedalOf(pedals, each) === null), ...pedals].slice(-MOST),
      ),
    forget: (pedal) => become(all.value.filter((each) => each !== pedal)),
  };
}
