import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axeFinds } from "./axe.ts";
import { everyState, takeClocks } from "./every-state.ts";
import { cutOff, paleTexts, smallTargets } from "./measure.ts";
import { setStage, withoutWorker } from "./stage.ts";

type Found = readonly string[];

/** The spacing that the standard names, as somebody's own stylesheet would set it. */
const widelySet = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
  p { margin-block-end: 2em !important; }`;

const marked = (mark: string, found: Found): Found => found.map((it) => `${mark}, ${it}`);

/** Where pictures of each state are kept, for a person to look at; none are taken where nothing is named. */
const seenIn = process.env.SEEN;

/** All of a page; of a sheet that lies over it, what the window shows. */
async function keep(page: Page, state: string, how: string): Promise<void> {
  if (!seenIn) return;
  const name = `${state} ${how}`.toLowerCase().replace(/[^a-z0-9]+/g, "-");
  const sheets = await page.locator("dialog[open], [role=dialog], .guided").count();
  await page.screenshot({ path: join(seenIn, `${name}.png`), fullPage: sheets === 0 });
}

/** On both papers, and in colours that the person's system forces on the page. */
async function inEveryColour(page: Page, state: string): Promise<Found> {
  const light = await paleTexts(page);
  await page.emulateMedia({ colorScheme: "dark" });
  const dark = await paleTexts(page);
  await page.emulateMedia({ forcedColors: "active" });
  const forced = await paleTexts(page);
  await keep(page, state, "forced");
  await page.emulateMedia({ colorScheme: "light", forcedColors: "none" });
  return [...marked("light", light), ...marked("dark", dark), ...marked("forced", forced)];
}

/** A window of 1280 px in which all is shown four times as large. */
async function fourTimesAsLarge(page: Page, state: string): Promise<Found> {
  if (seenIn) {
    await page.setViewportSize({ width: 320, height: 640 });
    await keep(page, state, "320");
  }
  await page.setViewportSize({ width: 320, height: 256 });
  const plain = await cutOff(page);
  const style = await page.addStyleTag({ content: widelySet });
  const spaced = await cutOff(page);
  await keep(page, state, "400 widely set");
  await style.evaluate((it) => (it as HTMLStyleElement).remove());
  const small = await smallTargets(page, ".guided", 88);
  await page.setViewportSize({ width: 1280, height: 800 });
  return [...plain, ...marked("widely set", spaced), ...marked("small", small)];
}

describe("Whoever uses it, in every screen and state", () => {
  const stage = setStage();

  test("the measures find what is pale, cut off, out of reach or small", async () => {
    const page = await stage.browser.newPage({ viewport: { width: 320, height: 256 } });
    const texts = "<p>one</p><p>two</p><p>three</p><p>four</p>";
    await page.setContent(`<!doctype html><body style="background: #fff; color: #000">${texts}
      <div style="background: #0008"><p style="color: #555">pale</p></div>
      <p style="opacity: 0.5">faint</p>
      <svg><text y="20" style="fill: #777">drawn</text></svg>
      <svg width="60"><text x="20" y="20">drawn too far</text></svg>
      <p style="overflow: hidden; width: 3em; white-space: nowrap">much too long for its box</p>
      <div style="position: absolute; left: 300px; width: 90px"><p>beyond</p></div>
      <div class="guided"><button type="button" style="width: 88px; height: 60px">low</button></div>`);
    expect((await paleTexts(page)).map((it) => it.replace(/.* /, ""))).toEqual([
      "pale",
      "faint",
      "drawn",
    ]);
    expect(await cutOff(page)).toEqual([
      "the page scrolls sideways",
      "cut off: text drawn too far",
      "cut off: p much too long for its box",
      "out of reach: p beyond",
    ]);
    expect(await smallTargets(page, ".guided", 88)).toEqual(["low: 88 × 60"]);
    await page.close();
  });

  test("axe finds nothing, text stands 7 to 1 or better, nothing is cut off or out of reach at four times its size, and a run's targets are 88 px", {
    timeout: 480_000,
  }, async () => {
    const context = await stage.browser.newContext({
      ...withoutWorker,
      viewport: { width: 1280, height: 800 },
      reducedMotion: "reduce",
    });
    const page = await context.newPage();
    await takeClocks(page);
    const found: string[] = [];
    const states: string[] = [];
    for await (const state of everyState(page, stage.served.url)) {
      states.push(state);
      const axe = await axeFinds(page, false);
      const seen = state === "a run in the dark" ? [] : await inEveryColour(page, state);
      found.push(...marked(state, [...axe, ...seen, ...(await fourTimesAsLarge(page, state))]));
    }
    expect(found).toEqual([]);
    expect(states.length).toBe(26);
    await context.close();
  });
});
