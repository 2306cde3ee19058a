// How long to wait in the dark for light leaks, before the film is taken from its cassette: what a worksheet
// may say of it, and the seconds that it comes to. Alone, because the outline's step lasts as long.
import { readClockTime, type TimeReading } from "../units/clock-time.ts";
import type { Worksheet } from "./worksheet.ts";

/**
 * Seconds where nobody says. Common practice: a few minutes show a leak that would fog film; until eyes have
 * taken to the dark wholly it is about half an hour, the longest that can be asked for.
 */
const USUAL = 180;
const LONGEST = 1800;

export const darkWaitMay =
  'a clock time such as "3:00", from 0:00 up to 30:00: how long to look for light in the dark';

export function readDarkWait(text: string): TimeReading {
  const time = readClockTime(text);
  const fits = time.kind === "read" && time.seconds <= LONGEST;
  return fits ? time : { kind: "unread", may: darkWaitMay };
}

/** Seconds; 0 leaves the wait out. */
export function darkWaitSeconds({ darkWait }: Pick<Worksheet, "darkWait">): number {
  const time = darkWait === undefined ? null : readDarkWait(darkWait);
  return time?.kind === "read" ? time.seconds : USUAL;
}
