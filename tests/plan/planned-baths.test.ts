import { describe, expect, test } from "vitest";
import { fillSeconds, pouringSeconds } from "../../src/plan/fills.ts";
import { planOf } from "../../src/plan/plan.ts";
import type { BathWish, Worksheet } from "../../src/plan/worksheet.ts";
import { changed, gullrock } from "./worksheets.ts";

function bathsOf(baths: { readonly [id: string]: BathWish }, from: Worksheet = gullrock) {
  return planOf({ ...from, baths }).baths;
}

const bath = (id: string, baths: { readonly [id: string]: BathWish }, from = gullrock) =>
  bathsOf(baths, from).find((it) => it.id === id);

const unbroken = (seconds: number) => ({
  first: seconds,
  every: seconds,
  for: seconds,
  perInversion: gullrock.agitation.perInversion,
  taps: 0,
});

describe("which baths there are", () => {
  test("those of the process in its order, without the ones that have to be named", () => {
    const usual = ["developer", "stop", "fixer", "wash", "wetting-agent"];
    expect(planOf(gullrock).baths.map((it) => it.id)).toEqual(usual);
  });

  test("naming one brings it in, in its place", () => {
    expect(bathsOf({ "wash-aid": {}, prewet: {}, rinse: {} }).map((it) => it.id)).toEqual([
      "prewet",
      "developer",
      "stop",
      "fixer",
      "rinse",
      "wash-aid",
      "wash",
      "wetting-agent",
    ]);
  });

  test("skipping one leaves it out, even where it is named", () => {
    const ids = bathsOf({ stop: { skip: true }, rinse: { skip: true, time: "1:00" } }).map(
      (it) => it.id,
    );
    expect(ids).not.toContain("stop");
    expect(ids).not.toContain("rinse");
  });
});

describe("what a bath is", () => {
  test("its time is the worksheet's, else the trade's, and the developer's is worked out", () => {
    expect(bath("fixer", { fixer: { time: "4:00" } })?.seconds).toBe(240);
    expect(bath("fixer", {})?.seconds).toBe(300);
    expect(bath("developer", {})?.seconds).toBe(planOf(gullrock).developmentSeconds);
  });

  test("its temperature is in °C, and null where nobody said", () => {
    expect(bath("developer", {})?.temperature).toBeCloseTo(20.556, 3);
    expect(bath("stop", { stop: { temperature: { f: 68 } } })?.temperature).toBe(20);
    expect(bath("fixer", {})?.temperature).toBeNull();
  });

  test("it is agitated as the worksheet says, else as is usual for it", () => {
    const agitation = { first: 5, every: 60, for: 5, perInversion: 3, taps: 0 };
    expect(bath("fixer", { fixer: { agitation } })?.agitation).toEqual(agitation);
    expect(bath("fixer", {})?.agitation).toEqual(gullrock.agitation);
    expect(bath("stop", {})?.agitation).toEqual(unbroken(60));
    expect(bath("prewet", { prewet: { time: "2:00" } })?.agitation).toEqual(unbroken(120));
    expect(bath("wash", {})?.agitation).toBeNull();
    expect(bath("wetting-agent", {})?.agitation).toBeNull();
  });

  test("the developer's label names its dilution, where there is one", () => {
    expect(bath("developer", {})?.label).toBe("Kelp MQ 1+3");
    const stock = changed(gullrock, { developer: { dilution: "stock" } });
    expect(bath("developer", {}, stock)?.label).toBe("Kelp MQ");
    expect(bath("stop", {})?.label).toBe("Stop bath");
  });
});

describe("a wash by fills and dumps", () => {
  const fills = [5, 10, 20];

  test("seen only as a card (5, 10, 20 inversions in fresh water): 35 inversions of 2.5 s", () => {
    expect(bath("wash", { wash: { fills } })?.seconds).toBe(35 * 2.5);
    expect(bath("wash", { wash: { fills } })?.agitation).toEqual(unbroken(35 * 2.5));
  });

  test.each([
    ["full", "pour-out", 0],
    ["pour-in", "pour-out", 12],
    ["full", "empty", 10],
    ["pour-in", "empty", 22],
  ] as const)(
    "on a clock from %s to %s, each fill also has its pouring: %d s",
    (starts, ends, pouring) => {
      const worksheet = changed(gullrock, { clock: { starts, ends } });
      expect(pouringSeconds(worksheet)).toBe(pouring);
      expect(fillSeconds(worksheet, 20)).toBe(50 + pouring);
      expect(bath("wash", { wash: { fills } }, worksheet)?.seconds).toBe(87.5 + 3 * pouring);
    },
  );

  test("goes by the wash's own inversions, where it has them", () => {
    const agitation = { ...gullrock.agitation, perInversion: 4 };
    expect(bath("wash", { wash: { fills, agitation } })?.seconds).toBe(35 * 4);
  });
});
