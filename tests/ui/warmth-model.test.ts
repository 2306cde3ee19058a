// What is told at the sink, where the rest of the page may still be anything.
import { describe, expect, test } from "vitest";
import { demos } from "../../src/ui/demo.ts";
import type { Draft } from "../../src/ui/draft.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { sinkAnswer } from "../../src/ui/warmth-model.ts";
import { tempering as words } from "../../src/ui/words/en/bench.ts";
import { readDraft } from "../../src/ui/work-out-model.ts";

const foghorn = draftOf(demos.foghorn);

const told = (change: Draft) => {
  const draft = { ...foghorn, ...change };
  return sinkAnswer(draft, readDraft(draft));
};

describe("at the sink", () => {
  test("the advice stands on its own fields, whatever the rest of the page wants", () => {
    expect(told({})).toMatch(/^Wait about 9:00 more for 68 °F/);
    expect(told({ "tank.volume": "", "films[0].size": "?" })).toBe(told({}));
  });

  test("what is wanting of its own fields is named", () => {
    expect(told({ "tempering.target": "" })).toBe(words.noTarget);
    expect(told({ "tempering.target": "cool" })).toBe(words.hindered("It shall come to"));
    expect(told({ "tempering.bath": "" })).toBe(words.hindered("The water bath has"));
  });

  test("nothing is said before the first reading", () => {
    const none = Object.fromEntries(
      Object.entries(foghorn).filter(([path]) => !path.startsWith("tempering.readings")),
    );
    expect(sinkAnswer(none, readDraft(none))).toBe("");
  });
});
