// The run's player in a browser: cue sounds as buffers on the Web Audio clock, behind one gain.
// Under them lies a bed too soft to notice, so that links stay awake and the page counts as sounding.
import type { Cue } from "../timeline/score.ts";
import { type Sources, soundOf } from "../timeline/sound.ts";
import { bedNoise } from "../tones/bed.ts";
import { sampleRate } from "../tones/designs.ts";
import type { BrowserAudio } from "./browser-audio.ts";
import type { OwnSound } from "./knocks.ts";
import type { Placed, Player } from "./placer.ts";

/** A sound that is stopped is faded over this many seconds, so that it does not click. */
const FADE = 0.01;

export interface BrowserPlayer extends Player {
  /** As `play`, but from sources other than the player's own. */
  playFrom(other: Sources, cue: Cue, at: number): Placed;
  /** Sounds at once, or not at all: the answer to a press. */
  answerPress(): void;
  /** What was placed and is not long over, on the context's clock. */
  sounding(): readonly OwnSound[];
  close(): void;
}

/** A sound that is over is remembered so long, seconds: it is still in the room, and in the microphone. */
const REMEMBERED = 2;

/** What lies between the sounds and the loudspeaker, on one context. */
interface Graph {
  readonly context: AudioContext;
  readonly master: GainNode;
  readonly bed: AudioBufferSourceNode;
}

/** @param delay seconds by which what is played is heard late, as with wireless headphones. */
export function openBrowserPlayer(
  audio: BrowserAudio,
  sources: Sources,
  delay: number,
): BrowserPlayer {
  let built: Graph | null = null;
  const tones = new Map<string, AudioBuffer>();
  let own: readonly OwnSound[] = [];

  /** Anew where the context is another one: the one before is dead. */
  function graph(): Graph {
    const context = audio.context();
    if (built?.context === context) return built;
    const master = context.createGain();
    master.connect(context.destination);
    const bed = bedOf(context);
    bed.connect(master);
    bed.start();
    built = { context, master, bed };
    return built;
  }

  function bufferOf(cue: Cue, from: Sources): AudioBuffer {
    const sound = soundOf(cue, from);
    const key = cue.channel === "tone" ? `${cue.sounds[0]} ${sound.length}` : null;
    const known = key === null ? undefined : tones.get(key);
    if (known !== undefined) return known;
    const buffer = bufferWith(graph().context, sound);
    if (key !== null) tones.set(key, buffer);
    return buffer;
  }

  function start(buffer: AudioBuffer, kind: OwnSound["kind"], at: number): Placed {
    const { context, master } = graph();
    const source = context.createBufferSource();
    source.buffer = buffer;
    source.connect(master);
    const from = Math.max(at, context.currentTime);
    source.start(from);
    const one: OwnSound = { from, to: from + buffer.duration, kind };
    own = [...own.filter(({ to }) => to > context.currentTime - REMEMBERED), one];
    return {
      begun: () => context.currentTime >= from,
      stop() {
        const now = context.currentTime;
        own = own.map((each) => (each === one ? { ...one, to: Math.min(one.to, now) } : each));
        // Only what is stopped has a gain of its own: whatever is laid ahead is asked for its sound all the while.
        const gain = context.createGain();
        source.disconnect();
        source.connect(gain).connect(master);
        source.onended = () => gain.disconnect();
        gain.gain.setValueAtTime(1, now);
        gain.gain.linearRampToValueAtTime(0, now + FADE);
        source.stop(now + FADE);
      },
    };
  }

  const press = sources.tone("press");
  /** Where the context's clock stood at the last answer. */
  let answeredAt = Number.NaN;
  const placed = (at: number) => audio.audioAt(at) - delay;
  graph();

  return {
    now: () => audio.clocks().steady,
    play: (cue, at) => start(bufferOf(cue, sources), kindOf(cue), placed(at)),
    playFrom: (other, cue, at) => start(bufferOf(cue, other), kindOf(cue), placed(at)),
    sounding: () => own,
    answerPress() {
      const { context } = graph();
      // On a clock that stands still answers would lie on each other, and sound all at once when it goes on.
      if (context.state !== "running" || context.currentTime === answeredAt) return;
      answeredAt = context.currentTime;
      start(bufferWith(context, press), "tone", answeredAt);
    },
    close() {
      built?.bed.stop();
      built?.master.disconnect();
    },
  };
}

const kindOf = (cue: Cue): OwnSound["kind"] => (cue.channel === "voice" ? "voice" : "tone");

function bufferWith(context: AudioContext, samples: Float32Array): AudioBuffer {
  const buffer = context.createBuffer(1, Math.max(samples.length, 1), sampleRate);
  buffer.getChannelData(0).set(samples);
  return buffer;
}

function bedOf(context: AudioContext): AudioBufferSourceNode {
  const source = context.createBufferSource();
  source.buffer = bufferWith(context, bedNoise());
  source.loop = true;
  return source;
}
