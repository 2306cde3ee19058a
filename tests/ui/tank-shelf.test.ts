import { describe, expect, test } from "vitest";
import { tankTexts, withHands, withTank } from "../../src/ui/bench-acts.ts";
import { demos } from "../../src/ui/demo.ts";
import type { Draft } from "../../src/ui/draft.ts";
import { draftOf, emptyDraft } from "../../src/ui/draft-of.ts";
import { tanks as tankWords } from "../../src/ui/words/en/bench.ts";
import { notices } from "../../src/ui/words/en/frame.ts";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { world } from "./ports.ts";

const demo = draftOf(demos.gullrock);
const pushed = draftOf(demos.foghorn);

const under = (draft: Draft, start: string): Draft =>
  Object.fromEntries(Object.entries(draft).filter(([path]) => path.startsWith(start)));
const withoutTank = (draft: Draft): Draft =>
  Object.fromEntries(
    Object.entries(draft).filter(
      ([path]) => !path.startsWith("tank.") && path !== "agitation.perInversion",
    ),
  );

/** The practice worksheet with hands timed. */
const timed = withHands(withHands(demo, "pourIn", [9, 9.5, 9.2]), "perInversion", [2, 2.2, 2.1]);

describe("a tank's fields", () => {
  test("are kept as its own fields and the pace of inversions, and nothing else", () => {
    expect(tankTexts(timed)).toEqual({
      ...under(timed, "tank."),
      "agitation.perInversion": "2.1 s",
    });
    expect(under(timed, "tank.")).toHaveProperty(["tank.measured.perInversion"], "2 2.2 2.1");
  });

  test("come back as they were kept", () => {
    expect(withTank(timed, tankTexts(timed))).toEqual(timed);
    expect(tankTexts(withTank(emptyDraft(), tankTexts(timed)))).toEqual(tankTexts(timed));
  });

  test("taken, change nothing but the tank and the pace of inversions", () => {
    const draft = withTank(pushed, tankTexts(timed));
    expect(withoutTank(draft)).toEqual(withoutTank(pushed));
  });

  test("leave nothing of the tank that stood there", () => {
    const withRoom = { ...pushed, "tank.room": "64 °F", "tank.halfway": "40 min" };
    expect(under(withTank(withRoom, tankTexts(demo)), "tank.")).toEqual(under(demo, "tank."));
  });

  test("take no other field with them, whatever was kept under the name", () => {
    const draft = withTank(demo, { ...tankTexts(timed), title: "another", "films[0].label": "x" });
    expect(draft).toEqual(timed);
  });
});

function begun({ draft = demo, willKeep = true }: { draft?: Draft; willKeep?: boolean } = {}) {
  const it = world(undefined, willKeep);
  const workOut = makeWorkOut(draft, null, it.ports);
  const names = () => workOut.shelf.tanks.value.map(({ label }) => label);
  return { ...it, workOut, names, says: () => workOut.notice.value?.says };
}

describe("a tank kept", () => {
  test("stands on the shelf under its name, without the spaces around it", async () => {
    const { workOut, names, says } = begun();
    workOut.type("tank.label", "  blue drum ");
    await workOut.shelf.keep();
    expect(names()).toEqual(["blue drum"]);
    expect(says()).toBe(tankWords.isKept("blue drum"));
  });

  test.each(["", "   "])("wants a name first, and says so: %j", async (label) => {
    const { workOut, names, says } = begun();
    workOut.type("tank.label", label);
    await workOut.shelf.keep();
    expect(names()).toEqual([]);
    expect(says()).toBe(tankWords.needsName);
  });

  test("is kept by no step that undo would take back, and changes nothing on the page", async () => {
    const { workOut } = begun();
    await workOut.shelf.keep();
    expect(workOut.canUndo.value).toBe(false);
    expect(workOut.draft.value).toBe(demo);
  });

  test("again takes the place of the one under the same name", async () => {
    const { workOut, names } = begun();
    await workOut.shelf.keep();
    workOut.type("tank.volume", "700 ml");
    await workOut.shelf.keep();
    expect(names()).toEqual(["two-reel steel"]);
    expect(workOut.shelf.tanks.value[0]?.texts["tank.volume"]).toBe("700 ml");
  });

  test("is kept as the tank alone, without the rest of the worksheet", async () => {
    const { workOut } = begun();
    await workOut.shelf.keep();
    expect(workOut.shelf.tanks.value).toEqual([
      { label: "two-reel steel", texts: tankTexts(demo) },
    ]);
  });

  test("is there for the next worksheet of the same browser", async () => {
    const { workOut, ports } = begun();
    await workOut.shelf.keep();
    const next = makeWorkOut(draftOf(demos.foghorn), null, ports);
    await Promise.resolve();
    expect(next.shelf.tanks.value.map(({ label }) => label)).toEqual(["two-reel steel"]);
  });

  test("that the browser will not keep is told of, and is not on the shelf", async () => {
    const { workOut, names, says } = begun({ willKeep: false });
    await workOut.shelf.keep();
    expect(names()).toEqual([]);
    expect(says()).toBe(tankWords.notKept);
  });

  test("is no loss where the browser refuses even to look: the shelf is empty", async () => {
    const { ports } = world();
    const refusing = { ...ports.tanks, load: async () => ({ kind: "refused" as const }) };
    const workOut = makeWorkOut(demo, null, { ...ports, tanks: refusing });
    await Promise.resolve();
    expect(workOut.shelf.tanks.value).toEqual([]);
    expect(workOut.notice.value).toBeNull();
    expect(workOut.worksheet.value).toEqual(demos.gullrock);
  });
});

describe("a kept tank taken", () => {
  test("brings its fields and times back, whatever stands there now", async () => {
    const { workOut, says } = begun({ draft: timed });
    await workOut.shelf.keep();
    workOut.type("tank.label", "another");
    workOut.type("tank.volume", "1000 ml");
    workOut.type("tank.room", "18 °C");
    workOut.type("tank.pourIn", "40");
    workOut.type("tank.measured.pourIn", "");
    workOut.type("agitation.perInversion", "5");
    workOut.shelf.take("two-reel steel");
    expect(workOut.draft.value).toEqual({ ...timed, "unit.temperature": "c" });
    expect(says()).toBe(tankWords.taken("two-reel steel"));
  });

  test("is one step: undo restores what stood there, redo takes the tank again", async () => {
    const { workOut, says } = begun({ draft: timed });
    await workOut.shelf.keep();
    workOut.startDemo("foghorn");
    const before = workOut.draft.value;
    workOut.shelf.take("two-reel steel");
    const after = workOut.draft.value;
    expect(workOut.worksheet.value?.tank.pourIn).toBe(9.2);
    workOut.undo();
    expect(workOut.draft.value).toEqual(before);
    expect(says()).toBe(notices.undone);
    workOut.redo();
    expect(workOut.draft.value).toEqual(after);
  });

  test("leaves the film, the developer and the clock as they are", async () => {
    const { workOut } = begun({ draft: timed });
    await workOut.shelf.keep();
    workOut.startDemo("foghorn");
    workOut.shelf.take("two-reel steel");
    const { tank, agitation, ...rest } = workOut.worksheet.value ?? {};
    const { tank: _, agitation: own, ...others } = demos.foghorn;
    expect(rest).toEqual(others);
    expect(agitation).toEqual({ ...own, perInversion: 2.1 });
    expect(tank?.volume).toEqual({ ml: 640 });
  });

  test("that is on no shelf changes nothing", async () => {
    const { workOut } = begun();
    await workOut.shelf.keep();
    workOut.shelf.take("somebody else's");
    workOut.shelf.take("");
    expect(workOut.draft.value).toBe(demo);
    expect(workOut.canUndo.value).toBe(false);
  });
});

describe("a kept tank forgotten", () => {
  test("is gone from the shelf, its times still on the page", async () => {
    const { workOut, names, says } = begun();
    await workOut.shelf.keep();
    workOut.type("tank.label", "blue drum");
    await workOut.shelf.keep();
    expect(names()).toHaveLength(2);
    await workOut.shelf.forget("two-reel steel");
    expect(names()).toEqual(["blue drum"]);
    expect(says()).toBe(tankWords.forgotten("two-reel steel"));
    expect(workOut.draft.value).toEqual({ ...demo, "tank.label": "blue drum" });
  });

  test("comes back by being kept again", async () => {
    const { workOut, names } = begun();
    await workOut.shelf.keep();
    await workOut.shelf.forget("two-reel steel");
    await workOut.shelf.keep();
    expect(names()).toEqual(["two-reel steel"]);
  });

  test("is brought back as it was kept, whatever was typed into its fields before", async () => {
    const { workOut, says } = begun({ draft: timed });
    await workOut.shelf.keep();
    const { tanks, gone } = workOut.shelf;
    const kept = tanks.value;
    workOut.type("tank.pourIn", "40");
    await workOut.shelf.forget("two-reel steel");
    // Of a press that came twice.
    await workOut.shelf.forget("two-reel steel");
    expect([tanks.value, gone.value]).toEqual([[], kept[0]]);
    await workOut.shelf.bringBack();
    expect([tanks.value, gone.value]).toEqual([kept, null]);
    expect(says()).toBe(tankWords.isKept("two-reel steel"));
    expect(workOut.draft.value["tank.pourIn"]).toBe("40");
  });

  test("is not brought back over one that was kept under its name since", async () => {
    const { workOut } = begun();
    await workOut.shelf.keep();
    await workOut.shelf.forget("two-reel steel");
    workOut.type("tank.volume", "700 ml");
    await workOut.shelf.keep();
    expect(workOut.shelf.gone.value).toBeNull();
    await workOut.shelf.bringBack();
    expect(workOut.shelf.tanks.value[0]?.texts["tank.volume"]).toBe("700 ml");
  });

  test("and not to be kept again stays to be brought back", async () => {
    const { ports } = world();
    let willKeep = true;
    const keep: typeof ports.tanks.keep = async (tank) => willKeep && ports.tanks.keep(tank);
    const workOut = makeWorkOut(demo, null, { ...ports, tanks: { ...ports.tanks, keep } });
    await workOut.shelf.keep();
    await workOut.shelf.forget("two-reel steel");
    willKeep = false;
    await workOut.shelf.bringBack();
    expect(workOut.shelf.gone.value?.label).toBe("two-reel steel");
    expect(workOut.notice.value?.says).toBe(tankWords.notKept);
  });

  test("that the browser will not let go is told of, and stays on the shelf", async () => {
    const { ports } = world();
    const tanks = { ...ports.tanks, remove: async () => false };
    const workOut = makeWorkOut(demo, null, { ...ports, tanks });
    await workOut.shelf.keep();
    await workOut.shelf.forget("two-reel steel");
    expect(workOut.shelf.tanks.value).toHaveLength(1);
    expect(workOut.notice.value?.says).toBe(tankWords.notKept);
  });
});
