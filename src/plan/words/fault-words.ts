// What a field may hold, in the checker's English, in; the same in a language out.
// Alone, because faults are found in English, as the published schemas have them, and said in any language.
import { readersMay } from "../../units/may.ts";
import { crossMay, fileMay, leafletMay, partsMay } from "../mays.ts";
import type { PlanWords } from "./words.ts";

/** Shapes with gaps. The readers' own go last: they are laid around what the others say. */
export const shapes: readonly string[] = [partsMay, fileMay, crossMay, leafletMay, readersMay]
  .flatMap((each): string[] => Object.values(each))
  .filter((text) => /\{\w+\}/.test(text));

/** A shape and what stands in its gaps; null where a text has none of the shapes. */
export interface Shaped {
  readonly shape: string;
  readonly slots: { readonly [slot: string]: string };
}

/** The slots whose own text is looked up in turn. */
export const nested: readonly string[] = ["of", "may"];

export function shapedAs(text: string): Shaped | null {
  for (const shape of shapes) {
    const found = patternOf(shape).exec(text);
    if (found) return { shape, slots: { ...found.groups } };
  }
  return null;
}

/** English where the language has no text for it, or no text yet. */
export function mayIn(words: PlanWords, { may }: { readonly may: string }): string {
  const whole = words.mays[may];
  if (whole !== undefined) return whole;
  const shaped = shapedAs(may);
  const said = shaped && words.mays[shaped.shape];
  if (!shaped || said === undefined || said === null) return may;
  return said.replace(/\{(\w+)\}/g, (gap, name) => {
    const slot = shaped.slots[name];
    if (slot === undefined) return gap;
    return nested.includes(name) ? mayIn(words, { may: slot }) : figure(words, slot);
  });
}

/** A bound or a temperature in the language's writing; anything else as it stands. */
function figure({ writes }: PlanWords, slot: string): string {
  return slot.replace(
    /^(−?)(\d+\.\d+)((?: °[CF])?)$/,
    (_, sign, digits, unit) => `${sign}${writes.typed(Number(digits))}${unit}`,
  );
}

/** Whatever stands in the gaps, as little as will do; all else sign by sign. */
function patternOf(shape: string): RegExp {
  const parts = shape.split(/\{(\w+)\}/);
  const source = parts.map((part, index) =>
    index % 2 === 1 ? `(?<${part}>.+?)` : part.replace(/[\\^$.*+?()[\]{}|]/g, "\\$&"),
  );
  return new RegExp(`^${source.join("")}$`, "su");
}
