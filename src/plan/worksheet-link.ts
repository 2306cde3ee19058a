// A worksheet in, the part of an address behind its # out, which carries it whole; and back. Nothing of it ever
// reaches a server: browsers keep that part to themselves. A link from a stranger is checked like a stranger's
// file, its size before it is unpacked and all the while.
//
//   #w1.<the worksheet's JSON, deflated, in base64url>[.<minute that a class starts, UTC: 202612051730>]
import { deflateSync, Inflate, strFromU8, strToU8 } from "fflate";
import { readWorksheetText, type WorksheetReading } from "./read-worksheet.ts";
import type { Worksheet } from "./worksheet.ts";

/** What a link of this version begins with, behind the #. */
const VERSION = "w1.";
/** The longest that is taken, letters; the longest worksheet of one's own makes a fraction of it. */
export const longestLink = 32_000;
/** What it may unpack to at most, bytes. */
const MOST = 200_000;
/** Unpacked so many bytes at a time: deflate makes at most 1032 of one, so no part is past a quarter of `MOST`. */
const STEP = 48;

export type LinkReading =
  | {
      readonly kind: "read";
      readonly text: string;
      readonly reading: WorksheetReading;
      readonly startsAt: number | null;
    }
  /** It is cut off, or was changed on its way, or is too long, or of a version that is not known here. */
  | { readonly kind: "broken" };

/** @param startsAt ms since 1970 of the minute at which a class starts. */
export function linkOf(worksheet: Worksheet, startsAt: number | null = null): string {
  const packed = base64url(deflateSync(strToU8(JSON.stringify(worksheet)), { level: 9 }));
  return `#${VERSION}${packed}${startsAt === null ? "" : `.${minuteOf(startsAt)}`}`;
}

/** Never throws. */
export function readLink(hash: string): LinkReading {
  const broken = { kind: "broken" } as const;
  if (hash.length > longestLink) return broken;
  const [, packed, minute] = /^#w1\.([\w-]+)(?:\.(\d{12}))?$/.exec(hash) ?? [];
  if (packed === undefined) return broken;
  const startsAt = minute === undefined ? null : timeOf(minute);
  const bytes = bytesOf(packed);
  const text = bytes === null ? null : inflated(bytes);
  if (text === null || (minute !== undefined && startsAt === null)) return broken;
  return { kind: "read", text, reading: readWorksheetText(text), startsAt };
}

function inflated(bytes: Uint8Array): string | null {
  const parts: Uint8Array[] = [];
  let length = 0;
  let ended = false;
  const inflate = new Inflate((part, final) => {
    parts.push(part);
    length += part.length;
    ended = final;
  });
  try {
    for (let at = 0; at < bytes.length; at += STEP) {
      inflate.push(bytes.subarray(at, at + STEP), at + STEP >= bytes.length);
      if (length > MOST) return null;
    }
    return ended ? strFromU8(joined(parts, length)) : null;
  } catch {
    return null;
  }
}

function joined(parts: readonly Uint8Array[], length: number): Uint8Array {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

function base64url(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += 3) {
    const [a = 0, b = 0, c = 0] = bytes.subarray(at, at + 3);
    const bits = (a << 16) | (b << 8) | c;
    const count = Math.min(3, bytes.length - at) + 1;
    for (let i = 0; i < count; i += 1) text += letters[(bits >> (18 - 6 * i)) & 63];
  }
  return text;
}

/** Null where it is no whole number of bytes. */
function bytesOf(text: string): Uint8Array | null {
  if (text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let bits = 0;
  let held = 0;
  let at = 0;
  for (const letter of text) {
    bits = ((bits << 6) | letters.indexOf(letter)) & 0xffff;
    held += 6;
    if (held < 8) continue;
    held -= 8;
    bytes[at] = (bits >> held) & 255;
    at += 1;
  }
  return bytes;
}

/** `"202612051730"`, UTC. */
const minuteOf = (at: number): string =>
  new Date(at).toISOString().slice(0, 16).replace(/[-T:]/g, "");

/** Null where there is no such minute. */
function timeOf(minute: string): number | null {
  const [year, month, day, hour, min] = [
    minute.slice(0, 4),
    ...[4, 6, 8, 10].map((at) => minute.slice(at, at + 2)),
  ].map(Number);
  const at = Date.UTC(year ?? 0, (month ?? 0) - 1, day ?? 0, hour ?? 0, min ?? 0);
  return minuteOf(at) === minute ? at : null;
}
