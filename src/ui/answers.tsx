// What the arithmetic made of the page, beneath the question it answers: the figure large, then its
// working as ruled lines, with what to look at first above them.
import { useComputed } from "@preact/signals";
import { useEffect, useState } from "preact/hooks";
import type { WorkingLine } from "../plan/line.ts";
import { writeClockTime } from "../units/clock-time.ts";
import {
  bathAgitation,
  bathTemperature,
  mixAnswer,
  spokenAnswer,
  workingParts,
} from "./answer-model.ts";
import { nameOf } from "./field-names.ts";
import { goToField } from "./go-to-field.ts";
import { answerWords, faultWords } from "./words.ts";
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
            <span>{stopped ? answerWords.stopped : answerWords.develop}</span>{" "}
            <strong>{writeClockTime(made.developmentSeconds)}</strong>
          </>
        ) : (
          answerWords.none
        )}
      </p>
      {made && (
        <>
          <Warnings />
          <Working lines={workingParts(made).time} />
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
        <span>{answerWords.mix}</span>{" "}
        <strong>
          {stock} <small>{answerWords.stock}</small>
        </strong>
        {water && (
          <>
            {" + "}
            <strong>
              {water} <small>{answerWords.water}</small>
            </strong>
            {" = "}
            <strong>{total}</strong>
          </>
        )}
      </p>
      <Working lines={workingParts(plan.value).mix} />
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
        <caption>{answerWords.baths}</caption>
        <thead>
          <tr>
            <th scope="col">{answerWords.bath}</th>
            <th scope="col">{answerWords.time}</th>
            <th scope="col">{answerWords.temperature}</th>
            <th scope="col">{answerWords.moved}</th>
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
    </div>
  );
}

function Working({ lines }: { readonly lines: readonly WorkingLine[] }) {
  return (
    <ol class="working" aria-label={answerWords.working}>
      {lines.map((line) => (
        <li key={line.label}>
          <span class="label">{line.label}</span> <span>{line.expression}</span>{" "}
          <b>{line.result}</b>
        </li>
      ))}
    </ol>
  );
}

function Warnings() {
  const warnings = useWorkOut().plan.value?.warnings ?? [];
  if (warnings.length === 0) return null;
  return (
    <ul class="warnings" aria-label={answerWords.warnings}>
      {warnings.map((warning) => (
        <li key={warning.id + warning.text} class={warning.severity}>
          <b>{answerWords.severity[warning.severity]}.</b> {warning.text}
        </li>
      ))}
    </ul>
  );
}

/** What keeps the answer away, counted, each a link to its field. */
function Wanting() {
  const { reading, typing } = useWorkOut();
  const { faults, wanting } = reading.value;
  const shown = Object.keys(faults).filter((path) => path !== typing.value);
  if (shown.length + wanting.length === 0) return null;
  return (
    <div class="wanting">
      {shown.length > 0 && (
        <>
          <p>{faultWords.summary(shown.length)}</p>
          <FieldLinks paths={shown} />
        </>
      )}
      {wanting.length > 0 && (
        <>
          <p>{faultWords.wanted(wanting.length)}</p>
          <FieldLinks paths={wanting} />
        </>
      )}
    </div>
  );
}

export function FieldLinks({ paths }: { readonly paths: readonly string[] }) {
  return (
    <ul class="links">
      {paths.map((path) => (
        <li key={path}>
          <a
            href={`#${path}`}
            onClick={(event) => {
              event.preventDefault();
              goToField(path);
            }}
          >
            {nameOf(path)}
          </a>
        </li>
      ))}
    </ul>
  );
}

/** One polite sentence once the page has been still for a while, never one a keystroke. */
export function Announcer() {
  const { worksheet, plan, reading } = useWorkOut();
  const sentence = useComputed(() => {
    if (worksheet.value && plan.value) return spokenAnswer(worksheet.value, plan.value);
    const { faults, wanting } = reading.value;
    return faultWords.spoken(Object.keys(faults).length, wanting.length);
  }).value;
  const [said, say] = useState("");
  const [first] = useState(sentence);
  useEffect(() => {
    if (sentence === first && said === "") return;
    const timer = setTimeout(() => say(sentence), 1500);
    return () => clearTimeout(timer);
  }, [sentence, first, said]);
  return (
    <p class="unseen" role="status">
      {said}
    </p>
  );
}
