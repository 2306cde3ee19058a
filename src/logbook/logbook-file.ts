// The text of a file in, all that it holds, checked, out, or why none of it is used; and all that is kept as such a
// text. A file is taken whole or refused whole.
import { isObject } from "../units/object.ts";
import { type Entry, type Kind, kinds } from "./kinds.ts";
import { joined } from "./path-text.ts";
import { faultInSettings, type Settings } from "./settings-shelf.ts";

export interface Content {
  /** By shelf, in the order of `kinds`. */
  readonly kept: readonly { readonly kind: Kind; readonly entries: readonly Entry[] }[];
  readonly settings: Settings;
}

export type FileReading =
  | { readonly kind: "content"; readonly content: Content }
  /** Nothing that this program wrote, or cut off. */
  | { readonly kind: "foreign" }
  /** Written by a version that knows more. */
  | { readonly kind: "newer" }
  /** `path`: the place in it of the first thing that cannot be used. */
  | { readonly kind: "damaged"; readonly path: string };

/** Goes up when a version before could not read what is written from then on. */
const VERSION = 2;

const FIELDS = ["tankside", "version", "savedAt", "settings"];

/** As a file: every kind as a list under the name of its shelf. Of pieces, since a text of all pictures may be too long. */
export async function fileOfLogbook(content: Content, savedAt: number): Promise<Blob> {
  const head = {
    tankside: 1,
    version: VERSION,
    savedAt: new Date(savedAt).toISOString(),
    settings: content.settings,
  };
  const pieces = [JSON.stringify(head, null, 1).slice(0, -"\n}".length)];
  for (const { kind, entries } of content.kept) {
    let before = `,\n "${kind.shelf}": [`;
    for (const { key, value } of entries) {
      const written = await kind.toFile(key, value);
      if (written === null) continue;
      pieces.push(`${before}\n  ${JSON.stringify(written)}`);
      before = ",";
    }
    pieces.push(before === "," ? "\n ]" : `${before}]`);
  }
  pieces.push("\n}\n");
  return new Blob(pieces, { type: "application/json" });
}

export function readLogbookText(text: string): FileReading {
  let file: unknown;
  try {
    file = JSON.parse(text.replace(/^\ufeff/, ""));
  } catch {
    return { kind: "foreign" };
  }
  // The first versions wrote a list of runs, and no version.
  if (!isObject(file) || file.tankside !== 1 || !Array.isArray(file.runs))
    return { kind: "foreign" };
  const version = file.version ?? 1;
  if (typeof version !== "number" || version < 1) return { kind: "damaged", path: "version" };
  if (version > VERSION) return { kind: "newer" };
  const known = new Set([...FIELDS, ...kinds.map(({ shelf }) => shelf as string)]);
  const unknown = Object.keys(file).find((name) => !known.has(name));
  // What nobody here knows would be lost in silence.
  if (unknown !== undefined) return { kind: "damaged", path: joined([unknown]) };
  const settings = file.settings ?? {};
  const odd = faultInSettings(settings);
  if (odd !== null) return { kind: "damaged", path: joined(["settings", ...(odd ? [odd] : [])]) };
  const kept: { readonly kind: Kind; readonly entries: readonly Entry[] }[] = [];
  for (const kind of kinds) {
    const read = readKind(kind, file[kind.shelf] ?? []);
    if ("path" in read) return { kind: "damaged", path: read.path };
    kept.push({ kind, entries: read.entries });
  }
  return { kind: "content", content: { kept, settings: settings as Settings } };
}

function readKind(
  kind: Kind,
  list: unknown,
): { readonly path: string } | { readonly entries: readonly Entry[] } {
  if (!Array.isArray(list)) return { path: kind.shelf };
  const entries: Entry[] = [];
  const keys = new Set<string>();
  for (const [i, held] of list.entries()) {
    const read = kind.fromFile(held);
    const at = joined([kind.shelf, i]);
    if ("fault" in read) return { path: read.fault === "" ? at : `${at}.${read.fault}` };
    // Of two under one name nobody can say which was meant.
    if (keys.has(read.key)) return { path: at };
    keys.add(read.key);
    entries.push(read);
  }
  return { entries };
}
