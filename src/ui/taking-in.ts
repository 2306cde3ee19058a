// All that is kept out to a file, and a file in: read, looked at, asked about, and only at the answer taken in. From
// then on it can be taken back.
import { type ReadonlySignal, signal } from "@preact/signals";
import type { Count, Everything } from "../logbook/everything.ts";
import type { Keeping } from "../logbook/keeping.ts";
import type { Content } from "../logbook/logbook-file.ts";
import { fileOfLogbook, readLogbookText } from "../logbook/logbook-file.ts";
import { isRunRecord } from "../logbook/run-record.ts";
import type { RunStore } from "../logbook/run-store.ts";
import { csvOfRuns } from "../logbook/runs-csv.ts";
import { isTexts, type KeptTexts, WORKSHEET } from "../logbook/worksheet-store.ts";
import { lateWords } from "./language.ts";
import type { WriteUp } from "./write-up-state.ts";

export interface FilePorts {
  readonly everything: Everything;
  readonly keeping: Keeping;
  /** Offers something to the person as a file. */
  readonly saveFile: (name: string, content: string | Blob) => void;
  readonly store: Pick<RunStore, "held">;
  readonly chooseFile: (accept: string) => Promise<File | null>;
  /** A worksheet that came for Work out, where none had been kept; returns the way back to what stood there. */
  readonly useTexts: (texts: KeptTexts) => () => void;
  /** ms since 1970. */
  readonly now: () => number;
}

/** A file that waits for the answer. */
interface Offer {
  readonly name: string;
  readonly counts: readonly Count[];
}

export interface Files {
  readonly offer: ReadonlySignal<Offer | null>;
  saveAll(): Promise<void>;
  saveTable(): Promise<void>;
  choose(): Promise<void>;
  takeIn(): Promise<void>;
  leave(): void;
}

export function openFiles(ports: FilePorts, writeUp: WriteUp): Files {
  const { everything, keeping, store, saveFile, chooseFile, useTexts, now } = ports;
  const offer = signal<Offer | null>(null);
  let waiting: { readonly content: Content; readonly size: number } | null = null;
  const said = () => lateWords.value.everything;
  const saved = (name: string) => writeUp.tell(() => lateWords.value.write.saved(name));

  /**
   * What is typed is kept first. Where nothing was ever read, the runs of this visit are what there is; null where what
   * is kept cannot be read now.
   */
  async function all(): Promise<Content | null> {
    await writeUp.keepNow();
    const { content, isWhole } = await everything.all(store.held());
    return isWhole || writeUp.found.value?.kind === "refused" ? content : null;
  }

  /** @param make the file of all that is kept. */
  async function save(name: string, make: (content: Content) => Promise<string | Blob>) {
    try {
      const content = await all();
      if (content === null) return writeUp.tell(() => said().notSaved);
      saveFile(name, await make(content));
      saved(name);
    } catch {
      // There is a size past which a browser makes no file.
      writeUp.tell(() => said().notSaved);
    }
  }

  function leave(): void {
    waiting = null;
    offer.value = null;
  }

  return {
    offer,
    leave,
    saveAll: () => save(lateWords.value.write.file, (content) => fileOfLogbook(content, now())),
    saveTable: () =>
      save(said().tableFile, async ({ kept }) => {
        const runs = kept.flatMap(({ kind, entries }) =>
          kind.shelf === "runs" ? entries.map(({ value }) => value).filter(isRunRecord) : [],
        );
        return csvOfRuns(runs.toSorted((a, b) => b.begunAt - a.begunAt));
      }),
    async choose() {
      const file = await chooseFile(".json,application/json");
      if (file === null) return;
      leave();
      const { name } = file;
      const text = await file.text().catch(() => null);
      if (text === null) return writeUp.tell(() => said().unreadable(name));
      const read = readLogbookText(text);
      if (read.kind !== "content") {
        const { foreign, newer, damaged } = said();
        const path = read.kind === "damaged" ? read.path : "";
        const told = { foreign, newer, damaged: (it: string) => damaged(it, path) }[read.kind];
        return writeUp.tell(() => told(name));
      }
      const counts = await everything.look(read.content);
      if (counts === null) return writeUp.tell(() => said().refused);
      if (counts.every(({ adds, replaces }) => adds + replaces === 0))
        return writeUp.tell(() => said().nothingNew(name));
      waiting = { content: read.content, size: file.size };
      offer.value = { name, counts };
    },
    async takeIn() {
      if (waiting === null) return;
      const { content, size } = waiting;
      const room = await keeping.room();
      if (room !== null && room < size) {
        leave();
        return writeUp.tell(() => said().noRoom);
      }
      const taken = await everything.takeIn(content);
      leave();
      if (taken.kind === "not taken") {
        const why = taken.why;
        return writeUp.tell(() => (why === "no room" ? said().noRoom : said().refused));
      }
      const { before } = taken;
      const texts = before.changed.find(
        ({ kind, key }) => kind.shelf === "worksheets" && key === WORKSHEET,
      )?.is;
      const textsBack = isTexts(texts) ? useTexts(texts) : () => {};
      await writeUp.lookAgain();
      writeUp.cameIn(async () => {
        const back = await everything.takeBack(before);
        if (back.kind === "not taken back") return { done: false, says: () => said().notTakenBack };
        textsBack();
        return { done: true, says: () => said().takenBack(back.stayed) };
      });
    },
  };
}
