// A bottle as it is kept: what was done with it, entry by entry, never changed once written. With the check that
// something read back is one, since another version may have kept it. What the entries come to: bottle-state.ts.
import { type Day, isDay, type Keeps, keepings, type Span, spanUnits } from "../trade/keeping.ts";
import { readFilmSize } from "../units/film-size.ts";
import { isObject } from "../units/object.ts";
import { readDilution } from "../units/parts.ts";
import type { Volume } from "../units/volume.ts";

/** By the bath that it is for. */
export const bottleKinds = ["developer", "stop", "fixer", "wash-aid", "wetting-agent"] as const;
type BottleKind = (typeof bottleKinds)[number];

/** Stock is diluted for use; a working solution is used as it is. */
export const bottleStates = ["working", "stock"] as const;

export interface Contents {
  /** What stands on its label: one bottle a name, of those that stand on the shelf. */
  readonly name: string;
  readonly kind: BottleKind;
  readonly state: (typeof bottleStates)[number];
  /** `"1+4"`, if it was diluted. */
  readonly strength?: string;
  readonly mixedOn: Day;
  /** Initials. */
  readonly by?: string;
  readonly from?: string;
  /** As it was mixed, as written. */
  readonly volume: Volume;
  readonly keeps: Keeps;
  /** Films of 80 sq in that a litre serves in all. */
  readonly filmsPerLitre?: number;
  /** Developer: the fraction of the time added for each film before. */
  readonly addPerFilm?: number;
  /** As it stands on the maker's sheet, in as many lines. */
  readonly hazards?: string;
}

export interface FilmsOfSize {
  readonly size: string;
  readonly count: number;
}

export type Act =
  | { readonly kind: "mixed" | "corrected"; readonly contents: Contents }
  | { readonly kind: "films"; readonly films: readonly FilmsOfSize[] }
  /** By a run: once for each of its baths. `takes` did not come back. */
  | {
      readonly kind: "drawn";
      readonly run: string;
      readonly bath: string;
      readonly films: readonly FilmsOfSize[];
      readonly takes?: Volume;
    }
  | { readonly kind: "taken" | "added"; readonly volume: Volume }
  | { readonly kind: "tested"; readonly seconds: number; readonly film: string }
  | { readonly kind: "opened" | "set-aside" | "taken-up" | "poured-away" | "removed" }
  | { readonly kind: "undone" | "redone"; readonly entry: string };

export type Entry = Act & {
  readonly id: string;
  /** When it was written: UTC, ms since 1970. */
  readonly at: number;
  /** When it was done. */
  readonly on: Day;
  readonly by?: string;
};

export interface Bottle {
  /** The version of this shape. */
  readonly tankside: 1;
  readonly id: string;
  /** The first says what was mixed. */
  readonly entries: readonly Entry[];
}

export const isBottle = (kept: unknown): kept is Bottle => faultInBottle(kept) === null;

/** The path of the first thing that no bottle holds, as `entries[2]`, empty for all of it; null where nothing is wrong. */
export function faultInBottle(kept: unknown): string | null {
  if (!isObject(kept)) return "";
  if (kept.tankside !== 1) return "tankside";
  if (!isText(kept.id)) return "id";
  if (!Array.isArray(kept.entries)) return "entries";
  const wrong = kept.entries.findIndex(
    (entry, i) => !isEntry(entry) || (i === 0 && entry.kind !== "mixed"),
  );
  if (wrong >= 0) return `entries[${wrong}]`;
  return kept.entries.length === 0 ? "entries" : null;
}

function isEntry(kept: unknown): boolean {
  return (
    isObject(kept) &&
    isText(kept.id) &&
    isNumber(kept.at) &&
    isDay(kept.on) &&
    isOptional(kept.by, isText) &&
    isAct(kept as unknown as Act)
  );
}

function isAct(act: Act): boolean {
  switch (act.kind) {
    case "mixed":
    case "corrected":
      return isContents(act.contents);
    case "films":
      return areFilms(act.films);
    case "drawn":
      return (
        isText(act.run) &&
        isText(act.bath) &&
        areFilms(act.films) &&
        isOptional(act.takes, isVolume)
      );
    case "taken":
    case "added":
      return isPoured(act.volume);
    case "tested":
      return isAbove0(act.seconds) && isText(act.film);
    case "opened":
    case "set-aside":
    case "taken-up":
    case "poured-away":
    case "removed":
      return true;
    case "undone":
    case "redone":
      return isText(act.entry);
    default:
      return false;
  }
}

function isContents(it: unknown): boolean {
  return (
    isObject(it) &&
    isText(it.name) &&
    bottleKinds.some((kind) => kind === it.kind) &&
    bottleStates.some((state) => state === it.state) &&
    isOptional(it.strength, (text) => isText(text) && readDilution(String(text)).kind === "read") &&
    isDay(it.mixedOn) &&
    isOptional(it.by, isText) &&
    isOptional(it.from, isText) &&
    isVolume(it.volume) &&
    isKeeps(it.keeps) &&
    isOptional(it.filmsPerLitre, isAbove0) &&
    isOptional(it.addPerFilm, isAbove0) &&
    isOptional(it.hazards, isText)
  );
}

const isText = (it: unknown): boolean => typeof it === "string";
const isNumber = (it: unknown): boolean => typeof it === "number" && Number.isFinite(it);
const isAbove0 = (it: unknown): boolean => isNumber(it) && Number(it) > 0;

function isOptional(it: unknown, isOne: (it: unknown) => boolean): boolean {
  return it === undefined || isOne(it);
}

function isVolume(it: unknown): boolean {
  return isObject(it) && isAbove0(it.ml ?? it.flOz);
}

/** Earlier versions wrote down 0 too, and lost the bottle from sight by it: it is to be seen again. */
function isPoured(it: unknown): boolean {
  return isVolume(it) || (isObject(it) && (it.ml ?? it.flOz) === 0);
}

function isKeeps(it: unknown): boolean {
  return isObject(it) && keepings.every((of) => isOptional(it[of], isKept));
}

/** Also one that is longer than can be written down by now: it is counted as the longest, and its bottle stays. */
function isKept(it: unknown): it is Span {
  return isObject(it) && isAbove0(it.count) && spanUnits.some((unit) => unit === it.unit);
}

function areFilms(it: unknown): boolean {
  return (
    Array.isArray(it) &&
    it.every(
      (film) =>
        isObject(film) && isAbove0(film.count) && readFilmSize(String(film.size)).kind === "read",
    )
  );
}
