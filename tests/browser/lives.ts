// A browser that can die, freeze and be put out of sight: driven by the other driver, whose pages can. Its
// profile outlives it, as a person's does.
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import puppeteer, { type Browser, type Page } from "puppeteer-core";
import { begunBy, type Captured, captureSound, heardBy } from "./capture.ts";
import { chromiumPath, flags } from "./chromium.ts";

/** What drivers turn off by themselves, and people's browsers do not. */
const unlikeAnyone = [
  "--mute-audio",
  "--disable-background-timer-throttling",
  "--disable-backgrounding-occluded-windows",
  "--disable-renderer-backgrounding",
];

export interface Life {
  readonly browser: Browser;
  readonly page: Page;
  /** ms from asking for the page to its being there. */
  readonly opened: number;
}

export const newProfile = (): string => mkdtempSync(join(tmpdir(), "tankside-profile-"));

/**
 * Starts a browser on a profile and opens the page in it.
 * @param captured whether what it plays is captured, which takes more of the machine than playing it.
 * @param worker whether the page may keep itself in store; where the network is no matter, that is work for nothing.
 * @param before runs in the page before anything of its own.
 * @param sounds whether it lets a page sound before anyone has pressed anything in it.
 */
export async function live(
  profile: string,
  url: string,
  { captured = true, worker = true, sounds = true, before = () => {} } = {},
): Promise<Life> {
  const browser = await puppeteer.launch({
    executablePath: chromiumPath(),
    userDataDir: profile,
    args: sounds ? flags : [...flags, "--autoplay-policy=document-user-activation-required"],
    ignoreDefaultArgs: unlikeAnyone,
    defaultViewport: { width: 1000, height: 800 },
  });
  const page = (await browser.pages())[0] ?? (await browser.newPage());
  if (captured) {
    await captureSound({ addInitScript: (script) => page.evaluateOnNewDocument(script as string) });
  }
  if (!worker) {
    await page.evaluateOnNewDocument(() => {
      Reflect.deleteProperty(Navigator.prototype, "serviceWorker");
    });
  }
  await page.evaluateOnNewDocument(before);
  // Whoever loads a page anew in the midst of a bath is asked, and means it here.
  page.on("dialog", (dialog) => void dialog.accept());
  const asked = Date.now();
  await page.goto(url);
  return { browser, page, opened: Date.now() - asked };
}

/** As a crash, or a battery that is empty: no page is told of it. */
export async function kill({ browser }: Life): Promise<void> {
  const gone = new Promise((resolve) => browser.process()?.once("exit", resolve));
  browser.process()?.kill("SIGKILL");
  await gone;
}

/** Seconds on the steady clock at which the section that is on was pressed for; null before a run sounds. */
export function pressedAt(page: Page): Promise<number | null> {
  return page.evaluate(() => {
    const mark = performance.getEntriesByName("tankside-begun").at(-1) as
      | PerformanceMark
      | undefined;
    return mark?.detail ?? null;
  });
}

export interface HeardInLife {
  readonly captured: Captured;
  readonly begun: Awaited<ReturnType<typeof begunBy>>;
  /** When the section that was on was pressed for, seconds on the steady clock. */
  readonly pressedAt: number;
  /** When this page first had the run in hand, seconds on the steady clock. */
  readonly inHand: number;
}

export async function heardIn({ page }: Life): Promise<HeardInLife> {
  const [at, captured, begun] = [await pressedAt(page), await heardBy(page), await begunBy(page)];
  const inHand = await page.evaluate(
    () => performance.getEntriesByName("tankside-begun")[0]?.startTime ?? Number.NaN,
  );
  if (at === null) throw new Error("no run was on");
  return { captured, begun, pressedAt: at, inHand: inHand / 1000 };
}
