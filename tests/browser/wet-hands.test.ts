import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { beganAt, openWorksheet, pressUpTo, shortWorksheet, timelineOf } from "./guided-run.ts";
import { setStage, withoutWorker } from "./stage.ts";

/** A finger that goes down, slides so far down the screen, px, and is let go. */
async function slide(page: Page, from: { readonly x: number; readonly y: number }, by: number) {
  const hand = await page.context().newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", y: number) =>
    hand.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: type === "touchEnd" ? [] : [{ x: from.x, y }],
    });
  await touch("touchStart", from.y);
  for (let step = 1; step <= 8; step += 1) {
    await page.waitForTimeout(20);
    await touch("touchMove", from.y + (by * step) / 8);
  }
  await touch("touchEnd", from.y + by);
}

describe("Wet hands on a phone", () => {
  const stage = setStage();
  const timeline = timelineOf(shortWorksheet);

  /** A run on a phone, up to a section. */
  async function runUpTo(section: string): Promise<Page> {
    const context = await stage.browser.newContext({
      ...withoutWorker,
      viewport: { width: 390, height: 800 },
      hasTouch: true,
      isMobile: true,
    });
    const page = await context.newPage();
    await page.goto(stage.served.url);
    await openWorksheet(page, shortWorksheet);
    await pressUpTo(page, timeline, section);
    await page.waitForTimeout(900);
    return page;
  }

  test("press by a finger that slides down the screen, and pull nothing down by it", async () => {
    const page = await runUpTo(timeline.sections[0]?.id ?? "");
    const pulled = () =>
      page.evaluate(() => getComputedStyle(document.documentElement).overscrollBehaviorY);
    expect(await pulled()).toBe("none");
    const before = await beganAt(page, "begun");
    await slide(page, { x: 200, y: 150 }, 250);
    await expect.poll(() => beganAt(page, "begun")).toBeGreaterThan(before);
    await page.context().close();
  });

  test("are asked before a bath that counts is loaded anew, and the run goes on", async () => {
    const page = await runUpTo("developer");
    const asked: string[] = [];
    page.on("dialog", (dialog) => {
      asked.push(dialog.type());
      void dialog.dismiss();
    });
    await page.evaluate(() => {
      Object.assign(window, { sameLife: true });
      location.reload();
    });
    await expect.poll(() => asked).toEqual(["beforeunload"]);
    expect(await page.evaluate(() => "sameLife" in window)).toBe(true);
    await page.context().close();
  });
});
