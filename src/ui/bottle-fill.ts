// A bottle of the shelf and a draft in, the draft filled in from it out: what it is, how much of it there is, what
// went through it. Pure, so that it is one step that undo takes back, and can be held against what stands there.
import { type BottleState, comparable } from "../logbook/bottle-state.ts";
import { writeClockTime } from "../units/clock-time.ts";
import type { Draft } from "./draft.ts";
import { typedFigure, writing } from "./language.ts";
import { leftTyped } from "./shelf-model.ts";

/** Where the name of a bath's bottle stands. */
export function bottlePath(bath: string): string {
  return bath === "developer" ? "developer.bottle" : `baths.${bath}.bottle`;
}

/** Bottles that a bath can be poured from; only a developer is diluted in a worksheet. */
export function offeredFor(states: readonly BottleState[], bath: string): readonly BottleState[] {
  return states.filter(
    ({ contents, stands, removed }) =>
      contents.kind === bath &&
      !removed &&
      stands !== "poured away" &&
      (bath === "developer" || contents.state === "working"),
  );
}

/** To a thousandth, so that the sums of the ledger leave no trace in a field. */
const figure = (value: number) => typedFigure(Math.round(value * 1000) / 1000);

/** ml: a worksheet takes no less. */
const leastKept = 1;

export function withBottle(draft: Draft, bath: string, state: BottleState): Draft {
  const { contents, served, left } = state;
  const start = bath === "developer" ? "developer" : `baths.${bath}`;
  const { filmsPerLitre, addPerFilm, strength, from, name } = contents;
  const isWorking = contents.state === "working";
  // A count, and how much there is, say something only beside a capacity.
  const counts = isWorking && filmsPerLitre !== undefined && left >= leastKept;
  const shared = {
    [bottlePath(bath)]: name,
    [`${start}.filmsPerLitre`]: counts ? typedFigure(filmsPerLitre) : "",
    [`${start}.kept`]: counts ? leftTyped(state) : "",
    [`${start}.filmsBefore`]: counts || (bath === "developer" && isWorking) ? figure(served) : "",
  };
  if (bath === "developer") {
    return {
      ...draft,
      ...shared,
      "developer.label": draft["developer.label"]?.trim() || from || name,
      ...(isWorking && strength ? { "developer.dilution": strength } : {}),
      "developer.perFilmBefore":
        isWorking && addPerFilm ? `${writing.value.number(addPerFilm * 100, 6)} %` : "",
      // What is diluted is used once; what is kept as it is goes back.
      "baths.developer.afterwards": isWorking ? "return" : "",
    };
  }
  return {
    ...draft,
    ...shared,
    [`${start}.use`]: "yes",
    ...(bath === "fixer" ? clearingOf(state) : {}),
  };
}

function clearingOf(state: BottleState): Draft {
  const clearing = comparable(state);
  const last = state.tests.at(-1)?.seconds;
  return {
    "baths.fixer.clearing.time": last === undefined ? "" : writeClockTime(clearing?.last ?? last),
    "baths.fixer.clearing.fresh": clearing === null ? "" : writeClockTime(clearing.fresh),
  };
}
