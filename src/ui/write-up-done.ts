// What was done in Write up and can be undone, and what is told of it. Apart from the acts themselves, of which there
// are many.
import type { Picture } from "../logbook/picture.ts";
import type { TakenOut } from "../logbook/run-shelf.ts";
import { lateWords } from "./language.ts";
import { titleOf } from "./write-up-model.ts";

/** The way back from a file that was taken in: whether it was gone, and what is told of it. */
export type Back = () => Promise<{ readonly done: boolean; readonly says: () => string }>;

/** What was taken out, and can be put back; or came in, and can be taken back. */
export type Done =
  | { readonly kind: "run"; readonly taken: TakenOut }
  | { readonly kind: "picture"; readonly picture: Picture }
  | { readonly kind: "file"; readonly back: Back };

/** Of the last that can still be undone. */
export function toldOf(last: Done | undefined): (() => string) | null {
  switch (last?.kind) {
    case undefined:
      return null;
    case "picture":
      return () => lateWords.value.pictures.removed;
    case "file":
      return () => lateWords.value.everything.taken;
    case "run": {
      const { run } = last.taken;
      return () => lateWords.value.write.takenOut(titleOf(run));
    }
  }
}
