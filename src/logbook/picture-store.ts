// Pictures of negatives, kept beside the runs. A browser may refuse to keep anything, or have no room for more:
// that comes back as data, and nothing that was there is lost by it.
import { type OpenBase, refusalOf } from "./base.ts";
import { inTime } from "./in-time.ts";
import { isPicture, keyOfPicture, keysOf, type Picture } from "./picture.ts";
import type { Written } from "./run-store.ts";
import { soon } from "./soon.ts";

/** Never rejects. */
export interface PictureStore {
  /** The oldest first; none where nothing can be read. */
  of(run: string): Promise<readonly Picture[]>;
  /** Adds a picture, or puts it in the place of its like. */
  keep(picture: Picture): Promise<Written>;
  /** False where the browser would not, and all is as it was. */
  remove(picture: Picture): Promise<boolean>;
}

/** An image may be half a megabyte, ms. */
const PATIENCE = 10_000;

export function pictureStore(open: OpenBase): PictureStore {
  return {
    async of(run) {
      try {
        const reading = (await soon(open())).transaction("pictures");
        const keys = keysOf(run, await soon(reading.store.getAllKeys()));
        const kept = await soon(Promise.all(keys.map((key) => reading.store.get(key))), PATIENCE);
        return kept.filter(isPicture).toSorted((a, b) => a.addedAt - b.addedAt);
      } catch {
        return [];
      }
    },
    async keep(picture) {
      try {
        await inTime(
          open,
          ["pictures"],
          (keeping) => keeping.objectStore("pictures").put(picture, keyOfPicture(picture)),
          PATIENCE,
        );
        return "kept";
      } catch (error) {
        return refusalOf(error);
      }
    },
    async remove(picture) {
      try {
        await inTime(open, ["pictures"], (removing) =>
          removing.objectStore("pictures").delete(keyOfPicture(picture)),
        );
        return true;
      } catch {
        return false;
      }
    },
  };
}
