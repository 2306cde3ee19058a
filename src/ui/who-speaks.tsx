// Who speaks on this device: the choice, and all that is done to a voice of one's own but the recording
// itself, which has a sheet. A part of Work out's question of the voice, fetched after the first screen.
// Past 200 lines because every act on the clips as a whole is here.
import { useComputed, useSignal } from "@preact/signals";
import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { Recorder } from "../live/recorder.ts";
import type { Runs } from "../live/runs.ts";
import type { Synthesiser } from "../live/synthesiser.ts";
import type { VoiceSounds } from "../live/voice-sounds.ts";
import { everyPhrase, phraseLimits } from "../script/script.ts";
import type { Timeline } from "../timeline/score.ts";
import { type Language, spokenIn } from "../units/language.ts";
import { readOwnPack, writeOwnPack } from "../voice/own-pack.ts";
import { whoSpeaksIds } from "../voice/senses.ts";
import { DeviceVoices } from "./device-voices.tsx";
import { lateWords } from "./language.ts";
import { OwnVoice } from "./own-voice.tsx";
import { recordingOrder } from "./recording-order.ts";
import { openRecording, type Recording } from "./recording-state.ts";
import type { SensesChoice } from "./senses.ts";
import { SpeakerRadio } from "./speaker-radio.tsx";
import type { Speakers } from "./speakers.ts";
import { whyNoPack } from "./voice-messages.ts";
import type { VoiceShelf } from "./voice-shelf.ts";
import { useWorkOut } from "./work-out-context.ts";
import "./own-voice.css";

export interface WhoSpeaksPorts {
  readonly runs: Pick<Runs, "compile" | "current">;
  readonly sounds: VoiceSounds;
  readonly recorder: Recorder;
  /** Null where the browser has no voices. */
  readonly synthesiser: Synthesiser | null;
  readonly speakers: Speakers;
  readonly senses: SensesChoice;
  readonly saveFile: (name: string, content: Uint8Array<ArrayBuffer>) => void;
  /** Lets the person choose a file; null where none was chosen. */
  readonly chooseFile: (accept: string) => Promise<File | null>;
  /** Calls back several times a second, for what is shown only. */
  readonly often: (show: () => void) => () => void;
}

interface ScriptPart {
  readonly shelf: VoiceShelf;
  /** Of what a run says: asking by ear is spoken by the bundled voice, and nobody need record it. */
  readonly limits: ReadonlyMap<string, number>;
  /** All that a file may hold, since one may come from when all was recorded. */
  readonly known: readonly string[];
}

export function whoSpeaksWith(ports: WhoSpeaksPorts): ComponentType {
  return function WhoSpeaks() {
    const { worksheet } = useWorkOut();
    const language = useComputed(() => spokenIn(worksheet.value?.language)).value;
    const [part, setPart] = useState<ScriptPart | "lost" | null>(null);
    useEffect(() => {
      let shown = true;
      setPart(null);
      scriptPart(ports, language).then(
        (it) => shown && setPart(it),
        () => shown && setPart("lost"),
      );
      return () => {
        shown = false;
      };
    }, [language]);
    if (part === null) return <p class="who-speaks">{lateWords.value.speaker.opening}</p>;
    if (part === "lost") return <p class="who-speaks">{lateWords.value.speaker.notOpened}</p>;
    return <Choosing key={part.shelf.language} ports={ports} part={part} />;
  };
}

async function scriptPart(
  { sounds, speakers }: WhoSpeaksPorts,
  language: Language,
): Promise<ScriptPart> {
  const script = await sounds.script(language);
  return {
    shelf: speakers.shelf(language),
    limits: phraseLimits(script, "run"),
    known: everyPhrase(script),
  };
}

interface ChoosingProps {
  readonly ports: WhoSpeaksPorts;
  readonly part: ScriptPart;
}

function Choosing({ ports, part: { shelf, limits, known } }: ChoosingProps) {
  const { speakers } = ports;
  const { worksheet, plan } = useWorkOut();
  const told = useSignal("");
  const [recording, setRecording] = useState<Recording | null>(null);
  const phrases = [...limits.keys()];
  const recorded = phrases.filter((text) => shelf.clips.value.has(text)).length;

  useEffect(() => {
    void shelf.ready.then((read) => {
      if (!read) told.value = lateWords.value.speaker.notRead;
    });
  }, [shelf]);

  /** @param kept makes the choice; false where it will not be kept. */
  function choose(kept: () => boolean): void {
    told.value = kept() ? "" : lateWords.value.speaker.choiceNotKept;
  }

  async function record(): Promise<void> {
    await shelf.ready;
    const timeline = await compiled();
    const order = recordingOrder(timeline, phrases);
    const running = () => ports.runs.current.value !== null;
    setRecording(openRecording(order, limits, shelf, { ...ports, running }));
  }

  /** Null where no worksheet is whole: then the script's own order serves. */
  async function compiled(): Promise<Timeline | null> {
    if (worksheet.value === null || plan.value === null) return null;
    return ports.runs.compile(worksheet.value, plan.value).catch(() => null);
  }

  async function save(): Promise<void> {
    const clips = shelf.clips.value;
    if (clips.size === 0) {
      told.value = lateWords.value.speaker.nothingToSave;
      return;
    }
    const name = `tankside-voice-${shelf.language}.zip`;
    const bytes = await writeOwnPack({
      language: shelf.language,
      name: lateWords.value.speaker.packName,
      clips,
    });
    ports.saveFile(name, new Uint8Array(bytes));
    told.value = lateWords.value.speaker.saved(name);
  }

  async function open(): Promise<void> {
    const file = await ports.chooseFile(".zip,application/zip");
    if (file === null) return;
    const bytes = await file.arrayBuffer().catch(() => new ArrayBuffer(0));
    const read = await readOwnPack(new Uint8Array(bytes), shelf.language, known);
    if (read.kind === "refused") {
      told.value = whyNoPack(file.name, read.why);
      return;
    }
    const { clips } = read.pack;
    const kept = await shelf.change(clips);
    told.value = kept
      ? lateWords.value.speaker.imported(clips.size, read.unknown)
      : lateWords.value.speaker.notKept;
  }

  async function removeAll(): Promise<void> {
    const change = new Map([...shelf.clips.value.keys()].map((text) => [text, null]));
    told.value = (await shelf.change(change))
      ? lateWords.value.speaker.removedAll
      : lateWords.value.speaker.notKept;
  }

  async function undo(): Promise<void> {
    told.value = (await shelf.undo())
      ? lateWords.value.speaker.undone
      : lateWords.value.speaker.notKept;
  }

  return (
    <div class="who-speaks">
      <fieldset class="radios">
        <legend>{lateWords.value.senses.title}</legend>
        {whoSpeaksIds.map((id) => (
          <SpeakerRadio
            key={id}
            group="whose-words"
            name={lateWords.value.senses.names[id]}
            hint={lateWords.value.senses.hints[id]}
            isChosen={(ports.senses.now.value.speaks ?? "program") === id}
            choose={() => choose(() => ports.senses.change({ speaks: id }))}
          />
        ))}
      </fieldset>
      <fieldset class="radios">
        <legend>{lateWords.value.speaker.who}</legend>
        <SpeakerRadio
          name={lateWords.value.speaker.bundled}
          isChosen={speakers.choice.value.kind === "bundled"}
          choose={() => choose(() => speakers.choose({ kind: "bundled" }))}
        />
        <SpeakerRadio
          name={lateWords.value.speaker.own(recorded, phrases.length)}
          hint={lateWords.value.speaker.ownHint}
          isChosen={speakers.choice.value.kind === "own"}
          choose={() => choose(() => speakers.choose({ kind: "own" }))}
        />
        <DeviceVoices
          language={shelf.language}
          phrases={phrases}
          speakers={speakers}
          synthesiser={ports.synthesiser}
          isRunOn={ports.runs.current.value !== null}
          choose={(choice) => choose(() => speakers.choose(choice))}
        />
      </fieldset>
      <div class="own-tools">
        <button type="button" onClick={record}>
          {recorded === 0 ? lateWords.value.speaker.record : lateWords.value.speaker.goOn}
        </button>
        <button type="button" onClick={save}>
          {lateWords.value.speaker.export}
        </button>
        <button type="button" onClick={open}>
          {lateWords.value.speaker.import}
        </button>
        {recorded > 0 && (
          <button type="button" onClick={removeAll}>
            {lateWords.value.speaker.removeAll}
          </button>
        )}
        {shelf.canUndo.value && (
          <button type="button" onClick={undo}>
            {lateWords.value.speaker.undo}
          </button>
        )}
      </div>
      <p role="status">{told.value}</p>
      {recording !== null && (
        <OwnVoice
          recording={recording}
          shelf={shelf}
          often={ports.often}
          leave={() => setRecording(null)}
        />
      )}
    </div>
  );
}
