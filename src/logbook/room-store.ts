// The house's own lists (opening the room, closing it, where spent chemistry goes), kept in this browser with
// what is ticked off. A browser may refuse to keep anything: that comes back as data.

import { isObject } from "../units/object.ts";
import type { OpenBase } from "./base.ts";
import { inTime } from "./in-time.ts";
import { soon } from "./soon.ts";

export const roomListIds = ["opening", "closing", "waste"] as const;
export type RoomListId = (typeof roomListIds)[number];

export interface RoomLine {
  readonly text: string;
  readonly done: boolean;
}

export type RoomLists = { readonly [id in RoomListId]: readonly RoomLine[] };

export const emptyRoom: RoomLists = { opening: [], closing: [], waste: [] };

type FoundRoom =
  | { readonly kind: "found"; readonly lists: RoomLists }
  | { readonly kind: "refused" };

/** What is to become of the lists; asked anew of what is kept, which another page may have changed meanwhile. */
export type RoomChange = (was: RoomLists) => RoomLists;

/** Never rejects. */
export interface RoomStore {
  /** `refused` also where they are kept in a shape of another make. */
  load(): Promise<FoundRoom>;
  /** null where the browser would not, or what is there could not be read and is not to be written over. */
  change(next: RoomChange): Promise<{ readonly was: RoomLists; readonly lists: RoomLists } | null>;
}

export const ROOM = "lists";

export function roomStore(open: OpenBase): RoomStore {
  return {
    async load() {
      try {
        const lists = keptIn(await soon(open().then((base) => base.get("rooms", ROOM))));
        return lists === null ? { kind: "refused" } : { kind: "found", lists };
      } catch {
        return { kind: "refused" };
      }
    },
    async change(next) {
      try {
        // Read and written at one go, so that nothing of another page's is lost.
        return await inTime(open, ["rooms"], async (writing) => {
          const rooms = writing.objectStore("rooms");
          const was = keptIn(await rooms.get(ROOM));
          if (was === null) return null;
          const lists = next(was);
          await rooms.put({ tankside: 1, lists }, ROOM);
          return { was, lists };
        });
      } catch {
        return null;
      }
    },
  };
}

const keptIn = (kept: unknown): RoomLists | null =>
  kept === undefined ? emptyRoom : listsIn(kept);

/** null: of another make. */
export function listsIn(kept: unknown): RoomLists | null {
  if (!isObject(kept) || kept.tankside !== 1 || !isObject(kept.lists)) return null;
  const { lists } = kept;
  return roomListIds.every((id) => areLines(lists[id])) ? (lists as unknown as RoomLists) : null;
}

function areLines(it: unknown): boolean {
  return (
    Array.isArray(it) &&
    it.every(
      (line) => isObject(line) && typeof line.text === "string" && typeof line.done === "boolean",
    )
  );
}

/** The lists' lines from what was written, a line each; what stood there before stays ticked. */
export function linesFrom(text: string, was: readonly RoomLine[]): readonly RoomLine[] {
  const ticked = new Set(was.flatMap((line) => (line.done ? [line.text] : [])));
  return text.split("\n").flatMap((line) => {
    const said = line.trim();
    return said === "" ? [] : [{ text: said, done: ticked.has(said) }];
  });
}
