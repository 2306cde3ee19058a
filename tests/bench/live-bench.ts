// A run in a real browser, its main thread blocked 200 ms in every 700: the error of every captured
// moment against the timeline, beside the same moments sounded by naive timers in the same page.

import type { Cue } from "../../src/timeline/score.ts";
import { builtKit as kit } from "../browser/built-kit.ts";
import { type Captured, heardBy } from "../browser/capture.ts";
import { launchChromium } from "../browser/chromium.ts";
import {
  beganAt,
  blockMainThread,
  openPage,
  openWorksheet,
  pressUpTo,
  shortWorksheet,
  timelineOf,
} from "../browser/guided-run.ts";
import { serveDist } from "../browser/serve.ts";
import { steadyOnset } from "../browser/steady.ts";
import { spread, type Table } from "./table.ts";

type Tone = Parameters<typeof kit.samples>[0];
/** Below this likeness a tone was not there. */
const HEARD = 0.5;

export async function liveBench(): Promise<Table> {
  const [browser, served] = await Promise.all([launchChromium(), serveDist()]);
  const timeline = timelineOf(shortWorksheet);
  const section = timeline.sections.find(({ id }) => id === "developer");
  const nows = section?.cues.filter(({ kind }) => kind === "now") ?? [];
  const seconds = (section?.seconds ?? 0) + 2;

  const page = await openPage(browser, served.url);
  await openWorksheet(page, shortWorksheet);
  await blockMainThread(page);
  await pressUpTo(page, timeline, "developer");
  await page.waitForTimeout(seconds * 1000);
  const pressedAt = await beganAt(page, "begun");
  const ours = errors(await heardBy(page), nows, pressedAt, 0.04);

  const naive = await openPage(browser, served.url);
  await blockMainThread(naive);
  const began = await naive.evaluate(
    playByTimers,
    nows.map(({ at, sounds }) => ({ at, tone: sounds[0] ?? "" })),
  );
  await naive.waitForTimeout(seconds * 1000);
  const theirs = errors(await heardBy(naive), nows, began, 0.45);
  await browser.close();
  await served.close();
  return {
    title: `Live: ${nows.length} moments captured, main thread blocked 200 ms in every 700`,
    rows: [row("Tankside", ours), row("naive timers", theirs)],
  };
}

function errors(captured: Captured, nows: readonly Cue[], origin: number, within: number) {
  return nows.map((cue) => {
    const onset = steadyOnset(
      captured,
      kit.samples(cue.sounds[0] as Tone),
      origin + cue.at,
      within,
    );
    return onset === null || onset.likeness < HEARD ? null : (onset.at - origin - cue.at) * 1000;
  });
}

function row(what: string, errorsMs: readonly (number | null)[]) {
  const heard = errorsMs.flatMap((error) => (error === null ? [] : [Math.abs(error)]));
  const { median, most } = spread(heard);
  return {
    what,
    lost: errorsMs.length - heard.length,
    "median error ms": median.toFixed(3),
    "greatest error ms": most.toFixed(3),
  };
}

/** In the page: the same tones, each begun by a timer when its time has come. */
async function playByTimers(moments: readonly { at: number; tone: string }[]): Promise<number> {
  const [index, bytes] = await Promise.all([
    fetch("sound/tones.json").then((response) => response.json()),
    fetch("sound/tones.pcm").then((response) => response.arrayBuffer()),
  ]);
  const pcm = new Int16Array(bytes);
  const context = new AudioContext();
  await context.resume();
  const silent = context.createGain();
  silent.connect(context.destination);
  await new Promise((resolve) => setTimeout(resolve, 500));
  const began = performance.now() / 1000;
  for (const { at, tone } of moments) {
    const { from, samples } = index.tones[tone];
    const buffer = context.createBuffer(1, samples, 24_000);
    buffer
      .getChannelData(0)
      .set(Float32Array.from(pcm.subarray(from, from + samples), (s) => s / 32768));
    setTimeout(() => {
      const source = context.createBufferSource();
      source.buffer = buffer;
      source.connect(silent);
      source.start();
    }, at * 1000);
  }
  return began;
}
