import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { LEAD, stepsOf } from "../../src/process/process.ts";
import { gullrock } from "../plan/worksheets.ts";

const steps = (worksheet: Worksheet) => stepsOf(worksheet, planOf(worksheet));
const ids = (worksheet: Worksheet) => steps(worksheet).map((step) => step.id);

describe("The steps of a black-and-white negative", () => {
  test("go from the laid-out bench to the drying line, developer and stop bath as one", () => {
    expect(ids(gullrock)).toEqual([
      ...["lay-out", "dry", "wet-side", "temper", "quiet", "lamps", "volume", "screen"],
      ...["lights-out", "wait"],
      ...["open", "cut", "feed", "wind", "spool", "core", "close", "everyone"],
      "light",
      "developer",
      "fixer",
      "wash",
      "wetting-agent",
      "hang",
    ]);
    const developer = steps(gullrock).find((step) => step.id === "developer");
    expect(developer?.stays.map((stay) => stay.bath)).toEqual(["developer", "stop"]);
  });

  test("the next bath of a section pours in after the handover", () => {
    const slow = { ...gullrock, tank: { ...gullrock.tank, handover: 7 } };
    const [developer, stop] = steps(slow).find((step) => step.id === "developer")?.stays ?? [];
    expect(developer?.pourIn).toBe(LEAD);
    expect(stop?.pourIn).toBe((developer?.empty ?? 0) + 7);
  });

  test("baths come in where they are named and go where they are skipped", () => {
    const baths = { prewet: {}, rinse: {}, "wash-aid": {}, stop: { skip: true } };
    const named = ids({ ...gullrock, baths });
    expect(named.slice(named.indexOf("light") + 1)).toEqual([
      "prewet",
      "developer",
      "fixer",
      "rinse",
      "wash-aid",
      "wash",
      "wetting-agent",
      "hang",
    ]);
  });

  test("a wash by fills and dumps has a pour-in and a pour-out for each, and its inversions between", () => {
    const wash = steps({ ...gullrock, baths: { wash: { fills: [5, 10, 20] } } }).find(
      (step) => step.id === "wash",
    );
    const count = (deed: string) => wash?.moments.filter((m) => m.do === deed).length;
    expect([count("pour-in"), count("pour-out"), count("invert")]).toEqual([3, 3, 35]);
  });

  test("vessels are counted in the row's order, and running water needs none", () => {
    const stays = steps(gullrock).flatMap((step) => step.stays);
    expect(stays.map(({ bath, vessel }) => `${bath} ${vessel}`)).toEqual([
      "developer 1",
      "stop 2",
      "fixer 3",
      "wash tap",
      "wetting-agent 4",
    ]);
  });

  test("a diluted developer goes to the waste, a stock one or a reused one back, and the worksheet may say otherwise", () => {
    const fate = (developer: Partial<Worksheet["developer"]>, baths?: Worksheet["baths"]) =>
      steps({
        ...gullrock,
        developer: { ...gullrock.developer, ...developer },
        ...(baths === undefined ? {} : { baths }),
      }).flatMap((step) => step.stays)[0]?.afterwards;
    expect(fate({ dilution: "1+3" })).toBe("waste");
    expect(fate({ dilution: "stock" })).toBe("return");
    expect(fate({ dilution: "1+3", filmsBefore: 2 })).toBe("return");
    expect(fate({}, { developer: { afterwards: "drain" } })).toBe("drain");
  });
});
