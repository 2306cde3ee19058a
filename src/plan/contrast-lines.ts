// Contrast worked out in, its lines and warnings out: each wedge, the law, the times.
// Apart from the sum itself, because the lines are for a teacher to read and the sum is for the drawing.
import { contrastSpan, logSpeed } from "../trade/sensitometry.ts";
import { writeClockTime } from "../units/clock-time.ts";
import type { ContrastPlan, ForGradient, TestReading } from "./contrast.ts";
import * as messages from "./contrast-messages.ts";
import type { Warning, WorkingLine } from "./line.ts";
import type { AsideWords } from "./words/words.ts";

export function contrastLines(words: AsideWords, plan: ContrastPlan): readonly WorkingLine[] {
  const wedges = plan.tests.flatMap((test, index) => wedgeLine(words, plan, test, index) ?? []);
  return [...wedges, ...lawLines(words, plan)];
}

function wedgeLine(
  words: AsideWords,
  { wish }: ContrastPlan,
  { film, wedge }: TestReading,
  index: number,
): WorkingLine | null {
  if (wedge?.kind !== "read") return null;
  const { contrast: says, writes } = words;
  const { speedPoint, gradient, meetsIso, speed } = wedge;
  const [log, rise] = [writes.number(speedPoint), writes.number(wedge.rise)];
  const told = {
    fog: writes.number(film.baseFog ?? 0),
    log,
    rise,
    sum: `${rise} / ${writes.number(contrastSpan)}`,
    fromFirst: wish.firstLog === undefined,
  };
  return {
    label: testName(words, index, film.time),
    expression:
      speed === null
        ? says.wedge(told)
        : meetsIso
          ? says.wedgeWithSpeed({
              ...told,
              speed: `${writes.typed(0.8)} / 10^${log} = ${writes.number(speed, 0)}`,
              degrees: `${logSpeed(speed)}°`,
            })
          : says.wedgeNotIso(told),
    result: says.gradient({ gradient: writes.number(gradient) }),
  };
}

function testName({ contrast }: AsideWords, index: number, time: string): string {
  return contrast.test({ number: String(index + 1), time });
}

function lawLines(words: AsideWords, plan: ContrastPlan): readonly WorkingLine[] {
  const { contrast: says, writes } = words;
  const { fit, wanted, stops } = plan;
  if (fit.kind === "unfit") return [];
  const [limit, k] = [writes.number(fit.limit, 4), writes.number(fit.perMinute, 5)];
  const points = fit.tests.map(({ seconds, gradient }) =>
    says.point({ gradient: writes.number(gradient), time: writeClockTime(seconds) }),
  );
  return [
    {
      label: says.growth,
      expression: says.growthSum({
        sum: `${limit} × (1 − e^(−${k} × ${says.minutes}))`,
        points: writes.list(points),
        misfit: writes.number(fit.misfit, 3),
      }),
      result: says.range({ from: writeClockTime(fit.from), to: writeClockTime(fit.to) }),
    },
    ...timeLine(words, says.contrast, plan, wanted),
    ...stops.flatMap((one) =>
      timeLine(words, one.stops < 0 ? says.stopLess : says.stopMore, plan, one),
    ),
  ];
}

function timeLine(
  { contrast: says, writes }: AsideWords,
  label: string,
  plan: ContrastPlan,
  { stops, gradient, time }: ForGradient,
): readonly WorkingLine[] {
  const { fit, wanted } = plan;
  if (fit.kind === "unfit" || time?.kind !== "time") return [];
  const [limit, k, aim] = [
    writes.number(fit.limit, 4),
    writes.number(fit.perMinute, 5),
    writes.number(gradient, 4),
  ];
  const [span, stop] = [writes.number(contrastSpan), writes.number(Math.log10(2), 3)];
  const range = stops < 0 ? `(${span} + ${stop})` : `(${span} − ${stop})`;
  const shift =
    stops === 0 ? "" : `${writes.number(wanted.gradient, 4)} × ${span} / ${range} = ${aim}; `;
  const normal = wanted.time?.kind === "time" ? wanted.time.seconds : null;
  const sum = `−ln(1 − ${aim} / ${limit}) / ${k} = ${writes.number(time.seconds / 60)} min`;
  const comes = writeClockTime(time.seconds);
  return [
    {
      label,
      expression: `${shift}${says.timeSum({ gradient: aim, sum })}`,
      result:
        stops === 0 || normal === null
          ? comes
          : `${comes}, ${says.change({
              percent: writes.number(Math.abs(time.seconds / normal - 1) * 100, 0),
              less: time.seconds < normal,
            })}`,
    },
  ];
}

export function contrastWarnings(words: AsideWords, plan: ContrastPlan): readonly Warning[] {
  const { fit, tests, wanted, stops } = plan;
  const { number } = words.writes;
  const wedges = tests.flatMap(({ film, wedge }, index) =>
    wedge?.kind === "unread"
      ? [messages.wedgeUnread(words, testName(words, index, film.time), wedge.why)]
      : [],
  );
  if (fit.kind === "unfit") return [...wedges, messages.contrastUnfit(words, fit.why)];
  const range = [writeClockTime(fit.from), writeClockTime(fit.to)] as const;
  const outside = [wanted, ...stops].flatMap(({ gradient, time }) => {
    if (time?.kind === "beyond-limit") {
      return [messages.beyondLimit(words, number(gradient), number(time.limit))];
    }
    return time?.within === false
      ? [messages.outsideTests(words, number(gradient), writeClockTime(time.seconds), range)]
      : [];
  });
  return [...wedges, ...outside];
}
