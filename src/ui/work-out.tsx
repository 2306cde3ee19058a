// Work out: the worksheet as a page of arithmetic. Each question with its fields, its answer beneath
// it; nothing is computed here.

import { useComputed } from "@preact/signals";
import { type ComponentType, Fragment } from "preact";
import { usualLanguage } from "../units/language.ts";
import { agitationAnswer } from "./answer-model.ts";
import { Warnings, Working } from "./answer-parts.tsx";
import { Announcer, BathsAnswer } from "./answers.tsx";
import { BathRows } from "./bath-rows.tsx";
import { Choice, Field, Radios } from "./field.tsx";
import { wordsOf } from "./field-names.ts";
import { agitationParts, commonSizes } from "./fields.ts";
import { Greeting, type GreetingProps } from "./greeting.tsx";
import { withLateWords, words } from "./language.ts";
import { LanguageSelect } from "./language-choice.tsx";
import { late } from "./late.tsx";
import { LeafletQuestion } from "./leaflet-question.tsx";
import { Question } from "./question.tsx";
import { Rows } from "./rows.tsx";
import { sheetLanguage } from "./sheet-language.ts";
import { NoticeLine, SheetTools } from "./sheet-tools.tsx";
import { TankQuestion, TimeIt } from "./tank-question.tsx";
import { useWorkOut, WorkOutProvider } from "./work-out-context.ts";
import type { WorkOut } from "./work-out-state.ts";

// Beneath the first screen, and fetched as it stands.
const WarmthQuestion = late(
  async () => (await withLateWords(import("./warmth-question.tsx"))).WarmthQuestion,
);
const ContrastQuestion = late(
  async () => (await import("./contrast-question.tsx")).ContrastQuestion,
);

export interface WorkOutPlaceProps extends GreetingProps {
  readonly workOut: WorkOut;
  /** What the voice will leave out: a part that brings its own ports. */
  readonly Unsaid?: ComponentType | undefined;
  /** The same by ear: another such part. */
  readonly ByEar?: ComponentType | undefined;
  /** Who speaks on this device: another such part. */
  readonly WhoSpeaks?: ComponentType | undefined;
}

export function WorkOutPlace({ workOut, hearAPour, ByEar, Unsaid, WhoSpeaks }: WorkOutPlaceProps) {
  return (
    <WorkOutProvider value={workOut}>
      <Greeting hearAPour={hearAPour} />
      {ByEar && <ByEar />}
      <SheetTools />
      <NoticeLine />
      {/* Nothing is sent: the page has answered by the time Enter is pressed. */}
      <form class="sheet" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <Films />
        <LeafletQuestion />
        <TankQuestion />
        <WarmthQuestion />
        <Hands />
        <Clock />
        <Question id="baths" asks={words.value.questions.baths}>
          <BathRows />
          <BathsAnswer />
        </Question>
        <ContrastQuestion />
        <Question id="voice" asks={words.value.questions.voice}>
          <div class="fields">
            <VoiceLanguage />
            <Choice path="voice.detail" width="middling" />
            <Field path="voice.rate" />
            <Field path="darkWait" />
            <Choice path="loading" width="middling" />
          </div>
          {WhoSpeaks && <WhoSpeaks />}
          {Unsaid && <Unsaid />}
        </Question>
        <Question id="safety" asks={words.value.questions.safety}>
          <ul class="cautions">
            {words.value.cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </Question>
      </form>
      <Announcer />
    </WorkOutProvider>
  );
}

function VoiceLanguage() {
  const workOut = useWorkOut();
  return (
    <div class="field middling">
      <label for="language">{wordsOf("language").label}</label>
      <LanguageSelect
        id="language"
        chosen={sheetLanguage(workOut.draft.value)}
        // The usual one is not written down.
        choose={(next) => workOut.type("language", next === usualLanguage ? "" : next)}
      />
    </div>
  );
}

function Films() {
  return (
    <Question id="films" asks={words.value.questions.films}>
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

function Hands() {
  const { worksheet, plan } = useWorkOut();
  const inWords = useComputed(
    () =>
      worksheet.value &&
      plan.value &&
      agitationAnswer(worksheet.value.agitation, plan.value.developmentSeconds),
  ).value;
  return (
    <Question id="hands" asks={words.value.questions.hands}>
      <div class="fields">
        {agitationParts.map((part) => (
          <Fragment key={part}>
            <Field path={`agitation.${part}`} />
            {part === "perInversion" && <TimeIt what="perInversion" />}
          </Fragment>
        ))}
      </div>
      {inWords && <p class="answer in-words">{inWords}</p>}
      <div class="answer">
        <Warnings topics={["hands"]} />
        <Working about="hands" />
      </div>
    </Question>
  );
}

function Clock() {
  return (
    <Question id="clock" asks={words.value.questions.clock}>
      <div class="fields">
        <Radios path="clock.starts" />
        <Radios path="clock.ends" />
      </div>
    </Question>
  );
}
