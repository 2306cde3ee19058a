// How does it come to temperature? Mixed from two taps, or stood in a water bath and read at the sink.
import { useState } from "preact/hooks";
import { readTypedTemperature, type Temperature } from "../units/temperature.ts";
import { Wanting, Warnings, Working } from "./answer-parts.tsx";
import { readingTexts, stamped, takenBack } from "./bench-acts.ts";
import type { Draft } from "./draft.ts";
import { Field } from "./field.tsx";
import { withLateWords, words } from "./language.ts";
import { late } from "./late.tsx";
import { More } from "./more.tsx";
import { Question } from "./question.tsx";
import { Rows } from "./rows.tsx";
import { poursAnswer, sinkAnswer } from "./warmth-model.ts";
import { useWorkOut } from "./work-out-context.ts";

const TemperingPicture = late(
  async () => (await withLateWords(import("./drawings.tsx"))).TemperingPicture,
);
const Sink = late(async () => (await withLateWords(import("./sink.tsx"))).Sink);

export function WarmthQuestion() {
  const tempering = useWorkOut().worksheet.value?.tempering;
  return (
    <Question
      id="warmth"
      asks={words.value.questions.warmth}
      beside={tempering && <TemperingPicture wish={tempering} />}
    >
      <Mixing />
      <Tempering />
    </Question>
  );
}

function Mixing() {
  const worksheet = useWorkOut().worksheet.value;
  const pours = worksheet && poursAnswer(worksheet);
  return (
    <More summary={words.value.more.mixing} holds={["mixing."]}>
      <div class="fields">
        <Field path="mixing.target" />
        <Field path="mixing.stock" />
        <Field path="mixing.cold" />
        <Field path="mixing.hot" />
        <Field path="mixing.mark" />
      </div>
      <div class="answer">
        {pours && (
          <p class="figure mix">
            <span>{words.value.mixing.take}</span> <strong>{pours}</strong>
          </p>
        )}
        <Warnings topics={["mixing"]} />
        <Working about="mixing" />
        <Wanting aside="mixing" />
      </div>
    </More>
  );
}

function Tempering() {
  return (
    <More summary={words.value.more.tempering} holds={["tempering."]}>
      <div class="fields">
        <Field path="tempering.target" />
        <Field path="tempering.bath" />
        <Field path="tempering.bathVolume" />
      </div>
      <AtTheSink />
      <Rows list="tempering.readings">
        {(row) => (
          <>
            <Field path={`${row}.at`} />
            <Field path={`${row}.temperature`} />
          </>
        )}
      </Rows>
      <div class="fields">
        <Field path="tempering.began" />
      </div>
      <div class="answer">
        <Warnings topics={["tempering"]} />
        <Working about="tempering" />
        <Wanting aside="tempering" />
      </div>
    </More>
  );
}

/** The sheet with big keys; every press of "read" is a row of the worksheet, and undone like one. */
function AtTheSink() {
  const workOut = useWorkOut();
  const [open, setOpen] = useState(false);
  const draft = workOut.draft.value;
  const readings = readingTexts(draft).flatMap(({ at, temperature }) => {
    const reading = readTypedTemperature(temperature);
    return reading.kind === "read" ? [{ at, temperature: reading.temperature }] : [];
  });

  function stamp(temperature: Temperature): void {
    const { draft: next, afresh } = stamped(workOut.draft.value, temperature, workOut.timeOfDay());
    workOut.put(next, afresh ? () => words.value.tempering.afresh : null);
  }

  return (
    <div>
      <button type="button" onClick={() => setOpen(true)}>
        {words.value.tempering.sink} <small>{words.value.tempering.sinkHint}</small>
      </button>
      {open && (
        <Sink
          title={words.value.tempering.title}
          like={readings.at(-1)?.temperature ?? firstShown(draft)}
          readings={readings}
          says={sinkAnswer(draft, workOut.reading.value)}
          stamp={stamp}
          takeBack={() => workOut.put(takenBack(workOut.draft.value), null)}
          leave={() => setOpen(false)}
        />
      )}
    </div>
  );
}

/** Before the first reading: what was measured in the mixed bath, or a warm day's water. */
function firstShown(draft: Draft): Temperature {
  const reading = readTypedTemperature(draft["developer.temperature"] ?? "");
  if (reading.kind === "read") return reading.temperature;
  return draft["unit.temperature"] === "f" ? { f: 72 } : { c: 22 };
}
