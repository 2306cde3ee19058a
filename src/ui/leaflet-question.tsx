// What does the leaflet say? Its rows typed or pasted, the bath's temperature, the answer with its
// working, and the curve through the rows beside it.
import { DevelopmentAnswer } from "./answers.tsx";
import { Choice, Field } from "./field.tsx";
import { withLateWords, words } from "./language.ts";
import { late } from "./late.tsx";
import { More } from "./more.tsx";
import { Question } from "./question.tsx";
import { Rows } from "./rows.tsx";
import { useWorkOut } from "./work-out-context.ts";

const BottleFor = late(async () => (await withLateWords(import("./bottle-for.tsx"))).BottleFor);
const PasteLeaflet = late(async () => (await import("./paste-leaflet.tsx")).PasteLeaflet);
const LeafletPicture = late(
  async () => (await withLateWords(import("./drawings.tsx"))).LeafletPicture,
);

export function LeafletQuestion() {
  const worksheet = useWorkOut().worksheet.value;
  return (
    <Question
      id="developer"
      asks={words.value.questions.developer}
      beside={worksheet && <LeafletPicture worksheet={worksheet} />}
    >
      <div class="fields">
        <Field path="developer.label" width="middling" />
        <Field path="developer.dilution" />
      </div>
      <BottleFor bath="developer" />
      <Rows list="developer.leaflet">
        {(row) => (
          <>
            <Field path={`${row}.temperature`} />
            <Field path={`${row}.time`} />
            <Field path={`${row}.exposureIndex`} />
          </>
        )}
      </Rows>
      <details class="more">
        <summary>{words.value.paste.more}</summary>
        <PasteLeaflet />
      </details>
      <div class="fields">
        <Field path="developer.temperature" width="middling" />
        <Field path="developer.soughtTime" width="middling" />
      </div>
      <details class="more">
        <summary>{words.value.more.leaflet}</summary>
        <div class="fields">
          <Field path="developer.perDegree" />
          <Field path="developer.perStop.pull" />
          <Field path="developer.perStop.push" />
          <Field path="developer.filmsBefore" />
          <Field path="developer.perFilmBefore" />
          <Choice path="baths.developer.afterwards" width="middling" />
        </div>
      </details>
      <More
        summary={words.value.more.capacity}
        holds={["developer.filmsPerLitre", "developer.kept", "developer.replenishPerFilm"]}
      >
        <div class="fields">
          <Field path="developer.filmsPerLitre" />
          <Field path="developer.kept" />
          <Field path="developer.replenishPerFilm" />
        </div>
      </More>
      <More summary={words.value.more.inTank} holds={["developer.readings["]}>
        <Rows list="developer.readings">
          {(row) => (
            <>
              <Field path={`${row}.at`} />
              <Field path={`${row}.temperature`} />
            </>
          )}
        </Rows>
      </More>
      <DevelopmentAnswer />
    </Question>
  );
}
