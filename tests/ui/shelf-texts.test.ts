// What is typed in the shelf's forms, as it is read.
import { describe, expect, test } from "vitest";
import { readAct } from "../../src/ui/shelf-texts.ts";
import { bottleForm } from "../../src/ui/words/en/shelf-form.ts";
import "./late-words.ts";

const on = "2026-05-14";

describe("an act with a bottle", () => {
  test.each(["taken", "added"] as const)("%s: a volume above 0 is wanted", (kind) => {
    for (const volume of ["0 ml", "0", "0 fl oz", "0.0 l", ""])
      expect(readAct(kind, { on, volume }), volume).toEqual({
        kind: "faults",
        faults: { volume: bottleForm.wanted },
      });
    expect(readAct(kind, { on, volume: "0.5 ml" })).toEqual({
      kind: "read",
      value: { on, act: { kind, volume: { ml: 0.5 } } },
    });
  });
});
