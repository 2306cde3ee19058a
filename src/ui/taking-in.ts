// All that is kept out to a file, and a file in: read, looked at, asked about, and only at the answer taken in. From
// then on it can be taken back.
import { type ReadonlySignal, signal } from "@preact/signals";
import type { Count, Everything } from "../logbook/everything.ts";
import type { Keeping } from "../logbook/keeping.ts";
import type { Content } from "../logbook/logbook-file.ts";
import { readLogbookText, textOfLogbook } from "../logbook/logbook-file.ts";
import { isRunRecord } from "../logbook/run-record.ts";
import { csvOfRuns } from "../logbook/runs-csv.ts";
import { isTexts, type KeptTexts, WORKSHEET } from "../logbook/worksheet-store.ts";
import { lateWords } from "./language.ts";
import type { WriteUp } from "./write-up-state.ts";

export interface FilePorts {
  readonly everything: Everything;
  readonly keeping: Keeping;
  /** Offers a text to the person as a file. */
  readonly saveFile: (name: string, text: string) => void;
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
  const { everything, keeping, saveFile, chooseFile, useTexts, now } = ports;
  const offer = signal<Offer | null>(null);
  let waiting: { readonly content: Content; readonly size: number } | null = null;
  const said = () => lateWords.value.everything;
  const saved = (name: string) => writeUp.tell(() => lateWords.value.write.saved(name));

  /** What is typed is kept first; where nothing can be read, the runs of this visit are what there is. */
  async function all(): Promise<Content> {
    writeUp.keepNow();
    const held = await writeUp.held();
    return everything.all(held);
  }

  function leave(): void {
    waiting = null;
    offer.value = null;
  }

  return {
    offer,
    leave,
    async saveAll() {
      const name = lateWords.value.write.file;
      saveFile(name, await textOfLogbook(await all(), now()));
      saved(name);
    },
    async saveTable() {
      const name = said().tableFile;
      const { kept } = await all();
      const runs = kept.flatMap(({ kind, entries }) =>
        kind.shelf === "runs" ? entries.map(({ value }) => value).filter(isRunRecord) : [],
      );
      saveFile(name, csvOfRuns(runs.toSorted((a, b) => b.begunAt - a.begunAt)));
      saved(name);
    },
    async choose() {
      const file = await chooseFile(".json,application/json");
      if (file === null) return;
      leave();
      const { name } = file;
      const read = readLogbookText(await file.text().catch(() => ""));
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
