// Words in: one language's sentences under named keys. Out: the phrases to be spoken for a key,
// at a length, with its slots filled. A phrase is what the voice pack speaks in one breath, so a
// sentence is cut (at its `|`) only where a voice would breathe.

export const forms = ["full", "brief", "shortest"] as const;
export type Form = (typeof forms)[number];
export type Slots = { readonly [slot: string]: string | number };

interface Sentence {
  readonly full: string;
  readonly brief: string;
  readonly shortest: string;
  readonly example: { readonly slots: Slots; readonly says: string };
  /** The longest each form may last when spoken at rate 1, seconds. */
  readonly within: readonly number[];
}

/**
 * Values by name, or one wording for each plural category of the language, with `{n}` in words, and
 * for single counts that are said or heard better another way, such as half an hour. A
 * language that inflects has a table for each form it needs, `bath_from` beside `bath`: the same
 * values, in another case.
 */
type SlotWords = { readonly [value: string]: string };

/** What stands in `audio-scripts/<language>.json`. */
export interface ScriptSource {
  readonly language: string;
  /** What its speakers call it. */
  readonly name: string;
  readonly slots: { readonly [slot: string]: SlotWords };
  /** What the steps without a bath are called. */
  readonly titles: { readonly [step: string]: string };
  /**
   * What is written beside the spoken words, on a sheet or in captions, numbers in figures. Where a
   * count `n` of one kind is written another way, its plural category stands behind the key.
   */
  readonly written: { readonly [key: string]: string };
  readonly sentences: { readonly [key: string]: Sentence };
}

export interface Script {
  readonly source: ScriptSource;
  /**
   * The phrases of a sentence, in order.
   * @throws where the key or a slot is unknown: the caller wrote it, no person typed it.
   */
  say(key: string, form: Form, slots?: Slots): readonly string[];
  /**
   * What is written under a key, its slots filled as they are.
   * @throws where the key or a slot is unknown.
   */
  write(key: string, slots?: Slots): string;
}

/** The counts a voice pack can say; anything else is rounded down to one of them. */
const counts: { readonly [slot: string]: readonly number[] } = {
  minutes: [...Array.from({ length: 60 }, (_, i) => i + 1), 75, 90, 105, 120],
  // Minutes left that are worth telling unasked: the last five, then every fifth, then every quarter hour.
  mark: [1, 2, 3, 4, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 75, 90, 105, 120],
  seconds: Array.from({ length: 11 }, (_, i) => (i + 1) * 5),
  // Of a developer in the tank, °C from 15 to 30 and °F from 59 to 86.
  degrees: [
    ...Array.from({ length: 16 }, (_, i) => i + 15),
    ...Array.from({ length: 28 }, (_, i) => i + 59),
  ],
};

/** Minutes left at which a long bath is told of unasked, least first. */
export const marks: readonly number[] = counts.mark ?? [];

/** The greatest sayable count that is not more than `value`, or null below the least. */
export function sayable(slot: "minutes" | "mark" | "seconds", value: number): number | null {
  return counts[slot]?.findLast((count) => count <= value) ?? null;
}

/** The count of minutes nearest to a time that was never announced, at least one: how long something took. */
export function nearestMark(minutes: number): number {
  return marks.reduce((a, b) => (Math.abs(b - minutes) < Math.abs(a - minutes) ? b : a), 1);
}

/** `bath` of `bath_from`: what a caller fills, whatever case a language puts it in. */
function slotOf(table: string): string {
  return table.replace(/_.*/, "");
}

/** @param cardinal writes a whole number out in the script's language. */
export function openScript(source: ScriptSource, cardinal: (n: number) => string): Script {
  const plurals = new Intl.PluralRules(source.language);

  function slotWords(table: string, value: string | number): string {
    const words = source.slots[table];
    if (words === undefined)
      throw new Error(`No slot "${table}" in the script "${source.language}".`);
    if (slotOf(table) in counts) {
      const count = Number(value);
      const wording = words[count] ?? words[plurals.select(count)] ?? words.other ?? "{n}";
      return wording.replace("{n}", cardinal(count));
    }
    const named = words[String(value)] ?? words.many;
    if (named === undefined) throw new Error(`Slot "${table}" has no words for "${value}".`);
    return named;
  }

  return {
    source,
    say(key, form, slots = {}) {
      const sentence = source.sentences[key];
      if (sentence === undefined) throw new Error(`No sentence "${key}" in "${source.language}".`);
      return phrases(sentence[form]).map((phrase, i) => {
        const said = phrase.replace(/\{(\w+)\}/g, (_, table: string) => {
          const value = slots[slotOf(table)];
          if (value === undefined)
            throw new Error(`Sentence "${key}" wants the slot "${slotOf(table)}".`);
          return slotWords(table, value);
        });
        return i === 0 ? capitalised(said, source.language) : said;
      });
    },
    write(key, slots = {}) {
      const one = typeof slots.n === "number" ? `${key}.${plurals.select(slots.n)}` : key;
      const written = source.written[one] ?? source.written[key];
      if (written === undefined) throw new Error(`Nothing is written for "${key}".`);
      return written.replace(/\{(\w+)\}/g, (_, slot: string) => {
        const value = slots[slot];
        if (value === undefined) throw new Error(`"${key}" wants the slot "${slot}".`);
        return String(value);
      });
    },
  };
}

/** A script is spoken into two packs: what a run says, and what only asking by ear does, fetched when that is wanted. */
export const packNames = ["run", "ear"] as const;
export type PackName = (typeof packNames)[number];

const packOf = (key: string): PackName => (key.startsWith("ear.") ? "ear" : "run");

/**
 * Every distinct phrase that `say` can return, in the order of the script: what a pack must hold.
 * @param pack of this one alone; a phrase that both could hold is the run's.
 */
export function everyPhrase(script: Script, pack?: PackName): readonly string[] {
  return [...phraseLimits(script, pack).keys()];
}

/** The same phrases, each with the longest time that the script allows a sentence with it, seconds. */
export function phraseLimits(script: Script, pack?: PackName): ReadonlyMap<string, number> {
  const all = new Map<string, number>();
  for (const [key, sentence] of Object.entries(script.source.sentences)) {
    if (pack !== undefined && packOf(key) !== pack) continue;
    for (const [place, form] of forms.entries()) {
      for (const [i, phrase] of phrases(sentence[form]).entries()) {
        for (const slots of fillings(phrase, script.source)) {
          const first = fillings(sentence[form], script.source)[0] ?? {};
          const said = script.say(key, form, { ...first, ...slots })[i];
          const within = Math.max(sentence.within[place] ?? 0, all.get(said ?? "") ?? 0);
          if (said !== undefined) all.set(said, within);
        }
      }
    }
  }
  if (pack === "ear") for (const text of everyPhrase(script, "run")) all.delete(text);
  return all;
}

function phrases(sentence: string): readonly string[] {
  return sentence.split("|").map((phrase) => phrase.trim());
}

function capitalised(text: string, language: string): string {
  return text.charAt(0).toLocaleUpperCase(language) + text.slice(1);
}

/** Every way to fill the slots that stand in a text. */
function fillings(text: string, source: ScriptSource): readonly Slots[] {
  const tables = [...text.matchAll(/\{(\w+)\}/g)].map((match) => match[1] ?? "");
  const slots = [...new Set(tables.map(slotOf))];
  return slots.reduce<readonly Slots[]>(
    (filled, slot) => {
      const values: readonly (string | number)[] =
        counts[slot] ?? Object.keys(source.slots[slot] ?? {});
      return filled.flatMap((before) => values.map((value) => ({ ...before, [slot]: value })));
    },
    [{}],
  );
}
