// A run that is over has ended, whether or not anybody says so: nothing is found of it as left undone.
import "fake-indexeddb/auto";
import { describe, expect, test } from "vitest";
import { browserJournal } from "../../src/live/browser-journal.ts";
import { flagOf } from "../../src/live/flag-of.ts";
import { planOf } from "../../src/plan/plan.ts";
import { recordOf } from "../../src/ui/record-of.ts";
import { gullrock } from "../plan/worksheets.ts";
import { sessionOf } from "../ui/run-stand-ins.ts";
import { runByHand } from "./by-hand.ts";

/** Its last section has just been pressed for. */
function atTheLast() {
  const here = runByHand(gullrock);
  const { sections } = here.planned;
  here.pressThrough(sections.length);
  expect(here.run.position().kind).toBe("over");
  const told = sections.at(-1)?.cues.at(-1)?.until ?? 0;
  const ends = () => here.kept.filter(({ kind }) => kind === "ended");
  return { here, told, ends };
}

describe("A run that is over", () => {
  test("has ended once its last words are told, and is in no flag from then on", () => {
    const { here, told, ends } = atTheLast();
    here.wait(told - 1);
    expect(ends()).toEqual([]);
    expect(flagOf(here.run)).toBe("light");
    here.wait(3);
    expect(ends()).toMatchObject([{ how: "done" }]);
    expect(flagOf(here.run)).toBeNull();
  });

  test("can have its last press taken back before, however little it is told", () => {
    const here = runByHand({ ...gullrock, voice: { detail: "tones" } });
    here.pressThrough(here.planned.sections.length);
    here.wait(2);
    expect(here.run.takeBack(here.clocks().steady)).toBe(true);
    here.wait(30);
    expect(here.run.position().kind).toBe("waiting");
    expect(here.kept.filter(({ kind }) => kind === "ended")).toEqual([]);
  });

  test("ends once: leaving it adds nothing, and its record is whole", () => {
    const { here, told, ends } = atTheLast();
    here.wait(told + 5);
    here.run.wrong("eye");
    const entries = here.run.journal().entries;
    expect(here.run.ended("done")).toBe(false);
    expect(here.run.ended("left")).toBe(false);
    expect(here.run.journal().entries).toBe(entries);
    expect(ends()).toHaveLength(1);
    const record = recordOf(sessionOf(here, gullrock), "done");
    expect(record.presses).toHaveLength(here.planned.sections.length);
    expect(record.otherwise?.map(({ kind }) => kind)).toEqual(["wrong"]);
  });

  test("is not found as one that never ended, where the page is closed without a press", async () => {
    const { here, told } = atTheLast();
    const store = browserJournal();
    const plan = planOf(gullrock);
    await store.begin({ id: "one", worksheet: gullrock, plan, begunAt: 0 });
    for (const entry of here.kept) await store.add("one", entry);
    expect((await store.unfinished())?.header.id).toBe("one");
    const before = here.kept.length;
    here.wait(told + 5);
    for (const entry of here.kept.slice(before)) await store.add("one", entry);
    expect(await store.unfinished()).toBeNull();
  });

  test("that is left before is left, and not done", () => {
    const here = runByHand(gullrock);
    here.press();
    expect(here.run.ended("left")).toBe(true);
    expect(here.kept.at(-1)).toMatchObject({ kind: "ended", how: "left" });
  });
});
