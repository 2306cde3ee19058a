// @vitest-environment happy-dom
import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { logbookBase } from "../../src/logbook/base.ts";
import { stateOf } from "../../src/logbook/bottle-state.ts";
import { bottleStore } from "../../src/logbook/bottle-store.ts";
import type { RunRecord } from "../../src/logbook/run-record.ts";
import { runStore } from "../../src/logbook/run-store.ts";
import { shelfHere } from "../../src/main-shelf.tsx";
import { demos } from "../../src/ui/demo.ts";
import { bottleOf, fixerB } from "./shelf-by-hand.ts";

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => vi.unstubAllGlobals());

const { baths } = demos.gullrock;
const record: RunRecord = {
  id: "run 1",
  begunAt: new Date(2026, 4, 14, 9).getTime(),
  worksheet: { ...demos.gullrock, baths: { ...baths, fixer: { bottle: "Fixer B" } } },
  developmentSeconds: 569,
  presses: [],
  ended: "done",
  note: "",
};

async function films(): Promise<number | null> {
  const found = await bottleStore(logbookBase()).load();
  const [bottle] = found.kind === "found" ? found.bottles : [];
  return bottle ? stateOf(bottle).films : null;
}

test("a run that ends in a page, and is told again by the next one, is on the shelf once", async () => {
  await bottleStore(logbookBase()).begin(bottleOf(fixerB));
  const runs = runStore(logbookBase());
  await runs.keep(record);
  const first = shelfHere(logbookBase(), async () => runs);
  first.drawnBy(record);
  first.drawnBy(record);
  await vi.waitFor(async () => expect(await films()).toBe(2));
  const next = shelfHere(logbookBase(), async () => runStore(logbookBase()));
  next.drawnBy(record);
  await (await next.shelf()).draw(record);
  expect(await films()).toBe(2);
});

test("a run that ended while its page could not write is on the shelf once it is opened", async () => {
  await bottleStore(logbookBase()).begin(bottleOf(fixerB));
  const runs = runStore(logbookBase());
  await runs.keep(record);
  await shelfHere(logbookBase(), async () => runs).shelf();
  await vi.waitFor(async () => expect(await films()).toBe(2));
});
