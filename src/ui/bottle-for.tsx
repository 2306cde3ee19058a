// Which bottle of the shelf a bath is poured from: offered in Work out where the shelf has one of that kind, with
// how it stands and what speaks against it. Without a bottle nothing is shown, and everything stays as it was.
import { useEffect, useState } from "preact/hooks";
import { type BottleState, comparable } from "../logbook/bottle-state.ts";
import { wantedFor } from "../logbook/draws.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { isSpent } from "../trade/clearing.ts";
import { type Day, daysBetween } from "../trade/keeping.ts";
import { inUnitOf } from "../units/volume.ts";
import { bottlePath, offeredFor, withBottle } from "./bottle-fill.ts";
import { nameOf, wordsOf } from "./field-names.ts";
import { lateWords, words, writing } from "./language.ts";
import { dayText, filmsLines, isPast, leftLine } from "./shelf-model.ts";
import type { Shelf } from "./shelf-state.ts";
import { useWorkOut } from "./work-out-context.ts";

export function BottleFor({ bath }: { readonly bath: string }) {
  const workOut = useWorkOut();
  const [shelf, setShelf] = useState<Shelf | null>(null);
  useEffect(() => {
    let shown = true;
    workOut.bottles().then(
      (it) => shown && setShelf(it),
      // A page does as well without: the fields are still there to be filled in.
      () => {},
    );
    return () => {
      shown = false;
    };
  }, [workOut]);
  const path = bottlePath(bath);
  const name = (workOut.draft.value[path] ?? "").trim();
  if (shelf === null || shelf.kept.value === "looking") return null;
  const offered = offeredFor(shelf.states.value, bath);
  if (offered.length === 0 && name === "") return null;
  const chosen = offered.find(({ contents }) => contents.name === name);
  const say = lateWords.value.pick;

  function take(state: BottleState): void {
    const { name: taken } = state.contents;
    workOut.put(withBottle(workOut.draft.value, bath, state), () =>
      lateWords.value.pick.taken(taken),
    );
  }
  function choose(next: string): void {
    const state = offered.find(({ contents }) => contents.name === next);
    if (state) take(state);
    else {
      const { [path]: _, ...rest } = workOut.draft.value;
      workOut.put(rest, () => lateWords.value.pick.putBack);
    }
  }
  const stale = chosen !== undefined && isStale(workOut.draft.value, bath, chosen);
  return (
    <div class="fields">
      <div class="field middling">
        <label for={path}>{wordsOf(path).label}</label>
        <select
          id={path}
          value={name}
          aria-label={nameOf(path)}
          aria-describedby={`${path}:stands`}
          onChange={(event) => choose(event.currentTarget.value)}
        >
          <option value="">{say.none}</option>
          {name !== "" && chosen === undefined && <option value={name}>{name}</option>}
          {offered.map(({ id, contents }) => (
            <option key={id} value={contents.name}>
              {contents.name}
            </option>
          ))}
        </select>
        <div class="remarks" id={`${path}:stands`}>
          {chosen && <Stands state={chosen} today={shelf.today()} />}
          {name !== "" && (
            <Against
              lines={
                chosen
                  ? against(chosen, bath, shelf.today(), workOut.worksheet.value)
                  : [say.gone(name)]
              }
            />
          )}
        </div>
      </div>
      {stale && (
        <div class="field">
          <button type="button" class="beside-field" onClick={() => take(chosen)}>
            {say.again}
            <span class="unseen">: {name}</span>
          </button>
        </div>
      )}
    </div>
  );
}

/** Whether the fields stand otherwise than the bottle would fill them in. */
function isStale(draft: { readonly [path: string]: string }, bath: string, state: BottleState) {
  return Object.entries(withBottle(draft, bath, state)).some(
    ([path, text]) => (draft[path] ?? "") !== text,
  );
}

interface StandsProps {
  readonly state: BottleState;
  readonly today: Day;
}

function Stands({ state, today }: StandsProps) {
  const say = lateWords.value.pick;
  const { mixedOn } = state.contents;
  const age = say.mixed(dayText(mixedOn), say.days(daysBetween(mixedOn, today)));
  const films = filmsLines(state).map((line) => `${lateWords.value.shelf.facts.films}: ${line}`);
  return <p class="meaning">{[leftLine(state), age, ...films].join("; ")}</p>;
}

function Against({ lines }: { readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <ul class="warnings">
      {lines.map((line) => (
        <li key={line} class="caution">
          <b>{words.value.answers.severity.caution}.</b> {line}
        </li>
      ))}
    </ul>
  );
}

/** What speaks against a bottle beside its capacity, of which the plan warns. */
function against(
  state: BottleState,
  bath: string,
  today: Day,
  worksheet: Worksheet | null,
): readonly string[] {
  const say = lateWords.value.pick;
  const { due, stands, contents, left } = state;
  const clearing = comparable(state);
  const wanted = worksheet && wantedFor(worksheet, bath, contents);
  const write = (ml: number) => writing.value.volume(inUnitOf(contents.volume, ml));
  return [
    ...(stands === "set aside" ? [say.aside] : []),
    ...(due !== null && isPast(due, today) ? [say.past(dayText(due.on))] : []),
    ...(wanted !== null && wanted > left + 0.5 ? [say.little(write(left), write(wanted))] : []),
    ...(clearing !== null && isSpent(clearing.last, clearing.fresh) ? [say.spent] : []),
  ];
}
