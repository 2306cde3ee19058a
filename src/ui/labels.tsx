// Labels for the bottles, several on a page, in letters to be read with wet glasses on: chosen here, and printed
// by themselves. The hazard statements are the person's own, from the maker's sheet; none are made up.
import { useState } from "preact/hooks";
import type { BottleState } from "../logbook/bottle-state.ts";
import { toMillilitres } from "../units/volume.ts";
import { lateWords, writing } from "./language.ts";
import { printOut } from "./print-out.ts";
import { dayText, whatLine } from "./shelf-model.ts";

interface BottleLabelsProps {
  readonly states: readonly BottleState[];
  readonly print: () => void;
}

export function BottleLabels({ states, print }: BottleLabelsProps) {
  const say = lateWords.value.bottleLabels;
  const [left, setLeft] = useState<readonly string[]>([]);
  const chosen = states.filter(({ id }) => !left.includes(id));
  return (
    <details class="more">
      <summary>{say.title}</summary>
      <p>{say.lead}</p>
      <ul class="ticks">
        {states.map(({ id, contents }) => (
          <li key={id}>
            <label class="tick">
              <input
                type="checkbox"
                checked={!left.includes(id)}
                onChange={(event) =>
                  setLeft(
                    event.currentTarget.checked ? left.filter((it) => it !== id) : [...left, id],
                  )
                }
              />
              {contents.name}
            </label>
          </li>
        ))}
      </ul>
      <button
        type="button"
        disabled={chosen.length === 0}
        onClick={() => printOut(<LabelSheet states={chosen} />, print)}
      >
        {say.print(chosen.length)}
      </button>
    </details>
  );
}

function LabelSheet({ states }: Pick<BottleLabelsProps, "states">) {
  return (
    <div class="label-sheet">
      {states.map((state) => (
        <Label key={state.id} state={state} />
      ))}
    </div>
  );
}

function Label({ state }: { readonly state: BottleState }) {
  const say = lateWords.value.bottleLabels;
  const { contents, due } = state;
  const lines: readonly (readonly [string, string])[] = [
    [say.mixed, dayText(contents.mixedOn)],
    [say.by, contents.by ?? ""],
    [say.due, due === null ? "" : dayText(due.on)],
  ];
  return (
    <article class="label">
      <h2>{contents.name}</h2>
      <p>{whatLine(state)}</p>
      <dl>
        {lines.map(([name, text]) => (
          <div key={name}>
            <dt>{name}</dt>
            {/* What is not known is a line to write on. */}
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <Boxes state={state} />
      <p>{say.hazards}</p>
      <p class="hazards">{contents.hazards}</p>
    </article>
  );
}

/** No label has room for more. */
const mostBoxes = 40;

/** How many boxes, how many films of 80 sq in each, and how many are full. */
function boxesOf({ contents, served, serves }: BottleState) {
  const { filmsPerLitre, volume } = contents;
  // What is on paper is counted by the whole bottle, whatever was poured off.
  const all = ((filmsPerLitre ?? 0) * toMillilitres(volume)) / 1000;
  const each = Math.max(1, Math.ceil(all / mostBoxes));
  const scale = serves !== null && serves > 0 ? all / serves : 1;
  const boxes = Math.floor(all / each + 1e-9);
  return { boxes, each, full: Math.min(boxes, Math.ceil((served * scale) / each - 1e-9)) };
}

function Boxes({ state }: { readonly state: BottleState }) {
  const say = lateWords.value.bottleLabels;
  const { boxes, each, full } = boxesOf(state);
  if (boxes === 0) return null;
  return (
    <>
      <p>
        {say.films} {each > 1 && say.each(writing.value.number(each))}
      </p>
      <p class="boxes">
        {Array.from({ length: boxes }, (_, at) => (at < full ? "☒" : "☐")).join(" ")}
      </p>
    </>
  );
}
