// A language in, the words and figures of the whole page out, as signals: what shows them follows. Words
// are fetched first and then put in force all at once, so that no screen ever speaks two languages.
import { batch, computed, type ReadonlySignal, signal } from "@preact/signals";
import type { AsideWords, PlanWords } from "../plan/words/words.ts";
import { type Language, languageOf, usualLanguage } from "../units/language.ts";
import { type Writing, writingIn } from "../units/writing.ts";
import type { Catalogue } from "./words/catalogues.ts";
import { catalogueOf, type FirstOfAll, type LateOfAll, usualFirst } from "./words/catalogues.ts";
import type { FirstWords, LateWords } from "./words/words.ts";

const inForce = signal<Language>(usualLanguage);
const first = signal<FirstOfAll>(usualFirst);
const late = signal<LateOfAll | null>(null);
/** Only within what was fetched through `withLateWords`. */
const fetched = computed(() => {
  if (late.value === null) throw new Error("late words are shown before they were fetched");
  return late.value;
});

export const language: ReadonlySignal<Language> = inForce;

/** Of the frame and Work out. To be read where something is shown, never as a module is loaded. */
export const words: ReadonlySignal<FirstWords> = computed(() => first.value.screens);

/** Of the development's plan. */
export const planWords: ReadonlySignal<PlanWords> = computed(() => first.value.plan);

/** Of the other places, the sheets for wet hands, the drawings. */
export const lateWords: ReadonlySignal<LateWords> = computed(() => fetched.value.screens);

/** Of the questions beside the development. */
export const asideWords: ReadonlySignal<AsideWords> = computed(() => fetched.value.asides);

/** How numbers are written. */
export const writing: ReadonlySignal<Writing> = computed(() => writingIn(inForce.value));

/** Always so many decimals. */
export function fixed(value: number, decimals: number): string {
  const mark = writing.value.number(0.5).charAt(1);
  return value.toFixed(decimals).replace(".", mark);
}

/** Every digit of a number, so that the readers of typed text take it for the same one. */
export function typedFigure(value: number): string {
  const text = writing.value.typed(value);
  // Three digits behind a comma may be thousands; four are not.
  return /^-?\d+,\d{3}$/.test(text) ? `${text}0` : text;
}

/** The person's own manner of that language, where the browser names one: dates follow it. */
export const locale: ReadonlySignal<string> = computed(() => {
  const own = globalThis.navigator?.languages?.find((tag) => languageOf(tag) === inForce.value);
  return own ?? inForce.value;
});

/** Of what is in force, for the late words that are yet to be fetched. */
let catalogue: Catalogue = catalogueOf(usualLanguage);
/** Late words have been asked for: from then on they change with the others. */
let lateWanted = false;
/** Counts what was asked for, so that the last choice holds, whichever is fetched last. */
let asked = 0;

/**
 * Puts a language in force; false where its words could not be fetched, and all is as it was.
 * @param from where its words come from, if not from its own folders.
 */
export async function speak(next: Language, from: Catalogue = catalogueOf(next)): Promise<boolean> {
  asked += 1;
  const mine = asked;
  try {
    const nextFirst = await from.first();
    // Whether they are wanted is asked last: a part may have come while the first were fetched.
    const nextLate = lateWanted ? await from.late() : null;
    if (mine !== asked) return true;
    catalogue = from;
    batch(() => {
      inForce.value = next;
      first.value = nextFirst;
      late.value = nextLate;
    });
    return true;
  } catch {
    return mine !== asked;
  }
}

/** A part of the page with the words that it shows: resolves when both are there. */
export async function withLateWords<Part>(part: Promise<Part>): Promise<Part> {
  const [it] = await Promise.all([part, fetchLateWords()]);
  return it;
}

/** Of the language in force, even if another is put in force meanwhile. */
async function fetchLateWords(): Promise<void> {
  lateWanted = true;
  while (late.value === null) {
    const from = catalogue;
    const words = await from.late();
    if (from === catalogue) late.value ??= words;
  }
}
