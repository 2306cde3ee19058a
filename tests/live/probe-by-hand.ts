// A thermometer by hand: it connects or refuses as told, and tells what the test has it tell.
import type { Connecting, Listener, Thermometer } from "../../src/live/thermometer.ts";

export function thermometerByHand(refusal: Extract<Connecting, { kind: "refused" }> | null = null) {
  const listeners: Listener[] = [];
  let closed = 0;
  let asking: (() => void)[] = [];
  let waits = false;
  const thermometer: Thermometer = {
    async connect(listener) {
      if (waits) await new Promise<void>((resolve) => asking.push(resolve));
      if (refusal !== null) return refusal;
      listeners.push(listener);
      return {
        kind: "connected",
        name: "Gullrock probe",
        close() {
          closed += 1;
        },
      };
    },
  };
  const listener = () => listeners.at(-1);
  return {
    thermometer,
    closed: () => closed,
    listeners,
    tell: (celsius: number, at: number) => listener()?.read(celsius, at),
    lose: () => listener()?.lost(),
    find: () => listener()?.again(),
    /** From here on the browser asks the person, who takes their time. */
    wait() {
      waits = true;
    },
    answer() {
      for (const resolve of asking) resolve();
      asking = [];
    },
  };
}
