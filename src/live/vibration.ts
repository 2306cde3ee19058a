// The motor of a phone as a port: a browser without one has no such function, and one that has the function may
// run on a device without a motor, which cannot be known from here.
import type { Pulses } from "./pulses.ts";

/** Null where the browser cannot ask a device to vibrate. */
export function vibration(): ((pulses: Pulses) => void) | null {
  if (typeof navigator.vibrate !== "function") return null;
  return (pulses) => void navigator.vibrate([...pulses]);
}
