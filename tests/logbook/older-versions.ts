// What each older version kept, written as that version wrote it: into a database a store, of one shelf. A version
// that changes what is kept adds what it kept here, and nothing here is changed again.
import { openDB } from "idb";
import { BASE } from "../../src/logbook/base.ts";
import { demos } from "../../src/ui/demo.ts";
import { bottleOf, fixerB } from "../ui/shelf-by-hand.ts";

const begunAt = Date.UTC(2026, 2, 12, 19, 42, 7);

/** The first runs that were kept. */
export const firstRun = {
  id: "4b0c7a52-2f6c-4e0f-9d43-0e2c1a7d9b11",
  begunAt,
  worksheet: demos.gullrock,
  developmentSeconds: 569,
  presses: [
    { section: "lay-out", at: begunAt },
    { section: "developer", at: begunAt + 181_000 },
  ],
  ended: "done",
  note: "A little thin.\n",
};

/** With what went otherwise than planned. */
export const otherwiseRun = {
  ...firstRun,
  id: "8f3d2b90-6f57-4a6e-8c0a-5b1f0d7c3e22",
  begunAt: begunAt + 86_400_000,
  otherwise: [
    { kind: "poured", at: begunAt + 190_000, bath: "developer", by: 4 },
    { kind: "read", at: begunAt + 300_000, temperature: { f: 70 }, after: 120 },
    { kind: "emptied", at: begunAt + 770_000, bath: "developer", by: 6.5 },
    { kind: "lost", at: begunAt + 800_000, how: "frozen", lost: 8 },
    { kind: "clock-set", at: begunAt + 810_000, by: 3600 },
    { kind: "wrong", at: begunAt + 820_000, wrong: "leak" },
  ],
  developedSeconds: 560,
  ended: "left",
};

/** With what was seen on the negatives. */
export const judgedRun = {
  ...firstRun,
  id: "c2a9e1d4-73b8-4d5b-9f16-2d8e4c6a5f33",
  begunAt: begunAt + 2 * 86_400_000,
  ended: null,
  negatives: { density: "thin", edges: null, marks: ["spots"] },
};

export const olderRuns = [judgedRun, otherwiseRun, firstRun];

export const olderTank = {
  label: "two-reel steel",
  texts: {
    "tank.label": "two-reel steel",
    "tank.volume": "640 ml",
    "agitation.perInversion": "2.5 s",
  },
};

export const olderTexts = { title: "Thursday", "developer.temperature": "69 °F" };

export const olderBottle = bottleOf(fixerB);

export const olderRoom = {
  opening: [{ text: "fan on", done: true }],
  closing: [],
  waste: [{ text: "fixer into the blue drum", done: false }],
};

/** As such a version opened it: without a number, which makes the first. */
export const openOlder = (base: string) =>
  openDB(base, undefined, { upgrade: (made) => void made.createObjectStore("kept") });

async function write(base: string, entries: readonly (readonly [string, unknown])[]) {
  const made = await openOlder(base);
  const writing = made.transaction("kept", "readwrite");
  for (const [key, value] of entries) void writing.store.put(value, key);
  await writing.done;
  // A page that has gone holds no connection.
  made.close();
}

export async function asOlderVersionsDid(): Promise<void> {
  await write("tankside-runs", [
    ...olderRuns.map((run) => [run.id, run] as const),
    ["of another make", { ...firstRun, worksheet: { tankside: 2 } }],
  ]);
  await write("tankside-tanks", [[olderTank.label, olderTank]]);
  await write("tankside-worksheet", [["worksheet", olderTexts]]);
  await write("tankside-bottles", [[olderBottle.id, olderBottle]]);
  await write("tankside-room", [["lists", { tankside: 1, lists: olderRoom }]]);
}

/** The one base as its first version made it: without shelves for bottles and the room. */
export const firstVersion = () =>
  openDB(BASE, 1, {
    upgrade(made) {
      made.createObjectStore("runs").createIndex("begunAt", "begunAt");
      for (const shelf of ["lines", "pictures", "tanks", "worksheets", "notes"])
        made.createObjectStore(shelf);
    },
  });
