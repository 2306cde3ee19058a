// @vitest-environment happy-dom
// Labels as they are printed, by the rules of all stylesheets that are on the page with them.
import { readFileSync } from "node:fs";
import { cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { stateOf } from "../../src/logbook/bottle-state.ts";
import { BottleLabels } from "../../src/ui/labels.tsx";
import { bottleLabels } from "../../src/ui/words/en/shelf-form.ts";
import { bottleOf, fixerB } from "./shelf-by-hand.ts";
import "./late-words.ts";

/** In the order in which the page has them: the first screen's, then those of Write up and the shelf. */
const sheets = ["paper", "frame", "work-out", "field", "answer", "curve", "write-up", "shelf"];

interface Emulated {
  readonly happyDOM: { readonly settings: { readonly device: { mediaType: string } } };
}
const { device } = (window as unknown as Emulated).happyDOM.settings;

afterEach(() => {
  device.mediaType = "screen";
  document.head.replaceChildren();
  document.body.replaceChildren();
  cleanup();
});

function put(name: string, within: HTMLElement): HTMLElement {
  const element = document.createElement(name);
  within.append(element);
  return element;
}

test("a label is printed in 26-point type, and its name in larger", () => {
  device.mediaType = "print";
  for (const name of sheets)
    put("style", document.head).textContent = readFileSync(`src/ui/${name}.css`, "utf8");
  const states = [
    stateOf(bottleOf({ ...fixerB, hazards: "H319 Causes serious eye irritation." })),
    // Of more films than boxes, so that what a box is stands there too.
    stateOf(bottleOf({ ...fixerB, name: "Fixer C", filmsPerLitre: 90 })),
  ];
  let printed: readonly HTMLElement[] = [];
  const print = () => {
    printed = [...document.querySelectorAll<HTMLElement>(".print-out *")];
  };
  render(<BottleLabels states={states} print={print} />);
  fireEvent.click(screen.getByRole("button", { name: bottleLabels.print(2) }));
  const type = (of: HTMLElement) => Number.parseFloat(getComputedStyle(of).fontSize);
  const wanted = put("p", document.body);
  wanted.style.fontSize = "26pt";

  const written = printed.filter(({ childNodes }) =>
    [...childNodes].some((it) => it.nodeType === 3 && it.textContent?.trim() !== ""),
  );
  const [names, rest] = [
    written.filter(({ tagName }) => tagName === "H2"),
    written.filter(({ tagName }) => tagName !== "H2"),
  ];
  expect(names.map(({ textContent }) => textContent)).toEqual(["Fixer B", "Fixer C"]);
  for (const name of names) expect(type(name)).toBeGreaterThan(type(wanted));
  // Two labels of a line of contents, three facts, the boxes, and the hazards.
  expect(rest.length).toBeGreaterThanOrEqual(16);
  for (const line of rest) expect(type(line), line.textContent ?? "").toBe(type(wanted));
  window.dispatchEvent(new Event("afterprint"));
});
