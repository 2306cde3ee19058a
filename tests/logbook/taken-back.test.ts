// A file that was taken in, taken back whole.
import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { Base } from "../../src/logbook/base.ts";
import { everything } from "../../src/logbook/everything.ts";
import { CHANGED } from "../../src/logbook/line-blocks.ts";
import type { Picture } from "../../src/logbook/picture.ts";
import { runStore } from "../../src/logbook/run-store.ts";
import { settingsShelf } from "../../src/logbook/settings-shelf.ts";
import { tankStore } from "../../src/logbook/tank-store.ts";
import { anyBottle } from "./any-bottle.ts";
import {
  type All,
  anyAll,
  browser,
  contentOf,
  fileOf,
  here,
  storage,
  whole,
} from "./browser-by-hand.ts";
import { abortsAt } from "./full-disk.ts";
import { firstRun, judgedRun } from "./older-versions.ts";

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

type Browser = Awaited<ReturnType<typeof browser>>;

/**
 * Every shelf that there is, with the lines and the notes, bytes of images and all; but for the note that something was
 * changed, which it was.
 */
async function wholeOf(base: Base) {
  await base.delete("notes", CHANGED);
  const shelves = [...base.objectStoreNames];
  const held = await Promise.all(
    shelves.map(async (shelf) => {
      const [keys, values] = await Promise.all([base.getAllKeys(shelf), base.getAll(shelf)]);
      return [shelf, keys, await Promise.all(values.map(withBytes))];
    }),
  );
  return held;
}

async function withBytes(value: unknown): Promise<unknown> {
  const image = (value as Partial<Picture>).image;
  if (!(image instanceof Blob)) return value;
  const bytes = [...new Uint8Array(await image.arrayBuffer())];
  return { ...(value as Picture), image: { type: image.type, bytes } };
}

const stateOf = async ({ base, kept }: Browser) => ({
  base: await wholeOf(base),
  settings: Object.fromEntries(kept),
});

/** A browser with the lines of its runs made, as after any visit to Write up. */
async function visited(all: All, bottles: readonly { readonly id: string }[] = []) {
  const it = await browser({ ...all, bottles: [...(all.bottles ?? []), ...bottles] });
  await runStore(it.open).lines();
  return it;
}

async function takenInto(it: Browser, text: string) {
  const taken = await it.all.takeIn(contentOf(text));
  if (taken.kind !== "taken") throw new Error("it was to be taken in");
  return taken.before;
}

/** With runs, tanks and bottles of the one that are newer in the other, so that every act comes about. */
const anyTwo = fc
  .tuple(anyAll, anyAll, fc.array(anyBottle, { maxLength: 3 }), fc.nat())
  .map(([here, there, bottles, which]) => {
    const newer = here.runs
      .filter((_, i) => (which >> i) % 2 === 1)
      .map((run) => ({ ...run, note: `${run.note} more`, changedAt: Date.UTC(2041, 0) }));
    const runs = there.runs.filter(({ id }) => !newer.some((run) => run.id === id));
    const longer = bottles.map((bottle) => ({ ...bottle, entries: bottle.entries.slice(0, 1) }));
    return {
      here,
      there: { ...there, runs: [...runs, ...newer] },
      longer: bottles,
      shorter: which % 3 === 0 ? [] : longer,
    };
  });

test("A file taken in and taken back leaves all as it was, whatever was kept and whatever came", async () => {
  let changed = 0;
  await fc.assert(
    fc.asyncProperty(anyTwo, async ({ here, there, longer, shorter }) => {
      const from = await visited(there, longer);
      const text = await fileOf(from.all);
      const it = await visited(here, shorter);
      const was = await stateOf(it);
      const before = await takenInto(it, text);
      changed += before.changed.length;
      expect(await it.all.takeBack(before)).toEqual({ kind: "taken back", stayed: 0 });
      expect(await stateOf(it)).toEqual(was);
    }),
    { numRuns: 25 },
  );
  expect(changed).toBeGreaterThan(25);
});

async function takenIn() {
  const text = await fileOf((await browser(whole)).all);
  const it = await visited(here);
  const was = await stateOf(it);
  const before = await takenInto(it, text);
  return { it, was, before };
}

describe("Taking a file back that is ended in the midst of it", () => {
  test("leaves all as the file made it, at whichever write the page dies, and can be tried again", async () => {
    const first = await takenIn();
    const count = abortsAt(Number.POSITIVE_INFINITY);
    await first.it.all.takeBack(first.before);
    const writes = count();
    vi.restoreAllMocks();
    expect(writes).toBeGreaterThan(8);
    for (let at = 1; at <= writes; at += 1) {
      const { it, was, before } = await takenIn();
      const is = await stateOf(it);
      abortsAt(at);
      const back = await it.all.takeBack(before);
      vi.restoreAllMocks();
      if (back.kind === "not taken back") {
        expect(await stateOf(it)).toEqual(is);
        expect(await it.all.takeBack(before)).toEqual({ kind: "taken back", stayed: 0 });
      } else await it.all.finish();
      // The last write is that of the choices, once all else is done.
      expect(back.kind).toBe(at < writes ? "not taken back" : "taken back");
      expect(await stateOf(it)).toEqual(was);
    }
  });

  test("between the base and the choices of the device, has these taken out at the next visit", async () => {
    const { it, was, before } = await takenIn();
    const full = { ...storage(Object.fromEntries(it.kept)).port } as Storage;
    full.getItem = () => {
      throw new DOMException("gone", "SecurityError");
    };
    const dying = everything(
      it.open,
      settingsShelf(() => full),
    );
    expect((await dying.takeBack(before)).kind).toBe("taken back");
    expect(it.kept.size).toBe(1);
    await it.all.finish();
    expect(await stateOf(it)).toEqual(was);
  });

  test("is refused by a browser that has no base any more", async () => {
    const { it, before } = await takenIn();
    const none = everything(
      () => Promise.reject(new Error("gone")),
      settingsShelf(() => storage().port),
    );
    expect(await none.takeBack(before)).toEqual({ kind: "not taken back" });
    expect(await it.base.get("runs", firstRun.id)).toBeDefined();
  });
});

describe("What was changed after a file was taken in", () => {
  test("stays when it is taken back, and is counted; the rest goes", async () => {
    const { it, before } = await takenIn();
    await runStore(it.open).judge(firstRun.id, { note: "typed since" });
    it.kept.set("tankside-language", "de");
    expect(await it.all.takeBack(before)).toEqual({ kind: "taken back", stayed: 1 });
    expect(await it.base.get("runs", firstRun.id)).toMatchObject({ note: "typed since" });
    const { lines } = await runStore(it.open).lines();
    expect(lines.map(({ id }) => id)).toEqual([judgedRun.id, firstRun.id]);
    expect(lines[0]?.text).toContain("here");
    expect(await it.base.get("worksheets", "worksheet")).toBeUndefined();
    expect(Object.fromEntries(it.kept)).toEqual({ "tankside-language": "de" });
  });

  test("stays out where it was taken out", async () => {
    const { it, before } = await takenIn();
    await runStore(it.open).takeOut(firstRun.id);
    expect((await it.all.takeBack(before)).kind).toBe("taken back");
    expect(await it.base.getAllKeys("runs")).toEqual([judgedRun.id]);
  });

  test("and is none of the file's is not touched", async () => {
    const { it, before } = await takenIn();
    await tankStore(it.open).keep({ label: "mine", texts: {} });
    await it.all.takeBack(before);
    expect(await it.base.getAllKeys("tanks")).toEqual(["mine"]);
  });
});

test("A file taken in and back again and again comes and goes whole each time", async () => {
  const { it, was, before } = await takenIn();
  await it.all.takeBack(before);
  const text = await fileOf((await browser(whole)).all);
  const again = await takenInto(it, text);
  expect(await it.base.count("runs")).toBe(3);
  expect(Object.fromEntries(it.kept)).toEqual(whole.settings);
  await it.all.takeBack(again);
  expect(await stateOf(it)).toEqual(was);
});
