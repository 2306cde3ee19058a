// A short development, run in a real page: the worksheet opened from a file, every step begun by a
// key, what was played captured, and the timeline it should have followed.
import type { Browser, Page } from "playwright-core";
import { planOf } from "../../src/plan/plan.ts";
import { readWorksheetText } from "../../src/plan/read-worksheet.ts";
import { scriptIn } from "../../src/script/scripts.ts";
import { lengthsOf } from "../../src/timeline/lengths.ts";
import type { Timeline } from "../../src/timeline/score.ts";
import { compile } from "../../src/timeline/timeline.ts";
import { builtPack } from "../voice/built-pack.ts";
import { captureSound } from "./capture.ts";
import { press } from "./finger.ts";
import { lateBy } from "./serve.ts";
import { withoutWorker } from "./stage.ts";

/** The shortest development that has every kind of moment in it, from film in its cassette. */
export const fromTheCassette = JSON.stringify({
  tankside: 1,
  title: "Short strip",
  process: "bw-negative",
  films: [{ label: "Gullrock 125", size: "135-24", count: 1, boxSpeed: 125 }],
  developer: {
    label: "Kelp MQ",
    leaflet: [{ temperature: { c: 20 }, time: "0:45" }],
    temperature: { c: 20 },
  },
  tank: { method: "inversion", volume: { ml: 300 }, pourIn: 4, pourOut: 4 },
  agitation: { first: 10, every: 15, for: 4, perInversion: 2, taps: 1 },
  clock: { starts: "pour-in", ends: "pour-out" },
  baths: { stop: { time: "0:15" } },
});

/** The same of film that is in the tank already: few presses lead to its developer. */
export const shortWorksheet = JSON.stringify({ ...JSON.parse(fromTheCassette), loading: "done" });

/** The same with a development of another length, as a leaflet writes it. */
export function developedFor(time: string): string {
  const short = JSON.parse(shortWorksheet);
  const leaflet = [{ temperature: { c: 20 }, time }];
  return JSON.stringify({ ...short, developer: { ...short.developer, leaflet } });
}

const scripts = { en: await scriptIn("en"), de: await scriptIn("de") };

/** The timeline of a worksheet, with the lengths of the sounds that the page plays. */
export function timelineOf(text: string): Timeline {
  const read = readWorksheetText(text);
  if (read.kind === "faults") throw new Error("a worksheet of the tests is faulty");
  const { worksheet } = read;
  const language = worksheet.language === "de" ? "de" : "en";
  const lengths = lengthsOf(builtPack(language).index, worksheet.voice?.rate ?? 1);
  return compile(worksheet, planOf(worksheet), scripts[language], lengths);
}

interface Opened {
  /** Whether what it plays is captured, which takes as much of the machine as playing it. */
  readonly captured?: boolean;
  /** What else is to be known of the page from its beginning. */
  readonly prepare?: (page: Page) => Promise<void>;
}

export async function openPage(
  browser: Browser,
  url: string,
  { captured = true, prepare = async () => {} }: Opened = {},
): Promise<Page> {
  const context = await browser.newContext({
    ...withoutWorker,
    viewport: { width: 1280, height: 800 },
  });
  const page = await context.newPage();
  if (captured) await captureSound(page);
  await prepare(page);
  await page.goto(url);
  return page;
}

export async function openWorksheet(page: Page, worksheet: string): Promise<void> {
  await page.locator('input[type="file"]').setInputFiles({
    name: "worksheet.json",
    mimeType: "application/json",
    buffer: Buffer.from(worksheet),
  });
}

/** Begins the run and presses up to a section; the press that starts it is the last. */
export async function pressUpTo(
  page: Page,
  timeline: Pick<Timeline, "sections">,
  section: string,
): Promise<void> {
  const index = timeline.sections.findIndex(({ id }) => id === section);
  await page.getByRole("link", { name: /^Lights out/ }).click();
  await page.getByRole("button", { name: /^Begin/ }).click();
  await page.locator(".guided").waitFor();
  for (let i = 0; i < index; i += 1) {
    await page.waitForTimeout(900);
    await press(page, "KeyX");
  }
}

/** Seconds on the page's steady clock at which what the page marked last began: "begun" or "hearing". */
export function beganAt(page: Page, mark: "begun" | "hearing"): Promise<number> {
  return page.evaluate(
    (name) =>
      (performance.getEntriesByName(name).at(-1) as PerformanceMark | undefined)?.detail ?? 0,
    `tankside-${mark}`,
  );
}

/**
 * Blocks the page's main thread for 200 ms in every 700, as a busy page would be: by waiting for an answer that the
 * server is slow to give, which takes nothing from whatever else the machine is to do.
 */
export async function blockMainThread(page: Page): Promise<void> {
  await page.evaluate((late) => {
    setInterval(() => {
      const request = new XMLHttpRequest();
      request.open("GET", late, false);
      request.send();
    }, 700);
  }, lateBy(200));
}

/** A hand looks before it says yes: what it touches twice in a row it touched once. */
export async function leaveRun(page: Page): Promise<void> {
  const leave = page.locator(".guided-tools").getByRole("button", { name: "Leave the run" });
  await leave.click();
  await page.waitForTimeout(600);
  await leave.click();
}
