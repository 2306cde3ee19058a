// One step of a walk: to be heard, seen as its score, and read in words.
import type { ReadonlySignal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import type { VoiceSounds } from "../live/voice-sounds.ts";
import type { Section, Timeline } from "../timeline/score.ts";
import type { Method } from "../trade/method.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { spokenIn } from "../units/language.ts";
import { lateWords } from "./language.ts";
import { entriesOf } from "./score-entries.ts";
import type { Heard } from "./score-hearing.ts";
import { ScoreKey } from "./score-key.tsx";
import { ScoreList } from "./score-list.tsx";
import { ScorePicture } from "./score-picture.tsx";
import { useWhy, WhyTold } from "./score-why.tsx";

/** A section longer than this, seconds, can be heard from any entry of its list. */
const LONG = 60;

/** Seconds until its last sound has died. */
export function heardFor({ cues }: Section): number {
  return Math.max(0, ...cues.map((cue) => cue.until));
}

interface StepProps {
  readonly timeline: Timeline;
  readonly section: Section;
  readonly method: Method;
  readonly hearing: Heard;
  /** Seconds into the step while it sounds, in a hearing or in a run, else null. */
  readonly present: ReadonlySignal<number | null>;
  readonly runIsOn: boolean;
  readonly sounds: VoiceSounds;
  /** Keys of the sentences that tell why and how. */
  readonly reasons: readonly string[];
}

export function Step(props: StepProps) {
  const { timeline, section, method, hearing, present, runIsOn, sounds, reasons } = props;
  const inForce = lateWords.value;
  const entries = useMemo(() => entriesOf(section, method), [section, method, inForce]);
  const spoken = spokenIn(timeline.voice.language);
  const why = useWhy(sounds, spoken, reasons);
  // One of them at a time.
  function hearFrom(seconds: number): void {
    why.stop();
    hearing.hear(timeline, section, seconds);
  }
  function tellWhy(): void {
    hearing.stop();
    why.tell();
  }
  return (
    <>
      {runIsOn ? (
        <p>
          {lateWords.value.walk.runIsOn} <a href="#lights-out">{lateWords.value.walk.lightsOut}</a>
          {lateWords.value.walk.runIsOnEnd}
        </p>
      ) : (
        <>
          <HearTools section={section} hearing={hearing} hear={() => hearFrom(0)} />
          {reasons.length > 0 && (
            <div class="hearing">
              <button type="button" onClick={why.on ? why.stop : tellWhy}>
                {why.on ? lateWords.value.walk.stopHearing : lateWords.value.walk.hearWhy}
              </button>
              <WhyTold why={why} spoken={spoken} />
            </div>
          )}
        </>
      )}
      <ScorePicture section={section} method={method} elapsed={present} />
      <ScoreKey />
      <h3>{lateWords.value.walk.inWords}</h3>
      <ScoreList
        section={section}
        entries={entries}
        spoken={timeline.voice.language}
        elapsed={present}
        hearFrom={section.seconds > LONG && !runIsOn ? hearFrom : null}
      />
    </>
  );
}

interface HearToolsProps {
  readonly section: Section;
  readonly hearing: Heard;
  readonly hear: () => void;
}

function HearTools({ section, hearing, hear }: HearToolsProps) {
  const on = hearing.on.value;
  return (
    <div class="hearing">
      {/* One button with two faces, so that the press that stops finds it where the press that began was. */}
      <button type="button" class="main" onClick={on ? hearing.stop : hear}>
        {on ? lateWords.value.walk.stopHearing : lateWords.value.walk.hear}
      </button>
      {on && <Clock section={section} hearing={hearing} />}
      <p role="status">{hearing.refused.value && lateWords.value.walk.notHeard}</p>
    </div>
  );
}

/** By itself, since it alone changes with every frame; silent, since something sounds already. */
function Clock({ section, hearing }: { readonly section: Section; readonly hearing: Heard }) {
  const of = Math.max(section.seconds, heardFor(section));
  // A moment may pass before the first sound.
  const now = Math.max(0, Math.floor(hearing.elapsed.value ?? 0));
  return (
    <p class="elapsed">{lateWords.value.walk.hearing(writeClockTime(now), writeClockTime(of))}</p>
  );
}
