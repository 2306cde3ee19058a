// Lights out: what will be led, the first press, and then the run's own screen over everything.
import type { ReadonlySignal } from "@preact/signals";
import { type ComponentType, Fragment } from "preact";
import { useState } from "preact/hooks";
import type { Runs } from "../live/runs.ts";
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { writeTemperature } from "../units/temperature.ts";
import { mixAnswer } from "./answer-model.ts";
import type { PlaceProps } from "./place.ts";
import { RunView, type RunViewPorts } from "./run-view.tsx";
import { beforeRun } from "./run-words.ts";
import { answerWords } from "./words.ts";
import "./lights-out.css";

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
  const [beginning, setBeginning] = useState<"not-yet" | "now" | "failed">("not-yet");
  const sheet = worksheet.value;
  const made = plan.value;
  if (sheet === null || made === null) {
    return (
      <p>
        {beforeRun.noWorksheet} <a href="#work-out">{beforeRun.toWorkOut}</a>
      </p>
    );
  }
  const stops = made.warnings.filter((warning) => warning.severity === "stop");
  const held = stops.length > 0 && !accepted;

  async function begin(): Promise<void> {
    if (sheet === null || made === null || beginning === "now") return;
    setBeginning("now");
    try {
      await runs.begin(sheet, made);
      setBeginning("not-yet");
    } catch {
      setBeginning("failed");
    }
  }

  return (
    <div class="before-run">
      <section aria-label={beforeRun.ahead}>
        <p class="lead">
          {beforeRun.develop(
            sheet.films.map((film) => film.label).join(", "),
            writeClockTime(made.developmentSeconds),
            writeTemperature(sheet.developer.temperature),
            made.baths.find(({ id }) => id === "developer")?.label ?? sheet.developer.label,
          )}{" "}
          {beforeRun.mix(mixText(sheet, made))}
        </p>
      </section>
      {stops.length > 0 && (
        <section class="stops" aria-label={beforeRun.stops}>
          <h2>{beforeRun.stops}</h2>
          {stops.map(({ text }) => (
            <p key={text}>
              <b>{answerWords.severity.stop}.</b> {text}
            </p>
          ))}
          <label>
            <input
              type="checkbox"
              checked={accepted}
              onChange={(event) => setAccepted(event.currentTarget.checked)}
            />
            {beforeRun.accept}
          </label>
        </section>
      )}
      <button type="button" class="first" disabled={held} onClick={begin}>
        {beginning === "now" ? beforeRun.fetching : beforeRun.begin}
        <span>{beforeRun.beginHint}</span>
      </button>
      <p role="status">{beginning === "failed" && beforeRun.failed}</p>
      <section>
        <h2>{beforeRun.how}</h2>
        <ul>
          {[beforeRun.once, beforeRun.twice, beforeRun.clock, beforeRun.dark, beforeRun.volume].map(
            (line) => (
              <li key={line}>{line}</li>
            ),
          )}
        </ul>
      </section>
    </div>
  );
}

function mixText(worksheet: Worksheet, plan: Plan): string {
  const { stock, water } = mixAnswer(worksheet, plan);
  return answerWords.spokenMix(stock, water);
}
