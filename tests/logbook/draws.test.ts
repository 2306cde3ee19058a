import { describe, expect, test } from "vitest";
import type { Act, Bottle, Contents } from "../../src/logbook/bottle.ts";
import { bottledBaths, drawsOf } from "../../src/logbook/draws.ts";
import type { RunRecord } from "../../src/logbook/run-record.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { demos } from "../../src/ui/demo.ts";
import { bottleOf, fixerB } from "../ui/shelf-by-hand.ts";

const { developer, baths } = demos.gullrock;
const day = "2026-05-14";

const stock: Contents = {
  name: "Kelp stock",
  kind: "developer",
  state: "stock",
  mixedOn: "2026-04-20",
  volume: { ml: 1000 },
  keeps: {},
};
const bottles = [bottleOf(stock), bottleOf(fixerB)];

const worksheet: Worksheet = {
  ...demos.gullrock,
  developer: { ...developer, bottle: "Kelp stock" },
  baths: { ...baths, fixer: { ...baths?.fixer, bottle: "Fixer B" } },
};

const run = (more: Partial<RunRecord> = {}): RunRecord => ({
  id: "run 1",
  begunAt: Date.UTC(2026, 4, 14, 12),
  worksheet,
  developmentSeconds: 569,
  presses: [],
  ended: "done",
  note: "",
  ...more,
});

const drawn = (it: RunRecord, shelf: readonly Bottle[] = bottles) =>
  drawsOf(it, shelf, day).map(({ bottle, act }) => [bottle, act.films, act.takes]);
const twoRolls = [{ size: "135-36", count: 2 }];
const with_ = (bottle: Bottle, act: Act, on: string): Bottle => ({
  ...bottle,
  entries: [...bottle.entries, { ...act, id: `${bottle.id} ${act.kind}`, at: 1, on }],
});

describe("a run draws on bottles", () => {
  test("by the names that its worksheet has, and on none where it has none", () => {
    expect(bottledBaths(worksheet)).toEqual(["developer", "fixer"]);
    expect(bottledBaths(demos.gullrock)).toEqual([]);
    expect(drawn(run({ worksheet: demos.gullrock }))).toEqual([]);
  });

  test("stock is diluted and used up, and no film goes through its bottle", () => {
    // 640 ml of 1+3 hold 160 ml of stock.
    expect(drawn(run())).toEqual([
      ["Kelp-stock", [], { ml: 160 }],
      ["Fixer-B", twoRolls, undefined],
    ]);
  });

  test("a working solution that goes to waste is used up as it is, films and all", () => {
    const waste: Worksheet = {
      ...worksheet,
      baths: { ...worksheet.baths, fixer: { bottle: "Fixer B", afterwards: "waste" } },
    };
    expect(drawn(run({ worksheet: waste })).at(-1)).toEqual(["Fixer-B", twoRolls, { ml: 640 }]);
  });

  test("used up in the unit in which the bottle was mixed", () => {
    const ounces = bottleOf({ ...stock, volume: { flOz: 32 } });
    const [draw] = drawsOf(run(), [ounces], day);
    expect(draw?.act.takes).toEqual({ flOz: 160 / 29.5735295625 });
  });

  test("that was left draws on the baths that were poured, and no others", () => {
    const left = (...sections: readonly string[]) =>
      drawn(
        run({
          ended: "left",
          presses: sections.map((section, at) => ({ section, at })),
        }),
      ).map(([bottle]) => bottle);
    expect(left("lay-out", "light")).toEqual([]);
    expect(left("light", "developer")).toEqual(["Kelp-stock"]);
    expect(left("light", "developer", "fixer")).toEqual(["Kelp-stock", "Fixer-B"]);
    expect(left("developer", "fixer", "wash")).toEqual(["Kelp-stock", "Fixer-B"]);
  });

  test("that was left between stop and fixer draws on the stop bath, where it was written down or told of", () => {
    const withStop: Worksheet = {
      ...worksheet,
      baths: { ...worksheet.baths, stop: { bottle: "Stop" } },
    };
    const stop = bottleOf({ ...fixerB, name: "Stop", kind: "stop" });
    const left = (more: Partial<RunRecord>) =>
      drawn(
        run({
          ended: "left",
          worksheet: withStop,
          presses: [{ section: "developer", at: 0 }],
          ...more,
        }),
        [...bottles, stop],
      ).map(([bottle]) => bottle);
    expect(left({ pouredIn: ["developer", "stop"] })).toEqual(["Kelp-stock", "Stop"]);
    expect(left({ pouredIn: [] })).toEqual([]);
    // Of an older version, or of a page that went away, only what somebody told of is known.
    expect(left({})).toEqual(["Kelp-stock"]);
    const told = [{ kind: "poured", at: 700_000, bath: "stop", by: 4 }] as const;
    expect(left({ ended: null, otherwise: told })).toEqual(["Kelp-stock", "Stop"]);
  });

  test("a bath that is left out draws on none", () => {
    const without: Worksheet = {
      ...worksheet,
      baths: { ...worksheet.baths, fixer: { bottle: "Fixer B", skip: true } },
    };
    expect(drawn(run({ worksheet: without })).map(([bottle]) => bottle)).toEqual(["Kelp-stock"]);
  });

  test("of two bottles of one name, on the one that stood there that day", () => {
    const old = with_(bottleOf(fixerB, "old"), { kind: "poured-away" }, "2026-05-10");
    const fresh = bottleOf({ ...fixerB, mixedOn: "2026-05-10" }, "new");
    expect(drawsOf(run(), [old, fresh], day).map(({ bottle }) => bottle)).toEqual(["new"]);
    expect(drawsOf(run(), [fresh, old], "2026-05-02").map(({ bottle }) => bottle)).toEqual(["old"]);
    expect(drawsOf(run(), [fresh], "2026-05-02")).toEqual([]);
  });

  test("of two bottles of one name and one day, on the one that stood there as it began", () => {
    const { begunAt } = run();
    const mixedAt = (bottle: Bottle, at: number): Bottle => ({
      ...bottle,
      entries: bottle.entries.map((entry) => ({ ...entry, at })),
    });
    const old = (pouredAt: number): Bottle => {
      const bottle = mixedAt(bottleOf(fixerB, "old"), 1);
      const away = { kind: "poured-away", id: "away", at: pouredAt, on: day } as const;
      return { ...bottle, entries: [...bottle.entries, away] };
    };
    const fresh = (at: number) => mixedAt(bottleOf({ ...fixerB, mixedOn: day }, "new"), at);
    const one = (...shelf: readonly Bottle[]) =>
      drawsOf(run(), shelf, day).map(({ bottle }) => bottle);
    const [before, after] = [begunAt - 60_000, begunAt + 60_000];
    expect(one(old(after), fresh(after + 1))).toEqual(["old"]);
    expect(one(old(before), fresh(before + 1))).toEqual(["new"]);
    // Its name was typed before it was written down.
    expect(one(old(before), fresh(after))).toEqual(["new"]);
  });

  test("on a bottle that has been given another name since, and on none that is deleted", () => {
    const named = with_(
      bottleOf(fixerB),
      { kind: "corrected", contents: { ...fixerB, name: "Fixer C" } },
      day,
    );
    expect(drawsOf(run(), [named], day)).toHaveLength(1);
    expect(drawsOf(run(), [with_(bottleOf(fixerB), { kind: "removed" }, day)], day)).toEqual([]);
    expect(drawsOf(run(), [bottleOf({ ...fixerB, kind: "stop" })], day)).toEqual([]);
  });
});
