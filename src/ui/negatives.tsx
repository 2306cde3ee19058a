// What the negatives of a run look like, asked in a few plain questions, and what it was and what to change,
// told beneath. The reading of them stands in trade/negatives.ts.
import { useId } from "preact/hooks";
import {
  causesOf,
  densities,
  edges,
  isMendable,
  marks,
  type Negatives,
  nothingSeen,
} from "../trade/negatives.ts";
import { lateWords } from "./language.ts";

interface NegativesProps {
  readonly seen: Negatives | undefined;
  readonly see: (seen: Negatives) => void;
}

export function LookAtNegatives({ seen = nothingSeen, see }: NegativesProps) {
  const said = lateWords.value.negatives;
  const causes = causesOf(seen);
  return (
    <details class="negatives">
      <summary>{said.name}</summary>
      <p class="hint">{said.hint}</p>
      <Choice
        asks={said.density}
        all={densities}
        words={said.densities}
        chosen={seen.density}
        choose={(density) => see({ ...seen, density })}
      />
      <Choice
        asks={said.edge}
        all={edges}
        words={said.edges}
        chosen={seen.edges}
        choose={(numbers) => see({ ...seen, edges: numbers })}
      />
      <fieldset class="radios">
        <legend>{said.mark}</legend>
        {marks.map((mark) => (
          <label key={mark}>
            <input
              type="checkbox"
              checked={seen.marks.includes(mark)}
              onChange={(event) => {
                const others = seen.marks.filter((other) => other !== mark);
                see({ ...seen, marks: event.currentTarget.checked ? [...others, mark] : others });
              }}
            />
            {said.marks[mark]}
          </label>
        ))}
      </fieldset>
      {/* There before anything is said in it, so that those who listen to the page are told. */}
      <div role="status">
        {causes.length > 0 && (
          <ul class="causes">
            {causes.map((cause) => (
              <li key={cause}>
                {isMendable(cause) && <b>{said.mend} </b>}
                {said.causes[cause].was} <b>{said.change}</b> {said.causes[cause].change}
              </li>
            ))}
          </ul>
        )}
      </div>
    </details>
  );
}

interface ChoiceProps<Value extends string> {
  readonly asks: string;
  readonly all: readonly Value[];
  readonly words: { readonly [value in Value]: string };
  readonly chosen: Value | null;
  readonly choose: (value: Value | null) => void;
}

/** One of a few, or nothing said: that is a choice too, and takes an answer back. */
function Choice<Value extends string>({ asks, all, words, chosen, choose }: ChoiceProps<Value>) {
  const name = useId();
  return (
    <fieldset class="radios">
      <legend>{asks}</legend>
      {[...all, null].map((value) => (
        <label key={value}>
          <input
            type="radio"
            name={name}
            checked={value === chosen}
            onChange={() => choose(value)}
          />
          {value === null ? lateWords.value.negatives.unsaid : words[value]}
        </label>
      ))}
    </fieldset>
  );
}
