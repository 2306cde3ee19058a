// A timeline, step by step: the list of its steps, and the one chosen, to be seen, heard and read.
import { useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Runs } from "../live/runs.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import type { Section, Timeline } from "../timeline/score.ts";
import type { Method } from "../trade/method.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { lateWords, writing } from "./language.ts";
import { usePrinting } from "./printing.ts";
import { entriesOf } from "./score-entries.ts";
import { type Heard, openHearing, showing } from "./score-hearing.ts";
import { ScoreKey } from "./score-key.tsx";
import { ScoreList } from "./score-list.tsx";
import { ScorePaper } from "./score-paper.tsx";
import { ScorePicture } from "./score-picture.tsx";

/** A section longer than this, seconds, can be heard from any entry of its list. */
const LONG = 60;

interface WalkProps {
  readonly runs: Runs;
  readonly worksheet: Worksheet;
  readonly timeline: Timeline;
  readonly print: () => void;
}

export function Walk({ runs, worksheet, timeline, print }: WalkProps) {
  const printing = usePrinting();
  const { sections } = timeline;
  // Steps are named, and words said, in the language of the voice.
  const spoken = timeline.voice.language;
  const [chosen, setChosen] = useState(0);
  const heading = useRef<HTMLHeadingElement>(null);
  const hearing = useMemo(() => openHearing(runs, showing), [runs]);
  // With the leaving itself, not after the next paint: what is left must not go on sounding.
  useLayoutEffect(() => hearing.stop, [hearing]);
  const section = sections[Math.min(chosen, sections.length - 1)];
  if (section === undefined) return null;
  if (printing) return <ScorePaper timeline={timeline} method={worksheet.tank.method} />;

  function show(index: number): void {
    if (index < 0 || index >= sections.length) return;
    hearing.stop();
    setChosen(index);
  }
  const clocked = sections.reduce((sum, { seconds }) => sum + seconds, 0);
  return (
    <>
      <p>{lateWords.value.walk.lead}</p>
      <nav aria-label={lateWords.value.walk.steps}>
        <ol class="steps">
          {sections.map((each, i) => (
            <li key={each.id}>
              <button
                type="button"
                aria-current={each === section ? "step" : undefined}
                onClick={() => {
                  show(i);
                  heading.current?.focus();
                }}
              >
                <b lang={spoken}>{each.title}</b>
                <span>
                  {lateWords.value.walk.hint(
                    each.dark ? lateWords.value.walk.dark : lateWords.value.walk.light,
                    lasts(each),
                  )}
                </span>
              </button>
            </li>
          ))}
        </ol>
      </nav>
      <p class="total">
        {lateWords.value.walk.total(sections.length, writeClockTime(clocked))}{" "}
        <button type="button" class="plain" onClick={print}>
          {lateWords.value.walk.print}
        </button>
      </p>
      <section class={section.dark ? "step dark" : "step"} aria-labelledby="step-title">
        <div class="pages">
          <Turn
            to={lateWords.value.walk.previous}
            none={section === sections[0]}
            act={() => show(chosen - 1)}
          />
          <Turn
            to={lateWords.value.walk.next}
            none={section === sections.at(-1)}
            act={() => show(chosen + 1)}
          />
          <p role="status">
            {lateWords.value.walk.step(chosen + 1, sections.length)}
            <span class="unseen">{lateWords.value.walk.stepTitle(section.title)}</span>
          </p>
        </div>
        <h2 id="step-title" ref={heading} tabIndex={-1} lang={spoken}>
          {section.title}
        </h2>
        <p>
          {section.seconds > 0
            ? lateWords.value.walk.clocked(writeClockTime(section.seconds))
            : lateWords.value.walk.spoken(`${writing.value.number(heardFor(section), 0)} s`)}{" "}
          {section.dark && lateWords.value.walk.screenBlack}
        </p>
        <Step
          key={section.id}
          timeline={timeline}
          section={section}
          method={worksheet.tank.method}
          hearing={hearing}
          runIsOn={runs.current.value !== null}
        />
      </section>
    </>
  );
}

function heardFor({ cues }: Section): number {
  return Math.max(0, ...cues.map((cue) => cue.until));
}

function lasts({ seconds }: Section): string {
  return seconds > 0 ? writeClockTime(seconds) : lateWords.value.walk.ownPace;
}

interface TurnProps {
  readonly to: string;
  readonly none: boolean;
  readonly act: () => void;
}

/** Stays where it is at either end, so that the keyboard is not left standing nowhere. */
function Turn({ to, none, act }: TurnProps) {
  return (
    <button type="button" aria-disabled={none} onClick={act}>
      {to}
    </button>
  );
}

interface StepProps {
  readonly timeline: Timeline;
  readonly section: Section;
  readonly method: Method;
  readonly hearing: Heard;
  readonly runIsOn: boolean;
}

function Step({ timeline, section, method, hearing, runIsOn }: StepProps) {
  const inForce = lateWords.value;
  const entries = useMemo(() => entriesOf(section, method), [section, method, inForce]);
  const hearFrom = (seconds: number) => hearing.hear(timeline, section, seconds);
  return (
    <>
      {runIsOn ? (
        <p>
          {lateWords.value.walk.runIsOn} <a href="#lights-out">{lateWords.value.walk.lightsOut}</a>
          {lateWords.value.walk.runIsOnEnd}
        </p>
      ) : (
        <HearTools section={section} hearing={hearing} hear={() => hearFrom(0)} />
      )}
      <ScorePicture section={section} method={method} elapsed={hearing.elapsed} />
      <ScoreKey />
      <h3>{lateWords.value.walk.inWords}</h3>
      <ScoreList
        section={section}
        entries={entries}
        spoken={timeline.voice.language}
        elapsed={hearing.elapsed}
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
