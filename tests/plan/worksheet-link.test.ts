import fc from "fast-check";
import { deflateSync, strToU8 } from "fflate";
import { describe, expect, test } from "vitest";
import { linkOf, longestLink, readLink } from "../../src/plan/worksheet-link.ts";
import { carriesWorksheet } from "../../src/ui/place.ts";
import { anyWorksheet } from "./any-worksheet.ts";
import { gullrock } from "./worksheets.ts";

const minute = fc
  .integer({ min: 0, max: Date.UTC(2200, 0) / 60_000 })
  .map((minutes) => minutes * 60_000);

/** A link as another program might write it. */
const packed = (content: string | Uint8Array) =>
  `#w1.${Buffer.from(deflateSync(typeof content === "string" ? strToU8(content) : content, { level: 9 })).toString("base64url")}`;

describe("A worksheet as a link", () => {
  test("comes back as it was, whatever it holds, with the minute that a class starts", () => {
    fc.assert(
      fc.property(anyWorksheet, fc.option(minute), (worksheet, startsAt) => {
        const link = linkOf(worksheet, startsAt);
        expect(carriesWorksheet(link)).toBe(true);
        expect(link).toMatch(/^#w1\.[\w.-]+$/);
        expect(readLink(link)).toMatchObject({
          kind: "read",
          reading: { kind: "worksheet", worksheet },
          startsAt,
        });
      }),
      { numRuns: 100 },
    );
  });

  test("is short enough for a phone's camera where it holds what is usual", () => {
    expect(linkOf(gullrock).length).toBeLessThan(900);
  });

  test("of another's making is checked like a file: its faults are named by field", () => {
    const link = packed(JSON.stringify({ ...gullrock, tank: { ...gullrock.tank, pourIn: "ten" } }));
    const read = readLink(link);
    expect(read).toMatchObject({ kind: "read", reading: { kind: "faults" } });
    const faults =
      read.kind === "read" && read.reading.kind === "faults" ? read.reading.faults : [];
    expect(faults.map(({ path }) => path)).toEqual(["tank.pourIn"]);
    expect(readLink(packed("[]"))).toMatchObject({ reading: { kind: "faults" } });
  });
});

describe("A link that is broken is refused, and nothing is thrown", () => {
  const whole = linkOf(gullrock);

  test.each([
    ["nothing", "#w1."],
    ["another version", whole.replace("#w1", "#w2")],
    ["another alphabet", `${whole}!`],
    ["a time that there is not", `${whole}.202613051730`],
    ["half a time", `${whole}.2026`],
    ["longer than any", `#w1.${"A".repeat(longestLink)}`],
  ])("%s", (_, link) => {
    expect(readLink(link)).toEqual({ kind: "broken" });
  });

  test("cut off anywhere", () => {
    for (let length = 4; length < whole.length; length += 7) {
      const read = readLink(whole.slice(0, length));
      expect(read.kind === "broken" || read.reading.kind === "faults").toBe(true);
    }
  });

  test("one that would unpack to more than any worksheet, long before it is all unpacked", () => {
    const bomb = packed(new Uint8Array(20_000_000));
    expect(bomb.length).toBeLessThan(longestLink);
    const before = process.memoryUsage().arrayBuffers;
    expect(readLink(bomb)).toEqual({ kind: "broken" });
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(10_000_000);
  });

  test("whatever is written behind the sign", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: "binary" }),
          fc.uint8Array({ maxLength: 400 }).map((it) => Buffer.from(it).toString("base64url")),
          fc.uint8Array({ maxLength: 400 }).map((it) => packed(it).slice(4)),
          fc.json().map((it) => packed(it).slice(4)),
        ),
        (text) => {
          const read = readLink(`#w1.${text}`);
          expect(read.kind === "broken" || read.reading.kind === "faults").toBe(true);
        },
      ),
      { numRuns: 300 },
    );
  });

  test("a place's own name is no link", () => {
    for (const hash of ["", "#", "#work-out", "#page", "#w.", "#walk-through"]) {
      expect(carriesWorksheet(hash)).toBe(false);
    }
  });
});
