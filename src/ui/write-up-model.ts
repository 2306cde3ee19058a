// A record in, what the page says of it out: the films, the bath, the presses with the time between them.
import type { RunRecord } from "../logbook/run-record.ts";
import { processBaths } from "../trade/baths.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { writeTemperature } from "../units/temperature.ts";
import { stepWords, writeWords } from "./write-words.ts";

/** `undefined`: as the person's browser writes it. */
type Locale = string | undefined;

export function titleOf({ worksheet }: RunRecord): string {
  return worksheet.title?.trim() || writeWords.untitled;
}

/** `"Thursday, 12 March 2026 at 19:42"`, as the locale has it. */
export function dayAndTime(at: number, locale?: Locale): string {
  return new Intl.DateTimeFormat(locale, { dateStyle: "full", timeStyle: "short" }).format(at);
}

/** A line for each film, with what it was metered at, if anyone said. */
export function filmLines({ worksheet }: RunRecord): readonly string[] {
  return worksheet.films.map(({ label, size, count, boxSpeed, exposureIndex }) => {
    const film = writeWords.film(label, size, count);
    const rating = exposureIndex ?? boxSpeed;
    return rating === undefined ? film : `${film}, ${writeWords.rating(rating, boxSpeed)}`;
  });
}

/** `"Kelp MQ 1+3"`. */
export function developerLine({ worksheet: { developer } }: RunRecord): string {
  return `${developer.label} ${developer.dilution ?? "stock"}`;
}

/** `"9:29 at 69 °F"`. */
export function developmentLine({ developmentSeconds, worksheet }: RunRecord): string {
  const temperature = writeTemperature(worksheet.developer.temperature);
  return writeWords.bath(writeClockTime(developmentSeconds), temperature);
}

export interface PressLine {
  readonly step: string;
  readonly at: string;
  /** Time since the press before it; null for the first. */
  readonly after: string | null;
}

export function pressLines(record: RunRecord, locale?: Locale): readonly PressLine[] {
  const clock = new Intl.DateTimeFormat(locale, { timeStyle: "medium" });
  return record.presses.map(({ section, at }, i) => {
    const before = record.presses[i - 1];
    // A wall clock may have been set back between the two.
    const after = before && writeClockTime(Math.max(0, at - before.at) / 1000);
    return { step: stepName(record, section), at: clock.format(at), after: after ?? null };
  });
}

/** A step that is told once for each kind of film has a number after its id. */
function stepName({ worksheet }: RunRecord, section: string): string {
  const bath = processBaths[worksheet.process]?.find(({ id }) => id === section);
  return bath?.label ?? stepWords[section.replace(/-\d+$/, "")] ?? section;
}

export function endingLine(record: RunRecord): string {
  const { done, left, leftAtOnce, open } = writeWords.endings;
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

/** All runs as the text of one file. */
export function textOfRuns(runs: readonly RunRecord[]): string {
  return `${JSON.stringify({ tankside: 1, runs }, null, 2)}\n`;
}
