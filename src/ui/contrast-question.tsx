// What did your test films show? Gradients or wedges at several times, the time for a wanted gradient,
// and what a stop of contrast costs; the curves beside.
import { Wanting, Warnings, Working } from "./answer-parts.tsx";
import { Field } from "./field.tsx";
import { withLateWords, words } from "./language.ts";
import { late } from "./late.tsx";
import { More } from "./more.tsx";
import { Question } from "./question.tsx";
import { Rows } from "./rows.tsx";
import { useWorkOut } from "./work-out-context.ts";

const ContrastPictures = late(
  async () => (await withLateWords(import("./drawings.tsx"))).ContrastPictures,
);

export function ContrastQuestion() {
  const contrast = useWorkOut().worksheet.value?.contrast;
  return (
    <Question
      id="contrast"
      asks={words.value.questions.contrast}
      beside={contrast && <ContrastPictures wish={contrast} />}
    >
      <More summary={words.value.more.contrast} holds={["contrast."]}>
        <div class="fields">
          <Field path="contrast.wanted" />
          <Field path="contrast.stepLog" />
          <Field path="contrast.firstLog" />
        </div>
        <Rows list="contrast.tests">
          {(row) => (
            <>
              <Field path={`${row}.time`} />
              <Field path={`${row}.gradient`} />
              <Field path={`${row}.densities`} width="middling" />
              <Field path={`${row}.baseFog`} />
            </>
          )}
        </Rows>
        <div class="answer">
          <Warnings topics={["contrast"]} />
          <Working about="contrast" />
          <Wanting aside="contrast" />
        </div>
      </More>
    </Question>
  );
}
