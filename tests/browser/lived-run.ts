// A run in a browser that can die: begun, heard, read back, and what is heard held against its timeline.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import type { Cue, Section } from "../../src/timeline/score.ts";
import { builtKit as kit } from "./built-kit.ts";
import { press } from "./finger.ts";
import { timelineOf } from "./guided-run.ts";
import { type HeardInLife, type Life, pressedAt } from "./lives.ts";
import { allowed, steadyOf, steadyOnset } from "./steady.ts";

export const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** The developer's section of a worksheet, and how many presses come before and with it. */
export function developerOf(worksheet: string): {
  readonly section: Section;
  readonly presses: number;
} {
  const { sections } = timelineOf(worksheet);
  const index = sections.findIndex(({ id }) => id === "developer");
  const section = sections[index];
  if (section === undefined) throw new Error("a run has a developer");
  return { section, presses: index + 1 };
}

/** @returns when the last section was pressed for by the wall clock, ms. */
export async function beginAndPress(
  life: Life,
  profile: string,
  worksheet: string,
  presses: number,
): Promise<number> {
  const { page } = life;
  const file = join(profile, "worksheet.json");
  writeFileSync(file, worksheet);
  const chooser = await page.waitForSelector('input[type="file"]');
  await (chooser as unknown as { uploadFile(path: string): Promise<void> }).uploadFile(file);
  await page.click('a[href="#lights-out"]');
  await (await page.waitForSelector("button.first.second"))?.click();
  await page.waitForSelector(".guided");
  for (let pressed = 1; pressed < presses; pressed += 1) {
    await pause(700);
    await press(page, "KeyX");
  }
  await pause(500);
  return wallOf(life, (await pressedAt(page)) ?? Number.NaN);
}

/** A time on the page's steady clock by the wall clock, ms: of many looks at both, the one that took least. */
export const wallOf = ({ page }: Life, steady: number): Promise<number> =>
  page.evaluate((at) => {
    const looks = Array.from({ length: 50 }, () => {
      const before = performance.now();
      const wall = Date.now();
      return { wall: wall - before + at * 1000, took: performance.now() - before };
    });
    return looks.reduce((best, look) => (look.took < best.took ? look : best)).wall;
  }, steady);

/** An entry of a journal; `from`: what it woke from, `way`: by which it is heard. */
interface Kept {
  readonly kind: string;
  readonly from?: string;
  readonly way?: string;
}

export async function journalIn({ page }: Life): Promise<readonly Kept[]> {
  return page.evaluate(
    () =>
      new Promise<Kept[]>((resolve, reject) => {
        const opening = indexedDB.open("tankside-journal");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const all = opening.result.transaction("entries").objectStore("entries").getAll();
          all.onsuccess = () => resolve(all.result.map(({ entry }) => entry));
        };
      }),
  );
}

/** A page that has come back lays what is due from so many seconds on in its place, even on a busy machine. */
const SETTLED = 1.5;

/** What is heard is the timeline's, each moment in its place; nothing that was past sounds after all. */
export function expectInPlace(
  { captured, begun, pressedAt, inHand }: HeardInLife,
  cues: readonly Cue[],
): void {
  const first = captured.pairs[0];
  const last = captured.pairs.at(-1);
  if (first === undefined || last === undefined) throw new Error("nothing was heard");
  const nows = cues.filter(({ kind }) => kind === "now");
  for (const cue of nows) {
    const at = pressedAt + cue.at;
    // What was due as the page came back may have come too late to be laid, or by a clock that was not true yet.
    if (at < Math.max(first.steady, inHand) + SETTLED || at > last.steady - 1) continue;
    const tone = kit.samples(cue.sounds[0] as Parameters<typeof kit.samples>[0]);
    // A page that has only come back has much to do besides looking whether sound stood still.
    const off = allowed(captured, at, 3);
    const onset = steadyOnset(captured, tone, at, 0.1 + off);
    expect(onset?.likeness, `${cue.sounds[0]} at ${cue.at}`).toBeGreaterThan(0.7);
    // Two lives of a page share the wall clock alone, which counts whole milliseconds.
    expect(Math.abs((onset?.at ?? 0) - at)).toBeLessThan(0.05 + off);
  }
  const tones = cues.filter(({ channel }) => channel === "tone");
  for (const { at, seconds } of begun) {
    const steady = steadyOf(captured, at) - pressedAt;
    // Of a step before, or of a time that is not looked at.
    if (steady < 0 || steady < first.steady - pressedAt) continue;
    const tone = tones.filter((cue) => Math.abs(cue.until - cue.at - seconds) < 1e-4);
    // As long as a tone is: then it is one of the section's, in its time or at most half a second late.
    if (tone.length === 0) continue;
    const away = Math.min(...tone.map((cue) => Math.abs(steady - cue.at)));
    expect(away, `a tone of ${seconds} s at ${steady}`).toBeLessThan(0.6);
  }
}
