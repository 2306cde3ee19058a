// Contrast worked out in, its lines and warnings out: each wedge, the law, the times.
// Apart from the sum itself, because the lines are for a teacher to read and the sum is for the drawing.
import { logSpeed } from "../trade/sensitometry.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { writeNumber } from "../units/written-number.ts";
import type { ContrastPlan, ForGradient, TestReading } from "./contrast.ts";
import * as messages from "./contrast-messages.ts";
import type { Warning, WorkingLine } from "./line.ts";

export function contrastLines(plan: ContrastPlan): readonly WorkingLine[] {
  const wedges = plan.tests.flatMap((test, index) => wedgeLine(plan, test, index) ?? []);
  return [...wedges, ...lawLines(plan)];
}

function wedgeLine(
  { wish }: ContrastPlan,
  { film, wedge }: TestReading,
  index: number,
): WorkingLine | null {
  if (wedge?.kind !== "read") return null;
  const { speedPoint, rise, gradient, meetsIso, speed } = wedge;
  const from = wish.firstLog === undefined ? " from the first step" : "";
  const starts = `0.1 above base and fog (${writeNumber(film.baseFog ?? 0)}) comes at log H ${writeNumber(speedPoint)}${from}`;
  const stated =
    speed === null
      ? ""
      : meetsIso
        ? `; speed 0.8 / 10^${writeNumber(speedPoint)} = ${writeNumber(speed, 0)}, which is ${logSpeed(speed)}°`
        : "; not the contrast at which ISO 6 states a speed, 0.80 ± 0.05";
  return {
    label: `Test ${index + 1}, ${film.time}`,
    expression: `${starts}; 1.3 further density is up by ${writeNumber(rise)}${stated}: ${writeNumber(rise)} / 1.3`,
    result: `gradient ${writeNumber(gradient)}`,
  };
}

function lawLines(plan: ContrastPlan): readonly WorkingLine[] {
  const { fit, wanted, stops } = plan;
  if (fit.kind === "unfit") return [];
  const [limit, k] = [writeNumber(fit.limit, 4), writeNumber(fit.perMinute, 5)];
  const through = fit.tests.map(
    ({ seconds, gradient }) => `${writeNumber(gradient)} at ${writeClockTime(seconds)}`,
  );
  return [
    {
      label: "Growth",
      expression: `${limit} × (1 − e^(−${k} × minutes)), drawn through ${through.join(", ")}; off by ${writeNumber(fit.misfit, 3)} in the mean`,
      result: `from ${writeClockTime(fit.from)} to ${writeClockTime(fit.to)}`,
    },
    ...timeLine("Contrast", plan, wanted),
    ...stops.flatMap((one) => {
      const label = one.stops < 0 ? "One stop less" : "One stop more";
      return timeLine(label, plan, one);
    }),
  ];
}

function timeLine(label: string, plan: ContrastPlan, { stops, gradient, time }: ForGradient) {
  const { fit, wanted } = plan;
  if (fit.kind === "unfit" || time?.kind !== "time") return [];
  const [limit, k, aim] = [
    writeNumber(fit.limit, 4),
    writeNumber(fit.perMinute, 5),
    writeNumber(gradient, 4),
  ];
  const range = stops < 0 ? "(1.3 + 0.301)" : "(1.3 − 0.301)";
  const shift = stops === 0 ? "" : `${writeNumber(wanted.gradient, 4)} × 1.3 / ${range} = ${aim}; `;
  const normal = wanted.time?.kind === "time" ? wanted.time.seconds : null;
  const change =
    stops === 0 || normal === null
      ? ""
      : `, ${writeNumber(Math.abs(time.seconds / normal - 1) * 100, 0)} % ${time.seconds < normal ? "less" : "more"}`;
  return [
    {
      label,
      expression: `${shift}gradient ${aim}: −ln(1 − ${aim} / ${limit}) / ${k} = ${writeNumber(time.seconds / 60)} min`,
      result: `${writeClockTime(time.seconds)}${change}`,
    },
  ];
}

export function contrastWarnings(plan: ContrastPlan): readonly Warning[] {
  const { fit, tests, wanted, stops } = plan;
  const wedges = tests.flatMap(({ film, wedge }, index) =>
    wedge?.kind === "unread"
      ? [messages.wedgeUnread(`Test ${index + 1}, ${film.time}`, wedge.why)]
      : [],
  );
  if (fit.kind === "unfit") return [...wedges, messages.contrastUnfit(fit.why)];
  const range = [writeClockTime(fit.from), writeClockTime(fit.to)] as const;
  const outside = [wanted, ...stops].flatMap(({ gradient, time }) => {
    if (time?.kind === "beyond-limit") {
      return [messages.beyondLimit(writeNumber(gradient), writeNumber(time.limit))];
    }
    return time?.within === false
      ? [messages.outsideTests(writeNumber(gradient), writeClockTime(time.seconds), range)]
      : [];
  });
  return [...wedges, ...outside];
}
