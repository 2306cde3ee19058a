// A key that comes down in, what it does in Work out by ear out, whatever is being told. Apart from the sheet, which
// takes any other key as a press.
import type { EarField } from "./by-ear-field.ts";
import type { Act, Talk } from "./by-ear-lines.ts";
import { kindOf } from "./fields.ts";

interface Meanwhile {
  /** Whether the sign before it was typed: else the space bar is a press. */
  readonly byKeys: boolean;
  /** The place of the value that is being told, while one is being chosen. */
  readonly told: number | null;
}

/** Keys that only go with others, for a capital or a colon say: no press, and left to the browser. */
export const goesWithOthers = (key: string): boolean =>
  ["Shift", "CapsLock", "AltGraph", "Dead", "Compose"].includes(key);

/** Null where it is a press like any other. */
export const actOfKey = (
  key: string,
  talk: Talk,
  field: EarField | null,
  { byKeys, told }: Meanwhile,
): Act | null => typedBy(key, talk, field, byKeys) ?? actedBy(key, talk, field, told);

/**
 * A key that types: a digit; in a name each sign, and what parts one number from the next where there are many.
 * @param byKeys whether the sign before it was typed: else the space bar is a press.
 */
function typedBy(
  key: string,
  { typed }: Talk,
  field: EarField | null,
  byKeys: boolean,
): Act | null {
  const isSpace = key === " ";
  if (isSpace && (!byKeys || !typed)) return null;
  const isName = field?.takes.kind === "text";
  if (isName && key.length === 1) return { kind: "type", sign: key };
  if (isSpace) return field?.takes.kind === "counts" ? { kind: "type", sign: "," } : null;
  if (/^[\d:-]$/.test(key)) return { kind: "type", sign: key };
  return key === "." || key === "," ? { kind: "type", sign: "." } : null;
}

/**
 * What a key does whatever is being told; null where it is a press like any other.
 * @param told the place of the value that is being told, while one is being chosen.
 */
function actedBy(
  key: string,
  { typed, from }: Talk,
  field: EarField | null,
  told: number | null,
): Act | null {
  const isTyping = typed !== null && typed !== "";
  const unit = isTyping && field !== null ? unitKeys[kindOf(field.path) ?? ""]?.[key] : undefined;
  if (unit !== undefined) return { kind: "set", unit };
  switch (key) {
    case "ArrowDown":
      return from === null ? { kind: "next" } : { kind: "step", by: 1, told };
    case "ArrowUp":
      return from === null ? { kind: "previous" } : { kind: "step", by: -1, told };
    case "ArrowRight":
      return { kind: "step", by: 1, told };
    case "ArrowLeft":
      return { kind: "step", by: -1, told };
    case "Backspace":
      return typed === null ? null : { kind: "delete" };
    case "Enter":
      return isTyping ? { kind: "set" } : null;
    default:
      return null;
  }
}

/** Letters that set a number in a unit of their own. */
const unitKeys: { readonly [kind: string]: { readonly [key: string]: string } } = {
  temperature: { c: "c", f: "f" },
  volume: { m: "ml", o: "flOz" },
};
