// Designs in, samples out: each tone played once by Tone.js, offline. Build only, in Node.
// One family, a fog signal's: low and round, with harmonics that carry over running water. The
// signals differ by rhythm and by the way they move (up, down, level), before they differ in pitch.
import * as webAudio from "node-web-audio-api";
import { sampleRate, type ToneName, toneNames, toneSamples, toneSeconds } from "./designs.ts";
import { gain, momentary } from "./loudness.ts";

interface Note {
  /** Fundamental, Hz. */
  readonly pitch: number;
  /** Seconds from the start of the tone. */
  readonly at: number;
  readonly lasts: number;
}

interface Design {
  readonly notes: readonly Note[];
  /** Loudness of its loudest 400 ms, LUFS; the voice lies at −20. */
  readonly level: number;
  /** Seconds in which each note swells; a moment's is short, so that it can be landed on. */
  readonly swell: number;
}

const note = (pitch: number, at: number, lasts: number): Note => ({ pitch, at, lasts });
const SHARP = 0.003;

const designs: { readonly [name in ToneName]: Design } = {
  // Two steps up: filling.
  "pour-in": { notes: [note(220, 0, 0.2), note(330, 0.22, 0.24)], level: -18, swell: SHARP },
  // Three quick blasts and a long one lower down: nothing else repeats, nothing else is this long.
  "pour-out": {
    notes: [note(392, 0, 0.1), note(392, 0.14, 0.1), note(392, 0.28, 0.1), note(165, 0.44, 0.6)],
    level: -16,
    swell: SHARP,
  },
  // One level blast: go on until the next.
  agitate: { notes: [note(294, 0, 0.44)], level: -18, swell: SHARP },
  // A long step down: set it down.
  rest: { notes: [note(262, 0, 0.14), note(175, 0.16, 0.3)], level: -18, swell: SHARP },
  // The hands' own beat: over is higher, back is lower, both short.
  over: { notes: [note(494, 0, 0.16)], level: -25, swell: SHARP },
  back: { notes: [note(370, 0, 0.16)], level: -25, swell: SHARP },
  count: { notes: [note(587, 0, 0.1)], level: -21, swell: SHARP },
  press: { notes: [note(698, 0, 0.04), note(880, 0.05, 0.04)], level: -24, swell: SHARP },
  confirm: { notes: [note(196, 0, 0.32)], level: -30, swell: 0.08 },
};

/** Strengths of the fundamental and its harmonics: the first eight within 12 dB of one another. */
const partials = [1, 0.95, 0.85, 0.7, 0.6, 0.45, 0.35, 0.28, 0.16, 0.1];
/** Seconds in which a note dies once it is let go. */
const DIES = 0.025;
/** Samples over which the very end is brought to nothing (5 ms). */
const FADE = 120;

/** All that the samples follow from, as text. */
export const tonesMade = (): string =>
  JSON.stringify({ tones: 1, designs, partials, toneSeconds, sampleRate, DIES, FADE });

/** 24 kHz mono, of exactly the length that designs.ts states. The same designs give the same samples. */
export async function renderTones(): Promise<ReadonlyMap<ToneName, Float32Array>> {
  // Tone.js takes the Web Audio classes from the global scope, and looks for a window there.
  Object.assign(globalThis, webAudio, { window: globalThis });
  const Tone = await import("tone");
  const rendered = new Map<ToneName, Float32Array>();
  for (const name of toneNames) {
    const { notes, swell, level } = designs[name];
    const buffer = await Tone.Offline(
      () => {
        for (const { pitch, at, lasts } of notes) {
          const horn = new Tone.Synth({
            oscillator: { type: "custom", partials },
            envelope: { attack: swell, decay: 0.08, sustain: 0.75, release: DIES },
          }).toDestination();
          horn.triggerAttackRelease(pitch, lasts, at);
        }
      },
      toneSeconds[name] + 0.01,
      1,
      sampleRate,
    );
    rendered.set(name, levelled(buffer.getChannelData(0).slice(0, toneSamples(name)), level));
  }
  return rendered;
}

function levelled(samples: Float32Array, level: number): Float32Array {
  const factor = gain(level - momentary(samples, sampleRate));
  return samples.map((sample, i) => {
    const fade = Math.min(1, (samples.length - 1 - i) / FADE);
    return sample * factor * fade;
  });
}
