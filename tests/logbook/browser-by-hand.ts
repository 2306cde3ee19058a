// Browsers of their own for tests, in which so much is kept; what a base holds; and any such content.
import { IDBFactory } from "fake-indexeddb";
import fc from "fast-check";
import { vi } from "vitest";
import { type Base, logbookBase } from "../../src/logbook/base.ts";
import { everything } from "../../src/logbook/everything.ts";
import { type Content, fileOfLogbook, readLogbookText } from "../../src/logbook/logbook-file.ts";
import { keyOfPicture, type Picture } from "../../src/logbook/picture.ts";
import { ROOM, type RoomLists } from "../../src/logbook/room-store.ts";
import type { RunRecord } from "../../src/logbook/run-record.ts";
import { settingsShelf } from "../../src/logbook/settings-shelf.ts";
import type { KeptTexts } from "../../src/logbook/worksheet-store.ts";
import { anyBottle } from "./any-bottle.ts";
import { anyPicture, anyRuns, anySettings, anyTanks } from "./any-run.ts";
import {
  firstRun,
  judgedRun,
  olderBottle,
  olderRoom,
  olderRuns,
  olderTank,
} from "./older-versions.ts";

export const savedAt = Date.UTC(2026, 4, 1);

/** A storage of a browser, in memory. */
export function storage(start: { readonly [name: string]: string } = {}) {
  const kept = new Map(Object.entries(start));
  const port: Storage = {
    get length() {
      return kept.size;
    },
    key: (i) => [...kept.keys()][i] ?? null,
    getItem: (name) => kept.get(name) ?? null,
    setItem: (name, text) => void kept.set(name, text),
    removeItem: (name) => void kept.delete(name),
    clear: () => kept.clear(),
  };
  return { kept, port };
}

export interface All {
  readonly runs?: readonly object[];
  readonly pictures?: readonly Picture[];
  readonly tanks?: readonly { readonly label: string }[];
  readonly texts?: KeptTexts | null;
  readonly bottles?: readonly { readonly id: string }[];
  readonly lists?: RoomLists | null;
  readonly settings?: { readonly [name: string]: string };
}

/** A browser of its own, in which so much is kept. */
export async function browser({
  runs = [],
  pictures = [],
  tanks = [],
  texts = null,
  bottles = [],
  lists = null,
  settings,
}: All = {}) {
  vi.stubGlobal("indexedDB", new IDBFactory());
  const { kept, port } = storage(settings);
  const open = logbookBase();
  const base = await open();
  for (const run of runs) await base.put("runs", run, (run as RunRecord).id);
  for (const picture of pictures) await base.put("pictures", picture, keyOfPicture(picture));
  for (const tank of tanks) await base.put("tanks", tank, tank.label);
  if (texts !== null) await base.put("worksheets", texts, "worksheet");
  for (const bottle of bottles) await base.put("bottles", bottle, bottle.id);
  if (lists !== null) await base.put("rooms", { tankside: 1, lists }, ROOM);
  return {
    open,
    base,
    kept,
    all: everything(
      open,
      settingsShelf(() => port),
    ),
  };
}

/** What a file holds of a base, bytes of images and all; not the lines, which are made of the runs. */
export async function inside(base: Base) {
  const shelves = ["runs", "tanks", "worksheets", "bottles", "rooms"] as const;
  const held = await Promise.all(
    shelves.map(async (shelf) => {
      const [keys, values] = await Promise.all([base.getAllKeys(shelf), base.getAll(shelf)]);
      return keys.map((key, i) => [key, values[i]] as const);
    }),
  );
  const pictures = (await base.getAll("pictures")) as Picture[];
  const bytes = await Promise.all(
    pictures.map(async ({ image, ...rest }) => ({
      ...rest,
      type: image.type,
      bytes: [...new Uint8Array(await image.arrayBuffer())],
    })),
  );
  return { held, bytes };
}

export const fileOf = async (all: ReturnType<typeof everything>) =>
  (await fileOfLogbook((await all.all([])).content, savedAt)).text();

export function contentOf(text: string): Content {
  const read = readLogbookText(text);
  if (read.kind !== "content") throw new Error(`refused: ${JSON.stringify(read)}`);
  return read.content;
}

const picture: Picture = {
  id: "p",
  run: firstRun.id,
  alt: "",
  addedAt: 1,
  changedAt: 1,
  width: 1,
  height: 1,
  image: new Blob(["x"], { type: "image/webp" }),
};

/** One of everything that a file brings, and what stands where it is brought to. */
export const whole = {
  runs: olderRuns,
  pictures: [picture],
  tanks: [olderTank],
  texts: { title: "there" },
  bottles: [olderBottle],
  lists: olderRoom,
  settings: { "tankside-language": "fr" },
};
export const here = { runs: [{ ...judgedRun, note: "here", changedAt: 1 }], texts: null };

const anyLines = fc.array(fc.record({ text: fc.string(), done: fc.boolean() }), { maxLength: 3 });

export const anyAll = fc.record({
  runs: anyRuns,
  pictures: fc.uniqueArray(anyPicture, { maxLength: 2, selector: ({ id }) => id }),
  tanks: anyTanks,
  texts: fc.option(fc.dictionary(fc.string(), fc.string(), { maxKeys: 3 })),
  bottles: fc.uniqueArray(
    fc.tuple(anyBottle, fc.uuid()).map(([bottle, id]) => ({ ...bottle, id })),
    { maxLength: 2, selector: ({ id }) => id },
  ),
  lists: fc.option(fc.record({ opening: anyLines, closing: anyLines, waste: anyLines })),
  settings: anySettings,
});
