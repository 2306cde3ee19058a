import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fixerLife } from "../../src/trade/fixer-life.ts";
import {
  dayAfter,
  daysBetween,
  dueOf,
  isDay,
  isSpan,
  longest,
  spanUnits,
} from "../../src/trade/keeping.ts";

const day = fc
  .integer({ min: Date.UTC(1990, 0, 1), max: Date.UTC(2090, 0, 1) })
  .map((ms) => new Date(ms).toISOString().slice(0, 10));

describe("a day", () => {
  test("is one that the calendar has", () => {
    expect(isDay("2028-02-29")).toBe(true);
    for (const it of ["2026-02-29", "2026-13-01", "12.3.2026", "2026-3-1", "", 20260301])
      expect(isDay(it), String(it)).toBe(false);
  });

  test("a month on from the 31st is the last of a shorter month", () => {
    expect(dayAfter("2026-01-31", { count: 1, unit: "months" })).toBe("2026-02-28");
    expect(dayAfter("2027-12-31", { count: 2, unit: "months" })).toBe("2028-02-29");
    expect(dayAfter("2026-08-15", { count: 6, unit: "months" })).toBe("2027-02-15");
  });

  test("weeks and days go over the ends of months and years, and over clocks that are set", () => {
    expect(dayAfter("2026-12-28", { count: 1, unit: "weeks" })).toBe("2027-01-04");
    expect(dayAfter("2026-03-28", { count: 2, unit: "days" })).toBe("2026-03-30");
    fc.assert(
      fc.property(day, fc.integer({ min: -900, max: 900 }), (from, count) => {
        expect(daysBetween(from, dayAfter(from, { count, unit: "days" }))).toBe(count);
      }),
    );
  });

  test("after a span that nobody means is that after the longest, and sorts behind all that come sooner", () => {
    for (const unit of spanUnits) {
      const most = dayAfter("2026-05-01", { count: longest[unit], unit });
      expect(most.slice(0, 3), unit).toBe("212");
      for (const count of [longest[unit] + 1, 99_999, 1e9, 1e300])
        expect(dayAfter("2026-05-01", { count, unit }), unit).toBe(most);
      expect(dayAfter("9990-05-01", { count: longest[unit], unit })).toBe("9999-12-31");
    }
  });

  test("after a part of a span is that after the whole ones in it", () => {
    for (const unit of spanUnits)
      expect(dayAfter("2026-05-01", { count: 1.9, unit })).toBe(
        dayAfter("2026-05-01", { count: 1, unit }),
      );
  });

  test("is a whole number of them, from 1 to the longest, away", () => {
    for (const unit of spanUnits) {
      for (const count of [1, 2, longest[unit]]) expect(isSpan({ count, unit })).toBe(true);
      for (const count of [0, 0.5, 1.5, longest[unit] + 1, 1e9, Number.NaN])
        expect(isSpan({ count, unit }), `${count} ${unit}`).toBe(false);
    }
  });

  test("of months, counted on, is the month that JavaScript's own calendar comes to", () => {
    fc.assert(
      fc.property(day, fc.integer({ min: 0, max: 60 }), (from, count) => {
        const [year = 0, month = 1] = from.split("-").map(Number);
        const first = new Date(Date.UTC(year, month - 1 + count, 1)).toISOString().slice(0, 7);
        expect(dayAfter(from, { count, unit: "months" }).slice(0, 7)).toBe(first);
      }),
    );
  });
});

describe("a bottle is due", () => {
  const keeps = {
    full: { count: 6, unit: "months" },
    half: { count: 2, unit: "months" },
    opened: { count: 3, unit: "weeks" },
  } as const;

  test("by the earliest of what has begun", () => {
    const since = { full: "2026-03-01", half: null, opened: null };
    expect(dueOf(keeps, since)).toEqual({ on: "2026-09-01", by: "full", since: "2026-03-01" });
    expect(dueOf(keeps, { ...since, half: "2026-04-10" })?.on).toBe("2026-06-10");
    const opened = { ...since, half: "2026-04-10", opened: "2026-04-01" };
    expect(dueOf(keeps, opened)).toEqual({ on: "2026-04-22", by: "opened", since: "2026-04-01" });
  });

  test("never, where the sheet says nothing of what has begun", () => {
    expect(dueOf({}, { full: "2026-03-01", half: "2026-03-02", opened: null })).toBeNull();
    expect(dueOf({ opened: keeps.opened }, { full: "2026-03-01", half: null, opened: null })).toBe(
      null,
    );
  });
});

describe("a fixer's tally and its test", () => {
  const films = (served: number, all: number | null = 20) => ({ served, all });

  test("agree, and nobody has to be trusted", () => {
    expect(fixerLife(films(12), { last: 40, fresh: 25 })).toEqual({
      tally: "good",
      test: "good",
      trust: null,
    });
    expect(fixerLife(films(20), { last: 50, fresh: 25 }).trust).toBeNull();
  });

  test("disagree, and the one that says spent is trusted", () => {
    // Spent at twice the fresh clearing time: NAVEDTRA 14209.
    expect(fixerLife(films(14), { last: 50, fresh: 25 })).toEqual({
      tally: "good",
      test: "spent",
      trust: "test",
    });
    expect(fixerLife(films(21), { last: 49.9, fresh: 25 })).toEqual({
      tally: "spent",
      test: "good",
      trust: "tally",
    });
  });

  test("are silent without a capacity or a fresh value, and then contradict nobody", () => {
    expect(fixerLife(films(99, null), { last: 60, fresh: 25 })).toEqual({
      tally: "silent",
      test: "spent",
      trust: null,
    });
    expect(fixerLife(films(99), null).test).toBe("silent");
  });
});
