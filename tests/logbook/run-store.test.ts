import "fake-indexeddb/auto";
import { IDBFactory, IDBObjectStore } from "fake-indexeddb";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { logbookBase } from "../../src/logbook/base.ts";
import type { Picture } from "../../src/logbook/picture.ts";
import { pictureStore } from "../../src/logbook/picture-store.ts";
import { lineOf } from "../../src/logbook/run-line.ts";
import type { RunRecord } from "../../src/logbook/run-record.ts";
import { runStore } from "../../src/logbook/run-store.ts";
import { demos } from "../../src/ui/demo.ts";
import { fullAfter } from "./full-disk.ts";

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const begunAt = Date.UTC(2026, 2, 12, 19, 42);
const thursday: RunRecord = {
  id: "thursday",
  begunAt,
  worksheet: demos.gullrock,
  developmentSeconds: 569,
  presses: [{ section: "lay-out", at: begunAt }],
  ended: null,
  note: "",
};
const friday: RunRecord = { ...thursday, id: "friday", begunAt: begunAt + 86_400_000 };

const now = begunAt + 5_000_000;
/** As it is kept: with when. */
const at = (run: RunRecord): RunRecord => ({ ...run, changedAt: now });
const visit = () => runStore(logbookBase(), () => now);

/** All that a store has, whole. */
async function allOf(store: ReturnType<typeof runStore>) {
  const found = await store.lines();
  const runs = await store.read(found.lines.map(({ id }) => id));
  expect(found.lines).toEqual(runs.map(lineOf));
  return { ...found, lines: runs };
}
const found = (...lines: readonly RunRecord[]) => ({
  kind: "found",
  lines,
  onlyHere: [],
  unread: 0,
});
const image = new Blob(["an image"], { type: "image/webp" });
const picture: Picture = {
  id: "p",
  run: "thursday",
  alt: "thin",
  addedAt: 1,
  changedAt: 1,
  width: 2,
  height: 3,
  image,
};

describe("the kept runs", () => {
  test("are there on the next visit, newest first", async () => {
    const store = visit();
    expect(await store.keep(friday)).toBe("kept");
    expect(await store.keep(thursday)).toBe("kept");
    expect(await allOf(visit())).toEqual(found(at(friday), at(thursday)));
  });

  test("have their newest told first, whatever else is kept, and those that were refused among them", async () => {
    const open = logbookBase();
    const store = runStore(open, () => now);
    await (await open()).put("runs", { ...friday, begunAt: begunAt * 2, ended: "exploded" }, "x");
    await store.keep(thursday);
    await store.keep(friday);
    expect(await store.newest(1)).toEqual([at(friday)]);
    expect(await store.newest(9)).toEqual([at(friday), at(thursday)]);
    fullAfter(0);
    const saturday = { ...friday, id: "saturday", begunAt: friday.begunAt + 1 };
    await store.keep(saturday);
    expect(await store.newest(2)).toEqual([at(saturday), at(friday)]);
  });

  test("have their newest told just so once all lines were read, whatever another page did since", async () => {
    const store = visit();
    const runs = [0, 1, 2, 3, 4].map((i) => ({ ...friday, id: `${i}`, begunAt: begunAt + i }));
    for (const run of runs) await store.keep(run);
    await store.lines();
    const newest = async (count: number) => (await store.newest(count)).map(({ id }) => id);
    expect(await newest(3)).toEqual(["4", "3", "2"]);
    await visit().keep({ ...friday, id: "later", begunAt: begunAt + 9 });
    expect(await newest(3)).toEqual(["later", "4", "3"]);
    for (const id of ["4", "3"]) await visit().takeOut(id);
    expect(await newest(3)).toEqual(["later", "2", "1"]);
    expect(await newest(9)).toEqual(["later", "2", "1", "0"]);
  });

  test("are known from the last reading, until this page writes, and what another wrote is heard of by reading", async () => {
    const store = visit();
    expect(store.known()).toBeNull();
    await store.keep(thursday);
    const read = await store.lines();
    expect(store.known()).toEqual(read);
    await visit().keep(friday);
    expect(store.known()).toEqual(read);
    expect((await store.lines()).lines.map(({ id }) => id)).toEqual([friday.id, thursday.id]);
    const acts = [
      () => store.judge(friday.id, { note: "thin" }),
      () => store.takeOut(friday.id),
      () => store.keep(friday),
    ];
    for (const act of acts) {
      // However the two overlap.
      const [before] = await Promise.all([act(), store.lines()]);
      expect(before).not.toBeNull();
      expect(store.known()).toBeNull();
      expect(store.known() ?? (await store.lines())).toEqual(await visit().lines());
    }
  });

  test("are none on the first visit", async () => {
    expect(await visit().lines()).toEqual(found());
    expect(await visit().newest(3)).toEqual([]);
  });

  test("take on what a run does next, and leave what was said of it as it was", async () => {
    const store = visit();
    await store.keep(thursday);
    const said = {
      note: "  a little thin\n",
      negatives: { density: "thin", edges: null, marks: ["spots"] },
      stars: 4,
    } as const;
    expect(await store.judge("thursday", said)).toBe("kept");
    const later: RunRecord = {
      ...thursday,
      presses: [...thursday.presses, { section: "temper", at: begunAt + 60_000 }],
      ended: "done",
    };
    await store.keep(later);
    expect(await allOf(store)).toEqual(found(at({ ...later, ...said })));
  });

  test("lose neither a press nor a note when both come at once", async () => {
    const store = visit();
    await store.keep(thursday);
    await Promise.all([
      store.keep({ ...thursday, ended: "left" }),
      store.judge("thursday", { note: "good" }),
      store.keep({ ...thursday, ended: "done" }),
    ]);
    expect(await allOf(store)).toEqual(found(at({ ...thursday, ended: "done", note: "good" })));
  });

  test("keep what a newer version knew of them besides", async () => {
    const store = visit();
    const newer = { ...thursday, smell: "vinegar" } as RunRecord;
    await store.keep(newer);
    await store.keep({ ...thursday, ended: "done" });
    await store.judge("thursday", { stars: 2 });
    expect(await store.read(["thursday"])).toEqual([at({ ...newer, ended: "done", stars: 2 })]);
  });

  test("can be taken out with their pictures, and put back as they were", async () => {
    const open = logbookBase();
    const [store, pictures] = [runStore(open, () => now), pictureStore(open)];
    await store.keep(thursday);
    await store.keep(friday);
    await pictures.keep(picture);
    await pictures.keep({ ...picture, run: "friday", alt: "another's" });
    const taken = await store.takeOut("thursday");
    expect(taken).toEqual({
      run: at(thursday),
      pictures: [{ ...picture, image: expect.any(Blob) }],
    });
    expect(await allOf(store)).toEqual(found(at(friday)));
    expect(await pictures.of("thursday")).toEqual([]);
    expect(await store.judge("thursday", { note: "too late" })).toBe("refused");
    expect(await store.takeOut("thursday")).toBeNull();
    if (taken === null) throw new Error("nothing was taken out");
    expect(await store.putBack(taken)).toBe("kept");
    expect(await allOf(store)).toEqual(found(at(friday), at(thursday)));
    const back = await pictures.of("thursday");
    expect(back.map(({ alt }) => alt)).toEqual(["thin"]);
    expect(await back[0]?.image.text()).toBe("an image");
  });

  test("of another make are counted, and left as they are", async () => {
    const open = logbookBase();
    const base = await open();
    const strange = [
      { ...thursday, worksheet: { tankside: 2 } },
      { ...thursday, begunAt: Number.NaN },
      { ...thursday, presses: [{ at: 1 }] },
      { ...thursday, ended: "exploded" },
      { ...thursday, stars: 6 },
      "a string",
    ];
    for (const [i, record] of strange.entries()) await base.put("runs", record, `strange ${i}`);
    const store = runStore(open, () => now);
    await store.keep(friday);
    expect(await allOf(store)).toEqual({ ...found(at(friday)), unread: strange.length });
    expect(await base.get("runs", "strange 5")).toBe("a string");
  });

  test("are not read again where nothing has changed, and always where anything has, whoever did it", async () => {
    const open = logbookBase();
    const [store, elsewhere] = [runStore(open, () => now), runStore(logbookBase(), () => now)];
    await store.keep(thursday);
    const whole = vi.spyOn(IDBObjectStore.prototype, "getAll");
    const lines = async () => {
      whole.mockClear();
      return (await store.lines()).lines.map(({ text }) => text.split("\n").at(-1));
    };
    expect(await lines()).toEqual([""]);
    expect(await lines()).toEqual([""]);
    expect(whole).not.toHaveBeenCalled();
    await elsewhere.judge("thursday", { note: "thin" });
    expect(await lines()).toEqual(["thin"]);
    await elsewhere.keep(friday);
    expect(await lines()).toEqual(["", "thin"]);
    const taken = await elsewhere.takeOut("thursday");
    expect(await lines()).toEqual([""]);
    if (taken !== null) await elsewhere.putBack(taken);
    expect(await lines()).toEqual(["", "thin"]);
    expect(whole).toHaveBeenCalled();
    expect(await lines()).toEqual(["", "thin"]);
    expect(whole).not.toHaveBeenCalled();
  });
});

describe("a browser that keeps nothing", () => {
  test("has the runs of this visit held for it, note and all, and says that it refused", async () => {
    vi.stubGlobal("indexedDB", undefined);
    const store = visit();
    expect(await store.keep(thursday)).toBe("refused");
    expect(await store.judge("thursday", { note: "dense" })).toBe("refused");
    expect(await store.keep({ ...thursday, ended: "done" })).toBe("refused");
    const held = at({ ...thursday, ended: "done", note: "dense" });
    expect(await allOf(store)).toEqual({ kind: "refused", lines: [held] });
    expect(await store.takeOut("thursday")).toEqual({ run: held, pictures: [] });
    expect(await store.takeOut("thursday")).toBeNull();
    expect(await store.lines()).toEqual({ kind: "refused", lines: [] });
    expect(await store.putBack({ run: held, pictures: [] })).toBe("refused");
    expect(await allOf(store)).toEqual({ kind: "refused", lines: [held] });
  });

  test("that throws by the very name of its storage is borne as well", async () => {
    vi.stubGlobal("indexedDB", {
      open() {
        throw new DOMException("The operation is insecure.", "SecurityError");
      },
    });
    expect(await visit().keep(thursday)).toBe("refused");
    expect(await visit().lines()).toEqual({ kind: "refused", lines: [] });
  });

  test("that never answers is given up", async () => {
    vi.useFakeTimers();
    vi.stubGlobal("indexedDB", { open: () => new EventTarget() });
    const lines = visit().lines();
    await vi.advanceTimersByTimeAsync(3000);
    expect(await lines).toEqual({ kind: "refused", lines: [] });
    vi.useRealTimers();
  });
});

describe("a base that another page holds for longer than anyone waits", () => {
  test("does nothing afterwards of what was said not to be done", async () => {
    const open = logbookBase();
    const [store, pictures] = [runStore(open, () => now), pictureStore(open)];
    await store.keep(thursday);
    await pictures.keep(picture);
    const base = await open();
    const shelves = ["runs", "lines", "pictures", "notes"] as const;
    const held = base.transaction([...shelves], "readwrite");
    let letGo = false;
    const holding = (async () => {
      while (!letGo) await held.objectStore("notes").get("x");
    })();
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
    const acts = [
      store.takeOut("thursday"),
      pictures.remove(picture),
      store.judge("thursday", { note: "thin" }),
    ];
    for (let waited = 0; waited < 6; waited += 1) {
      await vi.advanceTimersByTimeAsync(3000);
      await new Promise((resolve) => setImmediate(resolve));
    }
    vi.useRealTimers();
    letGo = true;
    await holding;
    expect(await Promise.all(acts)).toEqual([null, false, "refused"]);
    expect(await base.get("runs", "thursday")).toEqual(at(thursday));
    expect(await pictures.of("thursday")).toHaveLength(1);
  });
});

describe("a disk that is full", () => {
  test("is told of, and neither a run nor what was said before is lost", async () => {
    const store = visit();
    await store.keep(thursday);
    await store.judge("thursday", { note: "good" });
    fullAfter(0);
    expect(await store.judge("thursday", { note: "and more" })).toBe("no room");
    expect(await store.keep({ ...thursday, ended: "done" })).toBe("no room");
    expect(await store.keep(friday)).toBe("no room");
    // The page that was refused holds them still, and keeps them once there is room.
    expect(await store.lines()).toMatchObject({ onlyHere: ["thursday", "friday"] });
    const ended = at({ ...thursday, ended: "done", note: "and more" });
    expect(store.held()).toEqual([ended, at(friday)]);
    vi.restoreAllMocks();
    expect(await allOf(visit())).toEqual(found(at({ ...thursday, note: "good" })));
    expect(await allOf(store)).toEqual(found(at(friday), ended));
    expect(await allOf(visit())).toEqual(found(at(friday), ended));
    expect(store.held()).toEqual([]);
  });

  test("takes nothing from what was said before, by a press that it has no room for", async () => {
    const judged = { note: "good", stars: 4 } as const;
    await visit().keep(thursday);
    await visit().judge("thursday", judged);
    const store = visit();
    const [later, last] = [
      { ...thursday, ended: "left" } as const,
      { ...thursday, ended: "done" } as const,
    ];
    fullAfter(0);
    expect(await store.keep(later)).toBe("no room");
    expect(store.held()).toEqual([at({ ...later, ...judged })]);
    vi.restoreAllMocks();
    // Said by another page meanwhile.
    await visit().judge("thursday", { stars: 5 });
    expect(await store.keep(last)).toBe("kept");
    expect(await allOf(visit())).toEqual(found(at({ ...last, ...judged, stars: 5 })));
  });

  test("holds what it had no room for to be said, and says it with the next press", async () => {
    const store = visit();
    await store.keep(thursday);
    fullAfter(0);
    expect(await store.judge("thursday", { note: "thin" })).toBe("no room");
    expect(await store.judge("thursday", { stars: 2 })).toBe("no room");
    expect(store.held()).toEqual([at({ ...thursday, note: "thin", stars: 2 })]);
    vi.restoreAllMocks();
    await store.keep({ ...thursday, ended: "done" });
    const kept = at({ ...thursday, ended: "done", note: "thin", stars: 2 });
    expect(await allOf(visit())).toEqual(found(kept));
  });

  test("puts no run back without its pictures", async () => {
    const open = logbookBase();
    const [store, pictures] = [runStore(open, () => now), pictureStore(open)];
    await store.keep(thursday);
    await pictures.keep(picture);
    const taken = await store.takeOut("thursday");
    if (taken === null) throw new Error("nothing was taken out");
    fullAfter(2);
    expect(await store.putBack(taken)).toBe("no room");
    vi.restoreAllMocks();
    expect(await store.lines()).toEqual(found());
    expect(await store.putBack(taken)).toBe("kept");
    expect(await pictures.of("thursday")).toHaveLength(1);
  });

  test("in the midst of a run and its line keeps neither", async () => {
    const store = visit();
    fullAfter(1);
    expect(await store.keep(thursday)).toBe("no room");
    vi.restoreAllMocks();
    expect(await visit().lines()).toEqual(found());
    expect(await visit().read(["thursday"])).toEqual([]);
  });

  test("keeps no picture, says so, and loses none that was there", async () => {
    const pictures = pictureStore(logbookBase());
    await pictures.keep(picture);
    fullAfter(0);
    expect(await pictures.keep({ ...picture, id: "q" })).toBe("no room");
    vi.restoreAllMocks();
    expect((await pictures.of("thursday")).map(({ id }) => id)).toEqual(["p"]);
    expect(await pictures.remove(picture)).toBe(true);
    expect(await pictures.of("thursday")).toEqual([]);
  });
});
