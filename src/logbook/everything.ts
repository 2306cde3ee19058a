// All that is kept as one content, and a file's content taken in: looked at first, then by one transaction, so that
// whatever ends it, all of it is there or none.
import { type Base, inOne, type OpenBase, type Refusal, refusalOf, type Shelf } from "./base.ts";
import { type Entry, type Kind, kinds } from "./kinds.ts";
import type { Content } from "./logbook-file.ts";
import { lineOf } from "./run-line.ts";
import type { RunRecord } from "./run-record.ts";
import type { Settings, SettingsShelf } from "./settings-shelf.ts";

/** How many of a kind are new here, are newer than what is here, and stay out. */
export interface Count {
  readonly shelf: Kind["shelf"] | "settings";
  readonly adds: number;
  readonly replaces: number;
  readonly skips: number;
}

export type TakenIn =
  | { readonly kind: "taken"; readonly counts: readonly Count[] }
  /** All is as it was. */
  | { readonly kind: "not taken"; readonly why: Refusal };

export interface Everything {
  /** Never rejects: where nothing can be read, it is what is held. @param held runs that the browser would not keep. */
  all(held: readonly RunRecord[]): Promise<Content>;
  /** What taking a content in would do; null where nothing can be read. */
  look(content: Content): Promise<readonly Count[] | null>;
  /** Never rejects. */
  takeIn(content: Content): Promise<TakenIn>;
  /** What a page that died between the base and the settings left to be done. Never rejects. */
  finish(): Promise<void>;
}

const SETTINGS = "settings to come";
const shelves: readonly Shelf[] = kinds.map(({ shelf }) => shelf);

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

  async function finish(base: Base): Promise<void> {
    const left = await base.get("notes", SETTINGS);
    if (left === undefined) return;
    // Where the browser will not keep them, they wait for the next visit.
    if (settings.add(left as Settings)) await base.delete("notes", SETTINGS);
  }

  return {
    async all(held) {
      const kept = await keptIn(open).catch(() => kinds.map((kind) => ({ kind, entries: [] })));
      return { kept: kept.map((it) => withHeld(it, held)), settings: settings.all() };
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
      try {
        const base = await open();
        const counts = await writtenInto(base, content);
        await finish(base).catch(() => {});
        return { kind: "taken", counts: [...counts, ofSettings] };
      } catch (error) {
        return { kind: "not taken", why: refusalOf(error) };
      }
    },
    async finish() {
      await open()
        .then(finish)
        .catch(() => {});
    },
  };
}

async function keptIn(open: OpenBase): Promise<Content["kept"]> {
  const reading = (await open()).transaction(shelves);
  return Promise.all(
    kinds.map(async (kind) => {
      const shelf = reading.objectStore(kind.shelf);
      const [keys, values] = await Promise.all([shelf.getAllKeys(), shelf.getAll()]);
      return { kind, entries: keys.map((key, i) => ({ key, value: values[i] as unknown })) };
    }),
  );
}

/** Looked at once more in the very transaction: what has changed meanwhile counts. */
function writtenInto(base: Base, content: Content): Promise<readonly Count[]> {
  return inOne(base, [...shelves, "lines", "notes"], async (writing) => {
    const counts: Count[] = [];
    for (const { kind, entries } of content.kept) {
      const count = { adds: 0, replaces: 0, skips: 0 };
      const shelf = writing.objectStore(kind.shelf);
      const here = new Set(await shelf.getAllKeys());
      for (const entry of entries) {
        const was = here.has(entry.key) ? await shelf.get(entry.key) : undefined;
        const { act, value } = actFor(kind, was, entry);
        count[act] += 1;
        if (act === "skips") continue;
        unawaited(shelf.put(value, entry.key));
        // Whatever is in a content has been checked.
        if (kind.shelf === "runs")
          unawaited(writing.objectStore("lines").put(lineOf(value as RunRecord), entry.key));
      }
      counts.push({ shelf: kind.shelf, ...count });
    }
    await writing.objectStore("notes").put(content.settings, SETTINGS);
    return counts;
  });
}

/** A write that fails ends its transaction, which is heard of there. */
function unawaited(write: Promise<unknown>): void {
  write.catch(() => {});
}

/** Runs that go with the page, in the place of what was kept of them before. */
function withHeld(
  { kind, entries }: Content["kept"][number],
  held: readonly RunRecord[],
): Content["kept"][number] {
  if (kind.shelf !== "runs" || held.length === 0) return { kind, entries };
  const here = new Map(held.map((run) => [run.id, run]));
  return {
    kind,
    entries: [
      ...entries.filter(({ key }) => !here.has(key)),
      ...held.map((run) => ({ key: run.id, value: run })),
    ],
  };
}
