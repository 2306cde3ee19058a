// A bottle as it stands in, what the page says of it out: days, volumes, films, and each entry in a line.
import type { Entry, FilmsOfSize } from "../logbook/bottle.ts";
import type { BottleState } from "../logbook/bottle-state.ts";
import type { Day } from "../trade/keeping.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { inUnitOf } from "../units/volume.ts";
import { bathName } from "./field-names.ts";
import { lateWords, locale, typedFigure, words, writing } from "./language.ts";

/** `"3 March 2026"`, as the locale has it. */
export function dayText(day: Day, as = locale.value): string {
  const at = Date.parse(`${day}T12:00:00Z`);
  return new Intl.DateTimeFormat(as, { dateStyle: "long", timeZone: "UTC" }).format(at);
}

/** `"Fixer, working solution, 1+4"`. */
export function whatLine({ contents: { kind, state, strength } }: BottleState): string {
  const parts = [bathName(kind), lateWords.value.shelf.states[state]];
  const named = strength === "stock" ? words.value.answers.stock : strength;
  return [...parts, ...(named === undefined ? [] : [named])].join(", ");
}

export function mixedLine({ contents: { mixedOn, by, from } }: BottleState): string {
  const say = lateWords.value.shelf;
  return [
    dayText(mixedOn),
    ...(by === undefined ? [] : [say.by(by)]),
    ...(from === undefined ? [] : [say.from(from)]),
  ].join(", ");
}

/** What is left, in the unit in which it was mixed. */
function leftText({ left, contents: { volume } }: BottleState): string {
  return writing.value.volume(inUnitOf(volume, left));
}

export function leftLine(state: BottleState): string {
  return lateWords.value.shelf.outOf(leftText(state), writing.value.volume(state.contents.volume));
}

/** `"4 × 135-36, 2 × 120"`. */
function sizesText(films: readonly FilmsOfSize[]): string {
  return films.map(({ size, count }) => `${writing.value.number(count)} × ${size}`).join(", ");
}

export function filmsLines({ films, bySize, served, serves }: BottleState): readonly string[] {
  const say = lateWords.value.shelf;
  const number = writing.value.number;
  const whole = serves === null ? number(served) : say.outOf(number(served), number(serves));
  const parted = Math.abs(served - films) > 1e-6;
  const all = parted ? number(films) : whole;
  return [
    bySize.length === 0 ? all : say.films(all, sizesText(bySize)),
    ...(parted ? [say.counted(whole)] : []),
  ];
}

export function dueLine({ due }: BottleState, today: Day): string {
  const say = lateWords.value.shelf;
  if (due === null) return say.notSaid;
  const line = `${dayText(due.on)} (${say.dueBy[due.by](dayText(due.since))})`;
  return isPast(due, today) ? `${line}: ${say.past}` : line;
}

export function isPast(due: BottleState["due"], today: Day): boolean {
  return due !== null && due.on < today;
}

export function standsLine({ stands, pouredOn }: BottleState): string | null {
  switch (stands) {
    case "on the shelf":
      return null;
    case "set aside":
      return lateWords.value.shelf.aside;
    case "poured away":
      return lateWords.value.shelf.awaySince(dayText(pouredOn ?? ""));
  }
}

/** What an entry says; null of one that only takes back another. */
export function entryLine(entry: Entry): string | null {
  const say = lateWords.value.shelf.told;
  switch (entry.kind) {
    case "mixed":
      return say.mixed(writing.value.volume(entry.contents.volume));
    case "films":
      return say.films(sizesText(entry.films));
    case "drawn": {
      const { takes, films, bath } = entry;
      return [
        ...(films.length > 0 ? [say.drawn(bathName(bath), sizesText(films))] : []),
        ...(takes ? [say.took(bathName(bath), writing.value.volume(takes))] : []),
      ].join("; ");
    }
    case "taken":
    case "added":
      return say[entry.kind](writing.value.volume(entry.volume));
    case "tested":
      return say.tested(writeClockTime(entry.seconds), entry.film);
    case "undone":
    case "redone":
      return null;
    default:
      return say[entry.kind];
  }
}

/** The same as it would be typed, to a tenth of a millilitre. */
export function leftTyped({ left, contents: { volume } }: BottleState): string {
  const tenth = inUnitOf(volume, Math.round(left * 10) / 10);
  return "ml" in tenth
    ? `${typedFigure(tenth.ml)} ml`
    : `${typedFigure(Math.round(tenth.flOz * 100) / 100)} fl oz`;
}
