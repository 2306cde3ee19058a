// Write up with all that it asks of a browser, made of the base that all is kept in. Apart from main.tsx because it is
// fetched when Write up first is.
import { browserDictation } from "../live/dictation.ts";
import type { OpenBase } from "../logbook/base.ts";
import { everything } from "../logbook/everything.ts";
import { pictureStore } from "../logbook/picture-store.ts";
import { settingsShelf } from "../logbook/settings-shelf.ts";
import { chooseFile, saveFile } from "./files.ts";
import { scalePicture } from "./scale-picture.ts";
import { type WriteUpPlacePorts, writeUpWith } from "./write-up.tsx";

type Given =
  | "store"
  | "keeping"
  | "useWorksheet"
  | "useTexts"
  | "after"
  | "bottles"
  | "Shelf"
  | "lookBeside";

export function writeUpIn(base: OpenBase, given: Pick<WriteUpPlacePorts, Given>) {
  const all = everything(
    base,
    settingsShelf(() => localStorage),
  );
  void all.finish();
  return writeUpWith({
    ...given,
    pictures: pictureStore(base),
    everything: all,
    scale: scalePicture,
    dictation: browserDictation(),
    saveFile,
    chooseFile,
    now: () => Date.now(),
  });
}
