// What becomes of what this browser is given to keep: asked of the browser itself, and tried out. A run does
// not depend on the answer, but whoever begins one is to know it.
import { loneShelf } from "./lone-shelf.ts";
import { soon } from "./soon.ts";

export type Kept =
  /** Until it is taken out. */
  | "kept"
  /** By the browser itself, when the disk fills up or a private window is closed. */
  | "may be cleared"
  /** The disk, or this page's share of it, is full. */
  | "no room"
  | "nothing is kept";

/** Never rejects. */
export interface Keeping {
  /** How it stands, without asking for more. */
  now(): Promise<Kept>;
  /** Asks the browser to keep for good, once a visit; to be called from a press: some browsers put it to the person. */
  ask(): Promise<Kept>;
  /** Bytes that may still be kept, as far as the browser tells. */
  room(): Promise<number | null>;
}

const KEY = "tried";
/** As much as a long run leaves behind, with some to spare, bytes. */
const RUN = 200_000;

/** @param storage null where the browser has none, as on a page that is not served safely. */
export function browserKeeping(
  storage: Partial<StorageManager> | null = globalThis.navigator?.storage ?? null,
): Keeping {
  let asked: Promise<boolean> | null = null;
  const shelf = loneShelf("tankside-keeping");

  /** Keeps as much as a run would be, and takes it out again. A browser tells that it is full in no other way. */
  async function tried(): Promise<"kept" | "no room" | "nothing is kept"> {
    try {
      const base = await soon(shelf());
      await soon(base.put("kept", new Uint8Array(RUN), KEY));
      await soon(base.delete("kept", KEY));
      const left = await room();
      return left !== null && left < RUN ? "no room" : "kept";
    } catch (error) {
      const full = error instanceof DOMException && error.name === "QuotaExceededError";
      return full ? "no room" : "nothing is kept";
    }
  }

  async function room(): Promise<number | null> {
    try {
      const { quota, usage } = (await storage?.estimate?.()) ?? {};
      return quota === undefined || usage === undefined ? null : Math.max(0, quota - usage);
    } catch {
      return null;
    }
  }

  const granted = async (): Promise<boolean> => (await storage?.persisted?.()) ?? false;

  async function standing(forGood: () => Promise<boolean>): Promise<Kept> {
    const [came, stays] = await Promise.all([tried(), forGood().catch(() => false)]);
    return came === "kept" && !stays ? "may be cleared" : came;
  }

  return {
    now: () => standing(granted),
    ask() {
      asked ??= granted().then(
        async (already) => already || ((await storage?.persist?.()) ?? false),
      );
      const answer = asked;
      return standing(() => answer);
    },
    room,
  };
}
