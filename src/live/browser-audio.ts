// The page's one audio context and the clocks around it, in a browser. A context may say that it runs and
// stand still: what its clock does is believed, never what it says. Where it is dead another takes its place.
import type { Clocks } from "./clocks.ts";
import { onPageClock } from "./page-clock.ts";
import { audioAt, type Known, knownWith, nothingKnown, type Pair } from "./pairing.ts";

export interface Checked {
  readonly sounding: boolean;
  /** Seconds by which what was placed before lies wrong on the audio clock. */
  readonly off: number;
  /** Whether it is worth looking again soon: what was read just now may have been wrong. */
  readonly unsure: boolean;
}

export interface BrowserAudio {
  /** To be called from a press, or browsers will not let it sound. */
  awake(): Promise<AudioContext>;
  /** The context in use; what was built on another is dead. */
  context(): AudioContext;
  clocks(): Clocks;
  /** Seconds on the context's clock at which a time on the steady clock is heard. */
  audioAt(steady: number): number;
  /** To be called now and then: whether sound went on since the last time. Tries to wake what stands still. */
  check(): Checked;
  /** Calls back where another context sounds in place of one that was dead. */
  onAnother(act: () => void): void;
}

/** One for this life of the page. */
const life = crypto.randomUUID();

/** Seconds that are mixed at a time: a press is answered within a tenth, and a core is woken half as often as usual. */
const LATENCY = 0.02;
/** Of the time between two checks, the part that the audio clock must have gone to count as alive. */
const ALIVE = 0.3;
/** Checks in a row that found it dead before another context takes its place. */
const PATIENCE = 3;
/** Sound that has only begun is read so often, so many ms apart: each of another block that was mixed. */
const FIRST = { readings: 5, apart: 12 };
/** Two clocks read one after the other belong together where no more than this passed between, ms. */
const TOGETHER = 0.5;
/** A machine that is too busy for that takes the best of so many. */
const TRIES = 12;
/** What was placed lies wrong from so much on, seconds. */
const WORTH_MENDING = 0.0007;
/** Checks closer than this, seconds, tell nothing: the audio clock goes in steps. */
const APART = 0.2;

export function browserAudio(): BrowserAudio {
  let context: AudioContext | null = null;
  let known: Known = nothingKnown;
  /** What the clocks of contexts that are gone had come to: the audio clock goes on over all of them. */
  let before = 0;
  let last: { readonly steady: number; readonly audio: number } | null = null;
  let alive = false;
  /** By how much the two clocks differed when it was last told that what was placed lies wrong. */
  let laid: number | null = null;
  let dead = 0;
  /** The one that a check found alive last. */
  let sounded: AudioContext | null = null;
  let another = () => {};

  const steady = () => performance.now() / 1000;
  const inUse = (): AudioContext => {
    context ??= new AudioContext({ latencyHint: LATENCY });
    return context;
  };
  const audio = () => before + (context?.currentTime ?? 0);

  function read(): void {
    known = knownWith(known, pairOf(inUse()));
  }

  async function readFirst(): Promise<void> {
    // Behind the last one too: whoever reads next shall find another block.
    for (let reading = 0; reading < FIRST.readings; reading += 1) {
      read();
      await pause(FIRST.apart);
    }
  }

  function replace(): void {
    before += context?.currentTime ?? 0;
    void context?.close().catch(() => {});
    context = null;
    known = nothingKnown;
    void inUse()
      .resume()
      .catch(() => {});
  }

  return {
    async awake() {
      // Some browsers keep the promise waiting for as long as they do not let it sound.
      await Promise.race([inUse().resume(), pause(1000)]);
      await untilItSounds(inUse());
      if (known.pairing.length === 0) await readFirst();
      return inUse();
    },
    context: inUse,
    clocks: () => ({ life, ...steadyAndWall(), audio: audio() }),
    audioAt(at) {
      if (known.pairing.length === 0) read();
      return audioAt(known.pairing, at);
    },
    check() {
      const now = { steady: steady(), audio: audio() };
      const passed = now.steady - (last?.steady ?? Number.NEGATIVE_INFINITY);
      if (last === null) alive = context?.state === "running";
      else if (passed < APART) return { sounding: alive, off: 0, unsure: false };
      else alive = now.audio - last.audio > ALIVE * passed;
      last = now;
      if (!alive) {
        known = nothingKnown;
        dead += 1;
        if (dead % PATIENCE === 0) replace();
        else {
          void inUse()
            .resume()
            .catch(() => {});
        }
        return { sounding: false, off: 0, unsure: false };
      }
      dead = 0;
      if (sounded !== null && sounded !== context) another();
      sounded = context;
      read();
      const unsure = known.doubted !== null;
      const apart = audioAt(known.pairing, now.steady) - now.steady;
      const off = laid === null ? 0 : laid - apart;
      if (laid !== null && Math.abs(off) < WORTH_MENDING) return { sounding: true, off: 0, unsure };
      laid = apart;
      return { sounding: true, off, unsure };
    },
    onAnother(act) {
      another = act;
    },
  };
}

/** Both clocks at one time, as far as the browser knows what leaves the device when. */
function pairOf(context: AudioContext): Pair {
  const audio = context.currentTime;
  return { audio, steady: onPageClock(context, audio, performance.now() / 1000) };
}

/** Before it sounds, a browser does not know yet how far behind its own clock it is heard. */
async function untilItSounds(context: AudioContext): Promise<void> {
  for (let tries = 0; tries < 20; tries += 1) {
    if ((context.getOutputTimestamp?.().contextTime ?? 1) > 0) return;
    await pause(10);
  }
}

/** Read together: a busy machine may do something else between the two, and a run would come back that much off. */
function steadyAndWall(): { readonly steady: number; readonly wall: number } {
  let best = { steady: 0, wall: 0, took: Number.POSITIVE_INFINITY };
  for (let tries = 0; tries < TRIES && best.took > TOGETHER; tries += 1) {
    const before = performance.now();
    const wall = Date.now();
    const took = performance.now() - before;
    if (took < best.took) best = { steady: before / 1000, wall, took };
  }
  const { steady, wall } = best;
  return { steady, wall };
}

const pause = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));
