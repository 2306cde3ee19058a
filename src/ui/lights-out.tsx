// Lights out: what will be led, the first press, and then the run's own screen over everything.
import type { ReadonlySignal } from "@preact/signals";
import { type ComponentType, Fragment } from "preact";
import { useState } from "preact/hooks";
import type { Runs } from "../live/runs.ts";
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { mixAnswer } from "./answer-model.ts";
import type { PlaceProps } from "./place.ts";
import { RunView, type RunViewPorts } from "./run-view.tsx";
import "./lights-out.css";
import { lateWords, words, writing } from "./language.ts";

export interface LightsOutPorts extends RunViewPorts {
  readonly runs: Runs;
}

export function lightsOutWith(ports: LightsOutPorts): ComponentType<PlaceProps> {
  return function LightsOut({ worksheet, plan }: PlaceProps) {
    const session = ports.runs.current.value;
    return (
      <Fragment>
        <BeforeRun worksheet={worksheet} plan={plan} runs={ports.runs} />
        {session !== null && <RunView key={session.id} session={session} ports={ports} />}
      </Fragment>
    );
  };
}

interface BeforeProps {
  readonly worksheet: ReadonlySignal<Worksheet | null>;
  readonly plan: ReadonlySignal<Plan | null>;
  readonly runs: Runs;
}

function BeforeRun({ worksheet, plan, runs }: BeforeProps) {
  const [accepted, setAccepted] = useState(false);
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

  async function begin(): Promise<void> {
    if (sheet === null || made === null || beginning === "now") return;
    setBeginning("now");
    try {
      const begun = await runs.begin(sheet, made);
      setBeginning(begun === "elsewhere" ? "elsewhere" : "not-yet");
    } catch {
      setBeginning("failed");
    }
  }

  return (
    <div class="before-run">
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
      {stops.length > 0 && (
        <section class="stops" aria-label={lateWords.value.beforeRun.stops}>
          <h2>{lateWords.value.beforeRun.stops}</h2>
          {stops.map(({ text }) => (
            <p key={text}>
              <b>{words.value.answers.severity.stop}.</b> {text}
            </p>
          ))}
          <label>
            <input
              type="checkbox"
              checked={accepted}
              onChange={(event) => setAccepted(event.currentTarget.checked)}
            />
            {lateWords.value.beforeRun.accept}
          </label>
        </section>
      )}
      <button type="button" class="first" disabled={held} onClick={begin}>
        {beginning === "now" ? lateWords.value.beforeRun.fetching : lateWords.value.beforeRun.begin}
        <span>{lateWords.value.beforeRun.beginHint}</span>
      </button>
      <p role="status">
        {beginning === "failed" && lateWords.value.beforeRun.failed}
        {beginning === "elsewhere" && lateWords.value.beforeRun.elsewhere}
      </p>
      <section>
        <h2>{lateWords.value.beforeRun.how}</h2>
        <ul>
          {[
            lateWords.value.beforeRun.once,
            lateWords.value.beforeRun.twice,
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
