// One thermometer for the page's life, whatever is shown: how it stands, as a signal, and its steady readings
// handed to whoever wants them. Screens connect it and let it go.
import { type ReadonlySignal, signal } from "@preact/signals";
import type { Worksheet } from "../plan/worksheet.ts";
import { inDegreesOf, type Temperature } from "../units/temperature.ts";
import type { Run } from "./run-shape.ts";
import { nothingProbed, notTaken, probed } from "./steady-readings.ts";
import type { Thermometer, ThermometerRefusal } from "./thermometer.ts";

export type ProbeState =
  | { readonly kind: "off" }
  /** The browser asks which one, or it is being reached. */
  | { readonly kind: "connecting" }
  | { readonly kind: "refused"; readonly why: ThermometerRefusal }
  | {
      readonly kind: "on";
      readonly name: string;
      /** What it told last; null before the first. */
      readonly celsius: number | null;
      /** Whether that is a reading of the tank. */
      readonly isInTank: boolean;
    }
  /** Being sought. */
  | { readonly kind: "lost"; readonly name: string; readonly celsius: number | null };

export interface Probe {
  readonly state: ReadonlySignal<ProbeState>;
  /** To be called from a press. */
  connect(): Promise<void>;
  disconnect(): void;
}

/** @param give a steady reading, °C; false where there was no use for it. */
export function openProbe(thermometer: Thermometer, give: (celsius: number) => boolean): Probe {
  const state = signal<ProbeState>({ kind: "off" });
  let close = () => {};
  /** Counts the connections, so that one which was let go of says nothing more. */
  let latest = 0;

  function disconnect(): void {
    latest += 1;
    close();
    close = () => {};
    state.value = { kind: "off" };
  }

  async function connect(): Promise<void> {
    if (state.value.kind === "connecting") return;
    disconnect();
    const mine = latest;
    let steady = nothingProbed;
    let name = "";
    let last: { readonly celsius: number; readonly isInTank: boolean } | null = null;
    const showOn = () => {
      state.value = { kind: "on", name, celsius: null, isInTank: true, ...last };
    };
    state.value = { kind: "connecting" };
    const connected = await thermometer.connect({
      read(celsius, at) {
        if (mine !== latest) return;
        const { steady: next, probing } = probed(steady, celsius, at);
        steady = probing.kind === "worth" && !give(probing.celsius) ? notTaken(next) : next;
        last = { celsius, isInTank: probing.kind !== "out" };
        if (state.value.kind === "on") showOn();
      },
      lost() {
        if (mine === latest) state.value = { kind: "lost", name, celsius: last?.celsius ?? null };
      },
      again() {
        if (mine === latest) showOn();
      },
    });
    if (mine !== latest) {
      if (connected.kind === "connected") connected.close();
    } else if (connected.kind === "refused") {
      state.value = connected;
    } else {
      ({ name, close } = connected);
      showOn();
    }
  }

  return { state, connect, disconnect };
}

/** To the run that is on, if its developer is: to a tenth, in the unit that its worksheet is written in. */
export function giveTo(
  session: { readonly worksheet: Worksheet; readonly run: Pick<Run, "read"> } | null,
  celsius: number,
): boolean {
  if (session === null) return false;
  const like = session.worksheet.developer.temperature;
  return session.run.read(toTenths(inDegreesOf(like, celsius)), "probe");
}

/** A probe's hundredths are its noise. */
function toTenths(temperature: Temperature): Temperature {
  const tenths = (degrees: number) => Math.round(degrees * 10) / 10;
  return "c" in temperature ? { c: tenths(temperature.c) } : { f: tenths(temperature.f) };
}
