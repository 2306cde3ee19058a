// All that is kept as one content, and a file's content taken in: looked at first, then by one transaction, so that
// whatever ends it, all of it is there or none. What was taken in can be taken back the same way.
import { type Base, inOne, type OpenBase, type Refusal, refusalOf } from "./base.ts";
import { keptIn, shelves, withHeld } from "./kept-in.ts";
import { type Entry, type Kind, kinds } from "./kinds.ts";
import { changeLines } from "./line-blocks.ts";
import type { Content } from "./logbook-file.ts";
import { lineOf, type RunLine } from "./run-line.ts";
import type { RunRecord } from "./run-record.ts";
import type { Settings, SettingsShelf } from "./settings-shelf.ts";
import {
  type Before,
  type Changed,
  SETTINGS_TO_COME,
  SETTINGS_TO_GO,
  takenBack,
  unawaited,
} from "./taken-back.ts";

/** How many of a kind are new here, are newer than what is here, and stay out. */
export interface Count {
  readonly shelf: Kind["shelf"] | "settings";
  readonly adds: number;
  readonly replaces: number;
  readonly skips: number;
}

export type TakenIn =
  | { readonly kind: "taken"; readonly counts: readonly Count[]; readonly before: Before }
  /** All is as it was. */
  | { readonly kind: "not taken"; readonly why: Refusal };

type TakenBack =
  /** @property stayed how many of its entries have been changed since, and stay. */
  | { readonly kind: "taken back"; readonly stayed: number }
  /** All is as it was. */
  | { readonly kind: "not taken back" };

interface All {
  readonly content: Content;
  readonly isWhole: boolean;
}

export interface Everything {
  /**
   * Never rejects: where nothing can be read, it is what is held, and not whole.
   * @param held runs that the browser would not keep.
   */
  all(held: readonly RunRecord[]): Promise<All>;
  /** What taking a content in would do; null where nothing can be read. */
  look(content: Content): Promise<readonly Count[] | null>;
  /** Never rejects. */
  takeIn(content: Content): Promise<TakenIn>;
  /** All that a file changed, as it was before. Never rejects. */
  takeBack(before: Before): Promise<TakenBack>;
  /** What a page that died between the base and the settings left to be done. Never rejects. */
  finish(): Promise<void>;
}

type Act = "adds" | "replaces" | "skips";

/** What is done with an entry, and the value that is kept by it. */
function actFor(
  kind: Kind,
  was: unknown,
  { value }: Entry,
): { readonly act: Act; readonly value: unknown } {
  if (was === undefined) return { act: "adds", value };
  const stays = kind.stays(was, value);
  return { act: stays === was || kind.same(was, stays) ? "skips" : "replaces", value: stays };
}

export function everything(open: OpenBase, settings: SettingsShelf): Everything {
  function settingsCount(of: Settings): Count {
    const here = settings.all();
    const all = Object.keys(of);
    const adds = all.filter((name) => !(name in here)).length;
    return { shelf: "settings", adds, replaces: 0, skips: all.length - adds };
  }

  /** Where the browser will not have it done, it waits for the next visit. */
  async function finish(base: Base): Promise<void> {
    const going = await base.get("notes", SETTINGS_TO_GO);
    if (going !== undefined && settings.remove(going as Settings))
      await base.delete("notes", SETTINGS_TO_GO);
    const coming = await base.get("notes", SETTINGS_TO_COME);
    if (coming !== undefined && settings.add(coming as Settings))
      await base.delete("notes", SETTINGS_TO_COME);
  }

  return {
    async all(held) {
      const read = await keptIn(open).catch(() => null);
      const kept = read ?? kinds.map((kind) => ({ kind, entries: [] }));
      const content = { kept: kept.map((it) => withHeld(it, held)), settings: settings.all() };
      return { content, isWhole: read !== null };
    },
    async look(content) {
      try {
        const reading = (await open()).transaction(shelves);
        const counts: Count[] = [];
        for (const { kind, entries } of content.kept) {
          const count = { adds: 0, replaces: 0, skips: 0 };
          const shelf = reading.objectStore(kind.shelf);
          const here = new Set(await shelf.getAllKeys());
          for (const entry of entries) {
            const was = here.has(entry.key) ? await shelf.get(entry.key) : undefined;
            count[actFor(kind, was, entry).act] += 1;
          }
          counts.push({ shelf: kind.shelf, ...count });
        }
        return [...counts, settingsCount(content.settings)];
      } catch {
        return null;
      }
    },
    async takeIn(content) {
      const ofSettings = settingsCount(content.settings);
      const here = settings.all();
      const fresh = Object.entries(content.settings).filter(([name]) => !(name in here));
      try {
        const base = await open();
        const { counts, ...written } = await writtenInto(base, content);
        await finish(base).catch(() => {});
        const before = { ...written, settings: Object.fromEntries(fresh) };
        return { kind: "taken", counts: [...counts, ofSettings], before };
      } catch (error) {
        return { kind: "not taken", why: refusalOf(error) };
      }
    },
    async takeBack(before) {
      try {
        const base = await open();
        const stayed = await takenBack(base, before);
        await finish(base).catch(() => {});
        return { kind: "taken back", stayed };
      } catch {
        return { kind: "not taken back" };
      }
    },
    async finish() {
      await open()
        .then(finish)
        .catch(() => {});
    },
  };
}

/** Looked at once more in the very transaction: what has changed meanwhile counts. */
function writtenInto(base: Base, content: Content) {
  return inOne(base, [...shelves, "lines", "notes"], async (writing) => {
    const counts: Count[] = [];
    const changed: Changed[] = [];
    const lines = new Map<string, RunLine>();
    for (const { kind, entries } of content.kept) {
      const count = { adds: 0, replaces: 0, skips: 0 };
      const shelf = writing.objectStore(kind.shelf);
      const here = new Set(await shelf.getAllKeys());
      for (const entry of entries) {
        const was = here.has(entry.key) ? await shelf.get(entry.key) : undefined;
        const { act, value } = actFor(kind, was, entry);
        count[act] += 1;
        if (act === "skips") continue;
        changed.push({ kind, key: entry.key, was, is: value });
        unawaited(shelf.put(value, entry.key));
        // Whatever is in a content has been checked.
        if (kind.shelf === "runs") lines.set(entry.key, lineOf(value as RunRecord));
      }
      counts.push({ shelf: kind.shelf, ...count });
    }
    const notes = writing.objectStore("notes");
    const settingsLeft: unknown = await notes.get(SETTINGS_TO_COME);
    await notes.put(content.settings, SETTINGS_TO_COME);
    await changeLines(writing, lines);
    return { counts, changed, settingsLeft };
  });
}
