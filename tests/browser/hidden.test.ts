// A run whose page is out of sight for six minutes, with all that browsers do to such pages left on.
import { expect, test } from "vitest";
import { shortWorksheet } from "./guided-run.ts";
import { beginAndPress, developerOf, expectInPlace, journalIn, pause } from "./lived-run.ts";
import { heardIn, kill, live, newProfile } from "./lives.ts";
import { serveDist } from "./serve.ts";

const HIDDEN = 360;

const short = JSON.parse(shortWorksheet);
const worksheet = JSON.stringify({
  ...short,
  developer: { ...short.developer, leaflet: [{ temperature: { c: 20 }, time: "7:00" }] },
  agitation: { ...short.agitation, every: 30, for: 6 },
});

test("A run out of sight for six minutes loses no moment and is never late", {
  timeout: 600_000,
}, async () => {
  const { section, presses } = developerOf(worksheet);
  const served = await serveDist();
  const profile = newProfile();
  const life = await live(profile, served.url, { worker: false });
  await beginAndPress(life, profile, worksheet, presses);
  const cover = await life.browser.newPage();
  await cover.bringToFront();
  await pause(HIDDEN * 1000);
  const state = await life.page.evaluate(() => document.visibilityState);
  const heard = await heardIn(life);
  const kept = await journalIn(life);
  await kill(life);
  await served.close();

  expect(state).toBe("hidden");
  expectInPlace(heard, section.cues);
  const last = heard.captured.pairs.at(-1)?.steady ?? 0;
  expect(last - heard.pressedAt).toBeGreaterThan(HIDDEN);
  expect(kept.filter(({ kind }) => kind === "pressed")).toHaveLength(presses);
});
