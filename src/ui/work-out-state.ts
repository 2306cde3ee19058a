// Ports in, the living worksheet out: what is typed, what it reads as, and the acts a person can do
// to it. The only place where the draft changes; the screen calls these and shows the signals.
// Past 200 lines because every act is here.
import { computed, type ReadonlySignal, signal } from "@preact/signals";
import type { TankStore } from "../logbook/tank-store.ts";
import type { WorksheetStore } from "../logbook/worksheet-store.ts";
import type { Aside } from "../plan/asides.ts";
import { readWorksheetText } from "../plan/read-worksheet.ts";
import type { AsideWords } from "../plan/words/words.ts";
import { type Language, languageNames } from "../units/language.ts";
import { type DemoId, demoIn } from "./demo.ts";
import { blankRow, type Change, changed, type Draft } from "./draft.ts";
import { draftOf, emptyDraft } from "./draft-of.ts";
import { faultInFile } from "./field-names.ts";
import type { RowList } from "./fields.ts";
import { asideWords, language, words } from "./language.ts";
import type { PlaceProps } from "./place.ts";
import { inLanguage, sheetLanguage } from "./sheet-language.ts";
import type { Shelf } from "./shelf-state.ts";
import { type Says, type TankShelf, tankShelf } from "./tank-shelf.ts";
import { type DraftReading, readDraft, typedInto } from "./work-out-model.ts";
import { fileName, textOfFile } from "./worksheet-file.ts";

/** The questions beside the development, once they have been fetched, in the words given. */
type AsidesIn = (words: AsideWords) => readonly Aside[];

/** What the page needs of the world. */
export interface Ports {
  readonly store: WorksheetStore;
  readonly tanks: TankStore;
  /** Fetches the shelf of bottles, and the late words with it. */
  readonly bottles: () => Promise<Shelf>;
  /** Fetches the arithmetic of the questions beside the development, and the late words with it. */
  readonly asides: () => Promise<AsidesIn>;
  /** Offers a text to the person as a file. */
  readonly saveFile: (name: string, text: string) => void;
  /** ms since 1970, by the device's clock. */
  readonly now: () => number;
  /** Calls once, so many ms from now; returns the way to call it off. */
  readonly after: (ms: number, act: () => void) => () => void;
}

/** Something to tell the person, with lines of its own and fields to go to. */
export interface Notice {
  readonly says: string;
  readonly lines: readonly string[];
  readonly fields: readonly string[];
}

export interface WorkOut extends PlaceProps {
  readonly draft: ReadonlySignal<Draft>;
  readonly reading: ReadonlySignal<DraftReading>;
  /** The field being typed into, whose fault may wait until the person is done. */
  readonly typing: ReadonlySignal<string | null>;
  readonly notice: ReadonlySignal<Notice | null>;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  readonly shelf: TankShelf;
  bottles(): Promise<Shelf>;
  type(path: string, text: string): void;
  /** The person has gone on to something else. */
  leave(): void;
  addRow(list: RowList, at: number): void;
  removeRow(list: RowList, at: number): void;
  undo(): void;
  redo(): void;
  /** Several fields at once, as one step that undo takes back; `says` is told, if anything. */
  put(draft: Draft, says: Says | null): void;
  /** What was put, taken back as if it had never come, and kept no more than before; not where it was changed since. */
  takeBack(put: Draft, before: Draft): void;
  /** The time of day by the device's clock, seconds since midnight. */
  timeOfDay(): number;
  /** The voice of this worksheet from here on, as one step. */
  speakIn(language: Language): void;
  startDemo(id: DemoId): void;
  startEmpty(): void;
  open(name: string, text: string): void;
  save(): void;
  refuseFile(): void;
  /** Keeps at once what is waiting to be kept: for the moment the page goes away. */
  keepNow(): void;
}

/** A fault found while typing waits so long for the rest of the word, ms. */
const PAUSE = 1200;
/** And so long after its field is left: a press already under way must find its target in place, ms. */
const PRESS = 250;
/** Typing is kept after so long a pause, ms. */
const KEEP_AFTER = 400;

/** A worksheet from Gullrock Light, as the language in force would have it. */
function demoDraft(id: DemoId): Draft {
  const worksheet = demoIn(language.value, id, words.value.demo);
  return inLanguage(draftOf(worksheet), language.value);
}

/** Opens what was kept, or the practice worksheet where nothing was. */
export async function openWorkOut(ports: Ports): Promise<WorkOut> {
  const found = await ports.store.load();
  switch (found.kind) {
    case "found":
      return makeWorkOut(found.texts, null, ports);
    case "nothing":
      return makeWorkOut(
        demoDraft("gullrock"),
        told(() => words.value.notices.practice),
        ports,
      );
    case "refused":
      return makeWorkOut(
        demoDraft("gullrock"),
        told(() => words.value.notices.notKept),
        ports,
      );
  }
}

export function makeWorkOut(start: Draft, welcome: Notice | null, ports: Ports): WorkOut {
  const draft = signal(start);
  const asidesIn = signal<AsidesIn | null>(null);
  const asides = computed(() => asidesIn.value?.(asideWords.value) ?? []);
  const reading = computed(() => readDraft(draft.value, asides.value));
  const typing = signal<string | null>(null);
  const notice = signal<Notice | null>(welcome);
  const past = signal<readonly Change[]>([]);
  const future = signal<readonly Change[]>([]);
  let callOffPause = () => {};
  let callOffKeep: (() => void) | null = null;

  function keepNow(): void {
    if (callOffKeep === null) return;
    callOffKeep();
    callOffKeep = null;
    ports.store.keep(draft.value).then((kept) => {
      if (!kept) notice.value = told(() => words.value.notices.notKept);
    });
  }

  function become(next: Draft): void {
    draft.value = next;
    callOffKeep?.();
    callOffKeep = ports.after(KEEP_AFTER, keepNow);
  }

  function settle(): void {
    callOffPause();
    typing.value = null;
  }

  function settleAfter(ms: number): void {
    callOffPause();
    callOffPause = ports.after(ms, settle);
  }

  function apply(change: Change, says: Says | null): void {
    settle();
    const { draft: next, inverse } = changed(draft.value, change);
    become(next);
    past.value = [...past.value, inverse];
    future.value = [];
    notice.value = says === null ? null : told(says);
  }

  function put(next: Draft, says: Says | null): void {
    apply({ kind: "replace", draft: next }, says);
  }

  function tell(says: Says): void {
    notice.value = told(says);
  }

  function step(from: typeof past, to: typeof past, says: Says): void {
    const change = from.value.at(-1);
    if (!change) return;
    settle();
    const { draft: next, inverse } = changed(draft.value, change);
    become(next);
    from.value = from.value.slice(0, -1);
    to.value = [...to.value, inverse];
    notice.value = told(says);
  }

  ports.asides().then(
    (fetched) => {
      asidesIn.value = fetched;
    },
    () => tell(() => words.value.latePart.notFetched),
  );

  return {
    worksheet: computed(() => reading.value.worksheet),
    plan: computed(() => reading.value.plan),
    draft,
    reading,
    typing,
    notice,
    canUndo: computed(() => past.value.length > 0),
    canRedo: computed(() => future.value.length > 0),
    shelf: tankShelf(ports.tanks, { draft, put, tell }),
    bottles: ports.bottles,
    type(path, text) {
      // A fault already shown is not hidden again while it is being mended.
      if (!(path in reading.value.faults) || typing.value === path) {
        typing.value = path;
        settleAfter(PAUSE);
      }
      become(typedInto(draft.value, path, text));
    },
    leave: () => settleAfter(PRESS),
    addRow(list, at) {
      apply({ kind: "insert", list, at, row: blankRow(list) }, null);
    },
    removeRow(list, at) {
      apply({ kind: "remove", list, at }, () =>
        words.value.notices.removed(words.value.rows[list].one(at + 1)),
      );
    },
    put,
    takeBack(it, before) {
      if (draft.value !== it) return;
      settle();
      callOffKeep?.();
      callOffKeep = null;
      draft.value = before;
      past.value = past.value.slice(0, -1);
      future.value = [];
    },
    timeOfDay() {
      const at = new Date(ports.now());
      return at.getHours() * 3600 + at.getMinutes() * 60 + at.getSeconds();
    },
    undo: () => step(past, future, () => words.value.notices.undone),
    redo: () => step(future, past, () => words.value.notices.redone),
    speakIn(next) {
      if (sheetLanguage(draft.value) === next) return;
      put(inLanguage(draft.value, next), () => words.value.language.voiceToo(languageNames[next]));
    },
    startDemo(id) {
      put(demoDraft(id), () => words.value.notices.demo);
    },
    startEmpty() {
      put(inLanguage(emptyDraft(), language.value), () => words.value.notices.empty);
    },
    open(name, text) {
      const file = readWorksheetText(text);
      if (file.kind === "worksheet") {
        apply({ kind: "replace", draft: draftOf(file.worksheet) }, () =>
          words.value.notices.opened(name),
        );
      } else {
        notice.value = told(
          () => words.value.notices.notWorksheet(name),
          [],
          () => file.faults.map(faultInFile),
        );
      }
    },
    save() {
      const { worksheet, faults, wanting } = reading.value;
      const hindered = [...Object.keys(faults), ...wanting];
      if (worksheet === null || hindered.length > 0) {
        notice.value = told(() => words.value.notices.notSaved, hindered);
        return;
      }
      const name = fileName(worksheet);
      ports.saveFile(name, textOfFile(worksheet));
      notice.value = told(() => words.value.notices.saved(name));
    },
    refuseFile() {
      notice.value = told(() => words.value.notices.notFile);
    },
    keepNow,
  };
}

/** A notice that goes along when the page's language changes. */
function told(
  says: Says,
  fields: readonly string[] = [],
  lines: () => readonly string[] = () => [],
): Notice {
  return {
    get says() {
      return says();
    },
    get lines() {
      return lines();
    },
    fields,
  };
}
