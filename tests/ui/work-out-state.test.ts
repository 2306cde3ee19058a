import { describe, expect, test } from "vitest";
import type { KeptTexts } from "../../src/logbook/worksheet-store.ts";
import { demos } from "../../src/ui/demo.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { notices } from "../../src/ui/words/en/frame.ts";
import { makeWorkOut, openWorkOut } from "../../src/ui/work-out-state.ts";
import { textOfFile } from "../../src/ui/worksheet-file.ts";
import { world } from "./ports.ts";

const demo = draftOf(demos.gullrock);

function begun() {
  const it = world();
  return { ...it, workOut: makeWorkOut(demo, null, it.ports) };
}

describe("undo", () => {
  test("brings a row back where it stood, and keeps what was typed since", () => {
    const { workOut } = begun();
    workOut.removeRow("developer.leaflet", 1);
    workOut.type("title", "Friday");
    workOut.undo();
    expect(workOut.draft.value).toMatchObject({
      "developer.leaflet[1].temperature": "68 °F",
      "developer.leaflet[2].temperature": "70 °F",
      title: "Friday",
    });
  });

  test("brings the whole worksheet back after a fresh start, and redo the fresh start", () => {
    const { workOut } = begun();
    workOut.type("title", "Mine");
    workOut.startEmpty();
    expect(workOut.draft.value.title).toBeUndefined();
    workOut.undo();
    expect(workOut.draft.value.title).toBe("Mine");
    expect(workOut.canUndo.value).toBe(false);
    workOut.redo();
    expect(workOut.draft.value.title).toBeUndefined();
  });

  test("gives back what was typed into a row that undo had taken away", () => {
    const { workOut } = begun();
    workOut.addRow("films", 1);
    workOut.type("films[1].label", "Foghorn 400");
    workOut.undo();
    workOut.redo();
    expect(workOut.draft.value["films[1].label"]).toBe("Foghorn 400");
  });
});

describe("what was put and is taken back", () => {
  test("leaves the page, its undo and what is kept as if it had never come", () => {
    const { workOut, kept, pass } = begun();
    workOut.type("title", "Mine");
    pass(1000);
    const before = workOut.draft.value;
    const came = draftOf(demos.foghorn);
    workOut.put(came, null);
    workOut.takeBack(came, before);
    pass(1000);
    expect(workOut.draft.value).toBe(before);
    expect(workOut.canUndo.value).toBe(false);
    expect(kept.map(({ title }) => title)).toEqual(["Mine"]);
  });

  test("stays where it was changed since", () => {
    const { workOut } = begun();
    const came = draftOf(demos.foghorn);
    workOut.put(came, null);
    workOut.type("title", "Changed");
    workOut.takeBack(came, demo);
    expect(workOut.draft.value.title).toBe("Changed");
    expect(workOut.canUndo.value).toBe(true);
  });
});

describe("a file", () => {
  test("that is good takes the page, and undo brings the last worksheet back", () => {
    const { workOut } = begun();
    workOut.open("foghorn.json", textOfFile(demos.foghorn));
    expect(workOut.worksheet.value).toEqual(demos.foghorn);
    workOut.undo();
    expect(workOut.worksheet.value).toEqual(demos.gullrock);
  });

  test("that is bad is refused with every fault, and nothing of the page is changed", () => {
    const { workOut } = begun();
    const bad = { ...demos.gullrock, tank: { ...demos.gullrock.tank, pourIn: "10" }, colour: 1 };
    workOut.open("bad.json", JSON.stringify(bad));
    expect(workOut.draft.value).toBe(demo);
    expect(workOut.canUndo.value).toBe(false);
    expect(workOut.notice.value?.says).toBe(notices.notWorksheet("bad.json"));
    expect(workOut.notice.value?.lines).toEqual([
      expect.stringMatching(/^tank\.pourIn holds "10"; it may hold a number/),
      expect.stringMatching(/^colour holds 1; it may hold nothing/),
    ]);
  });

  test("that is no JSON is refused in a sentence", () => {
    const { workOut } = begun();
    workOut.open("photo.json", "\u0089PNG");
    expect(workOut.notice.value?.lines).toHaveLength(1);
    expect(workOut.draft.value).toBe(demo);
  });

  test("is saved whole, under the worksheet's own name", () => {
    const { workOut, saved } = begun();
    workOut.save();
    expect(saved).toEqual([
      { name: "gullrock-light-thursday-evening.json", text: textOfFile(demos.gullrock) },
    ]);
  });

  test("is not saved from a page with faults, which are named instead", () => {
    const { workOut, saved } = begun();
    workOut.type("tank.volume", "");
    workOut.type("developer.temperature", "warm");
    workOut.save();
    expect(saved).toEqual([]);
    expect(workOut.notice.value?.fields).toEqual(["developer.temperature", "tank.volume"]);
  });
});

describe("a fault while typing", () => {
  test("waits until the field is left, or for a pause", () => {
    const { workOut, pass } = begun();
    workOut.type("tank.volume", "6");
    workOut.type("tank.volume", "6x");
    expect(workOut.typing.value).toBe("tank.volume");
    pass(1199);
    expect(workOut.typing.value).toBe("tank.volume");
    pass(1);
    expect(workOut.typing.value).toBeNull();
  });

  test("once shown, it stays in view until it is mended", () => {
    const { workOut, pass } = begun();
    workOut.type("tank.volume", "6x");
    workOut.leave();
    expect(workOut.typing.value).toBe("tank.volume");
    pass(250);
    workOut.type("tank.volume", "6xy");
    expect(workOut.typing.value).toBeNull();
    expect(workOut.reading.value.faults["tank.volume"]).toContain("6xy");
  });
});

describe("keeping", () => {
  test("waits for a pause in the typing, and keeps the last of it", () => {
    const { workOut, kept, pass } = begun();
    workOut.type("title", "F");
    pass(399);
    workOut.type("title", "Fr");
    pass(399);
    expect(kept).toEqual([]);
    pass(1);
    expect(kept.map(({ title }: KeptTexts) => title)).toEqual(["Fr"]);
  });

  test("happens at once when the page goes away, and only if there is something to keep", () => {
    const { workOut, kept } = begun();
    workOut.keepNow();
    workOut.type("title", "F");
    workOut.keepNow();
    workOut.keepNow();
    expect(kept).toHaveLength(1);
  });

  test("a kept page opens as it was typed, with its bad texts", async () => {
    const { ports } = world({ kind: "found", texts: { ...demo, "tank.volume": "lots" } });
    const workOut = await openWorkOut(ports);
    expect(workOut.draft.value["tank.volume"]).toBe("lots");
    expect(workOut.notice.value).toBeNull();
  });

  test("a first visit opens the practice worksheet and says so", async () => {
    const workOut = await openWorkOut(world().ports);
    expect(workOut.worksheet.value).toEqual(demos.gullrock);
    expect(workOut.notice.value?.says).toBe(notices.practice);
  });

  test("a browser that will not keep anything is told of, and the page goes on", async () => {
    const { ports, pass } = world({ kind: "refused" }, false);
    const workOut = await openWorkOut(ports);
    expect(workOut.notice.value?.says).toBe(notices.notKept);
    workOut.startEmpty();
    pass(400);
    await Promise.resolve();
    expect(workOut.notice.value?.says).toBe(notices.notKept);
    expect(workOut.worksheet.value).toBeNull();
  });
});
