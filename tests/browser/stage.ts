// A browser, and the built page served for as long as the tests of one file run.
import type { Browser } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { launchChromium } from "./chromium.ts";
import { type Served, serveDist } from "./serve.ts";

export interface Stage {
  readonly browser: Browser;
  readonly served: Served;
}

/** For pages that are not about the network: a service worker fetches the whole program once more. */
export const withoutWorker = { serviceWorkers: "block" } as const;

/** One for all files of a process, since starting one takes two seconds of a core. It ends with the process. */
const browsers = new Map<string, Promise<Browser>>();

function browserWith(flags: readonly string[]): Promise<Browser> {
  const name = flags.join(" ");
  const browser = browsers.get(name) ?? launchChromium(flags);
  browsers.set(name, browser);
  return browser;
}

/** Filled before the first test begins. */
export function setStage(flags: readonly string[] = []): Stage {
  const stage: { -readonly [part in keyof Stage]?: Stage[part] } = {};
  beforeAll(async () => {
    [stage.browser, stage.served] = await Promise.all([browserWith(flags), serveDist()]);
  }, 60_000);
  afterAll(async () => {
    await Promise.all(stage.browser?.contexts().map((context) => context.close()) ?? []);
    await stage.served?.close();
  });
  return stage as Stage;
}
