// Rehearsing with water, in Walk through: how much of the rests is left, whether reasons are told, the press that
// begins; and, afterwards, how the last rehearsal went. The rehearsal's own screen is the run's (run-view.tsx).
import { effect, type ReadonlySignal, signal } from "@preact/signals";
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { type Judged, judgedOf, practiseOf, WELL } from "../live/judged.ts";
import type { Runs, Session } from "../live/runs.ts";
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { rehearsalSteps } from "../process/rehearsal.ts";
import type { Method } from "../trade/method.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { fixed, lateWords, words } from "./language.ts";
import "./rehearse.css";

/** What is left of a rest, by the name of its choice. */
const factors = { whole: 1, half: 1 / 2, quarter: 1 / 4, least: 0 } as const;
type Factor = keyof typeof factors;
const choices: readonly Factor[] = ["whole", "half", "quarter", "least"];

/** A rehearsal that is over. */
export interface Rehearsed {
  readonly judged: readonly Judged[];
  readonly method: Method;
}

/** The last rehearsal of this page's life, whatever place was shown as it ended; null before the first. */
export function lastRehearsal(runs: Pick<Runs, "current">): ReadonlySignal<Rehearsed | null> {
  const last = signal<Rehearsed | null>(null);
  let on: Session | null = null;
  effect(() => {
    const session = runs.current.value;
    if (session === null && on?.rehearsal !== undefined) {
      last.value = { judged: judgedOf(on.run.journal()), method: on.worksheet.tank.method };
    }
    on = session;
  });
  return last;
}

interface RehearseProps {
  readonly runs: Runs;
  readonly worksheet: Worksheet;
  readonly plan: Plan;
  readonly last: ReadonlySignal<Rehearsed | null>;
  /** Just now: its screen has gone, and what it came to is where one is. */
  readonly hasEnded: boolean;
}

type Beginning = "not-yet" | "now" | "failed" | "elsewhere";

export function Rehearse({ runs, worksheet, plan, last, hasEnded }: RehearseProps) {
  const [chosen, choose] = useState<Factor>("quarter");
  const [why, setWhy] = useState(false);
  const [beginning, setBeginning] = useState<Beginning>("not-yet");
  const factor = factors[chosen];
  const clocked = useMemo(() => {
    const steps = rehearsalSteps(worksheet, plan, { factor, why: false });
    return steps.reduce((sum, { seconds }) => sum + seconds, 0);
  }, [worksheet, plan, factor]);
  const { rehearse, beforeRun } = lateWords.value;

  async function begin(): Promise<void> {
    if (beginning === "now") return;
    setBeginning("now");
    try {
      const begun = await runs.begin(worksheet, plan, { factor, why });
      setBeginning(begun === "elsewhere" ? "elsewhere" : "not-yet");
    } catch {
      setBeginning("failed");
    }
  }

  return (
    <section class="rehearse" aria-labelledby="rehearse-title">
      <h2 id="rehearse-title">{rehearse.title}</h2>
      <p>{rehearse.lead}</p>
      <p>{rehearse.press}</p>
      <fieldset>
        <legend>{rehearse.rests}</legend>
        {choices.map((choice) => (
          <label key={choice}>
            <input
              type="radio"
              name="rehearsal-rests"
              checked={choice === chosen}
              onChange={() => choose(choice)}
            />
            {rehearse.factors[choice]}
          </label>
        ))}
      </fieldset>
      <label>
        <input
          type="checkbox"
          checked={why}
          onChange={(event) => setWhy(event.currentTarget.checked)}
        />
        {rehearse.why}
      </label>
      <button type="button" class="first" onClick={begin}>
        {beginning === "now" ? beforeRun.fetching : rehearse.begin}
        <span>{rehearse.beginHint(writeClockTime(clocked))}</span>
      </button>
      <p role="status">
        {beginning === "failed" && beforeRun.failed}
        {beginning === "elsewhere" && beforeRun.elsewhere}
      </p>
      <p>{rehearse.keeps}</p>
      {last.value !== null && <Found {...last.value} isNew={hasEnded} />}
    </section>
  );
}

/** What a rehearsal came to: how much went well, what to practise, and all that was off, in order of time. */
function Found({ judged, method, isNew }: Rehearsed & { readonly isNew: boolean }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (isNew) heading.current?.focus();
  }, []);
  const { rehearse } = lateWords.value;
  const off = judged.filter(({ how }) => how !== "well");
  const practises = practiseOf(judged);
  const well = judged.length - off.length;
  return (
    <section class="rehearsed" aria-labelledby="rehearsed-title">
      <h3 id="rehearsed-title" ref={heading} tabIndex={-1}>
        {rehearse.found}
      </h3>
      <p>
        {judged.length === 0
          ? rehearse.unmarked
          : rehearse.well(well, judged.length, `${fixed(WELL, 1)}\u00a0s`)}
      </p>
      {practises.length > 0 && (
        <>
          <h4 id="rehearsed-practise">{rehearse.practise}</h4>
          <ol aria-labelledby="rehearsed-practise">
            {practises.map(({ bath, deed, how }) => (
              <li key={`${bath} ${deed} ${how}`}>{momentOf(bath, deed, method)}</li>
            ))}
          </ol>
          <h4 id="rehearsed-all">{rehearse.all}</h4>
          <ul class="off" aria-labelledby="rehearsed-all">
            {off.map((each, i) => (
              <li key={i}>
                {momentOf(each.bath, each.deed, method)}, {writeClockTime(Math.round(each.at))}{" "}
                <b>{howOf(each)}</b>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function momentOf(bath: string, deed: Judged["deed"], method: Method): string {
  const baths: { readonly [id: string]: { readonly name: string } } = words.value.baths;
  const { moves, runDeeds } = lateWords.value;
  return `${baths[bath]?.name ?? bath} · ${deed === "agitate" ? moves[method] : runDeeds[deed]}`;
}

/** The figure stays on one line with its unit. */
function howOf({ how, by }: Judged): string {
  const { late, early, missed } = lateWords.value.rehearse;
  const seconds = `${fixed(Math.abs(by), 1)}\u00a0s`;
  switch (how) {
    case "late":
      return late(seconds);
    case "early":
      return early(seconds);
    case "missed":
      return missed;
    case "well":
      return seconds;
  }
}
