import { describe, expect, test } from "vitest";
import { readDilution, writeDilution } from "../../src/units/parts.ts";

describe("a dilution", () => {
  test.each([
    ["stock", { stock: 1, water: 0 }, "stock"],
    ["Stock", { stock: 1, water: 0 }, "stock"],
    ["Unverdünnt", { stock: 1, water: 0 }, "stock"],
    ["pur", { stock: 1, water: 0 }, "stock"],
    ["1+3", { stock: 1, water: 3 }, "1+3"],
    ["1 + 3", { stock: 1, water: 3 }, "1+3"],
    ["1+1.5", { stock: 1, water: 1.5 }, "1+1.5"],
    ["1+1,5", { stock: 1, water: 1.5 }, "1+1.5"],
    ["１＋３", { stock: 1, water: 3 }, "1+3"],
  ])("%j is stock plus water", (typed, dilution, written) => {
    expect(readDilution(typed)).toEqual({ kind: "read", dilution });
    expect(writeDilution(dilution)).toBe(written);
  });

  test('"1:4" is refused, since it is read both ways (practice)', () => {
    expect(readDilution("1:4")).toEqual({
      kind: "unread",
      may:
        '"stock", or parts of stock plus parts of water such as "1+3"; ' +
        '"1:4" is read both as 1+4 and as 1+3, so say it in parts',
    });
  });

  test.each(["", "1+0", "0+3", "1+10001", "1", "1+1+1", "-1+3", "one to three", "1:1", "١+٣"])(
    "%j is refused",
    (typed) => {
      expect(readDilution(typed)).toHaveProperty("may", expect.stringContaining('"1+3"'));
    },
  );
});
