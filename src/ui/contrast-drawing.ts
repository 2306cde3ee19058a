// Tests of contrast and the law fitted to them in, the drawing of gradient by development time out.
// Alone, because beyond the tested times the law is a guess, and is drawn as one.
import type { ContrastTest } from "../trade/contrast.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { clockAxis, numberAxis } from "./curve-axes.ts";
import type { CurveDrawing } from "./curve-model.ts";
import { fixed, lateWords } from "./language.ts";

interface ContrastCurve {
  readonly tests: readonly ContrastTest[];
  /** The fitted law; null where none could be fitted. */
  readonly gradientAt: ((seconds: number) => number) | null;
  /** Seconds, the shortest and the longest time tested. */
  readonly from: number;
  readonly to: number;
  readonly wanted: ContrastTest | null;
  /** The gradient that no time gets beyond. */
  readonly limit: number | null;
}

/** Of the tested stretch, the part at either end over which the law is carried on. */
const carriedOn = 0.3;

/** Points along each part of the curve. */
const fineness = 30;

export function contrastDrawing(given: ContrastCurve): CurveDrawing {
  const { tests, gradientAt, from, to, wanted, limit } = given;
  const further = Math.max((to - from) * carriedOn, 30);
  const first = Math.max(0, Math.min(from - further, wanted?.seconds ?? from));
  const last = Math.max(to + further, wanted?.seconds ?? to);
  const along = (start: number, end: number) =>
    Array.from({ length: fineness + 1 }, (_, i) => start + ((end - start) * i) / fineness).map(
      (seconds) => ({ x: seconds, y: gradientAt?.(seconds) ?? 0 }),
    );
  const lines = gradientAt
    ? ([
        { stroke: "solid", points: along(from, to) },
        { stroke: "dashed", points: along(first, from) },
        { stroke: "dashed", points: along(to, last) },
      ] as const)
    : [];
  const gradients = [
    ...tests.map(({ gradient }) => gradient),
    ...(wanted ? [wanted.gradient] : []),
    ...lines.flatMap(({ points }) => points.map(({ y }) => y)),
  ];
  const heights = gradients.length > 0 ? gradients : [0, 1];
  const highest = Math.max(...heights);
  // A limit that is far above all tests would flatten them; it is told in words then.
  const near = limit !== null && limit - highest <= (highest - Math.min(...heights)) / 2;
  const up = numberAxis(
    lateWords.value.contrastCurve.up,
    near ? [...heights, limit] : heights,
    0.1,
  );
  return {
    title: lateWords.value.contrastCurve.title,
    says: said(given),
    across: clockAxis(
      lateWords.value.contrastCurve.across,
      [...tests.map(({ seconds }) => seconds), first, last],
      "across",
    ),
    up,
    lines,
    marks: [
      ...tests.map(({ seconds, gradient }) => ({ x: seconds, y: gradient, sign: "row" }) as const),
      ...(wanted
        ? [
            {
              x: wanted.seconds,
              y: wanted.gradient,
              sign: "today",
              label: written(wanted),
            } as const,
          ]
        : []),
    ],
    levels: near
      ? [{ along: "up", at: limit, label: lateWords.value.contrastCurve.limit(fixed(limit, 2)) }]
      : [],
    bands: [],
  };
}

function said({ tests, from, to, wanted, limit }: ContrastCurve): string {
  const inOrder = [...tests].sort((a, b) => a.seconds - b.seconds);
  const [first, last] = [inOrder[0], inOrder.at(-1)];
  const count = lateWords.value.contrastCurve.tests(tests.length);
  const parts = [
    !first || !last
      ? lateWords.value.contrastCurve.none
      : first === last
        ? lateWords.value.contrastCurve.alone(count, written(first))
        : lateWords.value.contrastCurve.from(count, written(first), written(last)),
  ];
  if (wanted) parts.push(lateWords.value.contrastCurve.wanted(written(wanted)));
  if (wanted && (wanted.seconds < from - 0.5 || wanted.seconds > to + 0.5))
    parts.push(lateWords.value.contrastCurve.beyond);
  if (limit !== null) parts.push(lateWords.value.contrastCurve.most(fixed(limit, 2)));
  return parts.join(" ");
}

/** `"0.62 at 8:30"`. */
function written({ seconds, gradient }: ContrastTest): string {
  return lateWords.value.contrastCurve.at(fixed(gradient, 2), writeClockTime(seconds));
}
