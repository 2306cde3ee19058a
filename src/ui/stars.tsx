// How good the negatives are: five words, each with its number, or nothing said.
import { useId } from "preact/hooks";
import { allStars, type RunRecord } from "../logbook/run-record.ts";
import { lateWords } from "./language.ts";

interface StarsProps {
  readonly stars: RunRecord["stars"];
  readonly say: (stars: NonNullable<RunRecord["stars"]>) => void;
}

export function ChooseStars({ stars = 0, say }: StarsProps) {
  const name = useId();
  const said = lateWords.value.stars;
  return (
    <fieldset class="radios stars">
      <legend>{said.asks}</legend>
      {([...allStars, 0] as const).map((value) => (
        <label key={value}>
          <input type="radio" name={name} checked={value === stars} onChange={() => say(value)} />
          {value === 0 ? said.unsaid : said.each(value, said.words[value])}
        </label>
      ))}
    </fieldset>
  );
}
