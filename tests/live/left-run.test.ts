// A run whose page died, found again by other pages of the same browser: who may go on with it, and who may close it.
import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { beforeEach, describe, expect, test } from "vitest";
import { browserJournal } from "../../src/live/browser-journal.ts";
import type { Entry } from "../../src/live/journal.ts";
import { openLeftRun } from "../../src/live/left-run.ts";
import { planOf } from "../../src/plan/plan.ts";
import { gullrock } from "../plan/worksheets.ts";
import { fakeLocks } from "./locks-by-hand.ts";

const RUN = "tankside-run";
const header = { id: "a", worksheet: gullrock, plan: planOf(gullrock), begunAt: 1_700_000_000_000 };
const pressed: Entry = {
  life: "first",
  steady: 4,
  wall: header.begunAt + 1000,
  kind: "pressed",
  section: "rinse",
};

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

/** A page of a browser in which a run was begun, and is led for as long as the lock is held. */
async function page({ locks = fakeLocks(), after = (_: number, act: () => void) => act() } = {}) {
  const journal = browserJournal();
  await journal.begin(header);
  await journal.add(header.id, pressed);
  const led: (readonly Entry[])[] = [];
  const left = openLeftRun({
    journal,
    audio: {
      context: () => ({}) as AudioContext,
      clocks: () => ({ life: "second", steady: 9, wall: header.begunAt + 60_000, audio: 0 }),
    },
    locks: locks.manager,
    after,
    isOn: () => false,
    awake: async () => {},
    fetchSounds: async () => {},
    async lead(_, entries) {
      led.push(entries);
      return true;
    },
  });
  return { left, journal, locks, led };
}

describe("A run that never ended", () => {
  test("is found, gone on with from its journal, or closed for good", async () => {
    const { left, journal, led } = await page();
    expect(await left.unfinished()).toMatchObject({ begunAt: header.begunAt, isFresh: false });
    expect(await left.goOnWithUnfinished()).toBe("begun");
    expect(led.map((entries) => entries[0])).toEqual([pressed]);
    expect(await left.dropUnfinished()).toBe("dropped");
    expect(await journal.unfinished()).toBeNull();
    expect(await left.unfinished()).toBeNull();
    expect(await left.dropUnfinished()).toBe("gone");
  });

  test("is nobody else's while a page leads it: not found, not gone on with, and nothing is written into it", async () => {
    const { left, journal, locks, led } = await page();
    const end = locks.hold(RUN);
    expect(await left.unfinished()).toBeNull();
    expect(await left.goOnWithUnfinished()).toBe("elsewhere");
    expect(await left.dropUnfinished()).toBe("elsewhere");
    expect(led).toEqual([]);
    expect((await journal.unfinished())?.entries).toEqual([pressed]);
    end();
    expect(await left.unfinished()).not.toBeNull();
  });

  test("is found though the page that died holds it a moment longer", async () => {
    const locks = fakeLocks();
    const end = locks.hold(RUN);
    let looks = 0;
    const { left } = await page({
      locks,
      after(_, act) {
        looks += 1;
        if (looks === 3) end();
        act();
      },
    });
    expect(await left.unfinished()).not.toBeNull();
    expect(looks).toBe(3);
  });

  test("is not closed where another page went on with it while it was being looked up", async () => {
    const { left, journal, locks } = await page();
    const { query } = locks.manager;
    locks.manager.query = async () => {
      const before = await query();
      locks.hold(RUN);
      return before;
    };
    expect(await left.dropUnfinished()).toBe("elsewhere");
    expect((await journal.unfinished())?.entries).toEqual([pressed]);
  });

  test("lets go of the run behind closing it, so that another can begin", async () => {
    const { left, locks } = await page();
    await left.dropUnfinished();
    expect(() => locks.hold(RUN)).not.toThrow();
  });
});
