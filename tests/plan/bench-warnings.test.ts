// When a warning about what was measured at the bench is given, and when it is not.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { changed, gullrock } from "./worksheets.ts";

const ids = (worksheet: Worksheet) => planOf(worksheet).warnings.map(({ id }) => id);
const lineOf = (worksheet: Worksheet, label: string) =>
  planOf(worksheet).working.find((line) => line.label === label);

describe("tempering", () => {
  const reading = (at: string, f: number) => ({ at, temperature: { f } });
  const tempering = (
    target: number,
    bath: number | null,
    ...readings: ReturnType<typeof reading>[]
  ) =>
    ({
      ...gullrock,
      tempering: {
        target: { f: target },
        readings,
        ...(bath === null ? {} : { bath: { f: bath }, bathVolume: { ml: 3000 } }),
      },
    }) satisfies Worksheet;
  const falling = [reading("0:00", 75), reading("3:00", 72.5), reading("6:00", 71)];

  test.each([
    ["on its way: wait", tempering(68, 66, ...falling), "wait"],
    ["there: take it out", tempering(71, 66, ...falling), "at-target"],
    ["in a bath that is too warm: never", tempering(65, 69, ...falling), "never-reaches"],
    ["past its target: take it out", tempering(73.5, 66, ...falling), "moves-away"],
    ["read once", tempering(68, 66, reading("0:00", 75)), "tempering-too-few"],
    [
      "read twice without the bath known",
      tempering(68, null, ...falling.slice(1)),
      "tempering-too-few",
    ],
    [
      "read twice in half a minute",
      tempering(68, 66, reading("0:00", 75), reading("0:30", 74)),
      "tempering-too-close",
    ],
    [
      "not moving",
      tempering(68, null, reading("0:00", 75), reading("3:00", 75), reading("9:00", 75)),
      "tempering-still",
    ],
    [
      "falling, then rising",
      tempering(68, 66, reading("0:00", 75), reading("3:00", 70), reading("6:00", 74)),
      "tempering-contradictory",
    ],
    ["whose target lies at the bath's own", tempering(66, 66, ...falling), "may-not-reach"],
  ] as const)("a developer %s", (_, worksheet, id) => {
    expect(ids(worksheet)).toEqual([id]);
  });

  test("names the ice where the bath is too warm, and always the way that works: develop as it is", () => {
    const plan = planOf(tempering(65, 69, ...falling));
    expect(plan.working.map(({ label }) => label)).toEqual(
      expect.arrayContaining(["Bath for 10 minutes", "Ice for it", "Or as it is"]),
    );
    expect(planOf(gullrock).working.map(({ label }) => label)).not.toContain("Or as it is");
  });

  test("calls the time as it is a guess where the leaflet does not reach", () => {
    const within = lineOf(
      tempering(68, 66, reading("0:00", 72), reading("4:00", 69.5)),
      "Or as it is",
    );
    expect(within?.result).toBe("9:14");
    const beyond = lineOf(tempering(68, 66, ...falling), "Or as it is");
    expect(beyond?.result).toBe("8:32, a guess");
    expect(beyond?.expression).toContain("1 °F beyond the leaflet's rows");
  });

  test("never stops a run", () => {
    for (const worksheet of [
      tempering(65, 69, ...falling),
      tempering(68, 66, reading("0:00", 75)),
    ]) {
      expect(planOf(worksheet).warnings.map(({ severity }) => severity)).not.toContain("stop");
    }
  });
});

describe("mixing", () => {
  const mixing = (stock: number, cold: number, hot: number, dilution = "1+3") => ({
    ...changed(gullrock, { developer: { dilution } }),
    mixing: { target: { c: 20 }, stock: { c: stock }, cold: { c: cold }, hot: { c: hot } },
  });

  test.each([
    ["within reach", mixing(22, 14, 45), []],
    ["with warm taps", mixing(26, 22, 45), ["mix-out-of-reach"]],
    ["from taps that run alike", mixing(22, 18, 18), ["one-tap"]],
    ["of stock as it is", mixing(22, 14, 45, "stock"), ["nothing-to-mix"]],
    [
      "of so little stock that the marks miss it",
      mixing(22, 14, 45, "1+200"),
      ["marks-too-coarse"],
    ],
  ] as const)("%s", (_, worksheet, expected) => {
    const mine = planOf(worksheet)
      .warnings.filter(({ about }) => about === "mixing")
      .map(({ id }) => id);
    expect(mine).toEqual(expected);
  });
});

describe("the leaflet asked backwards", () => {
  test("names the temperature of a time between the rows, and warns of one beyond them", () => {
    const sought = (soughtTime: string) => changed(gullrock, { developer: { soughtTime } });
    expect(lineOf(sought("9:00"), "For 9:00")?.result).toBe("70 °F");
    expect(ids(sought("9:00"))).toEqual([]);
    expect(ids(sought("7:00"))).toEqual(["sought-beyond"]);
  });

  test("points out a row that the others contradict, as a caution", () => {
    const leaflet = [
      ...gullrock.developer.leaflet,
      { temperature: { f: 75 }, time: "7:00" },
      { temperature: { f: 65 }, time: "1:45" },
    ];
    const slip = planOf(changed(gullrock, { developer: { leaflet } })).warnings;
    expect(slip.map(({ id }) => id)).toEqual(["leaflet-backwards"]);
    const steep = [...leaflet.slice(0, 3), { temperature: { f: 65 }, time: "18:45" }];
    expect(ids(changed(gullrock, { developer: { leaflet: steep } }))).toEqual(["row-out-of-line"]);
  });
});

describe("fixer, wash and capacity", () => {
  const baths = (of: NonNullable<Worksheet["baths"]>): Worksheet => ({ ...gullrock, baths: of });
  const fixerSeconds = (worksheet: Worksheet) =>
    planOf(worksheet).baths.find(({ id }) => id === "fixer")?.seconds;

  test("the clearing time gives the fixer's time by the rule chosen, twice unless said", () => {
    expect(fixerSeconds(baths({ fixer: { clearing: { time: "1:15" } } }))).toBe(150);
    expect(fixerSeconds(baths({ fixer: { clearing: { time: "1:15", times: 3 } } }))).toBe(225);
    expect(fixerSeconds(baths({ fixer: { time: "5:00", clearing: { time: "1:15" } } }))).toBe(300);
  });

  test.each([
    ["fresh", { clearing: { time: "1:00", fresh: "0:45" } }, []],
    [
      "at twice the fresh time (NAVEDTRA 14209)",
      { clearing: { time: "1:30", fresh: "0:45" } },
      ["fixer-spent"],
    ],
    ["quicker than fresh", { clearing: { time: "0:40", fresh: "0:45" } }, ["cleared-quicker"]],
    ["given less than the rule", { time: "2:00", clearing: { time: "1:15" } }, ["fixer-short"]],
    ["with room for more", { filmsPerLitre: 20, kept: { ml: 1000 }, filmsBefore: 19 }, []],
    [
      "past its count",
      { filmsPerLitre: 20, kept: { ml: 1000 }, filmsBefore: 19.5 },
      ["past-capacity"],
    ],
  ] as const)("a fixer %s", (_, fixer, expected) => {
    expect(ids(baths({ fixer }))).toEqual(expected);
  });

  test("a fixer left out is not judged", () => {
    expect(
      ids(baths({ fixer: { skip: true, clearing: { time: "2:00", fresh: "0:45" } } })),
    ).toEqual([]);
  });

  test("a wash leaves too much until it has the changes that the plan itself asks for", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 80 }), fc.integer({ min: 1, max: 8 }), (ml, count) => {
        const fills = Array.from({ length: count }, () => 10);
        const worksheet = baths({ wash: { fills, carryOver: { ml } } });
        const needed = Number.parseInt(lineOf(worksheet, "Changes needed")?.result ?? "", 10);
        expect(ids(worksheet).includes("wash-short")).toBe(count < needed);
      }),
    );
  });

  test("running water leaves too much until it has run for the minutes asked", () => {
    const running = (time: string) =>
      baths({ wash: { time, carryOver: { ml: 20 }, flow: { ml: 1000 } } });
    const needed = lineOf(running("0:30"), "Minutes needed")?.result ?? "";
    expect(ids(running("0:30"))).toContain("wash-short");
    expect(ids(running(needed))).not.toContain("wash-short");
  });

  test("a developer past its count stops the run, and replenisher and more time are one too many", () => {
    const past = changed(gullrock, { developer: { filmsPerLitre: 3 } });
    expect(planOf(past).warnings).toMatchObject([{ id: "past-capacity", severity: "stop" }]);
    const twice = { replenishPerFilm: { ml: 20 }, filmsBefore: 2, perFilmBefore: 0.05 };
    expect(ids(changed(gullrock, { developer: twice }))).toEqual(["replenished-twice"]);
  });
});

describe("readings taken in the tank", () => {
  const read = (...readings: readonly (readonly [string, number])[]) =>
    changed(gullrock, {
      developer: { readings: readings.map(([at, f]) => ({ at, temperature: { f } })) },
    });

  test("move the end: colder takes longer, warmer is done sooner, as it was changes nothing", () => {
    const plain = planOf(gullrock).developmentSeconds;
    expect(planOf(read(["3:00", 69])).developmentSeconds).toBe(plain);
    expect(planOf(read(["3:00", 68])).developmentSeconds).toBeGreaterThan(plain);
    expect(planOf(read(["3:00", 70])).developmentSeconds).toBeLessThan(plain);
  });

  test("are warned of where one lies beyond the rows, or after the end", () => {
    expect(ids(read(["3:00", 60]))).toContain("reading-extrapolated");
    expect(ids(read(["12:00", 69]))).toEqual(["readings-past-end"]);
  });
});

describe("hands", () => {
  const measured = (pourIn: readonly number[], used = 10) =>
    changed(gullrock, { tank: { measured: { pourIn }, pourIn: used } });

  test("the middle of three is told with its spread; uneven times, or others than are used, are noted", () => {
    expect(lineOf(measured([10.4, 9.8, 10]), "Pouring in")?.result).toBe("10 s");
    expect(ids(measured([10.4, 9.8, 10]))).toEqual([]);
    expect(ids(measured([6, 10, 14]))).toEqual(["uneven-hands"]);
    expect(ids(measured([12, 12.2, 12.4]))).toEqual(["not-as-measured"]);
  });
});

describe("test films", () => {
  const tests = (...films: readonly (readonly [string, number])[]): Worksheet => ({
    ...gullrock,
    contrast: { tests: films.map(([time, gradient]) => ({ time, gradient })), wanted: 0.6 },
  });

  test.each([
    ["one alone", tests(["7:00", 0.5]), ["contrast-too-few"]],
    ["two at one time", tests(["7:00", 0.5], ["7:00", 0.52]), ["contrast-one-time"]],
    ["longer and flatter", tests(["5:00", 0.7], ["10:00", 0.5]), ["contrast-contradictory"]],
    ["in proportion to time", tests(["5:00", 0.3], ["10:00", 0.6]), ["contrast-straight"]],
    ["about what is wanted", tests(["4:00", 0.4], ["8:00", 0.64], ["16:00", 0.85]), []],
    [
      "that stop short of it",
      tests(["4:00", 0.35], ["6:00", 0.48]),
      ["contrast-outside-tests", "contrast-outside-tests", "contrast-outside-tests"],
    ],
    [
      "whose limit is too low",
      tests(["5:00", 0.5], ["10:00", 0.55]),
      ["contrast-beyond-limit", "contrast-outside-tests", "contrast-beyond-limit"],
    ],
  ] as const)("%s", (_, worksheet, expected) => {
    expect(ids(worksheet)).toEqual(expected);
  });

  test("the pair at t and 2t: 0.45 at 5 min and 0.70 at 10 min give 0.60 at 7:38 (derived)", () => {
    expect(lineOf(tests(["5:00", 0.45], ["10:00", 0.7]), "Contrast")?.result).toBe("7:38");
  });
});
