// A bottle's entries in, how it stands out: what is left, what went through it, when it is due. Pure, and told
// anew from the first entry on each time, so that taking an entry back leaves nothing of it behind.
import { nominalFilms } from "../plan/film-area.ts";
import { type Day, type Due, dueOf } from "../trade/keeping.ts";
import { toMillilitres } from "../units/volume.ts";
import type { Act, Bottle, Contents, Entry, FilmsOfSize } from "./bottle.ts";

/** A clearing test, and what had gone through the bath by then. */
interface Test {
  readonly on: Day;
  readonly seconds: number;
  readonly film: string;
  /** Films of 80 sq in. */
  readonly films: number;
}

export interface BottleState {
  readonly id: string;
  readonly contents: Contents;
  /** ml that are left; never below 0. */
  readonly left: number;
  /** Films of 80 sq in that went through it in all. */
  readonly films: number;
  readonly bySize: readonly FilmsOfSize[];
  /** Of these, what has to be counted to what is left: half of it poured off takes half of them along. */
  readonly served: number;
  /** How many what is left serves in all; null where nobody said. */
  readonly serves: number | null;
  readonly openedOn: Day | null;
  /** Whether somebody said so; if not, it may have been earlier than anyone poured from it. */
  readonly saidOpened: boolean;
  readonly due: Due | null;
  readonly tests: readonly Test[];
  readonly stands: "on the shelf" | "set aside" | "poured away";
  readonly pouredOn: Day | null;
  readonly removed: boolean;
}

/** Names that it had as well before they were corrected. */
export function namesOf({ entries }: Bottle): readonly string[] {
  return entries.flatMap((it) =>
    it.kind === "mixed" || it.kind === "corrected" ? [it.contents.name] : [],
  );
}

/**
 * Whether an entry holds: an `undone` takes it back, a `redone` after that brings it in again. After by the time at which
 * it was written, since copies that were put together stand in no order of their own; of one moment, by its place.
 */
export function holds({ entries }: Bottle, id: string): boolean {
  const last = entries
    .filter((it) => (it.kind === "undone" || it.kind === "redone") && it.entry === id)
    .toSorted((a, b) => a.at - b.at)
    .at(-1);
  return last?.kind !== "undone";
}

/** The entries that hold, the first one first, the others in the order of their days. */
function standing(bottle: Bottle): readonly Entry[] {
  const [mixed, ...others] = bottle.entries;
  const hold = others
    .filter(({ kind, id }) => kind !== "undone" && kind !== "redone" && holds(bottle, id))
    // Stable: of one day, as they were written.
    .toSorted((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.at - b.at));
  return mixed === undefined ? hold : [mixed, ...hold];
}

/** What cannot be done with a bottle that stays stoppered: it is open from then on, whether or not anyone said so. */
const pours: ReadonlySet<Entry["kind"]> = new Set(["opened", "films", "drawn", "taken"]);

export function stateOf(bottle: Bottle): BottleState {
  const entries = standing(bottle);
  const contents = entries.reduce<Contents | null>(
    (was, it) => (it.kind === "mixed" || it.kind === "corrected" ? it.contents : was),
    null,
  );
  if (contents === null) throw new Error(`Nobody said what is in bottle ${bottle.id}.`);
  const full = toMillilitres(contents.volume);
  let left = full;
  let films = 0;
  let served = 0;
  let openedOn: Day | null = null;
  let saidOpened = false;
  let half: Day | null = null;
  let pouredOn: Day | null = null;
  let stands: BottleState["stands"] = "on the shelf";
  let removed = false;
  const sizes = new Map<string, number>();
  const tests: Test[] = [];

  function through(some: readonly FilmsOfSize[], cameBack: boolean): void {
    for (const { size, count } of some) sizes.set(size, (sizes.get(size) ?? 0) + count);
    films += nominalFilms(some);
    // What did not come back took along what the films had left in it.
    if (cameBack) served += nominalFilms(some);
  }
  function pour(ml: number): void {
    const rest = Math.max(left - ml, 0);
    served = left > 0 ? (served * rest) / left : 0;
    left = rest;
  }
  for (const it of entries) {
    if (pours.has(it.kind)) openedOn ??= it.on;
    if (it.kind === "opened") saidOpened = true;
    switch (it.kind) {
      case "films":
        through(it.films, true);
        break;
      case "drawn":
        if (it.takes) pour(toMillilitres(it.takes));
        through(it.films, it.takes === undefined);
        break;
      case "taken":
        pour(toMillilitres(it.volume));
        break;
      case "added":
        left += toMillilitres(it.volume);
        break;
      case "tested":
        tests.push({ on: it.on, seconds: it.seconds, film: it.film, films });
        break;
      case "set-aside":
        stands = "set aside";
        break;
      case "taken-up":
        stands = "on the shelf";
        break;
      case "poured-away":
        stands = "poured away";
        pouredOn = it.on;
        pour(left);
        break;
      case "removed":
        removed = true;
        break;
      default:
        break;
    }
    if (left > full / 2) half = null;
    else half ??= it.on;
  }
  const { filmsPerLitre, keeps, mixedOn } = contents;
  return {
    id: bottle.id,
    contents,
    left,
    films,
    bySize: [...sizes].map(([size, count]) => ({ size, count })),
    served,
    serves: filmsPerLitre === undefined ? null : (left / 1000) * filmsPerLitre,
    openedOn,
    saidOpened,
    due: dueOf(keeps, { full: mixedOn, half, opened: openedOn }),
    tests,
    stands,
    pouredOn,
    removed,
  };
}

export type Refusal = "more-than-left" | "opened-already" | "poured-away" | "before-mixed";

/** Why an act cannot be done with a bottle as it stands; null where it can. */
export function refusalOf(state: BottleState, act: Act, on: Day): Refusal | null {
  if (act.kind === "undone" || act.kind === "redone" || act.kind === "removed") return null;
  if (act.kind === "mixed" || act.kind === "corrected") return null;
  if (state.stands === "poured away") return "poured-away";
  if (on < state.contents.mixedOn) return "before-mixed";
  if (act.kind === "taken" && toMillilitres(act.volume) > state.left + 0.01)
    return "more-than-left";
  if (act.kind !== "opened" || state.openedOn === null) return null;
  return state.saidOpened || on >= state.openedOn ? "opened-already" : null;
}

/**
 * The last test that can be held against a fresh one of its own film, made before any film went through. Null where there
 * is none, or where film has gone through since: then it no longer speaks of what is in the bottle.
 */
export function comparable({ tests }: BottleState): {
  readonly last: number;
  readonly fresh: number;
} | null {
  const name = ({ film }: Test) => film.trim().toLowerCase();
  const freshOf = (test: Test) => tests.find((it) => it.films === 0 && name(it) === name(test));
  const now = tests.filter(({ films }) => films === tests.at(-1)?.films);
  const last = now.findLast((test) => freshOf(test) !== undefined);
  const fresh = last && freshOf(last);
  return last && fresh ? { last: last.seconds, fresh: fresh.seconds } : null;
}
