// Thermometer readings and the curve fitted to them in, the drawing of temperature by time out. Alone,
// because it looks ahead: what is read and what is only expected share one clock.
import { type Drift, type ThermometerReading, temperatureAfter } from "../trade/drift.ts";
import type { Range } from "../trade/tempering.ts";
import { writeAboutTime, writeClockTime } from "../units/clock-time.ts";
import type { Temperature } from "../units/temperature.ts";
import { clockAxis, degreeAxis, unitOf } from "./curve-axes.ts";
import type { CurveDrawing } from "./curve-model.ts";
import { lateWords, writing } from "./language.ts";

export interface TemperingCurve {
  /** In order of time. */
  readonly readings: readonly ThermometerReading[];
  /** Its start is at 0 s of the readings' clock. */
  readonly drift: Drift | null;
  /** °C. */
  readonly target: number;
  /** Seconds of the readings' clock; `to` may be Infinity. */
  readonly reach: (Range & { readonly at: number }) | null;
  /** °C. */
  readonly settles: Range | null;
  readonly like: Temperature;
}

/** Seconds shown after the last reading at least. */
const leastAhead = 120;

/** Of the time shown, the part left free before the first reading. */
const lead = 0.04;

/** Points along the curve. */
const fineness = 60;

export function temperingDrawing(given: TemperingCurve): CurveDrawing {
  const { readings, drift, target, reach, settles, like } = given;
  const zero = readings[0]?.seconds ?? 0;
  const end = lastShown(given) - zero;
  const across = clockAxis(lateWords.value.temperingCurve.across, [0, end], "across", -end * lead);
  const curve = (seconds: number) => (drift ? temperatureAfter(drift, zero + seconds) : target);
  const line = Array.from({ length: fineness + 1 }, (_, i) => {
    const seconds = (across.to * i) / fineness;
    return { x: seconds, y: curve(seconds) };
  });
  const read = readings.map(({ seconds, celsius }) => ({ x: seconds - zero, y: celsius }));
  const known = [target, ...read.map(({ y }) => y), ...(drift ? line.map(({ y }) => y) : [])];
  const [low, high] = [Math.min(...known), Math.max(...known)];
  // An interval that is far wider than what was read is cut, so that the readings stay apart.
  const spare = Math.max(1, high - low);
  // Words stand above the level or beneath it.
  const heights = [...known, target - spare / 12, target + spare / 12];
  const cut = (celsius: number) => Math.min(Math.max(celsius, low - spare), high + spare);
  const settled = settles && { from: cut(settles.from), to: cut(settles.to) };
  const up = degreeAxis(
    lateWords.value.temperingCurve.up(unitOf(like)),
    settled ? [...heights, settled.from, settled.to] : heights,
    like,
  );
  const within = (seconds: number) => Math.min(Math.max(seconds - zero, across.from), across.to);
  return {
    title: lateWords.value.temperingCurve.title,
    says: said(given),
    across,
    up,
    lines: drift ? [{ stroke: "solid", points: line }] : [],
    marks: [
      ...read.map((point) => ({ ...point, sign: "row" }) as const),
      ...(reach && reach.at >= zero
        ? [
            {
              x: within(reach.at),
              y: target,
              sign: "today",
              label: writeAboutTime(reach.at - zero),
            } as const,
          ]
        : []),
    ],
    levels: [
      {
        along: "up",
        at: target,
        label: lateWords.value.temperingCurve.wanted(writing.value.tenths(like, target)),
      },
    ],
    bands: [
      ...(reach && reach.to > zero
        ? [
            {
              along: "across",
              from: within(reach.from),
              to: within(reach.to),
              label: interval(reach, zero),
            } as const,
          ]
        : []),
      ...(settled
        ? [{ along: "up", ...settled, label: lateWords.value.temperingCurve.settles } as const]
        : []),
    ],
  };
}

/** Seconds of the readings' clock: what is read and the interval of reaching, or the way to rest. */
function lastShown({ readings, drift, reach }: TemperingCurve): number {
  const zero = readings[0]?.seconds ?? 0;
  const last = (readings.at(-1)?.seconds ?? 0) + leastAhead;
  if (reach) {
    const far = Math.max(last, reach.at);
    return Math.max(far, Math.min(reach.to, zero + (far - zero) * 1.5));
  }
  return drift
    ? Math.max(last, Math.min(zero + 3 * (last - zero), zero + 180 * drift.halfway))
    : last;
}

/** `"11:20 to 15:00"`, or `"from 11:20"` where nobody can say how long it may take. */
function interval({ from, to }: Range, zero: number): string {
  const start = writeAboutTime(Math.max(0, from - zero));
  return Number.isFinite(to)
    ? lateWords.value.temperingCurve.between(start, writeAboutTime(to - zero))
    : lateWords.value.temperingCurve.since(start);
}

function said({ readings, target, reach, settles, like }: TemperingCurve): string {
  const [first, last] = [readings[0], readings.at(-1)];
  const zero = first?.seconds ?? 0;
  const parts = [
    !first || !last
      ? lateWords.value.temperingCurve.none
      : first === last
        ? lateWords.value.temperingCurve.one(writing.value.tenths(like, first.celsius))
        : lateWords.value.temperingCurve.readings(
            readings.length,
            writing.value.tenths(like, first.celsius),
            writing.value.tenths(like, last.celsius),
            writeClockTime(last.seconds - zero),
          ),
  ];
  if (reach) {
    const at = writeAboutTime(Math.max(0, reach.at - zero));
    parts.push(
      lateWords.value.temperingCurve.reaches(
        writing.value.tenths(like, target),
        at,
        interval(reach, zero),
      ),
    );
  }
  if (settles)
    parts.push(
      lateWords.value.temperingCurve.settling(
        writing.value.tenths(like, settles.from),
        writing.value.tenths(like, settles.to),
      ),
    );
  return parts.join(" ");
}
