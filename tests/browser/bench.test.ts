// What is measured and reckoned at the bench, done in a real browser as a person does it.
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axeFinds } from "./axe.ts";
import { press } from "./finger.ts";
import { setStage, withoutWorker } from "./stage.ts";

describe("Work out at the bench, in a real browser", () => {
  const stage = setStage();

  async function open(): Promise<Page> {
    const context = await stage.browser.newContext({
      ...withoutWorker,
      viewport: { width: 1280, height: 800 },
    });
    const page = await context.newPage();
    await page.goto(stage.served.url);
    // What is fetched after the first screen has come.
    await page.locator('[id="tempering.target"]').waitFor({ state: "attached" });
    return page;
  }

  async function unfold(page: Page, summary: string): Promise<void> {
    await page.locator("summary", { hasText: summary }).click();
  }

  /** No quicker than a hand: what comes sooner is a bounce. */
  async function steps(page: Page, key: string, times: number): Promise<void> {
    for (let i = 0; i < times; i += 1) {
      await press(page, key);
      await page.waitForTimeout(120);
    }
    await page.waitForTimeout(300);
  }

  test("a leaflet pasted as it stands gives the time between its rows, and the curve with it", async () => {
    const page = await open();
    await page.getByText("Paste the leaflet’s table").click();
    await page
      .getByLabel("The rows as they stand in the leaflet")
      .fill("Temp\tTime\n68 °F\t10:00\n70\t9\n75 °F\t6½ min");
    await page.getByRole("button", { name: "Fill in these rows" }).click();
    await page.getByText("3 rows of the leaflet are filled in.").waitFor();
    await page.getByLabel("In the mixed bath now").fill("69 °F");
    await page.locator("strong", { hasText: "9:29" }).waitFor();
    await page.getByRole("img", { name: /9:29 at 69 °F/ }).waitFor();
    await page.context().close();
  });

  test("readings stamped at the sink say when to come back, and stand in the worksheet", async () => {
    const page = await open();
    const began = new Date(2026, 4, 14, 19, 5);
    await page.clock.setFixedTime(began);
    await unfold(page, "Stand it in a water bath");
    await page.getByLabel("It shall come to").fill("68 °F");
    await page.getByLabel("The water bath has").fill("66 °F");
    await page.getByRole("button", { name: "Read at the sink" }).click();
    const sheet = page.getByRole("dialog");
    await sheet.waitFor();
    await steps(page, "ArrowUp", 12);
    await page.keyboard.press("Enter");
    await page.clock.setFixedTime(began.getTime() + 180_000);
    await steps(page, "ArrowDown", 5);
    await page.keyboard.press("Enter");
    await sheet.getByText("3:00 72.5 °F").waitFor();
    await sheet.getByText(/Wait about \d+:\d\d more for 68 °F/).waitFor();
    await page.keyboard.press("Escape");
    await sheet.waitFor({ state: "detached" });
    expect(await page.locator('[id="tempering.readings[1].temperature"]').inputValue()).toBe(
      "72.5 °F",
    );
    await page.getByRole("img", { name: /Temperature by time/ }).waitFor();
    await page.context().close();
  });

  test("hands timed by pressing along come to the middle of three, as they were pressed (0.1 s)", async () => {
    const page = await open();
    await page.getByRole("button", { name: /Time it.*Pouring in takes/ }).click();
    await page.getByRole("dialog").waitFor();
    await page.evaluate(() => {
      const pressed: number[] = [];
      Object.assign(window, { pressed });
      window.addEventListener("keydown", (event) => pressed.push(event.timeStamp / 1000), true);
    });
    for (const ms of [900, 1400, 1100]) {
      await press(page, "Space");
      await page.waitForTimeout(ms);
      await press(page, "Space");
      await page.waitForTimeout(500);
    }
    // As the browser says, however late the page or the test heard of them.
    const pressed = await page.evaluate(() => (window as unknown as { pressed: number[] }).pressed);
    expect(pressed.length).toBe(6);
    const took = [0, 2, 4].map((i) => (pressed[i + 1] ?? 0) - (pressed[i] ?? 0));
    await page.getByRole("button", { name: /^Keep \d/ }).click();
    const kept = await page.getByLabel("Pouring in takes").inputValue();
    const [, middle = Number.NaN] = took.sort((a, b) => a - b);
    expect(Math.abs(Number.parseFloat(kept) - middle)).toBeLessThanOrEqual(0.1);
    await page.context().close();
  });

  test("a tank kept under its name comes back with its times after another visit", async () => {
    const page = await open();
    await page.getByLabel("Name of this tank").fill("tall steel");
    await page.getByLabel("Pouring out takes").fill("13 s");
    await page.getByRole("button", { name: "Keep this tank" }).click();
    await page.getByText("“tall steel” is kept with its times.").waitFor();
    await page.getByRole("button", { name: "Start empty" }).click();
    await page.waitForTimeout(600);
    await page.reload();
    await page.getByLabel("Kept tanks").selectOption("tall steel");
    expect(await page.getByLabel("Pouring out takes").inputValue()).toBe("13 s");
    await page.context().close();
  });

  test("gives axe nothing to find with everything filled in, on light paper 1280 wide and dark 390", async () => {
    const page = await open();
    await page.getByRole("button", { name: "Start from Foghorn 400" }).click();
    await page.getByRole("img", { name: /Contrast by development time/ }).waitFor();
    for (const [colorScheme, width] of [
      ["light", 1280],
      ["dark", 390],
    ] as const) {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width, height: 800 });
      await page.waitForTimeout(300);
      expect(await axeFinds(page)).toEqual([]);
      const sideways = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(sideways).toBe(0);
    }
    await page.context().close();
  });
});
