import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { press } from "./finger.ts";
import {
  beganAt,
  fromTheCassette,
  openPage,
  openWorksheet,
  pressUpTo,
  timelineOf,
} from "./guided-run.ts";
import { setStage } from "./stage.ts";

/** How many pixels of a screenshot are lit at all, and the brightest of them, from 0 to 255. */
async function litOn(page: Page): Promise<{ readonly lit: number; readonly brightest: number }> {
  const png = (await page.screenshot()).toString("base64");
  return page.evaluate(async (source) => {
    const image = new Image();
    image.src = `data:image/png;base64,${source}`;
    await image.decode();
    const canvas = new OffscreenCanvas(image.width, image.height);
    const paper = canvas.getContext("2d");
    paper?.drawImage(image, 0, 0);
    const pixels = paper?.getImageData(0, 0, image.width, image.height).data ?? [];
    let [lit, brightest] = [0, 0];
    for (let i = 0; i < pixels.length; i += 4) {
      const light = Math.max(pixels[i] ?? 0, pixels[i + 1] ?? 0, pixels[i + 2] ?? 0);
      if (light > 0) lit += 1;
      brightest = Math.max(brightest, light);
    }
    return { lit, brightest };
  }, png);
}

const black = { lit: 0, brightest: 0 };
const bars = (page: Page) =>
  page
    .locator('meta[name="theme-color"]')
    .evaluateAll((all) => all.map((bar) => (bar as HTMLMetaElement).content));

/** Keeps what is asked of the screen and of a locked one, from the page's beginning. */
async function watchLights(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const seen = { held: 0, titles: [] as string[], first: "" };
    Object.assign(window, { lights: seen });
    Object.defineProperty(navigator, "wakeLock", {
      value: {
        request: async () => {
          seen.held += 1;
          return {
            release: async () => {
              seen.held -= 1;
            },
          };
        },
      },
    });
    document.addEventListener("DOMContentLoaded", () => {
      // The page's own script is a module: it has not run yet.
      seen.first = `${getComputedStyle(document.documentElement, "::after").backgroundColor} ${document.documentElement.className}`;
    });
    setInterval(() => seen.titles.push(navigator.mediaSession?.metadata?.title ?? ""), 200);
  });
}

interface Cover {
  /** Since the first picture of the page coming to light, ms. */
  readonly at: number;
  /** How much of the page is covered yet, of one. */
  readonly of: number;
}

/** In each picture that the page shows of itself coming to light. */
const coverWhileLighting = (page: Page): Promise<readonly Cover[]> =>
  page.evaluate(
    () =>
      new Promise<Cover[]>((resolve) => {
        const root = document.documentElement;
        const covers: Cover[] = [];
        let first: number | null = null;
        const look = (now: number) => {
          if (root.classList.contains("lighting")) {
            first ??= now;
            covers.push({ at: now - first, of: Number(getComputedStyle(root, "::after").opacity) });
          } else if (first !== null) {
            resolve(covers);
            return;
          }
          requestAnimationFrame(look);
        };
        requestAnimationFrame(look);
      }),
  );

interface Lights {
  readonly held: number;
  readonly titles: readonly string[];
  readonly first: string;
}
const lightsOf = (page: Page) =>
  page.evaluate(() => (window as unknown as { lights: Lights }).lights);

describe("The screen in the dark", () => {
  const stage = setStage();
  const timeline = timelineOf(fromTheCassette);
  const darkOnes = timeline.sections.filter(({ dark }) => dark);
  const firstLit = timeline.sections.findIndex(
    ({ dark }, i) => !dark && timeline.sections[i - 1]?.dark,
  );

  test.concurrent.each([
    { colorScheme: "light", forcedColors: "none", reducedMotion: "no-preference" },
    { colorScheme: "light", forcedColors: "active", reducedMotion: "reduce" },
  ] as const)(
    "is black to the last pixel through every dark section and a reload, and lit by a press alone: $forcedColors forced colours",
    { timeout: 150_000 },
    async (media) => {
      expect(darkOnes.length).toBeGreaterThan(2);
      const page = await openPage(stage.browser, stage.served.url, {
        captured: false,
        prepare: watchLights,
      });
      await page.setViewportSize({ width: 480, height: 320 });
      await page.emulateMedia(media);
      const lit = await bars(page);
      await openWorksheet(page, fromTheCassette);
      await pressUpTo(page, timeline, darkOnes[0]?.id ?? "");
      for (const [i, { id }] of darkOnes.entries()) {
        // Whoever tries to make something of it shine: a ring, a mark, a pointer, another place.
        await page.keyboard.press("Tab");
        await page.evaluate(() => {
          getSelection()?.selectAllChildren(document.body);
          history.back();
        });
        await page.mouse.move(200 + 10 * i, 150);
        for (let second = 0; second < 2; second += 1) {
          expect(await litOn(page), `${id}, second ${second}`).toEqual(black);
          await page.waitForTimeout(400);
        }
        if (i === 1) {
          await page.reload();
          expect(await litOn(page), `${id}, opened again`).toEqual(black);
          await page.locator(".guided").waitFor({ state: "attached" });
          expect((await lightsOf(page)).first).toBe("rgb(0, 0, 0) black");
          expect(await litOn(page), `${id}, gone on with`).toEqual(black);
        }
        if (i < darkOnes.length - 1) await press(page, "KeyX");
        await page.waitForTimeout(500);
      }
      expect(new Set(await bars(page))).toEqual(new Set(["#000000"]));
      expect(new URL(page.url()).hash).toBe("#lights-out");
      expect(
        await page.evaluate(
          () => getComputedStyle(document.elementFromPoint(240, 100) ?? document.body).cursor,
        ),
      ).toBe("none");
      const { held, titles } = await lightsOf(page);
      expect(held).toBe(0);
      expect(titles.at(-1)).toBe("\u00a0");
      // The press that begins a section in the light: from black, and slowly.
      const fading = coverWhileLighting(page);
      await press(page, "KeyX");
      const covers = await fading;
      expect(covers[0]?.of).toBeGreaterThan(0.95);
      for (const [i, { at, of }] of covers.entries()) {
        expect(of).toBeGreaterThan(0.97 - at / 2000);
        expect(of).toBeLessThanOrEqual(covers[i - 1]?.of ?? 1);
      }
      expect(covers.at(-1)?.of).toBeLessThan(0.5);
      const bright = await litOn(page);
      expect(bright.lit).toBeGreaterThan(1000);
      expect(await bars(page)).toEqual(lit);
      expect(timeline.sections[firstLit]?.id).toBe("light");
      await page.context().close();
    },
  );

  test.concurrent("stays black where a run is left in the dark, until the next press", {
    timeout: 150_000,
  }, async () => {
    const page = await openPage(stage.browser, stage.served.url, { captured: false });
    await page.setViewportSize({ width: 480, height: 320 });
    await openWorksheet(page, fromTheCassette);
    await pressUpTo(page, timeline, darkOnes[0]?.id ?? "");
    await page.waitForTimeout(400);
    const leave = page.locator(".guided-tools").getByRole("button", { name: "Leave the run" });
    // Nobody sees where it lies: for a finger it is a place like any other.
    await page.setViewportSize({ width: 480, height: 640 });
    const { x = 0, y = 0, width = 0, height = 0 } = (await leave.boundingBox()) ?? {};
    const before = await beganAt(page, "begun");
    await page.mouse.click(x + width / 2, y + height / 2);
    await expect.poll(() => beganAt(page, "begun")).toBeGreaterThan(before);
    await page.waitForTimeout(600);
    await page.mouse.click(x + width / 2, y + height / 2);
    await page.waitForTimeout(600);
    expect(await page.getByRole("button", { name: "Stay" }).count()).toBe(0);
    await leave.press("Enter");
    await leave.press("Enter");
    await page.locator(".guided").waitFor({ state: "detached" });
    await page.waitForTimeout(600);
    expect(await litOn(page)).toEqual(black);
    await press(page, "Shift");
    await page.waitForTimeout(2300);
    expect((await litOn(page)).lit).toBeGreaterThan(1000);
    await page.context().close();
  });
});
