// A fixer's life: what the tally of films says beside what the clearing test says, and which to trust where they
// disagree; the tests drawn, and in a table.
import { type BottleState, comparable } from "../logbook/bottle-state.ts";
import { slowing } from "../trade/clearing.ts";
import { fixerLife } from "../trade/fixer-life.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { CurvePicture } from "./curve-picture.tsx";
import { fixerDrawing } from "./fixer-drawing.ts";
import { lateWords, writing } from "./language.ts";
import { dayText } from "./shelf-model.ts";

export function FixerLife({ state }: { readonly state: BottleState }) {
  const { tests, served, serves, films } = state;
  if (tests.length === 0) return <p class="hint">{lateWords.value.bottleForm.freshFirst}</p>;
  const say = lateWords.value.fixerWords;
  const number = writing.value.number;
  const clearing = comparable(state);
  const life = fixerLife({ served, all: serves }, clearing);
  const tally =
    life.tally === "silent"
      ? say.tallySays.silent
      : say.tallySays[life.tally](number(served), number(serves ?? 0));
  const test =
    clearing === null || life.test === "silent"
      ? say.testSays.silent
      : say.testSays[life.test](number(slowing(clearing.last, clearing.fresh)));
  const since = films - (tests.at(-1)?.films ?? 0);
  return (
    <section class="life" aria-label={say.title}>
      <h3>{say.title}</h3>
      <dl class="facts both">
        <div>
          <dt>{say.tally}</dt>
          <dd>{tally}</dd>
        </div>
        <div>
          <dt>{say.test}</dt>
          <dd>{test}</dd>
        </div>
      </dl>
      {life.trust && (
        <p class="not-kept">
          {say.disagree} {say.trust[life.trust]}
        </p>
      )}
      <p>
        {say.rule} {since > 0 && say.since(number(since))}
      </p>
      <CurvePicture drawing={fixerDrawing({ tests, fresh: clearing?.fresh ?? null, serves })} />
      <table class="schedule">
        <thead>
          <tr>
            <th scope="col">{say.on}</th>
            <th scope="col">{say.cleared}</th>
            <th scope="col">{say.film}</th>
            <th scope="col">{say.filmsBy}</th>
          </tr>
        </thead>
        <tbody>
          {tests.map((it, at) => (
            <tr key={`${at} ${it.on}`}>
              <th scope="row">{dayText(it.on)}</th>
              <td>{writeClockTime(it.seconds)}</td>
              <td>{it.film || "—"}</td>
              <td>{number(it.films)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
