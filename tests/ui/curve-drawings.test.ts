import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fitContrast, gradientAt, timeForGradient } from "../../src/trade/contrast.ts";
import { temperatureAfter } from "../../src/trade/drift.ts";
import { curveThrough, scaled, timeAt } from "../../src/trade/time-temperature.ts";
import { contrastDrawing } from "../../src/ui/contrast-drawing.ts";
import type { Axis, CurveDrawing, Point } from "../../src/ui/curve-model.ts";
import { type LeafletCurve, leafletDrawing } from "../../src/ui/leaflet-drawing.ts";
import { type TemperingCurve, temperingDrawing } from "../../src/ui/tempering-drawing.ts";
import { type WedgeCurve, wedgeDrawing } from "../../src/ui/wedge-drawing.ts";
import { celsiusFromFahrenheit } from "../../src/units/temperature.ts";
import { leafletOf } from "./curve-cases.ts";
import "./late-words.ts";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Two to five rows from 10 to 30 °C, the warmer the faster, with a day's point within or beyond them. */
const leaflets: fc.Arbitrary<LeafletCurve> = fc
  .record({
    first: number(10, 18),
    longest: number(60, 7200),
    more: fc.array(fc.record({ warmer: number(1, 4), faster: number(0.5, 0.98) }), {
      maxLength: 4,
    }),
    factor: fc.constantFrom(1, 0.7, 1.25, 2.1),
    today: number(8, 32),
    sought: fc.option(number(8, 32)),
    odd: fc.boolean(),
    fahrenheit: fc.boolean(),
  })
  .map(({ first, longest, more, factor, today, sought, odd, fahrenheit }) => {
    const points = [{ celsius: first, seconds: longest }];
    for (const { warmer, faster } of more) {
      const last = points.at(-1) ?? { celsius: first, seconds: longest };
      points.push({ celsius: last.celsius + warmer, seconds: last.seconds * faster });
    }
    const curve = curveThrough(points);
    const own = scaled(curve, factor);
    const at = (celsius: number) => ({ celsius, seconds: timeAt(own, celsius) });
    return {
      curve,
      rows: points.map((point, index) => ({ ...point, odd: odd && index === 0 })),
      factor,
      today: at(today),
      sought: sought === null ? null : at(sought),
      like: fahrenheit ? { f: 68 } : { c: 20 },
    };
  });

const temperings: fc.Arbitrary<TemperingCurve> = fc
  .record({
    start: number(5, 40),
    room: number(5, 40),
    halfway: number(0.5, 200),
    times: fc.uniqueArray(fc.integer({ min: 0, max: 4000 }), { maxLength: 6 }),
    target: number(5, 40),
    at: number(0, 20_000),
    before: number(0, 4000),
    after: fc.oneof(number(0, 40_000), fc.constant(Number.POSITIVE_INFINITY)),
    kind: fc.constantFrom("reached", "never", "unfit"),
    fahrenheit: fc.boolean(),
  })
  .map(({ start, room, halfway, times, target, at, before, after, kind, fahrenheit }) => {
    const drift = { start, room, halfway };
    return {
      readings: times
        .sort((a, b) => a - b)
        .map((seconds) => ({ seconds, celsius: temperatureAfter(drift, seconds) })),
      drift: kind === "unfit" ? null : drift,
      target,
      reach: kind === "reached" ? { at, from: at - before, to: at + after } : null,
      settles: kind === "never" ? { from: 0, to: 100 } : null,
      like: fahrenheit ? { f: 68 } : { c: 20 },
    };
  });

const contrasts = fc
  .record({
    limit: number(0.3, 2),
    perMinute: number(0.02, 1),
    times: fc.array(fc.integer({ min: 60, max: 3000 }), { maxLength: 5 }),
    wanted: fc.option(number(0.1, 0.9)),
    fitted: fc.boolean(),
  })
  .map(({ limit, perMinute, times, wanted, fitted }) => {
    const law = (seconds: number) => limit * (1 - Math.exp((-perMinute * seconds) / 60));
    const seconds = wanted === null ? 0 : (-60 * Math.log(1 - wanted)) / perMinute;
    return {
      tests: times.map((time) => ({ seconds: time, gradient: law(time) })),
      gradientAt: fitted ? law : null,
      from: times.length > 0 ? Math.min(...times) : 300,
      to: times.length > 0 ? Math.max(...times) : 300,
      wanted: wanted === null ? null : { seconds, gradient: law(seconds) },
      limit: fitted ? limit : null,
    };
  });

const wedges: fc.Arbitrary<readonly WedgeCurve[]> = fc.array(
  fc
    .record({
      stepLog: number(0.1, 0.3),
      firstLog: fc.option(number(-4, 0)),
      densities: fc.array(number(0.05, 3), { minLength: 3, maxLength: 30 }),
      speed: fc.option(number(0, 2)),
    })
    .map(({ stepLog, firstLog, densities, speed }) => ({
      label: "9:00",
      stepLog,
      firstLog,
      baseFog: 0.2,
      densities: densities.toSorted((a, b) => a - b),
      speedPoint: speed === null ? null : (firstLog ?? 0) + speed,
    })),
  { maxLength: 4 },
);

const drawings: fc.Arbitrary<CurveDrawing> = fc.oneof(
  leaflets.map(leafletDrawing),
  temperings.map(temperingDrawing),
  contrasts.map(contrastDrawing),
  wedges.map((curves) => wedgeDrawing({ curves })),
);

/** To what rounding leaves. */
const within = ({ from, to }: Axis, value: number) =>
  value >= from - 1e-9 * (to - from) && value <= to + 1e-9 * (to - from);

const step = ({ ticks }: Axis) => (ticks[1] ?? Number.NaN) - (ticks[0] ?? Number.NaN);

/** The greatest share of a second by which the line misses a point, read off between its own points. */
function missOf(points: readonly Point[], { x, y }: Point): number {
  const next = points.findIndex((point) => point.x >= x);
  const [a, b] = [points[Math.max(next - 1, 0)], points[next]];
  if (!a || !b) return Number.POSITIVE_INFINITY;
  const part = b.x === a.x ? 0 : (x - a.x) / (b.x - a.x);
  return Math.abs((a.y + (b.y - a.y) * part) / y - 1);
}

describe("any drawing", () => {
  test("keeps every line, sign, level and band inside its axes", () => {
    fc.assert(
      fc.property(drawings, ({ across, up, lines, marks, levels, bands }) => {
        const axis = (along: "across" | "up") => (along === "across" ? across : up);
        for (const { x, y } of [...lines.flatMap(({ points }) => points), ...marks]) {
          expect([x, within(across, x), y, within(up, y)]).toEqual([x, true, y, true]);
        }
        for (const { along, at } of levels) expect(within(axis(along), at)).toBe(true);
        for (const { along, from, to } of bands) {
          expect(within(axis(along), from) && within(axis(along), to) && from <= to).toBe(true);
        }
      }),
    );
  });

  test("has two ticks or more on each axis, evenly apart, inside it, and no two written alike", () => {
    fc.assert(
      fc.property(drawings, ({ across, up }) => {
        for (const axis of [across, up]) {
          expect(axis.ticks.length).toBeGreaterThanOrEqual(2);
          expect(axis.ticks.length).toBeLessThanOrEqual(13);
          for (const tick of axis.ticks) expect(within(axis, tick)).toBe(true);
          axis.ticks.forEach((tick, index) => {
            expect(tick).toBeCloseTo((axis.ticks[0] ?? 0) + index * step(axis), 6);
          });
          expect(new Set(axis.ticks.map(axis.write)).size).toBe(axis.ticks.length);
        }
      }),
    );
  });

  test("says what it shows in whole sentences, with no number that is none", () => {
    fc.assert(
      fc.property(drawings, ({ title, says, marks, levels, bands, lines }) => {
        const words = [title, ...[...marks, ...levels, ...bands, ...lines].map((it) => it.label)];
        expect(`${words.join(" ")} ${says}`).not.toMatch(/NaN|Infinity|undefined|null|false/);
        expect(says).toMatch(/^[A-Z0-9].*\.$/);
      }),
    );
  });
});

describe("a leaflet", () => {
  test("has today's point on the line of this film", () => {
    fc.assert(
      fc.property(leaflets, (given) => {
        const { lines, marks } = leafletDrawing(given);
        const today = marks.find(({ sign }) => sign === "today");
        if (!today) throw new Error("today is not shown");
        const stroke = given.factor === 1 ? ["solid", "dashed"] : ["dotted"];
        const misses = lines
          .filter((line) => stroke.includes(line.stroke))
          .map(({ points }) => missOf(points, today));
        expect(Math.min(...misses)).toBeLessThan(1e-6);
      }),
    );
  });

  test("is the same picture in °F and in °C, but for its ticks and labels", () => {
    const bare = (drawing: CurveDrawing) => ({
      ends: [drawing.across.from, drawing.across.to, drawing.up],
      lines: drawing.lines.map(({ points, stroke }) => ({ points, stroke })),
      marks: drawing.marks.map(({ x, y, sign }) => ({ x, y, sign })),
      levels: drawing.levels,
    });
    const plain = (drawing: CurveDrawing) =>
      JSON.stringify(bare(drawing), (_, value) => (typeof value === "function" ? null : value));
    fc.assert(
      fc.property(leaflets, (given) => {
        const [f, c] = [{ f: 68 }, { c: 20 }].map((like) => leafletDrawing({ ...given, like }));
        if (!f || !c) throw new Error("two drawings are compared");
        expect(plain(f)).toBe(plain(c));
        for (const { ticks, write } of [f.across, c.across]) {
          for (const tick of ticks) expect(write(tick)).toMatch(/^−?\d+$/);
        }
        expect(f.across.label).toBe("temperature, °F");
        expect(c.across.label).toBe("temperature, °C");
      }),
    );
  });

  test("is solid within the rows, and dashed for no more than 2 °C beyond them", () => {
    const { lines } = leafletDrawing(leafletOf());
    const [cold, warm] = [65, 75].map(celsiusFromFahrenheit);
    const ends = lines.map(({ stroke, points }) => [stroke, points[0]?.x, points.at(-1)?.x]);
    expect(ends).toEqual([
      ["solid", cold, warm],
      ["dashed", expect.closeTo((cold ?? 0) - 10 / 9, 9), cold],
      ["dashed", warm, expect.closeTo((warm ?? 0) + 10 / 9, 9)],
    ]);
  });

  test("is carried on as far as today's point, however far", () => {
    const curve = leafletOf().curve;
    const celsius = celsiusFromFahrenheit(82);
    const today = { celsius, seconds: timeAt(curve, celsius) };
    const { lines, says } = leafletDrawing({ ...leafletOf(), today });
    expect(lines.at(-1)?.points.at(-1)).toEqual({ x: celsius, y: today.seconds });
    expect(says).toContain("That is beyond the leaflet's rows.");
  });

  test("shows today as the clock and the thermometer are read", () => {
    const { marks, says, across, up, levels } = leafletDrawing(leafletOf());
    expect(marks.at(-1)).toMatchObject({ sign: "today", label: "9:29 at 69 °F" });
    expect(says).toBe(
      "4 rows of the leaflet, from 11:45 at 65 °F to 7:00 at 75 °F. Today: 9:29 at 69 °F.",
    );
    expect(across.ticks.map(across.write)).toEqual(["64", "66", "68", "70", "72", "74", "76"]);
    expect(up.ticks.map(up.write).slice(0, 3)).toEqual(["6:00", "7:00", "8:00"]);
    expect(levels).toEqual([]);
  });

  test("rules the least time where it is in view", () => {
    const curve = scaled(leafletOf().curve, 0.7);
    const celsius = celsiusFromFahrenheit(69);
    const rows = curve.points.map((point) => ({ ...point, odd: false }));
    const today = { celsius, seconds: timeAt(curve, celsius) };
    const { levels } = leafletDrawing({ ...leafletOf(), curve, rows, today });
    expect(levels).toEqual([{ along: "up", at: 300, label: "5:00, the least" }]);
  });

  test("marks a row that is out of line by another sign, and in words", () => {
    const rows = leafletOf().rows.map((row, index) => ({ ...row, odd: index === 2 }));
    const { marks, says } = leafletDrawing({ ...leafletOf(), rows });
    expect(marks.map(({ sign }) => sign)).toEqual(["row", "row", "odd", "row", "today"]);
    expect(says).toContain("1 row is out of line with the others.");
  });
});

describe("tempering", () => {
  const drift = { start: 25, room: 16, halfway: 9 };
  const given: TemperingCurve = {
    readings: [30, 150, 270].map((seconds) => ({
      seconds,
      celsius: temperatureAfter(drift, seconds),
    })),
    drift,
    target: 20,
    reach: { at: 630, from: 540, to: 750 },
    settles: null,
    like: { c: 20 },
  };

  test("counts its minutes from the first reading", () => {
    const { marks, bands, levels } = temperingDrawing(given);
    expect(marks.map(({ x }) => x)).toEqual([0, 120, 240, 600]);
    expect(marks.at(-1)).toMatchObject({ y: 20, sign: "today", label: "10:00" });
    expect(bands).toEqual([{ along: "across", from: 510, to: 720, label: "8:30 to 12:00" }]);
    expect(levels).toEqual([{ along: "up", at: 20, label: "20 °C wanted" }]);
  });

  test("hatches to its edge where nobody can say how long it may take", () => {
    const reach = { at: 630, from: 540, to: Number.POSITIVE_INFINITY };
    const { across, bands } = temperingDrawing({ ...given, reach });
    expect(bands).toEqual([{ along: "across", from: 510, to: across.to, label: "from 8:30" }]);
  });

  test("that never gets there shows where it settles", () => {
    const { bands, says } = temperingDrawing({
      ...given,
      target: 15,
      reach: null,
      settles: { from: 15.6, to: 16.4 },
    });
    expect(bands).toEqual([{ along: "up", from: 15.6, to: 16.4, label: "settles here" }]);
    expect(says).toContain("It settles between 15.6 °C and 16.4 °C.");
  });
});

describe("contrast", () => {
  const fit = fitContrast([
    { seconds: 300, gradient: 0.45 },
    { seconds: 480, gradient: 0.58 },
    { seconds: 720, gradient: 0.7 },
  ]);
  if (fit.kind !== "fitted") throw new Error("these tests are fitted");
  const law = (seconds: number) => gradientAt(fit, seconds);
  const wantedAt = (gradient: number) => {
    const time = timeForGradient(fit, gradient);
    if (time.kind !== "time") throw new Error("the gradient is reached");
    return { seconds: time.seconds, gradient };
  };
  const given = { ...fit, gradientAt: law, wanted: wantedAt(0.62) };

  test("is solid within the tested times and dashed beyond", () => {
    const ends = contrastDrawing(given).lines.map(({ stroke, points }) => [
      stroke,
      points[0]?.x,
      points.at(-1)?.x,
    ]);
    expect(ends).toEqual([
      ["solid", 300, 720],
      ["dashed", 174, 300],
      ["dashed", 720, 846],
    ]);
  });

  test("says when the wanted gradient lies beyond the tests", () => {
    expect(contrastDrawing(given).says).not.toContain("beyond the tested times");
    const { says, lines } = contrastDrawing({ ...given, wanted: wantedAt(0.78) });
    expect(says).toContain("That is beyond the tested times.");
    expect(lines.at(-1)?.points.at(-1)?.x).toBe(wantedAt(0.78).seconds);
  });

  test("rules the limit where it is near, and leaves it to words where it is far", () => {
    expect(contrastDrawing(given).levels).toHaveLength(1);
    const far = contrastDrawing({ ...given, limit: 3 });
    expect(far.levels).toEqual([]);
    expect(far.says).toContain("No time gets beyond 3.00.");
  });
});

describe("step wedges", () => {
  const wedge: WedgeCurve = {
    label: "8:00",
    stepLog: 0.3,
    firstLog: -3,
    baseFog: 0.25,
    densities: [0.25, 0.3, 0.5, 0.8, 1.1, 1.4, 1.7],
    speedPoint: -2.6,
  };

  test("hatch the 1.30 from the first film's speed point, which stands 0.10 above its base and fog", () => {
    const { marks, bands } = wedgeDrawing({ curves: [wedge, { ...wedge, label: "12:00" }] });
    expect(bands).toEqual([
      { along: "across", from: -2.6, to: expect.closeTo(-1.3, 12), label: "over 1.30" },
    ]);
    expect(marks[0]).toMatchObject({ x: -2.6, y: 0.35 });
  });

  test("are told apart by stroke and by label", () => {
    const curves = ["5:00", "8:00", "12:00"].map((label) => ({ ...wedge, label }));
    const told = wedgeDrawing({ curves }).lines.map(({ stroke, label }) => [stroke, label]);
    expect(told).toEqual([
      ["solid", "5:00"],
      ["dashed", "8:00"],
      ["dotted", "12:00"],
    ]);
  });

  test("count from the first step, all of them, where the exposure of one is not known", () => {
    const unknown = { ...wedge, firstLog: null, speedPoint: 0.4 };
    const { across, marks, lines } = wedgeDrawing({ curves: [wedge, unknown] });
    expect(across.label).toBe("log exposure from the first step");
    expect(lines.map(({ points }) => points[0]?.x)).toEqual([0, 0]);
    expect(marks.map(({ x }) => x)).toEqual([expect.closeTo(0.4, 12), 0.4]);
  });
});
