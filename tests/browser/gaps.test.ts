// A run whose page freezes, is loaded anew without a network, or whose device's clock is set, in a real browser.
import { describe, expect, test } from "vitest";
import { shortWorksheet } from "./guided-run.ts";
import {
  beginAndPress,
  developerOf,
  expectInPlace,
  journalIn,
  pause,
  wallOf,
} from "./lived-run.ts";
import { heardIn, kill, type Life, live, newProfile } from "./lives.ts";
import { serveDist } from "./serve.ts";
import { steadyOf } from "./steady.ts";

const { section, presses } = developerOf(shortWorksheet);

/** A run in its developer; what is done to it, and what is heard then. */
async function livedThrough(
  act: (life: Life, pressed: number) => Promise<void>,
  worker = false,
): Promise<void> {
  const served = await serveDist();
  const profile = newProfile();
  const life = await live(profile, served.url, { worker });
  const pressed = await beginAndPress(life, profile, shortWorksheet, presses);
  await act(life, pressed);
  await kill(life);
  await served.close();
}

describe("A run in a real browser", () => {
  test.concurrent(
    "whose page is frozen for 8 s is in its place again, and sounds nothing that was past",
    {
      timeout: 150_000,
    },
    () =>
      livedThrough(async (life) => {
        await pause(14_000);
        const client = await life.page.createCDPSession();
        const before = await heardIn(life);
        await client.send("Page.setWebLifecycleState", { state: "frozen" });
        await pause(8000);
        await client.send("Page.setWebLifecycleState", { state: "active" });
        await pause(20_000);
        const after = await heardIn(life);
        const thawed = (before.captured.pairs.at(-1)?.steady ?? 0) + 8;
        expect(Math.abs(after.pressedAt - before.pressedAt)).toBeLessThan(0.02);
        expectInPlace(later(after, thawed + 2), section.cues);
        // Whatever sounds of what was past: at most one cue, and the summary later.
        const atOnce = later(after, thawed).begun.filter(
          ({ at }) => steadyOf(after.captured, at) < thawed + 0.7,
        );
        expect(atOnce.length).toBeLessThanOrEqual(2);
        const kept = await journalIn(life);
        expect(kept.map(({ kind }) => kind)).toContain("woke");
      }),
  );

  test.concurrent(
    "moves no moment when the device's clock is set by an hour, on and back",
    {
      timeout: 150_000,
    },
    () =>
      livedThrough(async (life) => {
        await setClock(life, 3600);
        await pause(8000);
        await setClock(life, -3600);
        await pause(20_000);
        const heard = await heardIn(life);
        expectInPlace(heard, section.cues);
        const kept = await journalIn(life);
        expect(kept.filter(({ kind }) => kind === "clock-set")).toHaveLength(2);
        expect(kept.map(({ kind }) => kind)).not.toContain("woke");
      }),
  );

  test.concurrent(
    "that is loaded anew without a network goes on in its place",
    {
      timeout: 150_000,
    },
    () =>
      livedThrough(async (life, pressed) => {
        await life.page.evaluate(() => navigator.serviceWorker.ready.then(() => {}));
        await life.page.setOfflineMode(true);
        await life.page.reload();
        await life.page.waitForFunction(
          () => performance.getEntriesByName("tankside-begun").length > 0,
          { timeout: 30_000 },
        );
        await pause(12_000);
        const heard = await heardIn(life);
        expect(Math.abs((await wallOf(life, heard.pressedAt)) - pressed)).toBeLessThan(20);
        expectInPlace(heard, section.cues);
      }, true),
  );
});

type Heard = Awaited<ReturnType<typeof heardIn>>;

/** What was heard from a time on the steady clock on. */
function later(heard: Heard, from: number): Heard {
  const pairs = heard.captured.pairs.filter(({ steady }) => steady >= from);
  return {
    ...heard,
    captured: { ...heard.captured, pairs },
    begun: heard.begun.filter(({ at }) => steadyOf(heard.captured, at) >= from),
  };
}

/** Sets the wall clock as the page reads it, by so many seconds. */
function setClock({ page }: Life, by: number): Promise<void> {
  return page.evaluate((ms) => {
    const now = Date.now;
    Date.now = () => now.call(Date) + ms;
  }, by * 1000);
}
