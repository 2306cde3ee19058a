// When a bottle was mixed, opened and half emptied, and how long its maker's sheet says it keeps, in; the day
// it is due out. Alone, because days are counted by the calendar and by no clock.

/** A day of the calendar: `"2026-03-12"`. */
export type Day = string;

export const spanUnits = ["days", "weeks", "months"] as const;

export interface Span {
  readonly count: number;
  readonly unit: (typeof spanUnits)[number];
}

/** A hundred years: no maker's sheet says more, and what does is a slip of the hand. */
export const longest: { readonly [unit in Span["unit"]]: number } = {
  days: 36_500,
  weeks: 5_200,
  months: 1_200,
};

/** Whether it can be written down: whole, and no more than `longest`. Earlier versions kept longer ones too. */
export function isSpan({ count, unit }: Span): boolean {
  return Number.isInteger(count) && count >= 1 && count <= longest[unit];
}

/** As the maker's sheet gives it; what it does not give is not there. */
export interface Keeps {
  /** Full and stoppered, from the day of mixing. */
  readonly full?: Span;
  /** From the day that half of it or less was left. */
  readonly half?: Span;
  /** From the day of opening. */
  readonly opened?: Span;
}

export const keepings = ["full", "half", "opened"] as const;

/** Since when each of the three runs; null where it has not begun. */
export type Since = { readonly [of in (typeof keepings)[number]]: Day | null };

export interface Due {
  readonly on: Day;
  readonly by: (typeof keepings)[number];
  readonly since: Day;
}

const msOfDay = 86_400_000;

/** In UTC, whose days are all of one length. */
const msOf = (day: Day): number => Date.parse(`${day}T00:00:00Z`);
/** The last that is written with four figures of a year, and so sorts behind all others. */
const lastDay = msOf("9999-12-31");
const dayAt = (ms: number): Day => new Date(Math.min(ms, lastDay)).toISOString().slice(0, 10);

/** Whether the calendar has it, within four figures of a year. */
export function isDay(text: unknown): text is Day {
  return (
    typeof text === "string" &&
    /^\d{4}-\d\d-\d\d$/.test(text) &&
    !Number.isNaN(msOf(text)) &&
    dayAt(msOf(text)) === text
  );
}

/** From one day to another; below 0 where that one is earlier. */
export function daysBetween(from: Day, to: Day): number {
  return Math.round((msOf(to) - msOf(from)) / msOfDay);
}

/** A month on from the 31st is the last of a shorter month. Of a span that is too long, the longest; of a part, none. */
export function dayAfter(day: Day, { count: given, unit }: Span): Day {
  const count = Math.trunc(Math.min(given, longest[unit]));
  switch (unit) {
    case "days":
      return dayAt(msOf(day) + count * msOfDay);
    case "weeks":
      return dayAt(msOf(day) + count * 7 * msOfDay);
    case "months": {
      const [year = 0, month = 1, date = 1] = day.split("-").map(Number);
      const last = new Date(Date.UTC(year, month + count, 0)).getUTCDate();
      return dayAt(Date.UTC(year, month - 1 + count, Math.min(date, last)));
    }
  }
}

/** The earliest of the days that the three come to; null where the sheet gives none that has begun. */
export function dueOf(keeps: Keeps, since: Since): Due | null {
  const days = keepings.flatMap((by): readonly Due[] => {
    const [span, from] = [keeps[by], since[by]];
    return span === undefined || from === null
      ? []
      : [{ on: dayAfter(from, span), by, since: from }];
  });
  return days.reduce<Due | null>(
    (first, due) => (first === null || due.on < first.on ? due : first),
    null,
  );
}
