import { describe, expect, test } from "vitest";
import type { Cue, Section } from "../../src/timeline/score.ts";
import { type Sources, soundOf } from "../../src/timeline/sound.ts";
import { sampleRate } from "../../src/tones/designs.ts";
import { headerBytes, type Laid, lay, pieceBytes } from "../../src/track/pocket-track.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled } from "../timeline/scene.ts";

const { sections } = compiled({
  ...gullrock,
  developer: { ...gullrock.developer, leaflet: [{ temperature: { f: 69 }, time: "1:30" }] },
  baths: { stop: { time: "0:30" }, fixer: { time: "1:00" }, wash: { time: "1:00" } },
});

/** Constants stand for sounds, so that where each lies can be read off the samples; words are never the loudest. */
const markers: Sources = {
  phrase: () => new Float32Array(sampleRate * 9).fill(0.25),
  tone: (name) => new Float32Array(sampleRate * 2).fill(name === "confirm" ? 0.125 : 0.5),
};
const marked = (cue: Cue) => soundOf(cue, markers);

/** One value stands so far from another by the bed and by rounding to 16 bits. */
const BED = 0.001 + 1 / 32767;

function samplesOf(laid: Laid, section: number): Float32Array {
  const pieces = laid.sections[section]?.pieces.map((piece) => pieceBytes(piece, marked)) ?? [];
  return Float32Array.from(joined(pieces), (sample) => sample / 32767);
}

function joined(pieces: readonly Uint8Array[]): Int16Array {
  const bytes = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    bytes.set(piece, at);
    at += piece.length;
  }
  return new Int16Array(bytes.buffer);
}

function mixedOf({ cues }: Section, samples: number): Float32Array {
  const mixed = new Float32Array(samples);
  const press = { at: 0, until: 0.12, channel: "tone", sounds: ["press"] } as unknown as Cue;
  for (const cue of [press, ...cues]) {
    const at = Math.round(cue.at * sampleRate);
    const sound = marked(cue);
    for (let j = 0; j < sound.length; j += 1) {
      mixed[at + j] = Math.min(1, (mixed[at + j] ?? 0) + (sound[j] ?? 0));
    }
  }
  return mixed;
}

describe("A session as one track for the pocket", () => {
  const laid = lay(sections);
  const place = sections.findIndex(({ id }) => id === "developer");
  const bath = samplesOf(laid, place);

  test("holds every cue of a section at its place, to the sample, and the press tone at its time 0", () => {
    for (const [i, section] of sections.entries()) {
      if (i !== place && i !== place - 1) continue;
      const track = i === place ? bath : samplesOf(laid, i);
      const waits = Math.round((laid.sections[i]?.waits ?? 0) * sampleRate);
      const mixed = mixedOf(section, waits);
      const off = mixed.findIndex((sample, j) => !(Math.abs((track[j] ?? 9) - sample) <= BED));
      expect(off, `${section.id}, sample`).toBe(-1);
    }
  });

  test("waits 10 min behind each section, with a sign of life every 30 s for 8 min and nothing else", () => {
    const waits = Math.round((laid.sections[place]?.waits ?? 0) * sampleRate);
    const onsets: number[] = [];
    for (let j = waits + 1; j < bath.length; j += 1) {
      if ((bath[j] ?? 0) > 0.1 && (bath[j - 1] ?? 0) <= 0.1) onsets.push(j - waits);
    }
    expect(onsets).toEqual(Array.from({ length: 16 }, (_, i) => (i + 1) * 30 * sampleRate));
    expect(bath.length - waits).toBeGreaterThanOrEqual(600 * sampleRate);
  });

  test("sounds the same where a player turns back, and leaves a late one almost 9 min before the next section", () => {
    const { waits = 0 } = laid.sections[place] ?? {};
    const { at, back } = laid.turn;
    const frame = (seconds: number) => Math.round(seconds * sampleRate);
    const after = bath.slice(frame(waits + at), frame(waits + at + 20));
    const before = bath.slice(frame(waits + at - back), frame(waits + at - back + 20));
    expect(after).toEqual(before);
    expect(bath.length / sampleRate - waits - at).toBeGreaterThan(530);
  });

  test("lies on a bed at −60 dBFS throughout, never on digital silence", () => {
    let still = 0;
    let longest = 0;
    for (const sample of bath) {
      still = sample === 0 ? still + 1 : 0;
      longest = Math.max(longest, still);
    }
    expect(longest).toBeLessThan(5);
    const most = bath.slice(-20 * sampleRate).reduce((max, it) => Math.max(max, Math.abs(it)), 0);
    expect(20 * Math.log10(most)).toBeCloseTo(-60, 0);
  });

  test("puts one section behind another without a gap, and says so in its header", () => {
    let at = 0;
    for (const { start, pieces } of laid.sections) {
      expect(start).toBe(at);
      at += pieces.length * laid.pieceSeconds;
    }
    const header = new DataView(headerBytes(laid).buffer);
    expect(header.getUint32(24, true)).toBe(sampleRate);
    expect(header.getUint32(40, true)).toBe(at * sampleRate * 2);
  });

  test("gives pieces that sound the same the same key, and others another", () => {
    const bytes = new Map<string, string>();
    const keys = laid.sections.slice(0, 3).flatMap(({ pieces }) => pieces);
    for (const piece of keys) {
      const sound = Buffer.from(pieceBytes(piece, marked)).toString("base64");
      expect(bytes.get(piece.key) ?? sound).toBe(sound);
      bytes.set(piece.key, sound);
    }
    expect(bytes.size).toBeLessThan(keys.length);
    const louder = sections.map((section) => ({ ...section, cues: section.cues.slice(1) }));
    const other = lay(louder).sections[place]?.pieces.map(({ key }) => key);
    expect(other?.[0]).not.toBe(laid.sections[place]?.pieces[0]?.key);
    expect(other?.at(-1)).toBe(laid.sections[place]?.pieces.at(-1)?.key);
  });
});
