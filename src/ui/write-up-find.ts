// Lines of runs and what is looked for in, those that fit out, and how many each choice would leave. Alone and pure,
// because it must hold for ten thousand runs between one letter typed and the next.
import { folded, type RunLine } from "../logbook/run-line.ts";
import { allStars, type Stars } from "../logbook/run-record.ts";

/** null: any. */
export interface Wanted {
  /** Words, all of which must be found. */
  readonly text: string;
  readonly film: string | null;
  readonly developer: string | null;
  readonly year: number | null;
  readonly stars: Stars | "unsaid" | null;
}

export const nothingWanted: Wanted = {
  text: "",
  film: null,
  developer: null,
  year: null,
  stars: null,
};

type Facet = Exclude<keyof Wanted, "text">;

const facets: readonly Facet[] = ["film", "developer", "year", "stars"];

const valuesOf: {
  readonly [facet in Facet]: (line: RunLine) => readonly NonNullable<Wanted[facet]>[];
} = {
  film: ({ films }) => films,
  developer: ({ developer }) => [developer],
  year: ({ begunAt }) => [new Date(begunAt).getFullYear()],
  stars: ({ stars }) => [stars ?? "unsaid"],
};

/** Those that fit, in the order given. */
export function matching(lines: readonly RunLine[], wanted: Wanted): readonly RunLine[] {
  const words = wordsIn(wanted);
  const asked = facets.filter((facet) => wanted[facet] !== null);
  if (words.length === 0 && asked.length === 0) return lines;
  return lines.filter(
    (line) => has(line, words) && asked.every((facet) => fits(line, wanted, facet)),
  );
}

const wordsIn = ({ text }: Wanted): readonly string[] => folded(text).split(/\s+/).filter(Boolean);

const has = ({ text }: RunLine, words: readonly string[]): boolean =>
  words.every((word) => text.includes(word));

const fits = (line: RunLine, wanted: Wanted, facet: Facet): boolean =>
  wanted[facet] === null || (valuesOf[facet](line) as readonly unknown[]).includes(wanted[facet]);

export interface Choice<Value> {
  readonly value: Value;
  /** Runs that would be left by choosing it, all else as it is. */
  readonly count: number;
}

export type Choices = {
  readonly [facet in Facet]: readonly Choice<NonNullable<Wanted[facet]>>[];
};

const byName = new Intl.Collator("en", { numeric: true });

/** Every value that there is among all runs, so that none vanishes while another is chosen. */
export function choicesIn(lines: readonly RunLine[], wanted: Wanted): Choices {
  const words = wordsIn(wanted);
  const counts = facets.map(() => new Map<unknown, number>());
  for (const line of lines) {
    const misfits = facets.filter((facet) => !fits(line, wanted, facet));
    const found = misfits.length < 2 && has(line, words);
    for (const [i, facet] of facets.entries()) {
      // All else but this one fits.
      const counted = found && (misfits.length === 0 || misfits[0] === facet) ? 1 : 0;
      const of = counts[i];
      for (const value of valuesOf[facet](line)) of?.set(value, (of.get(value) ?? 0) + counted);
    }
  }
  const [film, developer, year, stars] = counts;
  return {
    film: sorted(film, byName.compare),
    developer: sorted(developer, byName.compare),
    year: sorted(year, (a: number, b) => b - a),
    stars: sorted(stars, (a: Stars | "unsaid", b) => rank(a) - rank(b)),
  };
}

const rank = (stars: Stars | "unsaid"): number =>
  stars === "unsaid" ? allStars.length : allStars.length - stars;

function sorted<Value>(
  counts: ReadonlyMap<unknown, number> | undefined,
  order: (a: Value, b: Value) => number,
): readonly Choice<Value>[] {
  return [...((counts ?? new Map()) as ReadonlyMap<Value, number>)]
    .map(([value, count]) => ({ value, count }))
    .toSorted((a, b) => order(a.value, b.value));
}
