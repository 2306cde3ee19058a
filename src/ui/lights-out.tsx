// Lights out: what will be led, the first press, and then the run's own screen over everything.
import type { ReadonlySignal } from "@preact/signals";
import { type ComponentType, Fragment } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { Pulses } from "../live/pulses.ts";
import type { Runs } from "../live/runs.ts";
import type { SoundCheck } from "../live/sound-check.ts";
import type { VoiceSounds } from "../live/voice-sounds.ts";
import type { DelayStore } from "../logbook/delay-store.ts";
import type { Keeping } from "../logbook/keeping.ts";
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { spokenIn } from "../units/language.ts";
import { AcceptStops } from "./accept-stops.tsx";
import { AlsoFelt } from "./also-felt.tsx";
import { mixAnswer } from "./answer-model.ts";
import { AskWho } from "./ask-who.tsx";
import { ClassStart, type ClassStartPorts } from "./class-start.tsx";
import { type Heard, HearFirst } from "./hear-first.tsx";
import { KeptHere } from "./kept-here.tsx";
import { KnockSwitch } from "./knock-switch.tsx";
import { LearnPedal } from "./learn-pedal.tsx";
import { LeftRun } from "./left-run.tsx";
import type { PlaceProps } from "./place.ts";
import { ProbeConnection } from "./probe-connection.tsx";
import { RunView, type RunViewPorts } from "./run-view.tsx";
import { Wireless } from "./wireless.tsx";
import "./lights-out.css";
import { lateWords, words, writing } from "./language.ts";

export interface LightsOutPorts extends RunViewPorts {
  readonly runs: Runs;
  readonly soundCheck: SoundCheck;
  readonly sounds: VoiceSounds;
  /** Null where the browser can make nothing vibrate. */
  readonly vibrate: ((pulses: Pulses) => void) | null;
  readonly delays: DelayStore;
  /** Calls back a few times a second, for what is shown only. */
  readonly often: (show: () => void) => () => void;
  readonly keeping: Keeping;
  /** ms since 1970 of the minute at which a class starts, where a link said so. */
  readonly classAt?: ClassStartPorts["classAt"];
  /** ms since 1970, by the device's clock. */
  readonly now?: () => number;
}

export function lightsOutWith(ports: LightsOutPorts): ComponentType<PlaceProps> {
  return function LightsOut({ worksheet, plan }: PlaceProps) {
    const session = ports.runs.current.value;
    return (
      <Fragment>
        {session === null && <LeftRun runs={ports.runs} />}
        <BeforeRun worksheet={worksheet} plan={plan} ports={ports} />
        {session !== null && <RunView key={session.id} session={session} ports={ports} />}
      </Fragment>
    );
  };
}

interface BeforeProps {
  readonly worksheet: ReadonlySignal<Worksheet | null>;
  readonly plan: ReadonlySignal<Plan | null>;
  readonly ports: LightsOutPorts;
}

function BeforeRun({ worksheet, plan, ports }: BeforeProps) {
  const { runs, soundCheck, delays, keeping, after, pedals, probe, knocks } = ports;
  const { senses, sounds, vibrate, classAt, now = Date.now, often, keepAwake } = ports;
  const [accepted, setAccepted] = useState(false);
  const [heard, setHeard] = useState<Heard>("not-said");
  const run = runs.current.value?.id;
  // What was heard before one run says nothing of the next: the tap, the place, the volume may be others.
  useEffect(() => setHeard("not-said"), [run]);
  const [beginning, setBeginning] = useState<"not-yet" | "now" | "failed" | "elsewhere">("not-yet");
  const sheet = worksheet.value;
  const made = plan.value;
  if (sheet === null || made === null) {
    return (
      <p>
        {lateWords.value.beforeRun.noWorksheet}{" "}
        <a href="#work-out">{lateWords.value.beforeRun.toWorkOut}</a>
      </p>
    );
  }
  const stops = made.warnings.filter((warning) => warning.severity === "stop");
  const held = stops.length > 0 && !accepted;
  const beginWords = heard === "yes" ? lateWords.value.beforeRun : lateWords.value.hearFirst;

  async function begin(): Promise<void> {
    if (sheet === null || made === null || beginning === "now") return;
    soundCheck.stop();
    sounds.hush();
    setBeginning("now");
    // Whatever comes of it, the run is not held back.
    void keeping.ask();
    try {
      const begun = await runs.begin(sheet, made);
      setBeginning(begun === "elsewhere" ? "elsewhere" : "not-yet");
    } catch {
      setBeginning("failed");
    }
  }

  return (
    <div class="before-run">
      <AskWho senses={senses} sounds={sounds} isRunOn={run !== undefined} after={after} />
      <section aria-label={lateWords.value.beforeRun.ahead}>
        <p class="lead">
          {lateWords.value.beforeRun.develop(
            lateWords.value.beforeRun.films(sheet.films.map((film) => film.label)),
            writeClockTime(made.developmentSeconds),
            writing.value.temperature(sheet.developer.temperature),
            made.baths.find(({ id }) => id === "developer")?.label ?? sheet.developer.label,
          )}{" "}
          {lateWords.value.beforeRun.mix(mixText(sheet, made))}
        </p>
      </section>
      <AcceptStops stops={stops} accepted={accepted} accept={setAccepted} />
      <HearFirst
        key={run}
        language={spokenIn(sheet.language)}
        soundCheck={soundCheck}
        heard={heard}
        answer={setHeard}
      />
      {classAt?.value != null && run === undefined && (
        <ClassStart
          key={classAt.value}
          {...{ classAt, sounds, now, often, keepAwake, held }}
          at={classAt.value}
          language={spokenIn(sheet.language)}
          begin={() => void begin()}
        />
      )}
      <button
        type="button"
        class={heard === "yes" ? "first" : "first second"}
        disabled={held}
        data-enter
        onClick={begin}
      >
        {beginning === "now" ? lateWords.value.beforeRun.fetching : beginWords.begin}
        <span>{beginWords.beginHint}</span>
      </button>
      <p role="status">
        {beginning === "failed" && lateWords.value.beforeRun.failed}
        {beginning === "elsewhere" && lateWords.value.beforeRun.elsewhere}
      </p>
      <Wireless
        language={spokenIn(sheet.language)}
        delays={delays}
        soundCheck={soundCheck}
        after={after}
      />
      <LearnPedal pedals={pedals} />
      <KnockSwitch knocks={knocks} />
      <AlsoFelt senses={senses} vibrate={vibrate} />
      {probe !== null && <ProbeConnection probe={probe} like={sheet.developer.temperature} />}
      {/* Beneath the first press: it comes late, and may move nothing from under a finger. */}
      <KeptHere keeping={keeping} beside="the first press" />
      <section>
        <h2>{lateWords.value.beforeRun.how}</h2>
        <ul>
          {[
            lateWords.value.beforeRun.once,
            lateWords.value.beforeRun.twice,
            lateWords.value.beforeRun.thrice,
            lateWords.value.beforeRun.held,
            lateWords.value.beforeRun.reading,
            lateWords.value.beforeRun.clock,
            lateWords.value.beforeRun.dark,
            lateWords.value.beforeRun.volume,
          ].map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
    </div>
  );
}

function mixText(worksheet: Worksheet, plan: Plan): string {
  const { stock, water } = mixAnswer(worksheet, plan);
  return words.value.answers.spokenMix(stock, water);
}
