// A record in, what the page says of it out: the films, the bath, the presses with the time between them.
import type { Otherwise, RunRecord } from "../logbook/run-record.ts";
import { processBaths } from "../trade/baths.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { bathName } from "./field-names.ts";
import { lateWords, locale, words, writing } from "./language.ts";

export function titleOf({ worksheet }: RunRecord): string {
  return worksheet.title?.trim() || lateWords.value.write.untitled;
}

/** `"Thursday, 12 March 2026 at 19:42"`, as the locale has it. */
export function dayAndTime(at: number, as = locale.value): string {
  return formatIn(as, "day and time", { dateStyle: "full", timeStyle: "short" }).format(at);
}

const formats = new Map<string, Intl.DateTimeFormat>();

/** Made once a language: making one takes longer than all else that is told of a run. */
function formatIn(as: string, what: string, how: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const known = formats.get(`${what} ${as}`) ?? new Intl.DateTimeFormat(as, how);
  formats.set(`${what} ${as}`, known);
  return known;
}

/** A line for each film, with what it was metered at, if anyone said. */
export function filmLines({ worksheet }: RunRecord): readonly string[] {
  return worksheet.films.map(({ label, size, count, boxSpeed, exposureIndex }) => {
    const film = lateWords.value.write.film(label, size, count);
    const rating = exposureIndex ?? boxSpeed;
    return rating === undefined
      ? film
      : lateWords.value.write.rated(film, lateWords.value.write.rating(rating, boxSpeed));
  });
}

/** `"Kelp MQ 1+3"`. */
export function developerLine({ worksheet: { developer } }: RunRecord): string {
  return `${developer.label} ${developer.dilution ?? lateWords.value.write.stock}`;
}

/** `"9:29 at 69 °F"`. */
export function developmentLine({ developmentSeconds, worksheet }: RunRecord): string {
  const temperature = writing.value.temperature(worksheet.developer.temperature);
  return lateWords.value.write.bath(writeClockTime(developmentSeconds), temperature);
}

export interface PressLine {
  readonly step: string;
  readonly at: string;
  /** Time since the press before it; null for the first. */
  readonly after: string | null;
}

export function pressLines(record: RunRecord, as = locale.value): readonly PressLine[] {
  const clock = formatIn(as, "clock", { timeStyle: "medium" });
  return record.presses.map(({ section, at }, i) => {
    const before = record.presses[i - 1];
    // A wall clock may have been set back between the two.
    const after = before && writeClockTime(Math.max(0, at - before.at) / 1000);
    return { step: stepName(record, section), at: clock.format(at), after: after ?? null };
  });
}

/** `"Developer: 3:01"`, a press a line: how long after the first one. */
export function pressedAfter(record: RunRecord): readonly string[] {
  const { within } = words.value.names;
  const first = record.presses[0]?.at ?? 0;
  return record.presses.map(({ section, at }) =>
    within(stepName(record, section), writeClockTime(Math.max(0, at - first) / 1000)),
  );
}

/** A step that is told once for each kind of film has a number after its id. */
function stepName({ worksheet }: RunRecord, section: string): string {
  const isBath = processBaths[worksheet.process]?.some(({ id }) => id === section);
  const steps: { readonly [id: string]: string } = lateWords.value.steps;
  return isBath ? bathName(section) : (steps[section.replace(/-\d+$/, "")] ?? section);
}

/** What went otherwise than planned, a line each, in order. */
export function otherwiseLines(record: RunRecord): readonly string[] {
  const { developed } = lateWords.value.otherwise;
  const { developedSeconds, developmentSeconds } = record;
  return [
    ...(record.otherwise ?? []).map(otherwiseLine),
    ...(developedSeconds === undefined
      ? []
      : [developed(writeClockTime(developedSeconds), writeClockTime(developmentSeconds))]),
  ];
}

function otherwiseLine(one: Otherwise): string {
  const { pouredLate, emptiedLate, emptiedEarly, read, lost, clockSet, wrong } =
    lateWords.value.otherwise;
  const clock = (seconds: number) => writeClockTime(Math.round(Math.abs(seconds)));
  switch (one.kind) {
    case "poured":
      return `${bathName(one.bath)}: ${pouredLate(clock(one.by))}`;
    case "emptied":
      return `${bathName(one.bath)}: ${(one.by < 0 ? emptiedEarly : emptiedLate)(clock(one.by))}`;
    case "read":
      return read(writing.value.temperature(one.temperature), clock(one.after));
    case "lost":
      return lost[one.how](clock(one.lost));
    case "clock-set":
      return clockSet(`${one.by < 0 ? "−" : "+"}${clock(one.by)}`);
    case "wrong":
      return wrong[one.wrong];
  }
}

export function endingLine(record: RunRecord): string {
  const { done, left, leftAtOnce, open } = lateWords.value.write.endings;
  switch (record.ended) {
    case "done":
      return done;
    case "left": {
      const last = record.presses.at(-1);
      return last === undefined ? leftAtOnce : left(stepName(record, last.section));
    }
    case null:
      return open;
  }
}
