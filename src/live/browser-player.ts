// The run's player in a browser: cue sounds as buffers on the Web Audio clock, behind one gain.
// Under them lies a bed too soft to notice, so that links stay awake and the page counts as sounding.
import type { Cue } from "../timeline/score.ts";
import { type Sources, soundOf } from "../timeline/sound.ts";
import { sampleRate } from "../tones/designs.ts";
import type { Player } from "./run.ts";

/** −60 dB under full scale. */
const BED_LEVEL = 0.001;
const BED_SECONDS = 4;
/** A sound that is stopped is faded over this many seconds, so that it does not click. */
const FADE = 0.01;

export interface BrowserPlayer extends Player {
  /** As `play`, but from sources other than the player's own. */
  playFrom(other: Sources, cue: Cue, at: number): { stop(): void };
  close(): void;
}

export function openBrowserPlayer(context: AudioContext, sources: Sources): BrowserPlayer {
  const master = context.createGain();
  master.connect(context.destination);
  const bed = bedOf(context);
  bed.connect(master);
  bed.start();
  const tones = new Map<string, AudioBuffer>();

  function bufferOf(cue: Cue, from: Sources): AudioBuffer {
    const sound = soundOf(cue, from);
    const key = cue.channel === "tone" ? `${cue.sounds[0]} ${sound.length}` : null;
    const known = key === null ? undefined : tones.get(key);
    if (known !== undefined) return known;
    const buffer = context.createBuffer(1, Math.max(sound.length, 1), sampleRate);
    buffer.getChannelData(0).set(sound);
    if (key !== null) tones.set(key, buffer);
    return buffer;
  }

  function start(buffer: AudioBuffer, at: number) {
    const source = context.createBufferSource();
    source.buffer = buffer;
    const gain = context.createGain();
    source.connect(gain).connect(master);
    source.onended = () => gain.disconnect();
    source.start(at);
    return {
      stop() {
        const now = context.currentTime;
        gain.gain.setValueAtTime(1, now);
        gain.gain.linearRampToValueAtTime(0, now + FADE);
        source.stop(now + FADE);
      },
    };
  }

  const pressTone = new Float32Array(sources.tone("press"));
  const press = context.createBuffer(1, pressTone.length, sampleRate);
  press.getChannelData(0).set(pressTone);

  return {
    now: () => context.currentTime,
    play: (cue, at) => start(bufferOf(cue, sources), at),
    playFrom: (other, cue, at) => start(bufferOf(cue, other), at),
    answerPress: () => void start(press, context.currentTime),
    close() {
      bed.stop();
      master.disconnect();
    },
  };
}

/** Noise from a fixed seed, looped. */
function bedOf(context: AudioContext): AudioBufferSourceNode {
  const buffer = context.createBuffer(1, BED_SECONDS * sampleRate, sampleRate);
  const noise = buffer.getChannelData(0);
  let seed = 1;
  for (let i = 0; i < noise.length; i += 1) {
    seed = (seed * 48271) % 2147483647;
    noise[i] = BED_LEVEL * ((2 * seed) / 2147483647 - 1);
  }
  const source = context.createBufferSource();
  source.buffer = buffer;
  source.loop = true;
  return source;
}
