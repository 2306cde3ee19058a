// What a page plays, sample by sample, with the audio clock's own times: a worklet beside the
// loudspeaker hears all that goes to it. It runs on the audio thread, so a blocked page loses nothing.
/** A time on the audio clock and the same on the page's steady clock, seconds. */
export interface ClockPair {
  readonly audio: number;
  readonly steady: number;
}

export interface Captured {
  /** In order of time, a few a second: what is heard when, as the browser has it. */
  readonly pairs: readonly ClockPair[];
  readonly sampleRate: number;
  /** Frame on the audio clock of the first sample. */
  readonly firstFrame: number;
  /** Not a number where a busy machine let the capture miss some. */
  readonly samples: Float32Array;
}

/** Of either driver's pages. */
interface Opening {
  addInitScript(script: string | (() => void)): Promise<unknown>;
}

interface Evaluating {
  evaluate<T>(act: () => T): Promise<T>;
}

/** To be called before the page is opened. */
export async function captureSound(page: Opening): Promise<void> {
  // Some runners compile functions to call this helper, which the page would not know.
  await page.addInitScript("globalThis.__name = (named) => named");
  await page.addInitScript(tapAll);
}

/** In the page: whatever goes to a loudspeaker is noted, and every sound that is begun. */
function tapAll(): void {
  const tap = `registerProcessor("tap", class extends AudioWorkletProcessor {
  constructor() { super(); this.block = new Float32Array(4800); this.filled = 0; this.from = 0; }
  process([input]) {
    // A quantum that was skipped ends the block: what comes behind it lies where its own frame says.
    if (currentFrame !== this.from + this.filled || this.filled + 128 > this.block.length) this.hand();
    const heard = input[0];
    for (let i = 0; i < 128; i += 1) this.block[this.filled++] = heard ? heard[i] : 0;
    return true;
  }
  hand() {
    if (this.filled > 0) this.port.postMessage({ from: this.from, samples: this.block.slice(0, this.filled) });
    this.from = currentFrame;
    this.filled = 0;
  }
});`;
  const module = URL.createObjectURL(new Blob([tap], { type: "text/javascript" }));
  const heard: { from: number; samples: Float32Array }[] = [];
  const pairs: { audio: number; steady: number }[] = [];
  const begun: BegunSound[] = [];
  const world = window as unknown as {
    heard: typeof heard;
    pairs: typeof pairs;
    begun: typeof begun;
    heardRate: number;
  };
  world.heard = heard;
  world.pairs = pairs;
  world.begun = begun;
  const note = (context: BaseAudioContext) => {
    if (!(context instanceof AudioContext)) return;
    const { contextTime = 0, performanceTime = 0 } = context.getOutputTimestamp();
    if (contextTime > 0 && contextTime !== pairs.at(-1)?.audio)
      pairs.push({ audio: contextTime, steady: performanceTime / 1000 });
  };
  const taps = new WeakMap<BaseAudioContext, Promise<AudioWorkletNode>>();
  const connect = AudioNode.prototype.connect as (this: AudioNode, ...to: unknown[]) => unknown;
  const tapOf = (context: BaseAudioContext) => {
    const known = taps.get(context);
    if (known !== undefined) return known;
    const made = context.audioWorklet.addModule(module).then(() => {
      const node = new AudioWorkletNode(context, "tap", {
        channelCount: 1,
        channelCountMode: "explicit",
      });
      node.port.onmessage = ({ data }) => heard.push(data);
      world.heardRate = context.sampleRate;
      setInterval(() => note(context), 100);
      connect.call(node, context.destination);
      return node;
    });
    taps.set(context, made);
    return made;
  };
  AudioNode.prototype.connect = function (this: AudioNode, ...to: unknown[]) {
    const result = connect.call(this, ...to);
    if (to[0] === this.context.destination) {
      void tapOf(this.context).then((node) => connect.call(this, node));
    }
    return result;
  } as typeof AudioNode.prototype.connect;
  // Nothing sounds before it can be heard. On a busy machine a tap is long in coming, and the page would not wait: the
  // context that it makes first is made beforehand, and stands still until the page lets it sound.
  const Context = window.AudioContext;
  const ready: AudioContext[] = [];
  const options = { latencyHint: 0.02 } as const;
  window.AudioContext = new Proxy(Context, {
    construct(_, [wanted]: [AudioContextOptions?]) {
      const alike = wanted?.latencyHint === options.latencyHint && wanted.sampleRate === undefined;
      return (alike ? ready.pop() : undefined) ?? new Context(wanted);
    },
  });
  const first = new Context(options);
  void first.suspend();
  void tapOf(first).then(() => ready.push(first));
  const { resume } = AudioContext.prototype;
  AudioContext.prototype.resume = async function () {
    await tapOf(this);
    return resume.call(this);
  };
  const sounds = new WeakMap<AudioScheduledSourceNode, BegunSound>();
  const { start } = AudioBufferSourceNode.prototype;
  AudioBufferSourceNode.prototype.start = function (when = 0, ...more) {
    const sound = { at: when, seconds: this.buffer?.duration ?? 0, stopped: null };
    // The bed goes on and on, and is no sound of the run's.
    if (!this.loop) begun.push(sound);
    sounds.set(this, sound);
    start.call(this, when, ...more);
  };
  const { stop } = AudioScheduledSourceNode.prototype;
  AudioScheduledSourceNode.prototype.stop = function (when = 0) {
    const sound = sounds.get(this);
    if (sound) sound.stopped = when;
    stop.call(this, when);
  };
}

/** A sound that was begun, seconds on the audio clock. */
export interface BegunSound {
  readonly at: number;
  readonly seconds: number;
  /** When it was told to stop, if it was. */
  stopped: number | null;
}

/** Those that reached the ears: not what was stopped before it began. */
export async function begunBy(page: Evaluating): Promise<readonly BegunSound[]> {
  const all = await page.evaluate(() => (window as unknown as { begun: BegunSound[] }).begun);
  return all.filter(({ at, stopped }) => stopped === null || stopped > at + 0.02);
}

/** All that was heard so far. */
export async function heardBy(page: Evaluating): Promise<Captured> {
  const { rate, from, base64, pairs, lost } = await page.evaluate(() => {
    const world = window as unknown as {
      heard: { from: number; samples: Float32Array }[];
      pairs: { audio: number; steady: number }[];
      heardRate: number;
    };
    const first = world.heard[0]?.from ?? 0;
    const last = world.heard.at(-1);
    const all = new Int16Array(last === undefined ? 0 : last.from + last.samples.length - first);
    // Each block lies where its own frame says: on a busy machine the audio thread skips some.
    for (const { from, samples } of world.heard) {
      for (const [i, sample] of samples.entries()) {
        all[from - first + i] = Math.max(-1, Math.min(1, sample)) * 32767;
      }
    }
    const bytes = new Uint8Array(all.buffer);
    let text = "";
    for (let i = 0; i < bytes.length; i += 32768) {
      text += String.fromCharCode(...bytes.subarray(i, i + 32768));
    }
    const lost = world.heard.slice(1).flatMap((block, i) => {
      const before = world.heard[i];
      const end = before === undefined ? block.from : before.from + before.samples.length;
      return block.from > end ? [{ from: end - first, to: block.from - first }] : [];
    });
    return { lost, rate: world.heardRate, from: first, base64: btoa(text), pairs: world.pairs };
  });
  const bytes = Buffer.from(base64, "base64");
  const samples = new Float32Array(bytes.length / 2);
  for (let i = 0; i < samples.length; i += 1) samples[i] = bytes.readInt16LE(i * 2) / 32767;
  for (const { from, to } of lost) samples.fill(Number.NaN, from, to);
  return { sampleRate: rate, firstFrame: from, samples, pairs };
}
