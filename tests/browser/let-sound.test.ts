// A run come back in a browser that lets no page sound before it was pressed, as most people's does.
import { describe, expect, test } from "vitest";
import { midRun } from "../../src/ui/words/en/mid-run.ts";
import { press } from "./finger.ts";
import { developedFor } from "./guided-run.ts";
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

const worksheet = developedFor("2:20");

/** What is shown. Asked without the driver's own way, which counts as a press: the page might sound from then on. */
async function text(life: Life): Promise<string> {
  const client = await life.page.createCDPSession();
  const { result } = await client.send("Runtime.evaluate", {
    expression: "document.querySelector('.guided')?.textContent ?? ''",
  });
  await client.detach();
  return String(result.value);
}

/** As soon as a page that has come back has its run again and has looked whether it is heard. */
async function comeBack(life: Life): Promise<void> {
  while (!(await text(life)).includes(midRun.silent)) await pause(100);
}

/** Whether an element plays, and goes on. */
async function elementPlays({ page }: Life): Promise<boolean> {
  return page.evaluate(async () => {
    const { played } = window as unknown as { readonly played: Set<HTMLMediaElement> };
    const at = [...played].map((element) => element.currentTime);
    await new Promise((resolve) => setTimeout(resolve, 1000));
    return [...played].some(
      (element, i) => !element.paused && element.currentTime - (at[i] ?? 0) > 0.5,
    );
  });
}

describe("A run that comes back where no page may sound unasked", () => {
  test.concurrent("says so, and by one press, which does nothing else, is heard in its place", {
    timeout: 200_000,
  }, async () => {
    const { section, presses } = developerOf(worksheet);
    const served = await serveDist();
    const profile = newProfile();
    const given = { worker: false, sounds: false };
    let life = await live(profile, served.url, given);
    const pressed = await beginAndPress(life, profile, worksheet, presses);
    await pause(3000);
    await kill(life);
    life = await live(profile, served.url, given);
    await comeBack(life);
    await press(life.page, "KeyX");
    await pause(14_000);
    expect(await text(life)).not.toContain(midRun.silent);
    const heard = await heardIn(life);
    const kept = await journalIn(life);
    expect(Math.abs((await wallOf(life, heard.pressedAt)) - pressed)).toBeLessThan(20);
    await kill(life);
    await served.close();
    expectInPlace(heard, section.cues);
    expect(heard.begun.length).toBeGreaterThan(0);
    expect(kept.filter(({ kind }) => kind === "pressed")).toHaveLength(presses);
  });

  test.concurrent("stays in the pocket, and plays there from that press on", {
    timeout: 200_000,
  }, async () => {
    const { presses } = developerOf(worksheet);
    const served = await serveDist();
    const profile = newProfile();
    const given = { captured: false, worker: false, sounds: false };
    let life = await live(profile, served.url, given);
    await beginAndPress(life, profile, worksheet, presses);
    await life.page.click(".guided-more > summary");
    await life.page.locator("::-p-text(Into the pocket)").click();
    await life.page.locator("::-p-text(To the loudspeaker)").wait();
    await pause(3000);
    await kill(life);
    life = await live(profile, served.url, {
      ...given,
      before: () => {
        const played = new Set<HTMLMediaElement>();
        Object.assign(window, { played });
        const { play } = HTMLMediaElement.prototype;
        HTMLMediaElement.prototype.play = function () {
          played.add(this);
          return play.call(this);
        };
      },
    });
    await comeBack(life);
    await press(life.page, "KeyX");
    await pause(4000);
    expect(await text(life)).not.toContain(midRun.silent);
    expect(await elementPlays(life)).toBe(true);
    const kept = await journalIn(life);
    await kill(life);
    await served.close();
    const ways = kept.flatMap(({ kind, way }) => (kind === "way" ? [way] : []));
    expect([...new Set(ways)]).toEqual(["pocket"]);
    expect(kept.filter(({ kind }) => kind === "pressed")).toHaveLength(presses);
  });
});
