import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { logbookBase, type OpenBase } from "../../src/logbook/base.ts";
import { everything } from "../../src/logbook/everything.ts";
import { fileOfLogbook, readLogbookText } from "../../src/logbook/logbook-file.ts";
import type { RunRecord } from "../../src/logbook/run-record.ts";
import { runStore } from "../../src/logbook/run-store.ts";
import { settingsShelf } from "../../src/logbook/settings-shelf.ts";
import {
  anyAll,
  browser,
  contentOf,
  fileOf,
  here,
  inside,
  savedAt,
  storage,
  whole,
} from "./browser-by-hand.ts";
import { diesAt, fullAfter } from "./full-disk.ts";
import { firstRun, judgedRun, olderRuns, olderTank } from "./older-versions.ts";

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const acts = (counts: readonly { adds: number; replaces: number; skips: number }[] | null) =>
  counts?.map(({ adds, replaces, skips }) => [adds, replaces, skips]);

describe("everything saved to a file and taken in by an empty browser", () => {
  test("is what it was, whatever was kept", async () => {
    await fc.assert(
      fc.asyncProperty(anyAll, async (kept) => {
        const here = await browser(kept);
        const was = await inside(here.base);
        const text = await fileOf(here.all);
        const there = await browser();
        const taken = await there.all.takeIn(contentOf(text));
        expect(taken.kind).toBe("taken");
        expect(await inside(there.base)).toEqual(was);
        expect(Object.fromEntries(there.kept)).toEqual(kept.settings);
        expect(await fileOf(there.all)).toBe(text);
      }),
      { numRuns: 25 },
    );
  });

  test("changes nothing where it was saved, and says so before", async () => {
    await fc.assert(
      fc.asyncProperty(anyAll, async (kept) => {
        const here = await browser(kept);
        const was = await inside(here.base);
        const content = contentOf(await fileOf(here.all));
        const looked = await here.all.look(content);
        for (const count of looked ?? []) expect([count.adds, count.replaces]).toEqual([0, 0]);
        expect(await here.all.takeIn(content)).toMatchObject({ kind: "taken", counts: looked });
        expect(await inside(here.base)).toEqual(was);
      }),
      { numRuns: 10 },
    );
  });

  test("has its runs listed at once, without a visit in between", async () => {
    const here = await browser({ runs: olderRuns });
    const content = contentOf(await fileOf(here.all));
    const there = await browser();
    const store = runStore(there.open);
    await store.lines();
    await there.all.takeIn(content);
    expect((await store.lines()).lines.map(({ id }) => id)).toEqual(olderRuns.map(({ id }) => id));
  });

  test("holds the runs that the browser would not keep, in the place of what it kept of them before", async () => {
    const here = await browser({ runs: [firstRun, judgedRun] });
    const held = { ...firstRun, note: "held" } as RunRecord;
    const { content, isWhole } = await here.all.all([held]);
    expect(content.kept[0]?.entries.map(({ value }) => value)).toEqual([judgedRun, held]);
    expect(isWhole).toBe(true);
    vi.stubGlobal("indexedDB", undefined);
    const none = everything(
      logbookBase(),
      settingsShelf(() => storage().port),
    );
    const all = await none.all([held]);
    expect(all.isWhole).toBe(false);
    const file = await fileOfLogbook(all.content, savedAt);
    expect(JSON.parse(await file.text()).runs).toEqual([held]);
  });

  test("leaves out what is of another make, which stays where it is", async () => {
    const strange = { ...firstRun, id: "strange", ended: "exploded" };
    const here = await browser({ runs: [firstRun, strange] });
    expect(JSON.parse(await fileOf(here.all)).runs).toEqual([firstRun]);
    expect(await here.base.get("runs", "strange")).toEqual(strange);
  });

  test("keeps what a newer version knew of a run besides", async () => {
    const newer = { ...firstRun, smell: "vinegar" };
    const here = await browser({ runs: [newer] });
    const content = contentOf(await fileOf(here.all));
    const there = await browser();
    await there.all.takeIn(content);
    expect(await there.base.get("runs", firstRun.id)).toEqual(newer);
  });
});

describe("a file of the first versions, a list of runs", () => {
  test("is taken in", async () => {
    const there = await browser();
    const content = contentOf(JSON.stringify({ tankside: 1, runs: olderRuns }, null, 2));
    expect(acts(await there.all.look(content))?.[0]).toEqual([3, 0, 0]);
    await there.all.takeIn(content);
    expect((await runStore(there.open).lines()).lines).toHaveLength(3);
  });
});

describe("of two that are the same", () => {
  const at = (changedAt: number, note: string) => ({ ...firstRun, changedAt, note });
  const file = (...runs: readonly object[]) =>
    contentOf(JSON.stringify({ tankside: 1, version: 2, runs }));

  test("the newer run stays, wherever it stands", async () => {
    const there = await browser({ runs: [at(2000, "here")] });
    const [older, same, newer] = [
      file(at(1000, "old")),
      file(at(2000, "other")),
      file(at(3000, "new")),
    ];
    for (const [content, act] of [
      [older, [0, 0, 1]],
      [same, [0, 0, 1]],
      [newer, [0, 1, 0]],
    ] as const) {
      expect(acts(await there.all.look(content))?.[0]).toEqual(act);
      await there.all.takeIn(content);
    }
    expect(await there.base.get("runs", firstRun.id)).toEqual(at(3000, "new"));
    expect((await runStore(there.open).lines()).lines[0]?.text).toContain("new");
  });

  test("a run of the first versions counts as changed at its last press", async () => {
    const there = await browser({ runs: [firstRun] });
    const last = firstRun.presses.at(-1)?.at ?? 0;
    expect(acts(await there.all.look(file(at(last, "x"))))?.[0]).toEqual([0, 0, 1]);
    expect(acts(await there.all.look(file(at(last + 1, "x"))))?.[0]).toEqual([0, 1, 0]);
  });

  test("the newer tank stays, and the worksheet and the choices that are here", async () => {
    const kept = { "tankside-language": "de" };
    const there = await browser({
      tanks: [{ ...olderTank, keptAt: 5 } as never],
      texts: { title: "here" },
      settings: kept,
    });
    const content = contentOf(
      JSON.stringify({
        tankside: 1,
        version: 2,
        runs: [],
        tanks: [{ ...olderTank, texts: {}, keptAt: 6 }],
        worksheets: [{ name: "worksheet", texts: { title: "there" } }],
        settings: { "tankside-language": "fr", "tankside-delay": "0.2" },
      }),
    );
    expect(acts(await there.all.look(content))).toEqual([
      [0, 0, 0],
      [0, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
      [0, 0, 0],
      [0, 0, 0],
      [1, 0, 1],
    ]);
    await there.all.takeIn(content);
    expect(await there.base.get("tanks", olderTank.label)).toEqual({
      ...olderTank,
      texts: {},
      keptAt: 6,
    });
    expect(await there.base.get("worksheets", "worksheet")).toEqual({ title: "here" });
    expect(Object.fromEntries(there.kept)).toEqual({ ...kept, "tankside-delay": "0.2" });
  });
});

describe("a file that cannot be used", () => {
  const picture = { id: "p", run: "r", alt: "", addedAt: 1, changedAt: 1, width: 2, height: 2 };
  const file = (more: object) => JSON.stringify({ tankside: 1, version: 2, runs: [], ...more });
  const run = (more: object) => file({ runs: [firstRun, { ...judgedRun, ...more }] });

  test.each([
    ["runs[1].presses[0].at", run({ presses: [{ section: "lay-out", at: "noon" }] })],
    ["runs[1].note", run({ note: 7 })],
    ["runs[1].ended", run({ ended: "exploded" })],
    ["runs[1].stars", run({ stars: 6 })],
    [
      "runs[1].negatives.marks[0]",
      run({ negatives: { density: null, edges: null, marks: ["?"] } }),
    ],
    ["runs[1].otherwise[0].bath", run({ otherwise: [{ at: 1, kind: "poured", by: 2 }] })],
    ["runs[1].worksheet.process", run({ worksheet: { ...judgedRun.worksheet, process: "magic" } })],
    [
      "runs[1].worksheet.films[0].count",
      run({
        worksheet: { ...judgedRun.worksheet, films: [{ label: "x", size: "120", count: -1 }] },
      }),
    ],
    ["runs[1]", file({ runs: [firstRun, firstRun] })],
    ["runs[0]", file({ runs: ["a run"] })],
    ["tanks", file({ tanks: {} })],
    ["tanks[0].texts", file({ tanks: [{ label: "a", texts: { volume: 480 } }] })],
    ["worksheets[0].name", file({ worksheets: [{ name: "another", texts: {} }] })],
    ["pictures[0].type", file({ pictures: [{ ...picture, type: "image/svg+xml", image: "" }] })],
    ["pictures[0].image", file({ pictures: [{ ...picture, type: "image/webp", image: "!" }] })],
    [
      "pictures[0].alt",
      file({ pictures: [{ ...picture, alt: 3, type: "image/webp", image: "" }] }),
    ],
    ["settings.theirs", file({ settings: { theirs: "x" } })],
    ["settings.tankside-delay", file({ settings: { "tankside-delay": 0.2 } })],
    ["bottle", file({ bottle: [] })],
    ["version", file({ version: "2" })],
  ])("is refused whole by the place of what is wrong: %s", (path, text) => {
    expect(readLogbookText(text)).toEqual({ kind: "damaged", path });
  });

  test.each([
    "",
    "{",
    "[]",
    "null",
    '"runs"',
    "{}",
    JSON.stringify(firstRun.worksheet),
    '{"tankside":1}',
  ])("and no work of this program's is told apart: %j", (text) => {
    expect(readLogbookText(text)).toEqual({ kind: "foreign" });
  });

  test("is of a newer version, which may hold what nobody here knows", () => {
    expect(readLogbookText(file({ version: 3, bottles: [] }))).toEqual({ kind: "newer" });
  });

  test("cut off anywhere is never taken for a whole one", async () => {
    const here = await browser({ runs: [firstRun], tanks: [olderTank], texts: { title: "x" } });
    const text = await fileOf(here.all);
    for (let end = 0; end < text.trimEnd().length; end += 7)
      expect(readLogbookText(text.slice(0, end))).toEqual({ kind: "foreign" });
  });
});

describe("taking a file in that is ended in the midst of it", () => {
  async function ready() {
    const from = await browser(whole);
    const content = contentOf(await fileOf(from.all));
    const there = await browser(here);
    await runStore(there.open).lines();
    return { there, content, was: await inside(there.base) };
  }

  test("leaves all as it was, at whichever write the page dies", async () => {
    const { there, content } = await ready();
    const count = fullAfter(Number.POSITIVE_INFINITY);
    await there.all.takeIn(content);
    const writes = count();
    vi.restoreAllMocks();
    expect(writes).toBeGreaterThan(8);
    for (let at = 1; at <= writes; at += 1) {
      const next = await ready();
      diesAt(at);
      expect(await next.there.all.takeIn(next.content)).toEqual({
        kind: "not taken",
        why: "refused",
      });
      vi.restoreAllMocks();
      expect(await inside(next.there.base)).toEqual(next.was);
      expect(next.there.kept.size).toBe(0);
      expect((await runStore(next.there.open).lines()).lines).toHaveLength(1);
      // And is no hindrance to another try.
      expect((await next.there.all.takeIn(next.content)).kind).toBe("taken");
    }
  });

  test("for want of room says so, and leaves all as it was", async () => {
    for (const writes of [0, 1, 4, 7]) {
      const { there, content, was } = await ready();
      fullAfter(writes);
      expect(await there.all.takeIn(content)).toEqual({ kind: "not taken", why: "no room" });
      vi.restoreAllMocks();
      expect(await inside(there.base)).toEqual(was);
    }
  });

  test("between the base and the choices of the device, has these kept at the next visit", async () => {
    const { there, content } = await ready();
    const full = { ...storage().port, getItem: () => null } as Storage;
    full.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
    const dying = everything(
      there.open,
      settingsShelf(() => full),
    );
    expect((await dying.takeIn(content)).kind).toBe("taken");
    const next = storage();
    const later = (open: OpenBase) =>
      everything(
        open,
        settingsShelf(() => next.port),
      );
    await later(there.open).finish();
    expect(Object.fromEntries(next.kept)).toEqual({ "tankside-language": "fr" });
    next.kept.clear();
    await later(there.open).finish();
    expect(next.kept.size).toBe(0);
  });

  test("is refused by a browser that keeps nothing, before and after it is asked", async () => {
    const { content } = await ready();
    vi.stubGlobal("indexedDB", undefined);
    const none = everything(
      logbookBase(),
      settingsShelf(() => storage().port),
    );
    expect(await none.look(content)).toBeNull();
    expect(await none.takeIn(content)).toEqual({ kind: "not taken", why: "refused" });
    await none.finish();
  });
});
