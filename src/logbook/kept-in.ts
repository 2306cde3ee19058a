// A base in, all that a file of it would hold out, read at one go; with the runs that the browser would not keep.
import type { OpenBase, Shelf } from "./base.ts";
import { kinds } from "./kinds.ts";
import type { Content } from "./logbook-file.ts";
import type { RunRecord } from "./run-record.ts";

export const shelves: readonly Shelf[] = kinds.map(({ shelf }) => shelf);

export async function keptIn(open: OpenBase): Promise<Content["kept"]> {
  const reading = (await open()).transaction(shelves);
  return Promise.all(
    kinds.map(async (kind) => {
      const shelf = reading.objectStore(kind.shelf);
      const [keys, values] = await Promise.all([shelf.getAllKeys(), shelf.getAll()]);
      return { kind, entries: keys.map((key, i) => ({ key, value: values[i] as unknown })) };
    }),
  );
}

/** Runs that go with the page, in the place of what was kept of them before. */
export function withHeld(
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
