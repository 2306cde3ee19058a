// What a page does with audio elements: each is heard by the capture, since what an element plays goes by no
// node of the page's own, and every source, seek and media key's handler is noted.
import type { Page } from "playwright-core";

export interface Elements {
  /** Of each element that ever played, what it took as its sources, and when: ms since the page began. */
  readonly sources: readonly (readonly number[])[];
  /** Every seek: when, ms since the page began, and where to, seconds. */
  readonly seeks: readonly { readonly when: number; readonly to: number }[];
  readonly keys: readonly string[];
  /**
   * The steady clock beside the audio clock, several times a second, since a busy machine's slips. That of
   * what is being made: an element that is captured knows nothing of what the way to the loudspeaker takes.
   */
  readonly clock: readonly { readonly steady: number; readonly audio: number }[];
  /** When a key last went down, seconds on the steady clock. */
  readonly keyAt: number;
}

/** To be called before the page is opened, and behind `captureSound`. */
export async function captureElements(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const sources: number[][] = [];
    const seeks: { when: number; to: number }[] = [];
    const keys = new Map<string, () => void>();
    const clock: { steady: number; audio: number }[] = [];
    const world = { sources, seeks, keys, clock, keyAt: 0 };
    Object.assign(window, { elements: world });

    window.addEventListener(
      "keydown",
      (event) => {
        world.keyAt = event.timeStamp / 1000;
      },
      true,
    );

    let context: AudioContext | null = null;
    setInterval(() => {
      if (context === null) return;
      clock.push({ steady: performance.now() / 1000, audio: context.currentTime });
    }, 100);
    const known: HTMLMediaElement[] = [];
    const heard = new Set<HTMLMediaElement>();
    function hear(): void {
      for (const element of known) {
        if (context === null || heard.has(element)) continue;
        heard.add(element);
        context.createMediaElementSource(element).connect(context.destination);
      }
    }
    const Made = window.AudioContext;
    window.AudioContext = class extends Made {
      constructor(options?: AudioContextOptions) {
        super(options);
        context = this;
        hear();
      }
    };
    const numberOf = (element: HTMLMediaElement) => {
      if (!known.includes(element)) {
        known.push(element);
        sources.push([]);
      }
      return known.indexOf(element);
    };
    const { prototype } = HTMLMediaElement;
    const play = prototype.play;
    prototype.play = function () {
      numberOf(this);
      hear();
      return play.call(this);
    };
    const src = Object.getOwnPropertyDescriptor(prototype, "src");
    Object.defineProperty(prototype, "src", {
      ...src,
      set(value: string) {
        sources[numberOf(this)]?.push(performance.now());
        src?.set?.call(this, value);
      },
    });
    const currentTime = Object.getOwnPropertyDescriptor(prototype, "currentTime");
    Object.defineProperty(prototype, "currentTime", {
      ...currentTime,
      set(to: number) {
        seeks.push({ when: performance.now(), to });
        currentTime?.set?.call(this, to);
      },
    });
    const setActionHandler = MediaSession.prototype.setActionHandler;
    MediaSession.prototype.setActionHandler = function (action, handler) {
      if (handler === null) keys.delete(action);
      else keys.set(action, handler as () => void);
      setActionHandler.call(this, action, handler);
    };
  });
}

interface World {
  readonly elements: {
    readonly sources: Elements["sources"];
    readonly seeks: Elements["seeks"];
    readonly keys: Map<string, () => void>;
    readonly clock: Elements["clock"];
    readonly keyAt: number;
  };
}

export function elementsOf(page: Page): Promise<Elements> {
  return page.evaluate(() => {
    const { keys, ...noted } = (window as unknown as World).elements;
    return { ...noted, keys: [...keys.keys()] };
  });
}

/** As a headset's button would. @returns when, seconds on the steady clock. */
export function pressMediaKey(page: Page, key: string): Promise<number> {
  return page.evaluate((action) => {
    const now = performance.now() / 1000;
    (window as unknown as World).elements.keys.get(action)?.();
    return now;
  }, key);
}

/** The audio clock at a time on the steady clock, seconds: the middle of what was read around it. */
export function audioAt({ clock }: Elements, steady: number): number {
  const near = clock.filter((read) => Math.abs(read.steady - steady) < 1.5);
  const apart = near.map((read) => read.audio - read.steady).toSorted((a, b) => a - b);
  return steady + (apart[Math.floor(apart.length / 2)] ?? Number.NaN);
}

/** The audio clock goes in steps, and is read in the midst of one, seconds. */
const STEP = 0.012;

/**
 * By how much a busy machine's audio clock slipped about a time on the steady clock, seconds: what is heard then may
 * be as far off.
 */
export function slippedBy({ clock }: Elements, steady: number): number {
  const near = clock.filter((read) => Math.abs(read.steady - steady) < 1.5);
  const apart = near.map((read) => read.audio - read.steady);
  return Math.max(0, Math.max(...apart) - Math.min(...apart) - STEP);
}
