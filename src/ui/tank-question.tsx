// What tank, and how much fills it? Its volume and a person's times with it, kept under a name; the
// times can be measured by pressing along.
import { useState } from "preact/hooks";
import { MixAnswer } from "./answers.tsx";
import { type Timed, timedField, withHands } from "./bench-acts.ts";
import { Choice, Field } from "./field.tsx";
import { nameOf } from "./field-names.ts";
import { withLateWords, words } from "./language.ts";
import { late } from "./late.tsx";
import { More } from "./more.tsx";
import { Question } from "./question.tsx";
import { useWorkOut } from "./work-out-context.ts";

const PressAlong = late(async () => (await withLateWords(import("./press-along.tsx"))).PressAlong);

export function TankQuestion() {
  return (
    <Question id="tank" asks={words.value.questions.tank}>
      <Shelf />
      <div class="fields">
        <Choice path="tank.method" width="middling" />
        <Field path="tank.volume" />
        <Field path="developer.stockPerFilm" />
      </div>
      <div class="fields">
        <Field path="tank.pourIn" />
        <TimeIt what="pourIn" />
        <Field path="tank.pourOut" />
        <TimeIt what="pourOut" />
      </div>
      <details class="more">
        <summary>{words.value.more.tank}</summary>
        <div class="fields">
          <Field path="tank.handover" />
          <Field path="tank.timeFactor" />
          <Field path="tank.room" />
          <Field path="tank.halfway" />
        </div>
      </details>
      <More summary={words.value.more.measured} holds={["tank.measured."]}>
        <div class="fields">
          <Field path="tank.measured.pourIn" />
          <Field path="tank.measured.pourOut" />
          <Field path="tank.measured.perInversion" />
        </div>
      </More>
      <MixAnswer />
    </Question>
  );
}

/** The tanks kept in this browser, and what can be done with the one that stands here. */
function Shelf() {
  const { shelf, draft } = useWorkOut();
  const tanks = shelf.tanks.value;
  const label = (draft.value["tank.label"] ?? "").trim();
  const isKept = tanks.some((it) => it.label === label);
  const gone = shelf.gone.value;
  const forgets = (
    <>
      {words.value.tanks.forget}
      <span class="unseen"> {label}</span>
    </>
  );
  const ways = [
    ...(isKept ? [{ says: forgets, act: () => shelf.forget(label) }] : []),
    ...(gone ? [{ says: words.value.tanks.bringBack(gone.label), act: shelf.bringBack }] : []),
  ];
  return (
    <div class="fields">
      <Field path="tank.label" width="middling" />
      <div class="field">
        <button type="button" class="beside-field" onClick={() => void shelf.keep()}>
          {words.value.tanks.keep}
        </button>
      </div>
      {tanks.length > 0 && (
        <div class="field middling">
          <label for="kept-tanks">{words.value.tanks.choose}</label>
          <select
            id="kept-tanks"
            value={isKept ? label : ""}
            onChange={(event) => shelf.take(event.currentTarget.value)}
          >
            <option value="">{words.value.tanks.none}</option>
            {tanks.map((tank) => (
              <option key={tank.label} value={tank.label}>
                {tank.label}
              </option>
            ))}
          </select>
        </div>
      )}
      {ways.map(({ says, act }, at) => (
        // By its place, so that the focus stays where the one press takes back the other.
        <div key={at} class="field">
          <button type="button" class="plain beside-field" onClick={() => void act()}>
            {says}
          </button>
        </div>
      ))}
    </div>
  );
}

const measures = { pourIn: "pour-in", pourOut: "pour-out", perInversion: "inversion" } as const;

/** Opens the sheet on which a time is taken by pressing along. */
export function TimeIt({ what }: { readonly what: Timed }) {
  const workOut = useWorkOut();
  const [open, setOpen] = useState(false);
  const name = nameOf(timedField[what]);

  function keep(times: readonly number[]): void {
    const next = withHands(workOut.draft.value, what, times);
    workOut.put(next, () =>
      words.value.hands.kept(nameOf(timedField[what]), next[timedField[what]] ?? ""),
    );
    setOpen(false);
  }

  return (
    <div class="field">
      <button type="button" class="beside-field" onClick={() => setOpen(true)}>
        {words.value.hands.measure}
        <span class="unseen">{words.value.hands.of(name)}</span>
      </button>
      {open && (
        <PressAlong
          what={measures[what]}
          now={() => performance.now()}
          keep={keep}
          leave={() => setOpen(false)}
        />
      )}
    </div>
  );
}
