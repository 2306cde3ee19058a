// @vitest-environment happy-dom
// The code for a camera as it is drawn, read by a decoder that shares nothing with what made it.
import { cleanup, render } from "@testing-library/preact";
import jsQr from "jsqr";
import { afterEach, describe, expect, test } from "vitest";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { linkOf } from "../../src/plan/worksheet-link.ts";
import { demos } from "../../src/ui/demo.ts";
import { QrCode } from "../../src/ui/qr-code.tsx";

afterEach(cleanup);

const ADDRESS = "https://gullrock.example/tankside/";
/** Pixels of a module, as on a small screen. */
const MODULE = 3;
/**
 * Modules of version 23, which this decoder reads in no code, whoever made it: it looks for a mark at module 74, where
 * the standard has it at 78 (ISO/IEC 18004, annex E; a fault of jsqr 1.4.0).
 */
const UNREAD = 109;
/** Letters of the longest text that is offered as a code. */
const LONGEST = 2000;

/** What a camera reads where it is shown; null: no code is shown. */
function read(
  text: string,
): { readonly text: string | undefined; readonly modules: number } | null {
  const { container } = render(<QrCode text={text} name="code" tooLong="too long" />);
  const svg = container.querySelector("svg");
  if (svg === null) {
    expect(container.textContent).toBe("too long");
    cleanup();
    return null;
  }
  const size = Number(svg.getAttribute("viewBox")?.split(" ")[2]);
  const wide = size * MODULE;
  const pixels = new Uint8ClampedArray(wide * wide * 4).fill(255);
  const path = svg.querySelector("path")?.getAttribute("d") ?? "";
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
    const [left, top, width] = [Number(x), Number(y), Number(length)].map((n) => n * MODULE);
    for (let row = top ?? 0; row < (top ?? 0) + MODULE; row += 1)
      for (let at = left ?? 0; at < (left ?? 0) + (width ?? 0); at += 1)
        pixels.fill(0, (row * wide + at) * 4, (row * wide + at) * 4 + 3);
  }
  cleanup();
  return { text: jsQr(pixels, wide, wide)?.data, modules: size - 8 };
}

/** A worksheet with so many films of names that hardly pack. */
const withFilms = (count: number): Worksheet => ({
  ...demos.gullrock,
  films: Array.from({ length: count }, (_, i) => ({
    label: Array.from({ length: 4 }, (_, j) => ((i + 7) * (j + 11) ** 5).toString(36)).join(" "),
    size: "120",
    count: 1,
  })),
});
const link = (worksheet: Worksheet, startsAt: number | null = null) =>
  `${ADDRESS}${linkOf(worksheet, startsAt)}`;

describe("The code of a worksheet's link", () => {
  test.each([
    ["the practice worksheet", link(demos.gullrock)],
    ["the same for a class", link(demos.gullrock, Date.UTC(2026, 11, 5, 17, 30))],
    ["a night exercise", link(demos.foghorn)],
  ])("is read as the link: %s", (_, text) => {
    expect(read(text)?.text).toBe(text);
  });

  test("is read as the link at every size up to the largest that is offered, and beyond it none is", () => {
    const sizes = new Set<number>();
    let films = 1;
    for (; films < 200; films += 3) {
      const text = link(withFilms(films));
      const code = read(text);
      if (code === null) break;
      if (code.modules === UNREAD) continue;
      expect(code.text, `${text.length} letters`).toBe(text);
      sizes.add(code.modules);
    }
    expect(link(withFilms(films)).length).toBeGreaterThan(LONGEST);
    expect(sizes.size).toBeGreaterThan(5);
  });

  test("is read to the last letter of the longest text there may be", () => {
    const text = `${link(withFilms(120)).slice(0, LONGEST - 1)}_`;
    expect(text).toHaveLength(LONGEST);
    expect(read(text)?.text).toBe(text);
    expect(read(`${text}x`)).toBeNull();
  });
});

test("A page without a code is read as nothing: the decoder does look", () => {
  const wide = 300;
  expect(jsQr(new Uint8ClampedArray(wide * wide * 4).fill(255), wide, wide)).toBeNull();
});
