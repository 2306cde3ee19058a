// A whole session, from the first start to the hanging film and its note, by those who have one key, and by those who
// have a keyboard and a screen reader. The page's clocks are put forward where nothing is to be heard.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { CHOOSING } from "../../src/live/rest.ts";
import { putForward, takeClocks } from "./every-state.ts";
import { press } from "./finger.ts";
import { fromTheCassette } from "./guided-run.ts";
import { setStage, withoutWorker } from "./stage.ts";

const reader = readFileSync(
  createRequire(import.meta.url)
    .resolve("@guidepup/virtual-screen-reader")
    .replace(/cjs.*$/, "esm/index.browser.js"),
  "utf8",
);

interface Reader {
  start(options: { readonly container: Element }): Promise<void>;
  spokenPhraseLog(): Promise<string[]>;
  clearSpokenPhraseLog(): Promise<void>;
}
type World = { readonly reader: Reader };

async function opened(page: Page, url: string): Promise<void> {
  await takeClocks(page);
  await page.route("**/reader-of-tests.js", (route) =>
    route.fulfill({ contentType: "text/javascript", body: reader }),
  );
  await page.goto(url);
  await page.locator(".who-speaks fieldset").first().waitFor();
  await page.locator(".by-ear button").waitFor();
}

/** The pause behind an offer that nobody takes is long for whoever tests, where many are told by ear. */
async function hurried(page: Page): Promise<void> {
  await page.addInitScript((pause) => {
    const later = window.setTimeout;
    const hurry = (act: TimerHandler, ms?: number) => {
      const isPause = ms === pause && document.querySelector(".ear-sheet") !== null;
      return later(act, isPause ? 250 : ms);
    };
    Object.assign(window, { setTimeout: hurry });
  }, CHOOSING * 1000);
}

/** Every step of a run, each press a minute after the last, until nothing is left but to write it up. */
async function pressThrough(page: Page, key: string, seen: (at: string) => Promise<void>) {
  // A busy machine takes some of them for a second press, which only asks where the run stands.
  for (let presses = 0; presses < 150; presses += 1) {
    if ((await page.locator(".guided-over").count()) > 0) return;
    const timed = (await page.locator(".guided-timed").count()) > 0;
    await putForward(page, timed ? 240 : 20);
    await seen((await page.locator(".guided").getAttribute("class")) ?? "");
    await press(page, key);
    await page.waitForTimeout(450);
  }
}

const isIn = (page: Page, place: string) =>
  page.waitForFunction((hash) => location.hash === hash, `#${place}`, { timeout: 15_000 });

describe("A whole session, from the first start to the film that hangs", () => {
  const stage = setStage();

  test.concurrent("is led by one key alone", { timeout: 300_000 }, async () => {
    const context = await stage.browser.newContext(withoutWorker);
    const page = await context.newPage();
    await hurried(page);
    await opened(page, stage.served.url);
    const enter = () => press(page, "Enter");
    await enter();
    await page.locator(".ear-sheet").waitFor();
    // Whatever is told is passed by but what is offered, which a press would take.
    const told = page.locator(".ear-press span").last();
    for (let line = 0; line < 500 && (await page.locator(".ear-sheet").count()) > 0; line += 1) {
      const text = (await told.textContent()) ?? "";
      if (/press\.$/.test(text) && !/to the run, press/.test(text)) await page.waitForTimeout(300);
      else {
        await enter();
        await page.waitForTimeout(120);
      }
    }
    await isIn(page, "lights-out");
    await page.getByRole("button", { name: "Hear the question" }).waitFor();
    await enter();
    // "For the program", and the pause in which a press takes it.
    await page.waitForTimeout(3200);
    await enter();
    await page.getByRole("button", { name: "Hear the question" }).waitFor({ state: "detached" });
    await enter();
    await page.locator(".guided").waitFor();
    const places = new Set<string>();
    await pressThrough(page, "Enter", async (at) => void places.add(at));
    expect([...places].sort()).toEqual(["guided", "guided dark"]);
    await page.locator(".guided-over").waitFor();
    await enter();
    await isIn(page, "write-up");
    await page.getByText("Gullrock 125").first().waitFor();
    await context.close();
  });

  test.concurrent("is led by a keyboard, and heard by a screen reader from end to end", {
    timeout: 300_000,
  }, async () => {
    const context = await stage.browser.newContext(withoutWorker);
    const page = await context.newPage();
    await opened(page, stage.served.url);
    // As text: the runner would make an import of its own of it.
    await page.evaluate(`import("./reader-of-tests.js").then(({ virtual }) => {
      window.reader = virtual;
      return virtual.start({ container: document.body });
    })`);
    const heard: string[] = [];
    const log = () =>
      page.evaluate(async () => {
        const { reader } = window as unknown as World;
        const said = await reader.spokenPhraseLog();
        await reader.clearSpokenPhraseLog();
        return said;
      });
    const chapter = async (title: string, isTold = (_line: string) => true) => {
      heard.push(`# ${title}`, ...(await log()).filter(isTold), "");
    };
    const nameOf = () => page.evaluate(() => document.activeElement?.textContent ?? "");
    const tabTo = async (name: RegExp, key = "Tab") => {
      for (let stop = 0; stop < 120 && !name.test(await nameOf()); stop += 1)
        await page.keyboard.press(key);
      expect(await nameOf()).toMatch(name);
    };

    const chooser = page.waitForEvent("filechooser");
    await tabTo(/^Open a file/);
    await press(page, "Enter");
    await (await chooser).setFiles({
      name: "worksheet.json",
      mimeType: "application/json",
      buffer: Buffer.from(fromTheCassette),
    });
    // What it comes to is read out once the hands rest, and only then.
    const soFar = () => page.evaluate(() => (window as unknown as World).reader.spokenPhraseLog());
    await expect
      .poll(soFar, { timeout: 15_000 })
      .toContainEqual(expect.stringMatching(/^polite: Develop for 0:45/));
    await chapter("A worksheet is opened");
    await tabTo(/^Lights out/, "Shift+Tab");
    await press(page, "Enter");
    await page.getByRole("button", { name: "Hear the question" }).waitFor();
    await press(page, "2");
    await page.waitForTimeout(300);
    await tabTo(/^Begin/);
    await press(page, "Enter");
    await page.locator(".guided").waitFor();
    // What the run says is heard a moment sooner or later.
    await chapter("Before the run", (line) => !line.startsWith("polite: "));
    await pressThrough(page, "x", async () => {});
    await page.locator(".guided-over").waitFor();
    // The clocks were put forward in it, so what was heard of it says little; tests/ui/heard-run.txt says it all.
    const told = new Set((await log()).filter((line) => line.startsWith("polite: ")));
    expect(told.size).toBeGreaterThan(10);
    await press(page, "Enter");
    await isIn(page, "write-up");
    await page.getByText("Short strip").first().waitFor();
    await page.waitForTimeout(400);
    // Clocks that are put forward outrun the sound, which a run may have said as its last.
    await chapter("Written up", (line) => line !== "polite: No sound");
    await expect(heard.join("\n")).toMatchFileSnapshot("whole-session.heard.txt");
    await context.close();
  });
});
