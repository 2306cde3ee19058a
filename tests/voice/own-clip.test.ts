import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { gain, loudness, truePeak } from "../../src/tones/loudness.ts";
import { type OwnClip, ownClip, type WhyNot } from "../../src/voice/own-clip.ts";
import { openPack } from "../../src/voice/pack.ts";
import { toSound } from "../../src/voice/speaker.ts";
import { packBytes, packIndex, phrases } from "./built-pack.ts";

const pack = await openPack(packIndex, packBytes);
const rate = 24_000;

/** White noise from a seed, its loudness as a level in dBFS (root of the mean square). */
function noise(samples: number, level: number, seed = 1): Float32Array {
  let state = seed;
  return Float32Array.from({ length: samples }, () => {
    state = (state * 48271) % 2147483647;
    return gain(level) * Math.sqrt(3) * ((2 * state) / 2147483647 - 1);
  });
}

interface Take {
  /** Seconds of the room before the words, and after them. */
  readonly before: number;
  readonly after: number;
  /** dB that the words are raised by, and the room's noise in dBFS. */
  readonly words: number;
  readonly room: number;
  /** Amplitude of a 30 Hz hum, and of a steady offset. */
  readonly hum?: number;
  readonly offset?: number;
}

/** A phrase of the pack as a microphone would have heard it. */
function recorded(words: Float32Array, take: Take): Float32Array {
  const before = Math.round(take.before * rate);
  const all = noise(before + words.length + Math.round(take.after * rate), take.room);
  for (let i = 0; i < all.length; i += 1) {
    const hum = (take.hum ?? 0) * Math.sin((2 * Math.PI * 30 * i) / rate);
    const word = (words[i - before] ?? 0) * gain(take.words);
    all[i] = (all[i] ?? 0) + hum + (take.offset ?? 0) + word;
  }
  return all;
}

const quietRoom: Take = { before: 0.6, after: 0.5, words: -6, room: -65 };

function clipOf(result: OwnClip): Float32Array {
  if (result.kind === "refused") throw new Error(`refused: ${result.why.kind}`);
  return toSound(result.samples);
}

function whyOf(result: OwnClip): WhyNot["kind"] | null {
  return result.kind === "refused" ? result.why.kind : null;
}

/** Every so many of the phrases, so that all kinds of beginnings and endings are among them. */
const some = phrases.filter((_, i) => i % 13 === 0);

/** Each recorded in a quiet room, worked on once for all tests. */
const quietClips = new Map(
  some.map((text) => [text, clipOf(ownClip(recorded(pack.decode(text), quietRoom), 5))]),
);

describe("A clip of one's own", () => {
  test("is a whole number of hundredths of a second, at −20 LUFS within 0.5 LU, and at most −3 dBTP", () => {
    for (const [text, clip] of quietClips) {
      expect(clip.length % 240, text).toBe(0);
      expect(Math.abs(loudness(clip, rate) + 20), text).toBeLessThan(0.5);
      expect(truePeak(clip), text).toBeLessThanOrEqual(-2.99);
    }
  });

  test("has the same loudness however near the microphone was", () => {
    const words = pack.decode("Get ready to pour out.");
    for (const level of [-24, -15, -6, 0]) {
      const clip = clipOf(ownClip(recorded(words, { ...quietRoom, words: level, room: -75 }), 5));
      expect(Math.abs(loudness(clip, rate) + 20)).toBeLessThan(0.5);
    }
  });

  test("has peaks held down where its words are softer than its knocks, and is no softer for it", () => {
    const words = new Float32Array(pack.decode("Get ready to pour out."));
    for (let i = 0; i < 40; i += 1) words[9000 + i] = 0.9 * (i % 2 === 0 ? 1 : -1);
    const clip = clipOf(ownClip(recorded(words, { ...quietRoom, words: 0 }), 5));
    expect(Math.abs(loudness(clip, rate) + 20)).toBeLessThan(0.5);
    expect(truePeak(clip)).toBeLessThanOrEqual(-2.99);
  });

  // Tolerance: at most 20 ms of the words are lost, and at most 100 ms of the room are left in all.
  test("is cut to its words at both ends, soft consonants kept", () => {
    for (const [text, clip] of quietClips) {
      const words = pack.decode(text);
      const lasts = clip.length / rate;
      expect(lasts, text).toBeGreaterThan(words.length / rate - 0.02);
      expect(lasts, text).toBeLessThan(words.length / rate + 0.1);
    }
  });

  test("keeps its length in a room 30 dB below the words, within 150 ms", () => {
    for (const text of some) {
      const words = pack.decode(text);
      const clip = clipOf(ownClip(recorded(words, { ...quietRoom, words: 0, room: -48 }), 5));
      expect(Math.abs(clip.length - words.length) / rate, text).toBeLessThan(0.15);
    }
  });

  test("begins and ends in silence", () => {
    const clip = clipOf(ownClip(recorded(pack.decode("Lights out."), quietRoom), 5));
    expect([clip[0], clip.at(-1)]).toEqual([0, 0]);
  });

  test("is the same with a hum and an offset beneath it as without, within a hundredth of a second", () => {
    const words = pack.decode("Lights out.");
    const clean = clipOf(ownClip(recorded(words, quietRoom), 5));
    const hum = clipOf(ownClip(recorded(words, { ...quietRoom, hum: 0.1, offset: 0.05 }), 5));
    expect(Math.abs(hum.length - clean.length)).toBeLessThanOrEqual(240);
  });

  test("loses the click of the key that ended the recording", () => {
    const words = pack.decode("Lights out.");
    const plain = recorded(words, quietRoom);
    const clicked = new Float32Array(plain);
    for (let i = 0; i < 400; i += 1) clicked[clicked.length - 900 + i] = i % 2 === 0 ? 0.3 : -0.3;
    expect(clipOf(ownClip(clicked, 5)).length).toBe(clipOf(ownClip(plain, 5)).length);
  });

  test("can be made of words with no silence around them, none of which is lost", () => {
    for (const text of some) {
      const words = pack.decode(text);
      const clip = clipOf(ownClip(words, 5));
      expect(clip.length, text).toBe(words.length);
    }
  });
});

describe("A recording is refused", () => {
  const words = pack.decode("Get ready to pour out.");

  test("where it is too quiet, or silent, or empty", () => {
    const far = recorded(words, { ...quietRoom, words: -45, room: -90 });
    for (const it of [far, new Float32Array(rate), new Float32Array(0)])
      expect(whyOf(ownClip(it, 5))).toBe("too-quiet");
  });

  test("where it was too loud for the microphone", () => {
    const loud = recorded(words, { ...quietRoom, words: 12 });
    const clipped = loud.map((sample) => Math.max(-1, Math.min(1, sample)));
    expect(whyOf(ownClip(clipped, 5))).toBe("clipped");
  });

  test("where it holds nothing but noise, or words no louder than the noise", () => {
    expect(whyOf(ownClip(noise(2 * rate, -30), 5))).toBe("noise");
    const drowned = recorded(words, { ...quietRoom, words: -10, room: -25 });
    expect(whyOf(ownClip(drowned, 5))).toBe("noise");
  });

  test("where it is a mere knock", () => {
    const knock = recorded(noise(1200, -20), quietRoom);
    expect(["too-short", "noise"]).toContain(whyOf(ownClip(knock, 5)));
    const cough = recorded(noise(2880, -20), quietRoom);
    expect(whyOf(ownClip(cough, 5))).toBe("too-short");
  });

  test("where it lasts more than 1.6 times what the script allows, which is said in seconds", () => {
    const lasts = words.length / rate;
    expect(whyOf(ownClip(recorded(words, quietRoom), lasts / 1.4))).toBeNull();
    const result = ownClip(recorded(words, quietRoom), lasts / 1.9);
    expect(result).toMatchObject({ kind: "refused", why: { kind: "too-long" } });
  });

  test("where it lasts more than 8 seconds, whatever the script allows", () => {
    const long = new Float32Array(9 * rate);
    for (let at = 0; at < long.length; at += words.length) {
      long.set(words.subarray(0, Math.min(words.length, long.length - at)), at);
    }
    expect(ownClip(recorded(long, quietRoom), 20)).toMatchObject({
      why: { kind: "too-long", most: 8 },
    });
  });

  test("or becomes a clip, whatever it holds: never neither, and nothing is thrown", () => {
    fc.assert(
      fc.property(
        fc.float32Array({ min: -1, max: 1, noNaN: true, maxLength: 4000 }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        (samples, within) => {
          const result = ownClip(samples, within);
          if (result.kind === "clip") expect(result.samples.length % 240).toBe(0);
        },
      ),
    );
  });
});
