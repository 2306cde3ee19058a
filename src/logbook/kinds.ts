// All that a file of everything holds, kind by kind: what is checked of it, by what it is told from its like, and
// which of two is the newer. A new kind of thing to keep joins by a line in `kinds` (and its shelf in base.ts).
import { isObject } from "../units/object.ts";
import type { Shelf } from "./base.ts";
import { fromBase64, toBase64 } from "./base64.ts";
import { type Bottle, faultInBottle, isBottle } from "./bottle.ts";
import { inBoth } from "./bottle-copies.ts";
import { isPicture, keyOfPicture } from "./picture.ts";
import { listsIn, ROOM } from "./room-store.ts";
import { changedAt, faultInRun, isRunRecord, type RunRecord } from "./run-record.ts";
import { isTankOf } from "./tank-store.ts";
import { isTexts, WORKSHEET } from "./worksheet-store.ts";

/** A value of one kind, ready for its shelf. */
export interface Entry {
  readonly key: string;
  readonly value: unknown;
}

export interface Kind {
  readonly shelf: Exclude<Shelf, "lines" | "notes">;
  /** As it stands in a file; null where it is of another make, and stays behind. */
  readonly toFile: (key: string, value: unknown) => Promise<unknown> | unknown;
  /** The place of the first thing in it that cannot be used, or the entry. */
  readonly fromFile: (held: unknown) => { readonly fault: string } | Entry;
  /** Of two under one key, what is to be kept: one of them, or both in one. */
  readonly stays: (here: unknown, there: unknown) => unknown;
  /** Whether two are the same, so that nothing needs to be done. */
  readonly same: (a: unknown, b: unknown) => boolean;
}

const asJson = (a: unknown, b: unknown): boolean => canonical(a) === canonical(b);

/**
 * The one that was changed last; what is here where that cannot be told.
 * @param at UTC, ms since 1970; null: of another make.
 */
function newer(at: (value: unknown) => number | null): Kind["stays"] {
  return (here, there) => {
    const [was, is] = [at(here), at(there)];
    return was !== null && is !== null && is > was ? there : here;
  };
}

const runs: Kind = {
  shelf: "runs",
  toFile: (_, run) => (isRunRecord(run) ? run : null),
  fromFile(held) {
    // Once: ten thousand worksheets take a while to be read.
    const fault = faultInRun(held);
    return fault === null ? { key: (held as RunRecord).id, value: held } : { fault };
  },
  stays: newer((run) => (isRunRecord(run) ? changedAt(run) : null)),
  same: asJson,
};

const pictureFields = [
  ["id", "string"],
  ["run", "string"],
  ["alt", "string"],
  ["addedAt", "number"],
  ["changedAt", "number"],
  ["width", "number"],
  ["height", "number"],
] as const;

/** An image is base64 in a file: its size there is four thirds of what it is here. */
const pictures: Kind = {
  shelf: "pictures",
  async toFile(_, picture) {
    if (!isPicture(picture)) return null;
    const { image, ...rest } = picture;
    return {
      ...rest,
      type: image.type,
      image: toBase64(new Uint8Array(await image.arrayBuffer())),
    };
  },
  fromFile(held) {
    if (!isObject(held)) return { fault: "" };
    const { image, type, ...rest } = held;
    if (typeof type !== "string" || !/^image\/(?:webp|jpeg|png)$/.test(type))
      return { fault: "type" };
    const bytes = typeof image === "string" ? fromBase64(image) : null;
    if (bytes === null) return { fault: "image" };
    const value = { ...rest, image: new Blob([bytes], { type }) };
    if (!isPicture(value))
      return { fault: pictureFields.find(([name, type]) => typeof rest[name] !== type)?.[0] ?? "" };
    return { key: keyOfPicture(value), value };
  },
  stays: newer((picture) => (isPicture(picture) ? picture.changedAt : null)),
  same: (a, b) =>
    isPicture(a) &&
    isPicture(b) &&
    asJson({ ...a, image: a.image.size }, { ...b, image: b.image.size }),
};

const tanks: Kind = {
  shelf: "tanks",
  toFile: (label, tank) => (isTankOf(label, tank) ? tank : null),
  fromFile(held) {
    if (!isObject(held)) return { fault: "" };
    if (typeof held.label !== "string") return { fault: "label" };
    if (!isTexts(held.texts)) return { fault: "texts" };
    return isTankOf(held.label, held) ? { key: held.label, value: held } : { fault: "keptAt" };
  },
  stays: newer((tank) => (isObject(tank) && typeof tank.keptAt === "number" ? tank.keptAt : 0)),
  same: asJson,
};

/** The one in Work out: what stands there stays. */
const worksheets: Kind = {
  shelf: "worksheets",
  toFile: (key, texts) => (key === WORKSHEET && isTexts(texts) ? { name: key, texts } : null),
  fromFile(held) {
    if (!isObject(held)) return { fault: "" };
    if (held.name !== WORKSHEET) return { fault: "name" };
    return isTexts(held.texts) ? { key: held.name, value: held.texts } : { fault: "texts" };
  },
  stays: (here) => here,
  same: asJson,
};

/** Entries are only ever added: what either knows of a bottle is kept. */
const bottles: Kind = {
  shelf: "bottles",
  toFile: (_, bottle) => (isBottle(bottle) ? bottle : null),
  fromFile(held) {
    const fault = faultInBottle(held);
    return fault === null ? { key: (held as Bottle).id, value: held } : { fault };
  },
  stays(here, there) {
    // A copy of what is here tells nothing new, however its entries lie.
    if (asJson(here, there) || !isBottle(here) || !isBottle(there)) return here;
    return inBoth(here, there);
  },
  same: asJson,
};

/** The house's lists: those that are written here stay. */
const rooms: Kind = {
  shelf: "rooms",
  toFile: (key, held) => (key === ROOM && listsIn(held) !== null ? held : null),
  fromFile: (held) => (listsIn(held) === null ? { fault: "lists" } : { key: ROOM, value: held }),
  stays: (here) => here,
  same: asJson,
};

export const kinds: readonly Kind[] = [runs, pictures, tanks, worksheets, bottles, rooms];

/** As JSON with the fields of every object in one order. */
function canonical(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) =>
    isObject(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}
