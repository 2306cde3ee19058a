// Any value in, a few words that show it out, short enough for one line.
// Alone, because it must bear whatever a file or a caller hands over.

const longest = 60;

/** How deep, and how many entries of a list or object, are shown. */
const [deepest, most] = [2, 4];

/** `"nothing"` where there is no value; a value as JSON has it, cut with `…`. */
export function heldValue(value: unknown): string {
  return value === undefined ? "nothing" : cut(shown(value, 0));
}

/** On the whole characters of a text, so that no half of a pair is left. */
function cut(text: string): string {
  if (text.length <= longest) return text;
  const characters = [...text.slice(0, longest)];
  return `${characters
    .slice(0, longest - 1)
    .join("")
    .replace(/[\ud800-\udbff]$/, "")}…`;
}

function shown(value: unknown, depth: number): string {
  switch (typeof value) {
    case "string":
      return JSON.stringify(cut(value));
    case "object":
      if (value === null) return "null";
      return depth === deepest ? "…" : inside(value, depth + 1);
    case "function":
      return "a function";
    case "bigint":
    case "symbol":
    case "number":
    case "boolean":
    case "undefined":
      return String(value);
  }
}

function inside(value: object, depth: number): string {
  if (Array.isArray(value)) {
    const items = value.slice(0, most).map((item) => shown(item, depth));
    return `[${[...items, ...(value.length > most ? ["…"] : [])].join(", ")}]`;
  }
  const all = Object.entries(value);
  const entries = all
    .slice(0, most)
    .map(([key, entry]) => `${JSON.stringify(cut(key))}: ${shown(entry, depth)}`);
  const inner = [...entries, ...(all.length > most ? ["…"] : [])].join(", ");
  return inner === "" ? "{}" : `{ ${inner} }`;
}
