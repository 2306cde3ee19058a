// A made-up language: every English text between ‹ and ›, so that a word on a screen that comes from
// nowhere but a component stands out.
import { english } from "../../src/plan/words/english.ts";
import { englishAsides } from "../../src/plan/words/english-asides.ts";
import type { Catalogue } from "../../src/ui/words/catalogues.ts";
import { first } from "../../src/ui/words/en/first.ts";
import { late } from "../../src/ui/words/en/late.ts";
import { writingIn } from "../../src/units/writing.ts";

/** Whatever holds texts, and functions that give texts, with each of them marked. */
function marked<Words>(words: Words): Words {
  return markedPart(words) as Words;
}

function markedPart(part: unknown): unknown {
  if (typeof part === "string") return `‹${part}›`;
  if (typeof part === "function") {
    return (...slots: readonly unknown[]) => markedPart(part(...slots));
  }
  if (Array.isArray(part)) return part.map(markedPart);
  if (typeof part !== "object" || part === null) return part;
  return Object.fromEntries(Object.entries(part).map(([key, it]) => [key, markedPart(it)]));
}

const writes = writingIn("de");
export const markedFirst = { screens: marked(first), plan: { ...marked(english), writes } };
const markedLate = { screens: marked(late), asides: { ...marked(englishAsides), writes } };

export const markedCatalogue: Catalogue = {
  first: async () => markedFirst,
  late: async () => markedLate,
};

/** Every text that a person can see or hear in an element: text and the attributes that are read out. */
export function textsIn(root: Element): readonly string[] {
  const texts: string[] = [];
  for (const element of [root, ...root.querySelectorAll("*")]) {
    for (const name of ["aria-label", "title", "alt", "placeholder", "aria-roledescription"]) {
      const text = element.getAttribute(name);
      if (text !== null) texts.push(text);
    }
    if (element.localName === "text") {
      // Words in a drawing are broken into lines.
      texts.push([...element.children].map((line) => line.textContent).join(" "));
    }
    if (element.localName === "tspan") continue;
    for (const node of element.childNodes) {
      if (node.nodeType === Node.TEXT_NODE) texts.push(node.textContent ?? "");
    }
  }
  return texts;
}

/** Units and the signs of arithmetic are the same in every language. */
const units = /(?<!\p{L})(?:°C|°F|s|min|ml|l|fl oz|g|m|ln|log)(?!\p{L})/gu;

/** What is left of a text once marks, what is the person's own, and units are taken out: no letters. */
export function unmarked(text: string, own: readonly string[]): string {
  let left = text;
  for (let before = ""; before !== left; ) {
    before = left;
    left = left.replace(/‹[^‹›]*›/g, "");
  }
  for (const it of own.toSorted((a, b) => b.length - a.length)) left = left.replaceAll(it, "");
  return left.replace(units, "").replace(/[^\p{L}‹›]/gu, "");
}
