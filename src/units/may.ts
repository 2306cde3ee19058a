// A refusal's words with gaps and what fills them in, the whole out. Alone, because a reader, a schema and
// the table of a language must agree where the gaps are: the shape is what a translation is looked up by.

/** `"{may}, in the digits 0 to 9"` with `{ may: "a size" }`. Each slot stands once. */
export function filled(shape: string, slots: { readonly [slot: string]: string | number }): string {
  return shape.replace(/\{(\w+)\}/g, (gap, name) => String(slots[name] ?? gap));
}

/** What readers add to what a text may be, which is `may`. */
export const readersMay = {
  digits: "{may}, in the digits 0 to 9",
  aDay: "{may}, no longer than 24 hours",
  readAsTwo: '{may}; "{typed}" is read both as {one} and as {other}, so say it in parts',
  readTwoWays: '{may}; "{typed}" is read in two ways, so say it in parts',
} as const;
