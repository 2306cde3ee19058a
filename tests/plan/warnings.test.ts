import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import type { Developer, Film, LeafletRow, Tank, Worksheet } from "../../src/plan/worksheet.ts";
import { anyWorksheet } from "./any-worksheet.ts";
import { changed, gullrock } from "./worksheets.ts";

/** Each warning as `id severity`. */
function warned(worksheet: Worksheet): readonly string[] {
  return planOf(worksheet).warnings.map(({ id, severity }) => `${id} ${severity}`);
}

const row = (c: number, time: string, exposureIndex?: number): LeafletRow =>
  exposureIndex === undefined
    ? { temperature: { c }, time }
    : { temperature: { c }, time, exposureIndex };

const withDeveloper = (developer: Partial<Developer>, tank: Partial<Tank> = {}) =>
  warned(changed(gullrock, { developer, tank }));

const film = (label: string, boxSpeed: number, exposureIndex?: number): Film => ({
  label,
  size: "135-36",
  count: 1,
  boxSpeed,
  ...(exposureIndex === undefined ? {} : { exposureIndex }),
});

test("an ordinary development has nothing to warn of", () => {
  expect(warned(gullrock)).toEqual([]);
});

describe("extrapolated", () => {
  const leaflet = [row(19, "11:00"), row(21, "9:00")];
  const at = (c: number) => withDeveloper({ leaflet, temperature: { c } });

  test("is not said at or between rows, is a caution up to 2 °C beyond them, and stops further out", () => {
    for (const c of [19, 20, 21]) expect(at(c)).toEqual([]);
    for (const c of [17, 18.9, 21.1, 23]) expect(at(c)).toEqual(["extrapolated caution"]);
    for (const c of [16.99, 23.01]) expect(at(c)).toEqual(["extrapolated stop"]);
  });

  test("goes for a row alone too", () => {
    const alone = (c: number) =>
      withDeveloper({ leaflet: [row(20, "10:00")], temperature: { c }, perDegree: 0.09 });
    expect(alone(20)).toEqual([]);
    expect(alone(22)).toEqual(["extrapolated caution"]);
    expect(alone(22.5)).toEqual(["extrapolated stop"]);
  });

  test("counts from the rows used alone, not from those of other ratings", () => {
    const mixed = [...leaflet, row(24, "9:00", 800)];
    const worksheet = changed(gullrock, { developer: { leaflet: mixed, temperature: { c: 24 } } });
    expect(warned(worksheet)).toEqual(["extrapolated stop"]);
  });

  test("is exactly 2 °C in °F as well: 3.6 °F beyond is a caution", () => {
    const rows = [
      { temperature: { f: 66 }, time: "11:00" },
      { temperature: { f: 70 }, time: "9:00" },
    ];
    expect(withDeveloper({ leaflet: rows, temperature: { f: 73.6 } })).toEqual([
      "extrapolated caution",
    ]);
  });
});

describe("drift-extrapolated", () => {
  const tank = { room: { c: 5 }, halfway: 12 };

  test("is a caution where the tank ends more than 2 °C beyond the rows, further than it began", () => {
    const leaflet = [row(18, "12:00"), row(22, "9:00")];
    expect(withDeveloper({ leaflet, temperature: { c: 20 } }, tank)).toEqual([
      "drift-extrapolated caution",
    ]);
    const mild = { room: { c: 16 }, halfway: 60 };
    expect(withDeveloper({ leaflet, temperature: { c: 20 } }, mild)).toEqual([]);
  });
});

describe("temperature-range", () => {
  const leaflet = [row(14, "20:00"), row(30, "6:00")];

  test("is a caution below 15.6 °C (Wellington, p. 130) and above 26.7 °C (US Army SS0509)", () => {
    const at = (c: number) => withDeveloper({ leaflet, temperature: { c } });
    expect(at(15.5)).toEqual(["temperature-range caution"]);
    expect(at(26.8)).toEqual(["temperature-range caution"]);
    expect(at(15.6)).toEqual([]);
    expect(at(26.7)).toEqual([]);
  });
});

describe("short-development", () => {
  test("is a caution under 5:00", () => {
    const at = (time: string) =>
      withDeveloper({ leaflet: [row(20, time)], temperature: { c: 20 } });
    expect(at("4:59")).toEqual(["short-development caution"]);
    expect(at("5:00")).toEqual([]);
  });
});

describe("longer-than-a-day", () => {
  test("stops, and the time is cut to a day rather than to nonsense", () => {
    const leaflet = [row(20, "0:01"), row(20.5, "24:00:00")];
    const worksheet = changed(gullrock, { developer: { leaflet, temperature: { c: 22 } } });
    expect(warned(worksheet)).toContain("longer-than-a-day stop");
    expect(planOf(worksheet).developmentSeconds).toBe(86_400);
  });
});

describe("mixed-ratings", () => {
  const leaflet = [row(20, "10:00"), row(20, "13:00", 800)];
  const withFilms = (...films: readonly Film[]) =>
    changed(gullrock, {
      films,
      developer: { leaflet, temperature: { c: 20 } },
      tank: { volume: { ml: 600 } },
    });

  test("stops where films were metered at different speeds, or need different stops", () => {
    const different = withFilms(film("Gullrock 125", 125), film("Foghorn 400", 400));
    expect(warned(different)).toEqual(["mixed-ratings stop"]);
    const stops = withFilms(film("Gullrock 125", 125, 200), film("Foghorn 400", 400, 200));
    expect(warned(stops)).toEqual(["mixed-ratings stop"]);
  });

  test("does not where they share rows or stops", () => {
    expect(warned(withFilms(film("a", 400, 200), film("b", 400, 200)))).toEqual([]);
    expect(warned(withFilms(film("a", 400, 800), film("b", 800)))).toEqual([]);
  });

  test("stops where one film's speed was not said", () => {
    const silent = { label: "Found in a drawer", size: "135-36", count: 1 };
    expect(warned(withFilms(film("Gullrock 125", 125), silent))).toEqual(["mixed-ratings stop"]);
    expect(warned(withFilms(silent, silent))).toEqual([]);
  });

  test("leaves the time that of the first film, never one between", () => {
    const [a, b] = [film("Foghorn 400", 400, 800), film("Gullrock 125", 125)];
    expect(planOf(withFilms(a, b)).developmentSeconds).toBe(780);
    expect(planOf(withFilms(b, a)).developmentSeconds).toBe(600);
  });
});

describe("leaflet-backwards", () => {
  test("stops where a colder row of the same rating has less time", () => {
    const leaflet = [row(18, "9:00"), row(20, "10:00"), row(24, "7:00")];
    expect(withDeveloper({ leaflet, temperature: { c: 20 } })).toEqual(["leaflet-backwards stop"]);
    const level = [row(18, "10:00"), row(20, "10:00")];
    expect(withDeveloper({ leaflet: level, temperature: { c: 20 } })).toEqual([]);
  });

  test("compares all the rows that are used together: those for none and those for the box speed", () => {
    const leaflet = [row(18, "9:00", 125), row(20, "10:00")];
    const films = [film("Gullrock 125", 125, 200)];
    const developer = { leaflet, temperature: { c: 20 } };
    expect(warned(changed(gullrock, { films, developer }))).toEqual(["leaflet-backwards stop"]);
  });

  test("does not compare rows of different ratings", () => {
    const leaflet = [row(18, "9:00", 50), row(20, "10:00"), row(24, "14:00", 800)];
    expect(withDeveloper({ leaflet, temperature: { c: 20 } })).toEqual([]);
  });
});

describe("stock-short", () => {
  const withStock = (ml: number, count: number, developer: Partial<Developer> = {}) =>
    changed(gullrock, {
      films: [{ label: "Gullrock 125", size: "135-36", count, boxSpeed: 125 }],
      developer,
      tank: { volume: { ml } },
    });

  test("stops where the mix holds less stock than the film needs, and not where it holds just that", () => {
    expect(warned(withStock(600, 2))).toEqual([]);
    expect(warned(withStock(599, 2))).toEqual(["stock-short stop"]);
    expect(warned(withStock(599, 3, { dilution: "stock" }))).toEqual([]);
  });

  test("names a volume that would do, and a number of films that this one serves", () => {
    const [warning] = planOf(withStock(500, 3)).warnings;
    expect(warning?.text).toContain("A tank volume of 900 ml would do");
    expect(warning?.text).toContain("500 ml serves 1 film of 80 sq in");
    expect(warned(withStock(900, 3))).toEqual([]);
    expect(warned(withStock(500, 1))).toEqual([]);
  });

  test("the volume it names would do, whatever the parts and the unit", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        const { text = "" } =
          planOf(worksheet).warnings.find((it) => it.id === "stock-short") ?? {};
        const [, amount, unit] = /A tank volume of ([\d.]+) (ml|fl oz) would do/.exec(text) ?? [];
        fc.pre(amount !== undefined);
        const volume = unit === "ml" ? { ml: Number(amount) } : { flOz: Number(amount) };
        const larger = { ...worksheet, tank: { ...worksheet.tank, volume } };
        expect(planOf(larger).warnings.map((it) => it.id)).not.toContain("stock-short");
      }),
    );
  });
});

describe("bath-too-short", () => {
  const stop = (time: string, clock: Partial<Worksheet["clock"]>) =>
    warned({ ...changed(gullrock, { clock }), baths: { stop: { time } } });

  test("stops where a pour-out would begin before the tank is full", () => {
    expect(stop("0:01", { starts: "full", ends: "pour-out" })).toEqual([]);
    expect(stop("0:11", { starts: "pour-in", ends: "pour-out" })).toEqual(["bath-too-short stop"]);
    expect(stop("0:12", { starts: "pour-in", ends: "pour-out" })).toEqual([]);
    expect(stop("0:09", { starts: "full", ends: "empty" })).toEqual(["bath-too-short stop"]);
    expect(stop("0:21", { starts: "pour-in", ends: "empty" })).toEqual(["bath-too-short stop"]);
    expect(stop("0:22", { starts: "pour-in", ends: "empty" })).toEqual([]);
  });

  test("never stops a wash by fills and dumps, whose fills have their pouring added", () => {
    const worksheet = changed(gullrock, { clock: { starts: "pour-in", ends: "empty" } });
    expect(warned({ ...worksheet, baths: { wash: { fills: [1, 1] } } })).toEqual([]);
  });

  test("is said of each such bath, in order", () => {
    const baths = { stop: { time: "0:05" }, fixer: { time: "0:05" } };
    const worksheet = { ...changed(gullrock, { clock: { starts: "pour-in" } }), baths };
    const texts = planOf(worksheet).warnings.map((it) => it.text.split(":")[0]);
    expect(texts).toEqual(["Stop bath", "Fixer"]);
  });
});

describe("temperature-step", () => {
  test("is a caution where a bath is more than 3 °C from the developer (practice)", () => {
    const fixer = (c: number) =>
      warned({
        ...changed(gullrock, { developer: { temperature: { c: 20 } } }),
        baths: { fixer: { temperature: { c } } },
      });
    expect(fixer(23)).toEqual([]);
    expect(fixer(17)).toEqual([]);
    expect(fixer(23.5)).toEqual(["temperature-step caution"]);
    expect(fixer(16)).toEqual(["temperature-step caution"]);
  });
});

describe("language-unavailable", () => {
  test("is a note for any language but the seven, whatever the region", () => {
    expect(warned({ ...gullrock, language: "ja" })).toEqual(["language-unavailable note"]);
    expect(warned({ ...gullrock, language: "de-AT" })).toEqual([]);
    expect(warned({ ...gullrock, language: "EN-gb" })).toEqual([]);
    expect(warned({ ...gullrock, language: "enm" })).toEqual(["language-unavailable note"]);
  });
});
