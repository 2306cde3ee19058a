// What is looked for among the runs: words, and a choice each of film, developer, year and stars, with how many runs
// each would leave.
import { useEffect, useId, useState } from "preact/hooks";
import type { RunLine } from "../logbook/run-line.ts";
import { lateWords } from "./language.ts";
import {
  type Choice,
  type Choices,
  choicesIn,
  nothingWanted,
  type Wanted,
} from "./write-up-find.ts";
import type { WriteUp } from "./write-up-state.ts";

const none: readonly RunLine[] = [];
const noChoices = choicesIn(none, nothingWanted);

export function Filters({ writeUp }: { readonly writeUp: WriteUp }) {
  const search = useId();
  const { find, stars } = lateWords.value;
  const lines = writeUp.found.value?.lines ?? none;
  const wanted = writeUp.wanted.value;
  const [choices, setChoices] = useState<Choices>(noChoices);
  // Once the runs that were found are drawn: nobody waits for what else could be chosen.
  useEffect(() => setChoices(choicesIn(lines, wanted)), [lines, wanted]);
  const shown = writeUp.matches.value.length;
  const starsName = (value: NonNullable<Wanted["stars"]>) =>
    value === "unsaid" ? stars.unsaid : stars.each(value, stars.words[value]);
  return (
    <search class="find">
      <div class="field">
        <label for={search}>{find.search}</label>
        <input
          id={search}
          type="search"
          value={wanted.text}
          onInput={(event) => writeUp.find({ text: event.currentTarget.value })}
        />
      </div>
      <Facet
        name={find.film}
        choices={choices.film}
        chosen={wanted.film}
        write={String}
        choose={(film) => writeUp.find({ film })}
      />
      <Facet
        name={find.developer}
        choices={choices.developer}
        chosen={wanted.developer}
        write={String}
        choose={(developer) => writeUp.find({ developer })}
      />
      <Facet
        name={find.year}
        choices={choices.year}
        chosen={wanted.year}
        write={String}
        choose={(year) => writeUp.find({ year })}
      />
      <Facet
        name={find.stars}
        choices={choices.stars}
        chosen={wanted.stars}
        write={starsName}
        choose={(value) => writeUp.find({ stars: value })}
      />
      <p role="status">
        {find.count(shown, lines.length)}
        {shown === 0 && ` ${find.none}`}
      </p>
      {shown < lines.length && (
        <button type="button" class="plain" onClick={() => writeUp.find(nothingWanted)}>
          {find.clear}
        </button>
      )}
    </search>
  );
}

interface FacetProps<Value> {
  readonly name: string;
  readonly choices: readonly Choice<Value>[];
  readonly chosen: Value | null;
  readonly write: (value: Value) => string;
  readonly choose: (value: Value | null) => void;
}

function Facet<Value>({ name, choices: some, chosen, write, choose }: FacetProps<Value>) {
  const id = useId();
  const { all, choice } = lateWords.value.find;
  // What is chosen holds, although the last run that has it may be gone.
  const isGone = chosen !== null && !some.some(({ value }) => value === chosen);
  const choices = isGone ? [...some, { value: chosen, count: 0 }] : some;
  const at = choices.findIndex(({ value }) => value === chosen);
  return (
    <div class="field">
      <label for={id}>{name}</label>
      <select
        id={id}
        value={String(at)}
        onChange={(event) => choose(choices[Number(event.currentTarget.value)]?.value ?? null)}
      >
        <option value="-1">{all}</option>
        {choices.map(({ value, count }, i) => (
          <option key={write(value)} value={String(i)}>
            {choice(write(value), count)}
          </option>
        ))}
      </select>
    </div>
  );
}
