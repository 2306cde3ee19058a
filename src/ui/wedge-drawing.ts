// Step wedges as a densitometer read them in, their characteristic curves on one pair of axes out.
// Alone, because several films share one drawing and are told apart by their strokes.
import { contrastSpan } from "../trade/sensitometry.ts";
import { numberAxis } from "./curve-axes.ts";
import type { CurveDrawing, Stroke } from "./curve-model.ts";
import { fixed, lateWords, writing } from "./language.ts";

export interface WedgeCurve {
  /** Which film: its development time, as written. */
  readonly label: string;
  /** log10 of exposure from one step to the next. */
  readonly stepLog: number;
  /** log10 of the first step's exposure, lux seconds, or null. */
  readonly firstLog: number | null;
  readonly baseFog: number;
  readonly densities: readonly number[];
  /** log10 of exposure, from the same origin as `firstLog`, or from the first step where that is null. */
  readonly speedPoint: number | null;
}

const strokes: readonly Stroke[] = ["solid", "dashed", "dotted"];

/** Of the exposures shown, the part left free beyond them. */
const forNames = 0.15;

/** Above base and fog, ISO 6. */
const speedDensity = 0.1;

export function wedgeDrawing({ curves }: { readonly curves: readonly WedgeCurve[] }): CurveDrawing {
  // One film of unknown exposure among others leaves them nothing in common but their first step.
  const known = curves.every(({ firstLog }) => firstLog !== null);
  const origin = ({ firstLog }: WedgeCurve) => (known ? 0 : (firstLog ?? 0));
  const lines = curves.map((curve, index) => ({
    stroke: strokes[index % strokes.length] ?? "solid",
    label: curve.label,
    points: curve.densities.map((density, step) => ({
      x: (curve.firstLog ?? 0) - origin(curve) + step * curve.stepLog,
      y: density,
    })),
  }));
  const speeds = curves.map((curve) =>
    curve.speedPoint === null
      ? null
      : { x: curve.speedPoint - origin(curve), y: curve.baseFog + speedDensity },
  );
  const marks = speeds.flatMap((point) => (point ? [{ ...point, sign: "row" } as const] : []));
  const speed =
    marks.length > 1 ? lateWords.value.wedgeCurve.speeds : lateWords.value.wedgeCurve.speed;
  const first = speeds[0];
  const all = [...lines.flatMap(({ points }) => points), ...marks];
  const exposures = [...all.map(({ x }) => x), ...(first ? [first.x + contrastSpan] : [])];
  // The films' names stand at the ends of their lines.
  const names = (Math.max(...exposures) - Math.min(...exposures)) * forNames;
  const or = (values: readonly number[]) => (values.length > 0 ? values : [0, 1]);
  return {
    title: lateWords.value.wedgeCurve.title,
    says: said(curves, speeds),
    across: numberAxis(
      known ? lateWords.value.wedgeCurve.across : lateWords.value.wedgeCurve.fromFirst,
      or(exposures.flatMap((x) => [x, x + names])),
      0.3,
    ),
    up: numberAxis(lateWords.value.wedgeCurve.up, or([0, ...all.map(({ y }) => y)]), 0.5),
    lines,
    marks: marks.map((mark, index) => (index === 0 ? { ...mark, label: speed } : mark)),
    levels: [],
    bands: first
      ? [
          {
            along: "across",
            from: first.x,
            to: first.x + contrastSpan,
            label: lateWords.value.wedgeCurve.span(fixed(contrastSpan, 2)),
          },
        ]
      : [],
  };
}

function said(
  curves: readonly WedgeCurve[],
  speeds: readonly ({ readonly x: number } | null)[],
): string {
  const each = curves.flatMap(({ label, densities }, index) => {
    const speed = speeds[index];
    const write = (density: number) => fixed(density, 2);
    return [
      lateWords.value.wedgeCurve.rises(
        label,
        write(Math.min(...densities)),
        write(Math.max(...densities)),
      ),
      ...(speed
        ? [lateWords.value.wedgeCurve.speedPoint(label, writing.value.number(speed.x))]
        : []),
    ];
  });
  return [lateWords.value.wedgeCurve.films(curves.length), ...each].join(" ");
}
