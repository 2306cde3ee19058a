// What a session that is on costs: the time of its processes on a core, and the page's memory, minute by minute;
// and how soon a run whose browser was killed is heard again.
import type { Browser, CDPSession } from "puppeteer-core";
import { developedFor } from "../browser/guided-run.ts";
import { beginAndPress, developerOf, pause } from "../browser/lived-run.ts";
import { kill, type Life, live, newProfile } from "../browser/lives.ts";
import { serveDist } from "../browser/serve.ts";
import { spread, type Table } from "./table.ts";

/** An hour, for those who have one: `MINUTES=60 npm run bench`. */
const minutes = Number(process.env.MINUTES ?? 5);
const deaths = 5;

const worksheet = (time: string) =>
  JSON.stringify({
    ...JSON.parse(developedFor(time)),
    agitation: { first: 30, every: 30, for: 5, perInversion: 2.5, taps: 2 },
  });

/** What a run takes of a core and of memory. */
export const runningBench = (): Promise<Table> => servedTo(costs);
/** How soon it is heard again. */
export const returningBench = (): Promise<Table> => servedTo(returns);

async function servedTo(bench: (url: string) => Promise<Table>): Promise<Table> {
  const served = await serveDist();
  const table = await bench(served.url);
  await served.close();
  return table;
}

async function costs(url: string): Promise<Table> {
  const sheet = worksheet(`${minutes + 2}:00`);
  const profile = newProfile();
  const life = await live(profile, url, { captured: false, before: keepContexts });
  const client = await life.page.createCDPSession();
  const system = await life.browser.target().createCDPSession();
  const bare = await shareWith(life.browser, system);
  await beginAndPress(life, profile, sheet, developerOf(sheet).presses);
  // What is fetched and compiled is not the running of it.
  await pause(20_000);
  const rows = [];
  let before = { at: Date.now(), seconds: await processorSeconds(system) };
  for (let minute = 1; minute <= minutes; minute += 1) {
    await pause(60_000);
    const now = { at: Date.now(), seconds: await processorSeconds(system) };
    const share = shareOf(before, now);
    before = now;
    const heap = await heapOf(client);
    const lacked = await life.page.evaluate(underrun);
    const ours = percent(share - bare);
    rows.push({
      minute,
      "of a core": percent(share),
      "without bare sound": ours,
      "heap MB": heap.toFixed(2),
      "sound lacked so far, ms": lacked === null ? "not told" : (1000 * lacked).toFixed(1),
    });
  }
  await kill(life);
  return {
    title: `A session running for ${minutes} min, lit: page and sound (bare sound alone: ${percent(bare)})`,
    rows,
  };
}

/** Every context that the page makes. */
function keepContexts(): void {
  const contexts: AudioContext[] = [];
  Object.assign(window, { contexts });
  const Made = window.AudioContext;
  window.AudioContext = class extends Made {
    constructor(options?: AudioContextOptions) {
      super(options);
      contexts.push(this);
    }
  };
}

/** Seconds for which the browser had no sound ready that was due, as it counts them itself; null where it does not. */
function underrun(): number | null {
  interface Counting {
    readonly playbackStats?: { readonly underrunDuration: number };
  }
  const { contexts } = window as unknown as { readonly contexts: readonly Counting[] };
  const counted = contexts.flatMap(({ playbackStats }) => playbackStats?.underrunDuration ?? []);
  return counted.length === 0 ? null : counted.reduce((sum, each) => sum + each, 0);
}

interface Spent {
  /** ms since 1970. */
  readonly at: number;
  readonly seconds: number;
}

const shareOf = (from: Spent, to: Spent): number =>
  (1000 * (to.seconds - from.seconds)) / (to.at - from.at);

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

/** What the browser takes to play one soft looped buffer and nothing else: no page that sounds can take less. */
async function shareWith(browser: Browser, system: CDPSession): Promise<number> {
  const page = await browser.newPage();
  await page.evaluate(async () => {
    const context = new AudioContext({ latencyHint: 0.02 });
    const buffer = context.createBuffer(1, 24_000, 24_000);
    const source = new AudioBufferSourceNode(context, { buffer, loop: true });
    source.connect(context.destination);
    source.start();
    await context.resume();
  });
  await pause(5000);
  const before = { at: Date.now(), seconds: await processorSeconds(system) };
  await pause(40_000);
  const share = shareOf(before, { at: Date.now(), seconds: await processorSeconds(system) });
  await page.close();
  return share;
}

/** Of the page and of what sounds for it; the browser's own window and its drawing are no part of a session. */
async function processorSeconds(system: CDPSession): Promise<number> {
  const { processInfo } = await system.send("SystemInfo.getProcessInfo");
  return processInfo
    .filter(({ type }) => type === "renderer" || type === "utility")
    .reduce((sum, { cpuTime }) => sum + cpuTime, 0);
}

/** MB, after what is no longer needed has been let go of. */
async function heapOf(client: CDPSession): Promise<number> {
  await client.send("HeapProfiler.collectGarbage");
  const { usedSize } = await client.send("Runtime.getHeapUsage");
  return usedSize / 1e6;
}

async function returns(url: string): Promise<Table> {
  const sheet = worksheet("9:00");
  const profile = newProfile();
  let life: Life = await live(profile, url);
  await beginAndPress(life, profile, sheet, developerOf(sheet).presses);
  const took: number[] = [];
  for (let death = 0; death < deaths; death += 1) {
    await pause(4000);
    await kill(life);
    life = await live(profile, url);
    await life.page.waitForFunction(
      () => performance.getEntriesByName("tankside-begun").length > 0,
      { timeout: 30_000 },
    );
    const back = await life.page.evaluate(
      () => performance.getEntriesByName("tankside-begun")[0]?.startTime ?? Number.NaN,
    );
    took.push(back / 1000);
  }
  await kill(life);
  const { median, most } = spread(took);
  return {
    title: `A run whose browser was killed ${deaths} times, heard again without a press`,
    rows: [{ "median s": median.toFixed(2), "longest s": most.toFixed(2) }],
  };
}
