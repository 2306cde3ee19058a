import { describe, expect, test } from "vitest";
import { openSpeaker } from "../../src/voice/clip.ts";
import { openDecoder, preSkip } from "../../src/voice/decoder.ts";
import { encode } from "../../src/voice/encode.ts";
import { openVoice } from "../../src/voice/engines.ts";
import { voices } from "../../src/voice/voices.ts";
import { builtPack } from "./built-pack.ts";

/** From the pack of a voice of each engine. */
const spoken = [
  { language: "en", said: ["Get ready to pour out.", "Fifteen minutes left.", "Lights out."] },
  {
    language: "de",
    said: ["Den Boden trocken wischen.", "Thermometer ablesen.", "Dann drücken."],
  },
] as const;

/** How alike two runs of samples are, 1 where one is the other, louder or softer. */
function alikeness(a: Float32Array, b: Float32Array): number {
  const dot = (x: Float32Array, y: Float32Array) =>
    x.reduce((sum, value, i) => sum + value * (y[i] ?? 0), 0);
  return dot(a, b) / Math.sqrt(dot(a, a) * dot(b, b));
}

describe.each(spoken)("A clip in $language", ({ language, said }) => {
  const { index, bytes: packBytes } = builtPack(language);

  test("is the same bytes every time, whatever was spoken before it", async () => {
    const one = await openSpeaker(voices[language]);
    const other = await openSpeaker(voices[language]);
    const forwards = [];
    for (const text of said) forwards.push(await one(text));
    const backwards = [];
    for (const text of said.toReversed()) backwards.unshift(await other(text));
    expect(backwards).toEqual(forwards);
  });

  test("is in the pack as it is spoken now", async () => {
    const speak = await openSpeaker(voices[language]);
    const place = index.phrases[said[0]];
    if (place === undefined) throw new Error(`The pack lacks "${said[0]}".`);
    const { bytes, samples } = await speak(said[0]);
    expect(samples).toBe(place.samples);
    expect(bytes).toEqual(new Uint8Array(packBytes.subarray(place.from, place.from + place.bytes)));
  });

  test("lasts whole hundredths of a second, so that times read well", async () => {
    const speak = await openSpeaker(voices[language]);
    for (const text of said) expect((await speak(text)).samples % 240).toBe(0);
  });

  test("is spoken in words that the engine knows, and not in silence", async () => {
    const voice = voices[language];
    const { sampleRate, samples } = await (await openVoice(voice))(said[0]);
    expect(sampleRate).toBeGreaterThanOrEqual(16_000);
    expect(samples.length).toBeGreaterThan(0.6 * sampleRate);
    expect(samples.reduce((most, sample) => Math.max(most, sample), 0)).toBeGreaterThan(0.1);
    const slower =
      voice.engine === "flite" ? { ...voice, stretch: 1.5 } : { ...voice, wordsAMinute: 105 };
    const slowly = await (await openVoice(slower))(said[0]);
    expect(slowly.samples.length).toBeGreaterThan(1.2 * samples.length);
  });
});

test("A voice that the engine does not have is refused", async () => {
  const nobody = { ...voices.de, name: "gmw/nobody" };
  await expect(openVoice(nobody)).rejects.toThrow("gmw/nobody");
});

describe("The coder", () => {
  // A tone that rises from 300 to 3000 Hz is like itself at one place only.
  test.each([16_000, 24_000] as const)(
    "brings a sound at %d Hz back where it was, to the sample",
    async (rate) => {
      const decode = await openDecoder();
      const rising = (hertz: number) =>
        Float32Array.from({ length: hertz }, (_, i) => {
          const t = i / hertz;
          return 0.5 * Math.sin(2 * Math.PI * (300 * t + 1350 * t * t)) * Math.sin(Math.PI * t);
        });
      const heard = decode(encode(rising(rate), rate, 5));
      const was = rising(24_000);
      const places = Array.from({ length: 2 * preSkip }, (_, lag) =>
        alikeness(was, heard.subarray(lag, lag + was.length)),
      );
      const best = Math.max(...places);
      expect(best).toBeGreaterThan(0.95);
      expect(Math.abs(places.indexOf(best) - preSkip)).toBeLessThanOrEqual(1);
    },
  );
});
