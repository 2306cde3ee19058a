// A page in, what of it is not as promised out: text too pale for its ground, words cut off or out of reach, targets
// too small. Each is measured on what the browser laid out and computed, whatever the stylesheets meant.
import type { Page } from "playwright-core";

/** Every text that stands less than 7 to 1 against what lies beneath it. */
export function paleTexts(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    type Colour = readonly [number, number, number, number];
    const brush = new OffscreenCanvas(1, 1).getContext("2d", { willReadFrequently: true });
    const read = new Map<string, Colour>();
    /** Whatever a browser may call a colour, as red, green, blue and how opaque. */
    function colourOf(text: string): Colour {
      const known = read.get(text);
      if (known !== undefined || brush === null) return known ?? [0, 0, 0, 1];
      brush.clearRect(0, 0, 1, 1);
      brush.fillStyle = text;
      brush.fillRect(0, 0, 1, 1);
      const [r = 0, g = 0, b = 0, a = 0] = brush.getImageData(0, 0, 1, 1).data;
      const colour: Colour = [r, g, b, a / 255];
      read.set(text, colour);
      return colour;
    }
    const over = (top: Colour, under: Colour): Colour => [
      top[0] * top[3] + under[0] * (1 - top[3]),
      top[1] * top[3] + under[1] * (1 - top[3]),
      top[2] * top[3] + under[2] * (1 - top[3]),
      1,
    ];
    const linear = (part: number) =>
      part / 255 <= 0.04045 ? part / 255 / 12.92 : ((part / 255 + 0.055) / 1.055) ** 2.4;
    const light = ([r, g, b]: Colour) =>
      0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);

    const grounds = new Map<Element | null, { readonly colour: Colour; readonly opacity: number }>([
      [null, { colour: [255, 255, 255, 1], opacity: 1 }],
    ]);
    function groundOf(element: Element | null): {
      readonly colour: Colour;
      readonly opacity: number;
    } {
      const known = grounds.get(element);
      if (known !== undefined || element === null) return known ?? groundOf(null);
      const { backgroundColor, opacity } = getComputedStyle(element);
      const under = groundOf(element.parentElement);
      const ground = {
        colour: over(colourOf(backgroundColor), under.colour),
        opacity: Number(opacity) * under.opacity,
      };
      grounds.set(element, ground);
      return ground;
    }

    const pale: string[] = [];
    let texts = 0;
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const fields = [...document.querySelectorAll("input, select")];
    const shown = (element: Element) =>
      element.checkVisibility({ visibilityProperty: true, opacityProperty: true });
    function measure(element: Element, text: string): void {
      if (text.trim() === "" || !shown(element)) return;
      texts += 1;
      const style = getComputedStyle(element);
      const ink = element instanceof SVGElement ? style.fill : style.color;
      const { colour: ground, opacity } = groundOf(element);
      const seen = over(colourOf(ink), ground);
      const [a, b] = [light(seen), light(ground)];
      const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
      if (ratio < 7 || opacity < 1)
        pale.push(`${ratio.toFixed(2)} (${opacity}): ${ink} ${text.trim().slice(0, 40)}`);
    }
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      if (
        node.parentElement !== null &&
        !node.parentElement.closest("noscript, script, style, option")
      )
        measure(node.parentElement, node.textContent ?? "");
    }
    for (const field of fields) measure(field, (field as HTMLInputElement).value);
    if (texts < 5) pale.push("hardly anything was measured");
    return pale;
  });
}

/** What is cut off within its own box, or wider than the page. */
export function cutOff(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const wide = document.documentElement.clientWidth;
    const cut: string[] = [];
    if (document.documentElement.scrollWidth > wide) cut.push("the page scrolls sideways");
    for (const element of document.body.querySelectorAll<HTMLElement>("*")) {
      if (!element.checkVisibility({ visibilityProperty: true })) continue;
      if (element.closest(".unseen, .skip, select, noscript") !== null) continue;
      const own = [...element.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? "").trim() !== "",
      );
      if (!own) continue;
      const style = getComputedStyle(element);
      const name = `${element.localName} ${(element.textContent ?? "").trim().slice(0, 40)}`;
      const hidden = (overflow: string) => overflow === "hidden" || overflow === "clip";
      if (hidden(style.overflowX) && element.scrollWidth > element.clientWidth + 1)
        cut.push(`cut off: ${name}`);
      if (hidden(style.overflowY) && element.scrollHeight > element.clientHeight + 1)
        cut.push(`cut off: ${name}`);
      const box = element.getBoundingClientRect();
      const drawing = element.closest("svg");
      if (drawing !== null && hidden(getComputedStyle(drawing).overflowX)) {
        const frame = drawing.getBoundingClientRect();
        if (box.right > frame.right + 1 || box.left < frame.left - 1) cut.push(`cut off: ${name}`);
      }
      // What lies outside the page, and in nothing that could be scrolled to show it.
      let scroller: Element | null = element.parentElement;
      while (scroller !== null && !/auto|scroll/.test(getComputedStyle(scroller).overflowX))
        scroller = scroller.parentElement;
      if (scroller === null && box.width > 0 && (box.right > wide + 1 || box.left < -1))
        cut.push(`out of reach: ${name}`);
    }
    return cut;
  });
}

/** Every control within an element that is lower or narrower than so many px. */
export function smallTargets(
  page: Page,
  within: string,
  least: number,
): Promise<readonly string[]> {
  return page.evaluate(
    ({ within, least }) =>
      [...document.querySelectorAll<HTMLElement>(within)].flatMap((root) =>
        [...root.querySelectorAll<HTMLElement>("button, summary, a, label, select")]
          .filter((each) => each.checkVisibility({ visibilityProperty: true }))
          .filter((each) => each.localName !== "label" || each.querySelector("input") !== null)
          .map((each) => ({ each, box: each.getBoundingClientRect() }))
          .filter(({ box }) => box.height < least - 0.5 || box.width < least - 0.5)
          .map(
            ({ each, box }) => `${(each.textContent ?? "").trim()}: ${box.width} × ${box.height}`,
          ),
      ),
    { within, least },
  );
}
