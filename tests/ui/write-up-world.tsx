// The world of Write up: stores in memory that say what the test has them say and remember what they were told, a
// clock that moves when the test says so, files caught as they are saved.
import type { Dictation } from "../../src/live/dictation.ts";
import type { Everything, TakenIn } from "../../src/logbook/everything.ts";
import { kinds } from "../../src/logbook/kinds.ts";
import type { Content } from "../../src/logbook/logbook-file.ts";
import type { Picture } from "../../src/logbook/picture.ts";
import { lineOf } from "../../src/logbook/run-line.ts";
import type { Judgement, RunRecord } from "../../src/logbook/run-record.ts";
import type { TakenOut } from "../../src/logbook/run-shelf.ts";
import type { FoundRuns, Written } from "../../src/logbook/run-store.ts";
import type { KeptTexts } from "../../src/logbook/worksheet-store.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { demos } from "../../src/ui/demo.ts";
import type { Shelf } from "../../src/ui/shelf-state.ts";
import { foghorn } from "../plan/worksheets.ts";
import { world as clockAndFiles, keepingThat } from "./ports.ts";

export const begunAt = Date.UTC(2026, 2, 12, 19, 42, 7);
export const gullrock: RunRecord = {
  id: "gullrock",
  begunAt,
  worksheet: demos.gullrock,
  developmentSeconds: 569,
  presses: [
    { section: "lay-out", at: begunAt },
    { section: "open-2", at: begunAt + 31_000 },
    { section: "developer", at: begunAt + 181_000 },
  ],
  ended: "done",
  note: "good",
};
export const night: RunRecord = {
  ...gullrock,
  id: "night",
  begunAt: begunAt - 86_400_000,
  worksheet: foghorn,
  developmentSeconds: 825,
  ended: "left",
  note: "",
};

export interface Says {
  readonly runs?: readonly RunRecord[];
  readonly kind?: FoundRuns["kind"];
  readonly onlyHere?: readonly string[];
  readonly unread?: number;
  /** Whether all lines were read before in this visit. */
  readonly linesKnown?: boolean;
  readonly notes?: Written;
  readonly removing?: boolean;
  readonly picturing?: Written;
  readonly looked?: Awaited<ReturnType<Everything["look"]>>;
  readonly taken?: Extract<TakenIn, { kind: "not taken" }>;
  /** How many things stay of a file that is taken back; null: the browser would not. */
  readonly stays?: number | null;
  readonly room?: number | null;
  /** Whether what is kept cannot be read to be saved. */
  readonly unreadable?: boolean;
  /** What comes of putting a run back; and the pictures that it was taken out with. */
  readonly putting?: Written;
  readonly takenWith?: readonly Picture[];
  readonly file?: File | null;
  readonly dictation?: Dictation | null;
  readonly bottles?: () => Promise<Shelf>;
}

export function writeUpWorld(says: Says = {}) {
  const { ports, pass, saved } = clockAndFiles();
  async function saveFile(name: string, content: string | Blob): Promise<void> {
    saved.push({ name, text: typeof content === "string" ? content : await content.text() });
  }
  const told: string[] = [];
  const again: Worksheet[] = [];
  const lookedBeside: string[] = [];
  const texts: KeptTexts[] = [];
  const pictured: Picture[] = [];
  let runs = says.runs ?? [gullrock, night];
  let read: { readonly of: typeof runs; readonly lines: FoundRuns["lines"] } | null = null;
  const all = (): FoundRuns => {
    if (read?.of !== runs) {
      read = { of: runs, lines: runs.map(lineOf).toSorted((a, b) => b.begunAt - a.begunAt) };
    }
    const { lines } = read;
    if (says.kind === "refused") return { kind: "refused", lines };
    return { kind: "found", lines, onlyHere: says.onlyHere ?? [], unread: says.unread ?? 0 };
  };
  const everything: Everything = {
    async all(held) {
      told.push(`all, ${held.length} held`);
      const kept: Content["kept"] = kinds.map((kind) => ({
        kind,
        entries: kind.shelf === "runs" ? runs.map((run) => ({ key: run.id, value: run })) : [],
      }));
      return { content: { kept, settings: {} }, isWhole: says.unreadable !== true };
    },
    look: async () => says.looked ?? null,
    async takeIn(content) {
      told.push("take in");
      const came = content.kept[0]?.entries.map(({ value }) => value as RunRecord) ?? [];
      runs = [...runs, ...came];
      if (says.taken !== undefined) return says.taken;
      const changed = content.kept.flatMap(({ kind, entries }) =>
        entries.map(({ key, value }) => ({ kind, key, was: undefined, is: value })),
      );
      const before = { changed, settings: {}, settingsLeft: undefined };
      return { kind: "taken", counts: says.looked ?? [], before };
    },
    async takeBack({ changed }) {
      told.push("take back");
      const { stays = 0 } = says;
      if (stays === null) return { kind: "not taken back" };
      runs = runs.filter(({ id }) => !changed.some(({ key }) => key === id));
      return { kind: "taken back", stayed: stays };
    },
    async finish() {},
  };
  return {
    told,
    lookedBeside,
    again,
    texts,
    pictured,
    pass,
    saved,
    ports: {
      keeping: { ...keepingThat("kept"), room: async () => says.room ?? null },
      saveFile: (name: string, content: string | Blob) => void saveFile(name, content),
      chooseFile: async () => says.file ?? null,
      after: ports.after,
      bottles: says.bottles ?? (() => Promise.reject(new Error("not fetched"))),
      Shelf: () => <p>the bottles</p>,
      lookBeside: async () => void lookedBeside.push("looked"),
      now: () => begunAt,
      useWorksheet: (worksheet: Worksheet) => void again.push(worksheet),
      useTexts(it: KeptTexts) {
        texts.push(it);
        return () => void texts.pop();
      },
      dictation: says.dictation ?? null,
      scale: async (file: Blob) =>
        file.type.startsWith("image/") ? { image: file, width: 1600, height: 1200 } : null,
      everything,
      pictures: {
        of: async (run: string) => pictured.filter((it) => it.run === run),
        async keep(picture: Picture) {
          const written = says.picturing ?? "kept";
          if (written !== "kept") return written;
          const at = pictured.findIndex(({ id }) => id === picture.id);
          if (at < 0) pictured.push(picture);
          else pictured[at] = picture;
          return written;
        },
        async remove(picture: Picture) {
          if (says.removing === false) return false;
          pictured.splice(
            pictured.findIndex(({ id }) => id === picture.id),
            1,
          );
          return true;
        },
      },
      store: {
        lines: async () => all(),
        known: () => (says.linesKnown ? all() : null),
        newest: async (count: number) =>
          runs.toSorted((a, b) => b.begunAt - a.begunAt).slice(0, count),
        read: async (ids: readonly string[]) =>
          ids.flatMap((id) => runs.find((run) => run.id === id) ?? []),
        keep: async (): Promise<Written> => "kept",
        held: () =>
          says.kind === "refused" ? runs : runs.filter(({ id }) => says.onlyHere?.includes(id)),
        async judge(id: string, { note, negatives, stars }: Judgement): Promise<Written> {
          if (negatives !== undefined) told.push(`see ${id} ${negatives.density}`);
          if (stars !== undefined) told.push(`stars ${id} ${stars}`);
          told.push(`note ${id} “${note}”`);
          return says.notes ?? "kept";
        },
        async takeOut(id: string): Promise<TakenOut | null> {
          told.push(`remove ${id}`);
          const run = runs.find((it) => it.id === id);
          if (says.removing === false || run === undefined) return null;
          runs = runs.filter((it) => it !== run);
          return { run, pictures: says.takenWith ?? [] };
        },
        async putBack({ run }: TakenOut): Promise<Written> {
          told.push(`keep ${run.id} “${run.note}”`);
          if (says.putting !== undefined && says.putting !== "kept") return says.putting;
          runs = [...runs, run];
          return "kept";
        },
      },
    },
  };
}
