import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

const css = readFileSync("src/ui/paper.css", "utf8");

/** The custom properties of a `:root` block, by name. */
function tokensIn(block: string): Record<string, string> {
  return Object.fromEntries(
    [...block.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map(([, name = "", colour = ""]) => [
      name,
      colour,
    ]),
  );
}

const [, day = "", night = "", print = ""] = css.split(":root {").map((part) => part.split("}")[0]);
const papers = { day: tokensIn(day), night: tokensIn(night), print: tokensIn(print) };

/** WCAG 2.2, relative luminance and contrast ratio. */
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    .map((it) => (it <= 0.04045 ? it / 12.92 : ((it + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a = "#000000", b = "#000000"): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

describe.each(Object.entries(papers))("the paper by %s", (_, paper) => {
  const pairs = ["ink", "ink-soft", "accent"].flatMap((text) =>
    ["paper", "paper-deep"].map((ground) => [text, ground] as const),
  );

  test.each(pairs)("%s on %s is 7:1 or better", (text, ground) => {
    expect(contrast(paper[text], paper[ground])).toBeGreaterThanOrEqual(7);
  });

  test("rules stand out from the paper at 3:1 or better", () => {
    expect(contrast(paper.rule, paper.paper)).toBeGreaterThanOrEqual(3);
  });
});

test("the paper by night is true black", () => {
  expect(papers.night.paper).toBe("#000000");
});

test("no colour of either paper is a red", () => {
  const all = [...Object.values(papers.day), ...Object.values(papers.night)];
  expect(all.length).toBeGreaterThanOrEqual(14);
  for (const colour of all) {
    const [r = 0, g = 0] = [1, 3].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
    expect(r - g).toBeLessThan(32);
  }
});
