// What the arithmetic made of the page, beneath the question it answers: the figure large, then its
// working as ruled lines, with what to look at first above them.
import { useComputed } from "@preact/signals";
import { useEffect, useRef, useState } from "preact/hooks";
import { isTold } from "../plan/working.ts";
import { writeClockTime } from "../units/clock-time.ts";
import {
  bathAgitation,
  bathTemperature,
  firstTopics,
  mixAnswer,
  spokenAnswer,
} from "./answer-model.ts";
import { Wanting, Warnings, Working } from "./answer-parts.tsx";
import { planWords, words } from "./language.ts";
import { useWorkOut } from "./work-out-context.ts";

export function DevelopmentAnswer() {
  const { plan } = useWorkOut();
  const made = plan.value;
  const stopped = made?.warnings.some(({ severity }) => severity === "stop") === true;
  return (
    <div class="answer">
      <p class="figure">
        {made ? (
          <>
            <span>{stopped ? words.value.answers.stopped : words.value.answers.develop}</span>{" "}
            <strong>{writeClockTime(made.developmentSeconds)}</strong>
          </>
        ) : (
          words.value.answers.none
        )}
      </p>
      {made && (
        <>
          <Warnings topics={firstTopics} />
          <Working about="time" />
        </>
      )}
      <Wanting />
    </div>
  );
}

export function MixAnswer() {
  const { worksheet, plan } = useWorkOut();
  if (!worksheet.value || !plan.value) return null;
  const { stock, water, total } = mixAnswer(worksheet.value, plan.value);
  return (
    <div class="answer">
      <p class="figure mix">
        <span>{words.value.answers.mix}</span>{" "}
        <strong>
          {stock} <small>{words.value.answers.stock}</small>
        </strong>
        {water && (
          <>
            {" + "}
            <strong>
              {water} <small>{words.value.answers.water}</small>
            </strong>
            {" = "}
            <strong>{total}</strong>
          </>
        )}
      </p>
      <Working about="mix" />
    </div>
  );
}

export function BathsAnswer() {
  const { worksheet, plan } = useWorkOut();
  const sheet = worksheet.value;
  if (!sheet || !plan.value) return null;
  return (
    <div class="answer">
      <table class="schedule">
        <caption>{words.value.answers.baths}</caption>
        <thead>
          <tr>
            <th scope="col">{words.value.answers.bath}</th>
            <th scope="col">{words.value.answers.time}</th>
            <th scope="col">{words.value.answers.temperature}</th>
            <th scope="col">{words.value.answers.moved}</th>
          </tr>
        </thead>
        <tbody>
          {plan.value.baths.map((bath) => (
            <tr key={bath.id}>
              <th scope="row">{bath.label}</th>
              <td class="number">{writeClockTime(bath.seconds)}</td>
              <td class="number">{bathTemperature(sheet, bath)}</td>
              <td>{bathAgitation(bath)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Working about="baths" unlike={(line) => isTold(line, planWords.value)} />
    </div>
  );
}

/** The page has been still for so long before its answer is told, ms. */
const STILL = 1500;
/** And so long the telling stands, ms: every reader has taken it up by then. */
const TOLD = 4000;

/**
 * One polite sentence once the page has been still for a while, never one a keystroke. It goes again, since all of
 * it stands to be read beneath the questions: who reads the page in order meets it there, and once.
 */
export function Announcer() {
  const { worksheet, plan, reading } = useWorkOut();
  const sentence = useComputed(() => {
    if (worksheet.value && plan.value) return spokenAnswer(worksheet.value, plan.value);
    const { faults, wanting } = reading.value;
    return words.value.faults.spoken(Object.keys(faults).length, wanting.length);
  }).value;
  const [said, say] = useState("");
  const last = useRef(sentence);
  useEffect(() => {
    if (sentence === last.current) return;
    const timer = setTimeout(() => {
      last.current = sentence;
      say(sentence);
    }, STILL);
    return () => clearTimeout(timer);
  }, [sentence]);
  useEffect(() => {
    if (said === "") return;
    const timer = setTimeout(() => say(""), TOLD);
    return () => clearTimeout(timer);
  }, [said]);
  return (
    <p class="unseen" role="status">
      {said}
    </p>
  );
}
