// The voices of this device that speak the worksheet's language: one is picked, heard and measured, and
// can then be chosen. What was measured stands in words, or why it cannot lead a run.
import { useEffect, useId, useState } from "preact/hooks";
import { measureVoice, type WhyNotVoice } from "../live/measure-voice.ts";
import { steadyClock } from "../live/steady-clock.ts";
import type { Clock, Synthesiser } from "../live/synthesiser.ts";
import type { SpeakerChoice } from "../logbook/speaker-store.ts";
import { type Language, languageOf } from "../units/language.ts";
import type { DevicePace } from "../voice/device-pace.ts";
import { lateWords } from "./language.ts";
import { SpeakerRadio } from "./speaker-radio.tsx";
import type { Speakers } from "./speakers.ts";
import { tenths } from "./voice-messages.ts";

interface DeviceVoicesProps {
  readonly language: Language;
  /** All that the script can say; a few of them are spoken to measure by. */
  readonly phrases: readonly string[];
  readonly speakers: Speakers;
  readonly synthesiser: Synthesiser | null;
  readonly isRunOn: boolean;
  readonly choose: (choice: SpeakerChoice) => void;
  readonly clock?: Clock;
}

type Measuring =
  | { readonly kind: "idle" }
  | { readonly kind: "on" }
  | { readonly kind: "refused"; readonly voice: string; readonly why: WhyNotVoice };

export function DeviceVoices({
  language,
  phrases,
  speakers,
  synthesiser,
  isRunOn,
  choose,
  clock = steadyClock,
}: DeviceVoicesProps) {
  const [voices, setVoices] = useState(() => voicesFor(language, synthesiser));
  const chosen = speakers.choice.value;
  const [picked, setPicked] = useState(chosen.kind === "device" ? chosen.voice : "");
  const [measuring, setMeasuring] = useState<Measuring>({ kind: "idle" });
  const which = useId();
  useEffect(
    () => synthesiser?.whenChanged(() => setVoices(voicesFor(language, synthesiser))),
    [synthesiser, language],
  );
  const voice = voices.find(({ name }) => name === picked) ?? voices[0];
  if (synthesiser === null || voice === undefined) return null;
  const pace = speakers.pace(voice.name);

  async function measure(): Promise<void> {
    if (synthesiser === null || voice === undefined || measuring.kind === "on") return;
    setMeasuring({ kind: "on" });
    const result = await measureVoice(voice.name, handful(phrases), synthesiser, clock);
    if (result.kind === "refused") {
      setMeasuring({ kind: "refused", voice: voice.name, why: result.why });
      return;
    }
    speakers.keepPace(voice.name, result.pace);
    setMeasuring({ kind: "idle" });
    choose({ kind: "device", voice: voice.name, language: voice.language });
  }

  return (
    <>
      <SpeakerRadio
        name={lateWords.value.deviceVoice.device}
        hint={lateWords.value.deviceVoice.hint}
        isChosen={chosen.kind === "device"}
        able={pace !== null}
        choose={() => choose({ kind: "device", voice: voice.name, language: voice.language })}
      />
      <div class="device-voice">
        <label for={which}>{lateWords.value.deviceVoice.which}</label>
        <select
          id={which}
          value={voice.name}
          onChange={(event) => {
            setPicked(event.currentTarget.value);
            // What was measured of one voice says nothing of another.
            if (chosen.kind === "device") choose({ kind: "bundled" });
          }}
        >
          {voices.map(({ name }) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
        <button type="button" disabled={isRunOn || measuring.kind === "on"} onClick={measure}>
          {lateWords.value.deviceVoice.measure}
        </button>
      </div>
      <p role="status">{statusOf()}</p>
    </>
  );

  function statusOf(): string {
    if (isRunOn) return lateWords.value.deviceVoice.runOn;
    if (measuring.kind === "on") return lateWords.value.deviceVoice.measuring;
    if (measuring.kind === "refused" && measuring.voice === voice?.name)
      return lateWords.value.deviceVoice.refused[measuring.why];
    return pace === null ? lateWords.value.deviceVoice.first : inWords(pace);
  }
}

function voicesFor(language: Language, synthesiser: Synthesiser | null) {
  return (synthesiser?.voices() ?? []).filter((voice) => languageOf(voice.language) === language);
}

/** From the shortest to the longest, evenly. */
function handful(phrases: readonly string[]): readonly string[] {
  const byLength = phrases.toSorted((a, b) => a.length - b.length);
  const last = byLength.length - 1;
  const places = [0, 0.25, 0.5, 0.75, 1].map((part) => Math.round(part * last));
  return [...new Set(places)].flatMap((place) => byLength[place] ?? []);
}

function inWords({ delay, perLetter }: DevicePace): string {
  const letters = 2 / (perLetter.least + perLetter.most);
  return lateWords.value.deviceVoice.measured(tenths(delay.most), Math.round(letters));
}
