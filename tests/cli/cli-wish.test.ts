import { describe, expect, test } from "vitest";
import { wishOf } from "../../src/cli-wish.ts";

const usual = { gap: "60", waits: "pass" };

describe("What is to be rendered", () => {
  test.each(["mp3", "wav", "vtt", "srt", "ssml"] as const)(
    "goes by how the path ends: .%s",
    (kind) => {
      const wish = { kind, gap: 60, waits: "pass", at: undefined };
      expect(wishOf(`out.${kind}`, usual)).toEqual(wish);
      expect(wishOf(`Out.v1.${kind.toUpperCase()}`, usual)).toEqual(wish);
    },
  );

  test("may wait to be played over and over, and be planned for a day", () => {
    const typed = { gap: "0", waits: "stay", at: "2026-12-05T18:30:00" };
    expect(wishOf("out.ics", typed)).toEqual({
      kind: "ics",
      gap: 0,
      waits: "stay",
      at: "2026-12-05T18:30",
    });
  });

  test.each([
    ["out.txt", usual, { path: "OUT", holds: "out.txt" }],
    ["", usual, { path: "OUT", holds: null }],
    ["out.mp3", { ...usual, gap: "" }, { path: "--gap", holds: "" }],
    ["out.mp3", { ...usual, gap: "3601" }, { path: "--gap", holds: "3601" }],
    ["out.mp3", { ...usual, waits: "long" }, { path: "--waits", holds: "long" }],
    ["out.ics", usual, { path: "--at", holds: null }],
    ["out.ics", { ...usual, at: "2026-02-30T18:30" }, { path: "--at", holds: "2026-02-30T18:30" }],
  ])("is refused by its option: %j %j", (out, typed, fault) => {
    expect(wishOf(out, typed)).toMatchObject(fault);
  });
});
