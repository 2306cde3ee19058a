// A session that is planned for a day in, an entry for a calendar out (iCalendar, RFC 5545). Its times are the
// clock's on the wall, wherever that hangs; the same session at the same time is the same entry.
import { utf8 } from "./bytes.ts";

export interface Planned {
  readonly title: string;
  /** `"2026-12-05T18:30"`, by the clock on the wall. */
  readonly at: string;
  readonly seconds: number;
  /** What is done in it, in order. */
  readonly steps: readonly string[];
}

/** Octets of a line, its end not counted; the rest goes on in the next, behind a space. */
const LINE = 75;

export function calendarOf({ title, at, seconds, steps }: Planned): string {
  const stamp = `${at.replace(/[-:]/g, "")}00`;
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Tankside//Tankside//EN",
    "BEGIN:VEVENT",
    `UID:${stamp}-${fingerprint([title, at, seconds, ...steps].join("\n"))}@tankside`,
    // When it was made is asked of no clock, or no two entries would be alike.
    `DTSTAMP:${stamp}Z`,
    `DTSTART:${stamp}`,
    `DURATION:PT${Math.max(1, Math.ceil(seconds / 60))}M`,
    `SUMMARY:${escaped(title)}`,
    `DESCRIPTION:${escaped(steps.map((step, i) => `${i + 1}. ${step}`).join("\n"))}`,
    "END:VEVENT",
    "END:VCALENDAR",
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join("");
}

/** `"2026-12-05T18:30"` as it may be typed, with or without seconds of zero; null where there is no such time. */
export function readPlannedTime(text: string): string | null {
  const [whole, year, month, day, hour, minute] =
    /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)(?::00)?$/.exec(text) ?? [];
  if (whole === undefined) return null;
  const [y, mo, d, h, mi] = [year, month, day, hour, minute].map(Number);
  const date = new Date(Date.UTC(y ?? 0, (mo ?? 0) - 1, d ?? 0, h ?? 0, mi ?? 0));
  // A day that there is not turns into another.
  const real = date.toISOString().slice(0, 16);
  return real === text.slice(0, 16) ? real : null;
}

const escaped = (text: string): string =>
  text
    .replace(/[\\;,]/g, "\\$&")
    .replace(/\r\n|\r|\n/g, "\\n")
    // What is left of control characters has no place in such a file.
    .replace(/\p{Cc}/gu, " ");

/** Cut between letters, never within one. */
function folded(line: string): string {
  const lines: string[] = [];
  let part = "";
  let octets = 0;
  for (const letter of line) {
    const more = utf8(letter).length;
    if (octets + more > LINE) {
      lines.push(part);
      part = " ";
      octets = 1;
    }
    part += letter;
    octets += more;
  }
  return [...lines, part].join("\r\n");
}

/** 32 bits twice over (FNV-1a, Fowler, Noll and Vo), as hexadecimal digits: to tell entries apart, no more. */
function fingerprint(text: string): string {
  return [0x811c9dc5, 0x01234567]
    .map((start) => {
      const hash = utf8(text).reduce(
        (sum, octet) => Math.imul(sum ^ octet, 0x01000193) >>> 0,
        start,
      );
      return hash.toString(16).padStart(8, "0");
    })
    .join("");
}
