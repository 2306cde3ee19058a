// Takes the README's pictures of the screens, into public/pictures/. Run by `npm run pictures`.
import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { demos } from "../../src/ui/demo.ts";
import { launchChromium } from "./chromium.ts";
import { leaveRun, timelineOf } from "./guided-run.ts";
import { serveDist } from "./serve.ts";

const folder = fileURLToPath(new URL("../../public/pictures/", import.meta.url));
mkdirSync(folder, { recursive: true });
const [browser, served] = await Promise.all([launchChromium(), serveDist()]);

async function take(page: Page, name: string): Promise<void> {
  await page.waitForTimeout(1200);
  await page.screenshot({ path: `${folder}${name}.png` });
}

async function visit(colorScheme: "light" | "dark", place: string): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1200, height: 800 }, colorScheme });
  const page = await context.newPage();
  await page.goto(`${served.url}#${place}`);
  await page.waitForTimeout(1500);
  return page;
}

const workOut = await visit("light", "work-out");
await workOut.getByText("Develop for").first().scrollIntoViewIfNeeded();
await take(workOut, "work-out");

const sink = await visit("light", "work-out");
await sink.setViewportSize({ width: 900, height: 760 });
await sink.getByRole("button", { name: "Start from Foghorn 400" }).click();
await sink.getByRole("button", { name: "Read at the sink" }).click();
await sink.keyboard.press("ArrowDown");
await take(sink, "sink");

const walk = await visit("light", "walk-through");
await walk.getByText("Developer and").first().click();
await walk.getByText("Hear this step").scrollIntoViewIfNeeded();
await walk.mouse.wheel(0, 500);
await take(walk, "walk-through");

const run = await visit("dark", "lights-out");
await run.getByRole("button", { name: /^Begin/ }).click();
await run.locator(".guided").waitFor();
const { sections } = timelineOf(JSON.stringify(demos.gullrock));
const developer = sections.findIndex(({ id }) => id === "developer");
for (let i = 0; i < developer; i += 1) {
  await run.waitForTimeout(700);
  await run.keyboard.press("KeyX");
}
await run.waitForTimeout(52_000);
await take(run, "lights-out");
await leaveRun(run);
await run.goto(`${served.url}#write-up`);
await take(run, "write-up");
await browser.close();
await served.close();
