// What else than a finger can reach a run from this device: learnt pedals, and a thermometer that tells by
// itself. Made once for the page's life.
import type { ReadonlySignal } from "@preact/signals";
import { browserThermometer } from "../live/browser-thermometer.ts";
import { giveTo, openProbe, type Probe } from "../live/probe.ts";
import type { Session } from "../live/runs.ts";
import { pedalStore } from "../logbook/pedal-store.ts";
import { openPedals, type Pedals } from "./pedals.ts";

export interface Hands {
  readonly pedals: Pedals;
  /** Null where the browser knows of no such thing. */
  readonly probe: Probe | null;
}

export function openHands(current: ReadonlySignal<Session | null>, storage: () => Storage): Hands {
  const thermometer = browserThermometer();
  return {
    pedals: openPedals(pedalStore(storage)),
    probe: thermometer && openProbe(thermometer, (celsius) => giveTo(current.value, celsius)),
  };
}
