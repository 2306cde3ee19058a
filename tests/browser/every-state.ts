// Every screen in every state that a person can meet, one after the other in one page: a run that lasts ten minutes
// is gone through in seconds, since the page's clocks are put forward and its sound can be made to stand still.
// Past 200 lines because one page goes through them all, and each state stands on what came before.
import type { Page } from "playwright-core";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { linkOf } from "../../src/plan/worksheet-link.ts";
import { benchInCelsius } from "../plan/bench-worksheets.ts";
import { press } from "./finger.ts";
import { fromTheCassette, openWorksheet, shortWorksheet } from "./guided-run.ts";

/** To be called before the page is opened. */
export async function takeClocks(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const ahead = () => Number(localStorage.getItem("clocks-ahead") ?? 0);
    const then = Number(sessionStorage.getItem("clocks-then") ?? 0);
    sessionStorage.removeItem("clocks-then");
    localStorage.setItem("clocks-ahead", String(ahead() + then));
    const steady = performance.now.bind(performance);
    performance.now = () => steady() + ahead();
    const wall = Date.now;
    Date.now = () => wall() + ahead();
    const stamp = Object.getOwnPropertyDescriptor(Event.prototype, "timeStamp")?.get;
    Object.defineProperty(Event.prototype, "timeStamp", {
      get() {
        return stamp?.call(this) + ahead();
      },
    });
    const time = Object.getOwnPropertyDescriptor(BaseAudioContext.prototype, "currentTime")?.get;
    let stood: number | null = null;
    Object.defineProperty(BaseAudioContext.prototype, "currentTime", {
      get() {
        const now = time?.call(this);
        if (!("soundStandsStill" in window)) return now;
        stood ??= now;
        return stood;
      },
    });
    Object.defineProperty(navigator, "vibrate", { value: () => true, configurable: true });
  });
}

export async function putForward(page: Page, seconds: number): Promise<void> {
  await page.evaluate((ms) => {
    localStorage.setItem(
      "clocks-ahead",
      String(Number(localStorage.getItem("clocks-ahead") ?? 0) + ms),
    );
  }, seconds * 1000);
  await page.waitForTimeout(350);
}

const unfold = (page: Page) =>
  page.evaluate(() => {
    for (const fold of document.querySelectorAll("details")) fold.open = true;
  });

const button = (page: Page, name: string | RegExp) =>
  page.getByRole("button", { name, exact: typeof name === "string" });

async function go(page: Page, place: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, place);
  await page.waitForTimeout(600);
}

/** Minutes of a bath, in which clocks may be put forward by a minute too many. */
const worksheet = JSON.stringify({
  ...JSON.parse(fromTheCassette),
  developer: {
    ...JSON.parse(fromTheCassette).developer,
    leaflet: [{ temperature: { c: 20 }, time: "9:00" }],
  },
});

/** Goes from state to state, and names each as it stands there. */
export async function* everyState(page: Page, url: string): AsyncGenerator<string> {
  await page.goto(url);
  await page.getByRole("button", { name: /Hear a pour/ }).waitFor();
  await page.locator(".who-speaks fieldset").first().waitFor();
  yield "Work out, as it is first seen";

  await openWorksheet(page, JSON.stringify(benchInCelsius));
  await page.waitForTimeout(600);
  await unfold(page);
  await page.waitForTimeout(900);
  await page.locator(".statement").waitFor();
  yield "Work out, every question answered, every fold open and the statement";

  await page.locator("textarea").first().fill("68 ten minutes");
  await button(page, "Fill in these rows").click();
  await page.locator('input[id="developer.temperature"]').fill("much");
  await page.keyboard.press("Tab");
  await page.waitForTimeout(900);
  yield "Work out, with faults";
  await button(page, "Start from Foghorn 400").click();

  await button(page, /^Read at the sink/)
    .first()
    .click();
  yield "the sheet for the sink";
  await button(page, "Done").last().click();
  await button(page, /^Time it/)
    .first()
    .click();
  yield "the sheet for pressing along";
  await page.keyboard.press("Escape");
  await button(page, /your voice$/)
    .first()
    .click();
  await page.waitForTimeout(300);
  yield "the sheet for recording";
  await page.keyboard.press("Escape");
  await button(page, "Work it out by ear").click();
  await page.locator(".ear-sheet").waitFor();
  await page.keyboard.press("ArrowRight");
  yield "the sheet for working out by ear";
  await page.keyboard.press("Escape");

  await openWorksheet(page, worksheet);
  await page.waitForTimeout(600);
  await go(page, "walk-through");
  yield "Walk through";
  await page.getByText("Developer and").first().click();
  await page.waitForTimeout(300);
  yield "Walk through, a step open";
  await page.locator(".take-fold > summary").click();
  await page.getByRole("img", { name: "The link as a code" }).waitFor();
  await page.getByLabel("Seconds of waiting").fill("long");
  yield "Walk through, taking it along";

  yield* ofALinkAndARehearsal(page);
  await go(page, "work-out");
  await openWorksheet(page, worksheet);
  await page.waitForTimeout(600);

  await go(page, "lights-out");
  await button(page, "Hear the question").waitFor();
  yield "Lights out, asking who speaks";
  await page.keyboard.press("2");
  await button(page, "I am ready").click();
  yield "Lights out, waiting for a class to start";
  await button(page, "Not ready after all").click();
  await page.getByLabel("Vibrate with every signal").check();
  await page.getByLabel("Write out what is said").check();
  await unfold(page);
  yield "Lights out, answered";
  await button(page, /^Begin/).click();
  await page.locator(".guided").waitFor();
  await page.waitForTimeout(1500);
  yield "a run that tells and waits";
  const next = async () => {
    await putForward(page, 60);
    await press(page, "KeyX");
    await page.waitForTimeout(500);
  };
  const seen = () => page.locator(".guided").getAttribute("class");
  for (let i = 0; (await seen()) !== "guided dark" && i < 25; i += 1) await next();
  await page.locator(".guided.dark").waitFor();
  yield "a run in the dark";
  for (let i = 0; (await page.locator(".guided-timed").count()) === 0 && i < 30; i += 1)
    await next();
  await putForward(page, 20);
  await page.locator(".guided-timed").waitFor();
  yield "a run by the clock";
  await page.locator(".guided-more > summary").click();
  await page.waitForTimeout(200);
  yield "a run, its folded tools open";
  await page.locator(".guided-more > summary").click();
  await button(page, "Leave the run").click();
  yield "a run, asking whether to leave it";
  await button(page, "Stay").click();
  await page.evaluate(() => Object.assign(window, { soundStandsStill: true }));
  await page.getByText("No sound", { exact: true }).first().waitFor();
  yield "a run that is not heard";

  // From its next opening on, or the page would still say that it lives.
  await page.evaluate(() => sessionStorage.setItem("clocks-then", "4000000"));
  await page.reload();
  await page.getByText("never ended").first().waitFor();
  yield "Lights out, with a run that never ended";
  await go(page, "write-up");
  await unfold(page);
  yield "Write up";
  for (const name of [/^Put Gullrock/, /^Fill in Gullrock/, /^Clearing test/, /^Add a bottle/])
    await button(page, name).first().click();
  await unfold(page);
  yield "the shelf of bottles";
  await go(page, "lights-out");
  await button(page, "Go on with it").click();
  await page.locator(".guided").waitFor();
  for (let i = 0; (await page.locator(".guided-over").count()) === 0 && i < 60; i += 1) {
    await putForward(page, 200);
    await press(page, "KeyX");
    await page.waitForTimeout(300);
  }
  await page.waitForTimeout(2100);
  await page.locator(".guided-over").waitFor();
  yield "a run that is over";
}

/** A short worksheet comes with a link, which names the minute of a class, and is rehearsed. */
async function* ofALinkAndARehearsal(page: Page): AsyncGenerator<string> {
  const minute = 60_000;
  const inAnHour = (Math.floor((await page.evaluate(() => Date.now())) / minute) + 60) * minute;
  const sent: Worksheet = JSON.parse(shortWorksheet);
  await go(page, linkOf(sent, inAnHour).replace("#", ""));
  await button(page, "Use this worksheet").waitFor();
  yield "a worksheet that a link brought";
  await button(page, "Use this worksheet").click();
  await go(page, "walk-through");
  await button(page, /^Begin the rehearsal/).click();
  await page.locator(".guided").waitFor();
  for (let i = 0; (await page.locator(".guided-timed").count()) === 0 && i < 12; i += 1) {
    await page.waitForTimeout(520);
    await press(page, "KeyX");
  }
  // In the bath, a mark.
  await page.waitForTimeout(520);
  await press(page, "KeyX");
  yield "a rehearsal by the clock";
  await putForward(page, 25);
  await button(page, "Leave the run").click();
  await page.getByRole("region", { name: "The last rehearsal" }).waitFor();
  yield "Walk through, what a rehearsal came to";
}
