// The sheet on which a voice is recorded: one phrase at a time in large type, what the microphone is at in
// words, and every act with the key that does it. Past 200 lines because phrase, meter and acts are one screen.
import type { ReadonlySignal } from "@preact/signals";
import { useEffect, useRef, useState } from "preact/hooks";
import { lateWords } from "./language.ts";
import type { Recording, Take, Told } from "./recording-state.ts";
import { tenths, whyUnusable } from "./voice-messages.ts";
import type { VoiceShelf } from "./voice-shelf.ts";
import { isOnOther, WetDialog } from "./wet-dialog.tsx";
import "./own-voice.css";

interface OwnVoiceProps {
  readonly recording: Recording;
  readonly shelf: VoiceShelf;
  readonly leave: () => void;
  /** Calls back several times a second, for the meter alone. */
  readonly often: (show: () => void) => () => void;
}

export function OwnVoice({ recording, shelf, leave, often }: OwnVoiceProps) {
  const main = useRef<HTMLButtonElement>(null);
  const clips = shelf.clips.value;
  const { phrases, wanted } = recording.order;
  const text = phrases[recording.at.value] ?? "";
  const take = recording.take.value;
  const isRecorded = clips.has(text);
  const recorded = phrases.filter((each) => clips.has(each)).length;
  const ofWanted = phrases.slice(0, wanted).filter((each) => clips.has(each)).length;
  useEffect(() => {
    main.current?.focus();
    return recording.leave;
  }, [recording]);

  /** The next key is to be a press, not the same button again. */
  function act(what: () => unknown): void {
    what();
    main.current?.focus();
  }

  const acts: { readonly [key: string]: () => unknown } = {
    " ": recording.press,
    Enter: recording.keep,
    h: recording.hear,
    r: recording.say,
    ArrowLeft: () => recording.step(-1),
    ArrowRight: () => recording.step(1),
    Delete: recording.remove,
    u: recording.undo,
  };

  return (
    <WetDialog
      label={lateWords.value.recording.name}
      leave={leave}
      keys={(event) => {
        const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
        const does = acts[key];
        if (does === undefined) return false;
        if ((key === " " || key === "Enter") && isOnOther(event, main.current)) return false;
        if (!event.repeat) act(does);
        return true;
      }}
    >
      <div class="own-voice">
        <p class="own-progress">
          <b>{lateWords.value.recording.progress(recorded, phrases.length)}</b>{" "}
          {lateWords.value.recording.recorded}
          <progress value={recorded} max={phrases.length} aria-hidden="true" />
          {wanted > 0 && <span>{lateWords.value.recording.forWorksheet(ofWanted, wanted)}</span>}
        </p>
        <p class="own-phrase">
          <span>{lateWords.value.recording.say}</span>
          <b lang={shelf.language}>{text}</b>
        </p>
        <p class="own-told" role="status">
          {statusOf(take, recording.told.value, isRecorded)}
        </p>
        <Meter take={recording.take} level={recording.level} often={often} />
        <div class="own-acts">
          <Act
            main={main}
            first={take.kind !== "taken"}
            name={pressName(take)}
            keyName={lateWords.value.recording.keys.press}
            act={() => act(recording.press)}
          />
          <Act
            first={take.kind === "taken"}
            able={take.kind === "taken"}
            name={lateWords.value.recording.keep}
            keyName={lateWords.value.recording.keys.keep}
            act={() => act(recording.keep)}
          />
          <Act
            able={take.kind === "taken" || (isRecorded && take.kind !== "recording")}
            name={lateWords.value.recording.hear}
            keyName={lateWords.value.recording.keys.hear}
            act={() => act(recording.hear)}
          />
          <Act
            able={take.kind !== "recording"}
            name={lateWords.value.recording.sayIt}
            keyName={lateWords.value.recording.keys.say}
            act={() => act(recording.say)}
          />
        </div>
        <div class="own-acts own-small">
          <Act
            name={lateWords.value.recording.back}
            keyName={lateWords.value.recording.keys.back}
            act={() => act(() => recording.step(-1))}
          />
          <Act
            name={lateWords.value.recording.skip}
            keyName={lateWords.value.recording.keys.skip}
            act={() => act(() => recording.step(1))}
          />
          <Act
            able={isRecorded}
            name={lateWords.value.recording.remove}
            keyName={lateWords.value.recording.keys.remove}
            act={() => act(recording.remove)}
          />
          <Act
            able={shelf.canUndo.value}
            name={lateWords.value.recording.undo}
            keyName={lateWords.value.recording.keys.undo}
            act={() => act(recording.undo)}
          />
          <Act
            name={lateWords.value.recording.leave}
            keyName={lateWords.value.recording.keys.leave}
            act={leave}
          />
        </div>
      </div>
    </WetDialog>
  );
}

interface ActProps {
  readonly name: string;
  readonly keyName: string;
  readonly act: () => void;
  readonly able?: boolean;
  readonly first?: boolean;
  readonly main?: { current: HTMLButtonElement | null };
}

/** A button that says its key. One that can do nothing now stays where it is, and says so. */
function Act({ name, keyName, act, able = true, first = false, main }: ActProps) {
  return (
    <button
      type="button"
      ref={main ?? null}
      class={first ? "wet-first" : undefined}
      aria-disabled={!able}
      onClick={() => able && act()}
    >
      {name} <kbd>{keyName}</kbd>
    </button>
  );
}

function pressName(take: Take): string {
  if (take.kind === "recording") return lateWords.value.recording.stop;
  return take.kind === "taken" || take.kind === "refused"
    ? lateWords.value.recording.again
    : lateWords.value.recording.record;
}

function statusOf(take: Take, told: Told, isRecorded: boolean): string {
  switch (take.kind) {
    case "opening":
      return lateWords.value.recording.opening;
    case "no-microphone":
      return lateWords.value.microphone[take.why];
    case "recording":
      return lateWords.value.recording.recording;
    case "refused":
      return whyUnusable(take.why);
    case "taken":
      return told === null
        ? lateWords.value.recording.taken(tenths(take.samples.length / 24_000))
        : lateWords.value.recording.told[told];
    case "ready":
      if (told !== null) return lateWords.value.recording.told[told];
      return isRecorded ? lateWords.value.recording.isRecorded : lateWords.value.recording.ready;
  }
}

interface MeterProps {
  readonly take: ReadonlySignal<Take>;
  readonly level: () => number;
  readonly often: (show: () => void) => () => void;
}

/** The level as a bar and in a word; for the eye alone, since it would talk into the recording. */
function Meter({ take, level, often }: MeterProps) {
  const [shown, setShown] = useState(0);
  const isOn = take.value.kind === "recording";
  useEffect(() => often(() => setShown(Math.round(level() * 50) / 50)), [level, often]);
  return (
    <p class={isOn ? "own-meter on" : "own-meter"} aria-hidden="true">
      {lateWords.value.recording.level}
      <span class="own-bar">
        <span style={{ inlineSize: `${shown * 100}%` }} />
      </span>
      <span class="own-level">{levelWord(shown)}</span>
    </p>
  );
}

/** Peaks between −27 and −3 dBFS are good. */
function levelWord(level: number): string {
  if (level < 0.15) return lateWords.value.recording.levels.none;
  if (level < 0.55) return lateWords.value.recording.levels.soft;
  return level < 0.95
    ? lateWords.value.recording.levels.good
    : lateWords.value.recording.levels.loud;
}
