// A timeline, step by step: the list of its steps, and the one chosen, to be seen, heard and read.
import { signal } from "@preact/signals";
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Runs } from "../live/runs.ts";
import type { VoiceSounds } from "../live/voice-sounds.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { reasonsOf } from "../process/rehearsal.ts";
import type { Section, Timeline } from "../timeline/score.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { lateWords, writing } from "./language.ts";
import { usePrinting } from "./printing.ts";
import { openHearing, showing } from "./score-hearing.ts";
import { ScorePaper } from "./score-paper.tsx";
import { useRunning } from "./score-running.ts";
import { heardFor, Step } from "./score-step.tsx";

/** Where the run is not. */
const nowhere = signal<number | null>(null);

interface WalkProps {
  readonly runs: Runs;
  readonly worksheet: Worksheet;
  readonly timeline: Timeline;
  readonly print: () => void;
  readonly sounds: VoiceSounds;
}

export function Walk({ runs, print, sounds, ...given }: WalkProps) {
  const printing = usePrinting();
  // While a run is on, its own steps are shown, and the one it is at.
  const session = runs.current.value;
  const running = useRunning(session);
  const { timeline, worksheet } = session ?? given;
  const { sections } = timeline;
  // Steps are named, and words said, in the language of the voice.
  const spoken = timeline.voice.language;
  const [chosen, setChosen] = useState(0);
  const heading = useRef<HTMLHeadingElement>(null);
  const hearing = useMemo(() => openHearing(runs, showing), [runs]);
  // With the leaving itself, not after the next paint: what is left must not go on sounding.
  useLayoutEffect(() => hearing.stop, [hearing]);
  const ledTo = running.at.value;
  useEffect(() => {
    if (ledTo >= 0) setChosen(ledTo);
  }, [ledTo]);
  const section = sections[Math.min(chosen, sections.length - 1)];
  if (section === undefined) return null;
  if (printing) return <ScorePaper timeline={timeline} worksheet={worksheet} />;

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
          present={
            session === null ? hearing.elapsed : chosen === ledTo ? running.elapsed : nowhere
          }
          runIsOn={session !== null}
          sounds={sounds}
          reasons={reasonsOf(worksheet, section)}
        />
      </section>
    </>
  );
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
