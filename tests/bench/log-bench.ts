// How soon ten thousand runs are listed and searched in Write up, in a browser; and what of that is the finding alone.
import type { Page } from "playwright-core";
import { lineOf } from "../../src/logbook/run-line.ts";
import { everything, find } from "../../src/ui/words/en/log.ts";
import { choicesIn, matching, nothingWanted } from "../../src/ui/write-up-find.ts";
import { launchChromium } from "../browser/chromium.ts";
import { serveDist } from "../browser/serve.ts";
import { madeRuns } from "../ui/made-runs.ts";
import { spread, type Table } from "./table.ts";

const COUNT = 10_000;
const TIMES = 7;
/** Each finds another number of runs than the one before it, by which it is known that they are told of. */
const searches = ["9", "streaks lamp", "nowhere"];

export async function logBench(): Promise<Table> {
  const runs = madeRuns(COUNT);
  const lines = runs.map(lineOf);
  const rows = [row("find and count, Node", finding(lines))];
  const [browser, served] = await Promise.all([launchChromium(), serveDist()]);
  const context = await browser.newContext({ serviceWorkers: "block" });
  const page = await context.newPage();
  // What the bench is compiled by names its functions by this, in the page as well.
  await page.addInitScript("globalThis.__name = (it) => it");
  await page.goto(`${served.url}#write-up`);
  const choosing = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: everything.choose }).click();
  const buffer = Buffer.from(JSON.stringify({ tankside: 1, runs }));
  const file = { name: "runs.json", mimeType: "application/json", buffer };
  let from = performance.now();
  await (await choosing).setFiles(file);
  await page.getByRole("button", { name: everything.take }).waitFor({ timeout: 180_000 });
  rows.push(row("a file read, checked and told of", [performance.now() - from]));
  from = performance.now();
  await page.getByRole("button", { name: everything.take }).click();
  await page.getByText(find.count(COUNT, COUNT)).waitFor({ timeout: 180_000 });
  rows.push(row("the file taken in", [performance.now() - from]));

  const times = { first: [], firstWhole: [], listed: [], whole: [], searched: [] } as {
    readonly [what in "first" | "firstWhole" | "listed" | "whole" | "searched"]: number[];
  };
  for (let i = 0; i < TIMES; i += 1) {
    // A visit anew, and time for what it does while nobody asks for anything.
    await page.goto(`${served.url}?visit=${i}#work-out`);
    await page.waitForTimeout(5000);
    const first = await opened(page);
    times.first.push(first.newest);
    times.firstWhole.push(first.all);
    // Away and back: what is fetched is there, and the lines, since none was changed meanwhile.
    await page.evaluate(() => {
      location.hash = "#work-out";
    });
    await page.waitForTimeout(1500);
    const again = await opened(page);
    times.listed.push(again.newest);
    times.whole.push(again.all);
    for (const text of searches) {
      const { length } = matching(lines, { ...nothingWanted, text });
      times.searched.push(await searched(page, text, length));
    }
  }
  rows.push(
    row("Write up opened for the first time in a visit, the newest runs shown", times.first),
  );
  rows.push(row("and all counted, to be searched", times.firstWhole));
  rows.push(row("Write up opened again, the newest runs shown", times.listed));
  rows.push(row("and all counted, to be searched, again", times.whole));
  rows.push(row("a search typed, the runs found shown", times.searched));
  await browser.close();
  await served.close();
  return { title: "Ten thousand runs in Write up", rows };
}

/** From the place's being asked for, ms: to the newest runs shown, and to all of them counted. */
function opened(page: Page): Promise<{ readonly newest: number; readonly all: number }> {
  return page.evaluate(async () => {
    const began = performance.now();
    const until = (there: () => unknown) =>
      new Promise<number>((resolve) => {
        const look = () =>
          there() ? resolve(performance.now() - began) : requestAnimationFrame(look);
        look();
      });
    location.hash = "#write-up";
    const [newest, all] = await Promise.all([
      until(() => document.querySelectorAll("article.run").length === 10),
      until(() => document.querySelector(".find [role=status]")),
    ]);
    return { newest, all };
  });
}

/** From the last letter's being typed to so many runs told of and the newest of them shown, ms. */
function searched(page: Page, text: string, count: number): Promise<number> {
  const wanted = { text, told: find.count(count, COUNT), shown: Math.min(10, count) };
  return page.evaluate(async ({ text, told, shown }) => {
    const input = document.querySelector<HTMLInputElement>("input[type=search]");
    if (input === null) throw new Error("there is nothing to search in");
    const began = performance.now();
    input.value = text;
    input.dispatchEvent(new Event("input", { bubbles: true }));
    const isThere = () =>
      document.querySelector(".find [role=status]")?.textContent?.startsWith(told) &&
      document.querySelectorAll("article.run").length === shown;
    for (let looks = 0; !isThere(); looks += 1) {
      if (looks > 300) throw new Error(`${told} was not told`);
      await new Promise((resolve) => requestAnimationFrame(resolve));
    }
    return performance.now() - began;
  }, wanted);
}

function finding(lines: Parameters<typeof matching>[0]): readonly number[] {
  return Array.from({ length: 30 }, (_, i) => {
    const wanted = { ...nothingWanted, text: searches[i % searches.length] ?? "" };
    const from = performance.now();
    matching(lines, wanted);
    choicesIn(lines, wanted);
    return performance.now() - from;
  });
}

function row(what: string, times: readonly number[]) {
  const { least, median, most } = spread(times);
  return {
    what,
    "least ms": least.toFixed(0),
    "median ms": median.toFixed(0),
    "most ms": most.toFixed(0),
  };
}
