// The short worksheet, rehearsed in a real page with marks: what was played, held against the rehearsal's own
// timeline; what was found; and that nothing of it was kept.
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import { readWorksheetText } from "../../src/plan/read-worksheet.ts";
import { rehearsalSteps } from "../../src/process/rehearsal.ts";
import { lengthsOf } from "../../src/timeline/lengths.ts";
import type { Section } from "../../src/timeline/score.ts";
import { compileSteps } from "../../src/timeline/timeline.ts";
import type { ToneName } from "../../src/tones/designs.ts";
import { english } from "../timeline/scene.ts";
import { packIndex } from "../voice/built-pack.ts";
import { axeFinds } from "./axe.ts";
import { builtKit as kit } from "./built-kit.ts";
import { heardBy } from "./capture.ts";
import { press } from "./finger.ts";
import { beganAt, openPage, openWorksheet, shortWorksheet } from "./guided-run.ts";
import { setStage } from "./stage.ts";
import { allowed, steadyOnset } from "./steady.ts";

function rehearsedTimeline(text: string) {
  const read = readWorksheetText(text);
  if (read.kind !== "worksheet") throw new Error("the short worksheet cannot be read");
  const { worksheet } = read;
  const plan = planOf(worksheet);
  const steps = rehearsalSteps(worksheet, plan, { factor: 1 / 4, why: false });
  return compileSteps(steps, worksheet, plan, english, lengthsOf(packIndex, 1));
}

/**
 * Presses in the page itself at a time on its steady clock, so that no way to it takes time.
 * @returns when it did, seconds: a busy machine may be late.
 */
function pressAt(page: Page, at: number): Promise<number> {
  return page.evaluate(
    (at) =>
      new Promise<number>((resolve) => {
        setTimeout(
          () => {
            while (performance.now() < at * 1000);
            const key = { code: "KeyX", key: "x", bubbles: true };
            const down = new KeyboardEvent("keydown", key);
            document.body.dispatchEvent(down);
            document.body.dispatchEvent(new KeyboardEvent("keyup", key));
            resolve(down.timeStamp / 1000);
          },
          at * 1000 - performance.now() - 20,
        );
      }),
    at,
  );
}

const momentOf = (section: Section | undefined, deed: string): number =>
  section?.moments.find((it) => it.do === deed)?.at ?? Number.NaN;

/** What of a run stands in the browser. */
function journalled(page: Page) {
  return page.evaluate(async () => {
    const done = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const base = await done(indexedDB.open("tankside-journal"));
    const count = (shelf: string) => done(base.transaction(shelf).objectStore(shelf).count());
    const [runs, entries] = [await count("runs"), await count("entries")];
    base.close();
    return { flag: localStorage.getItem("tankside-run-is-on"), runs, entries };
  });
}

describe("A rehearsal in a real browser", () => {
  const stage = setStage();

  test("sounds every moment of its own timeline, takes presses as marks, tells what was late, and is kept nowhere", {
    timeout: 180_000,
  }, async () => {
    const { sections } = rehearsedTimeline(shortWorksheet);
    const at = sections.findIndex(({ id }) => id === "developer");
    const section = sections[at];
    const page = await openPage(stage.browser, stage.served.url);
    await openWorksheet(page, shortWorksheet);
    await page.getByRole("link", { name: /^Walk through/ }).click();
    await page.getByRole("radio", { name: "a quarter" }).check();
    await page.getByRole("button", { name: /^Begin the rehearsal/ }).click();
    await page.locator(".guided").waitFor();
    const isBlack = () => page.evaluate(() => document.documentElement.classList.contains("black"));
    for (let i = 0; i < at; i += 1) {
      await page.waitForTimeout(520);
      expect(await isBlack()).toBe(false);
      await press(page, "KeyX");
    }
    const begun = await beganAt(page, "begun");
    const bout = section?.moments.findLast((it) => it.do === "agitate" && it.bath === "developer");
    const pourOut = momentOf(section, "pour-out");
    const marks = [momentOf(section, "pour-in") + 2, (bout?.at ?? 0) + 0.2, pourOut + 0.2];
    const pressed: number[] = [];
    for (const mark of marks) pressed.push((await pressAt(page, begun + mark)) - begun);
    await page.waitForTimeout(900);
    // Before the next pour is due.
    await page.getByRole("button", { name: "Leave the run" }).click();
    const captured = await heardBy(page);

    const nows = section?.cues.filter((cue) => cue.kind === "now" && cue.at <= pourOut) ?? [];
    expect(nows.length).toBe(6);
    for (const cue of nows) {
      const onset = steadyOnset(captured, kit.samples(cue.sounds[0] as ToneName), begun + cue.at);
      expect(onset?.likeness, `${cue.sounds[0]} at ${cue.at}`).toBeGreaterThan(0.8);
      expect(Math.abs((onset?.at ?? 0) - begun - cue.at)).toBeLessThan(
        allowed(captured, begun + cue.at),
      );
    }
    const found = page.getByRole("region", { name: "The last rehearsal" });
    expect(await found.textContent()).toContain("2 of 3 moments were well done");
    const off = await found.getByRole("list", { name: "All that was off" }).textContent();
    const [, late] =
      /^Developer · Pour in, 0:08 (\d\.\d) s late$/.exec(off?.replace(/\s+/g, " ") ?? "") ?? [];
    const pouredLate = (pressed[0] ?? 0) - momentOf(section, "pour-in");
    expect(Math.abs(Number(late) - pouredLate), off ?? "").toBeLessThan(0.1);
    expect(await axeFinds(page)).toEqual([]);
    await page.setViewportSize({ width: 320, height: 640 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      320,
    );

    await page.getByRole("link", { name: /^Write up/ }).click();
    await page.getByText(/^No run yet/).waitFor();
    // What a page that is opened again would go on with.
    expect(await journalled(page)).toEqual({ flag: null, runs: 0, entries: 0 });
    await page.context().close();
  });
});
