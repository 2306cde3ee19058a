// Work out: the worksheet as a page of arithmetic. Each question with its fields, its answer beneath
// it; nothing is computed here.

import { useComputed } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { agitationAnswer } from "./answer-model.ts";
import { Announcer, BathsAnswer, DevelopmentAnswer, MixAnswer } from "./answers.tsx";
import { BathRows } from "./bath-rows.tsx";
import { Choice, Field, Radios } from "./field.tsx";
import { agitationParts } from "./fields.ts";
import { Greeting, type GreetingProps } from "./greeting.tsx";
import { Rows } from "./rows.tsx";
import { NoticeLine, SheetTools } from "./sheet-tools.tsx";
import { cautions, more, questions } from "./words.ts";
import { useWorkOut, WorkOutProvider } from "./work-out-context.ts";
import type { WorkOut } from "./work-out-state.ts";

/** Offered as suggestions; any size that the reader takes can be typed. */
const commonSizes = ["135-36", "135-24", "120", "220", "4x5in", "8x10in"];

interface WorkOutPlaceProps extends GreetingProps {
  readonly workOut: WorkOut;
}

export function WorkOutPlace({ workOut, hearAPour }: WorkOutPlaceProps) {
  return (
    <WorkOutProvider value={workOut}>
      <Greeting hearAPour={hearAPour} />
      <SheetTools />
      <NoticeLine />
      {/* Nothing is sent: the page has answered by the time Enter is pressed. */}
      <form class="sheet" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <Films />
        <Leaflet />
        <Tank />
        <Hands />
        <Clock />
        <Question id="baths" asks={questions.baths}>
          <BathRows />
          <BathsAnswer />
        </Question>
        <Question id="voice" asks={questions.voice}>
          <div class="fields">
            <Choice path="voice.detail" width="middling" />
            <Field path="voice.rate" />
          </div>
        </Question>
        <Question id="safety" asks={questions.safety}>
          <ul class="cautions">
            {cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </Question>
      </form>
      <Announcer />
    </WorkOutProvider>
  );
}

interface QuestionProps {
  readonly id: string;
  readonly asks: string;
  /** A drawing, to stand beside on a wide screen and below on a narrow one. */
  readonly beside?: ComponentChildren;
  readonly children: ComponentChildren;
}

function Question({ id, asks, beside, children }: QuestionProps) {
  return (
    <section class="question" aria-labelledby={`asks-${id}`}>
      <h2 id={`asks-${id}`}>{asks}</h2>
      <div class="given">{children}</div>
      {beside && <div class="beside">{beside}</div>}
    </section>
  );
}

function Films() {
  return (
    <Question id="films" asks={questions.films}>
      <div class="fields">
        <Field path="title" width="long" />
      </div>
      <Rows list="films">
        {(film) => (
          <>
            <Field path={`${film}.label`} width="middling" />
            <Field path={`${film}.size`} list="common-sizes" />
            <Field path={`${film}.count`} />
            <Field path={`${film}.boxSpeed`} />
            <Field path={`${film}.exposureIndex`} />
          </>
        )}
      </Rows>
      <datalist id="common-sizes">
        {commonSizes.map((size) => (
          <option key={size} value={size} />
        ))}
      </datalist>
    </Question>
  );
}

function Leaflet() {
  return (
    <Question id="developer" asks={questions.developer}>
      <div class="fields">
        <Field path="developer.label" width="middling" />
        <Field path="developer.dilution" />
      </div>
      <Rows list="developer.leaflet">
        {(row) => (
          <>
            <Field path={`${row}.temperature`} />
            <Field path={`${row}.time`} />
            <Field path={`${row}.exposureIndex`} />
          </>
        )}
      </Rows>
      <div class="fields">
        <Field path="developer.temperature" width="middling" />
      </div>
      <details class="more">
        <summary>{more.leaflet}</summary>
        <div class="fields">
          <Field path="developer.perDegree" />
          <Field path="developer.perStop.pull" />
          <Field path="developer.perStop.push" />
          <Field path="developer.filmsBefore" />
          <Field path="developer.perFilmBefore" />
          <Choice path="baths.developer.afterwards" width="middling" />
        </div>
      </details>
      <DevelopmentAnswer />
    </Question>
  );
}

function Tank() {
  return (
    <Question id="tank" asks={questions.tank}>
      <div class="fields">
        <Choice path="tank.method" width="middling" />
        <Field path="tank.volume" />
        <Field path="developer.stockPerFilm" />
      </div>
      <div class="fields">
        <Field path="tank.pourIn" />
        <Field path="tank.pourOut" />
      </div>
      <details class="more">
        <summary>{more.tank}</summary>
        <div class="fields">
          <Field path="tank.handover" />
          <Field path="tank.timeFactor" />
          <Field path="tank.room" />
          <Field path="tank.halfway" />
        </div>
      </details>
      <MixAnswer />
    </Question>
  );
}

function Hands() {
  const { worksheet, plan } = useWorkOut();
  const inWords = useComputed(
    () =>
      worksheet.value &&
      plan.value &&
      agitationAnswer(worksheet.value.agitation, plan.value.developmentSeconds),
  ).value;
  return (
    <Question id="hands" asks={questions.hands}>
      <div class="fields">
        {agitationParts.map((part) => (
          <Field key={part} path={`agitation.${part}`} />
        ))}
      </div>
      {inWords && <p class="answer in-words">{inWords}</p>}
    </Question>
  );
}

function Clock() {
  return (
    <Question id="clock" asks={questions.clock}>
      <div class="fields">
        <Radios path="clock.starts" />
        <Radios path="clock.ends" />
      </div>
    </Question>
  );
}
