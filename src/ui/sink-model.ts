// Keys pressed at the sink in, the temperature shown and the readings to be stamped out.
// Alone, so that what wet fingers do to it can be tried without a screen.
import type { Temperature } from "../units/temperature.ts";

export type SinkKey = "less" | "more" | "much-less" | "much-more" | "read";

export interface Sink {
  readonly shown: Temperature;
  /** The last key, and when, ms. */
  readonly touched: { readonly key: SinkKey; readonly at: number } | null;
}

/** Half degrees that a key moves by, in the unit shown. */
const halves: { readonly [key in SinkKey]: number } = {
  less: -1,
  more: 1,
  "much-less": -10,
  "much-more": 10,
  read: 0,
};

/** Wet fingers bounce: the same key within so many ms is the same press. Fingers step faster than they read. */
const bounce: { readonly [key in SinkKey]: number } = {
  less: 80,
  more: 80,
  "much-less": 80,
  "much-more": 80,
  read: 300,
};

/** Water at the sink: from freezing to boiling, in half degrees. */
const range = { c: { least: 0, most: 200 }, f: { least: 64, most: 424 } };

/** So much of a half degree is the rounding of binary numbers, no more. */
const rounding = 1e-6;

/** As first shown: just as it came, on the half degrees or not. */
export function sinkAt(shown: Temperature): Sink {
  return { shown, touched: null };
}

/** A key at `at`, ms; `read` is what is to be stamped, if anything is. */
export function touch(
  sink: Sink,
  key: SinkKey,
  at: number,
): { readonly sink: Sink; readonly read: Temperature | null } {
  const { shown, touched } = sink;
  if (touched?.key === key && at - touched.at < bounce[key]) return { sink, read: null };
  return key === "read"
    ? { sink: { shown, touched: { key, at } }, read: shown }
    : { sink: { shown: moved(shown, halves[key]), touched: { key, at } }, read: null };
}

/** Onto the half degrees: from between two of them, the first step is the shorter one. */
function moved(from: Temperature, steps: number): Temperature {
  return "c" in from
    ? { c: stepped(from.c, steps, range.c) }
    : { f: stepped(from.f, steps, range.f) };
}

function stepped(
  degrees: number,
  steps: number,
  { least, most }: { readonly least: number; readonly most: number },
): number {
  const at = 2 * degrees;
  const base = steps < 0 ? Math.ceil(at - rounding) : Math.floor(at + rounding);
  return Math.min(Math.max(base + steps, least), most) / 2;
}
