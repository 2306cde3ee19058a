// A fixer's clearing tests in, their drawing out: the time to clear over the films that went through, with the
// two lines that say spent. Alone, because tally and test are each one of its axes.
import { spentAt } from "../trade/clearing.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { clockAxis, numberAxis } from "./curve-axes.ts";
import type { CurveDrawing } from "./curve-model.ts";
import { lateWords } from "./language.ts";

interface Life {
  readonly tests: readonly { readonly seconds: number; readonly films: number }[];
  /** Seconds, of the fresh bath; null where that was not tested. */
  readonly fresh: number | null;
  /** Films of 80 sq in that it serves in all. */
  readonly serves: number | null;
}

export function fixerDrawing({ tests, fresh, serves }: Life): CurveDrawing {
  const say = lateWords.value.fixerWords;
  const points = tests.map(({ films, seconds }) => ({ x: films, y: seconds }));
  const spent = fresh === null ? [] : [fresh * spentAt];
  const all = serves === null ? [] : [serves];
  const last = writeClockTime(tests.at(-1)?.seconds ?? 0);
  return {
    title: say.picture,
    says: say.says(tests.length, last),
    across: numberAxis(say.across, [0, ...points.map(({ x }) => x), ...all], 4),
    up: clockAxis(say.up, [0, ...points.map(({ y }) => y), ...spent], "up"),
    lines: points.length > 1 ? [{ points, stroke: "solid" }] : [],
    marks: points.map((point, at) => ({
      ...point,
      sign: at === points.length - 1 ? "today" : "row",
    })),
    levels: [
      ...spent.map((at) => ({ along: "up", at, label: say.twice }) as const),
      ...all.map((at) => ({ along: "across", at, label: say.capacity }) as const),
    ],
    bands: [],
  };
}
