import { describe, expect, test } from "vitest";
import { everyPhrase, forms } from "../../src/script/script.ts";
import { scriptIn } from "../../src/script/scripts.ts";
import { lengthsOf } from "../../src/timeline/lengths.ts";
import { loudness, truePeak } from "../../src/tones/loudness.ts";
import { languages } from "../../src/units/language.ts";
import { openPack } from "../../src/voice/pack.ts";
import { builtPack, peak } from "./built-pack.ts";

const packs = await Promise.all(
  languages.map(async (language) => {
    const { index, bytes } = builtPack(language);
    const pack = await openPack(index, bytes);
    return { language, index, bytes, pack, script: await scriptIn(language) };
  }),
);

describe.each(packs)("The voice pack in $language", ({ index, bytes, pack, script }) => {
  const phrases = Object.keys(index.phrases);

  test("holds every phrase of the script and no other", () => {
    expect([...phrases].sort()).toEqual([...everyPhrase(script)].sort());
    expect(phrases.length).toBeGreaterThan(300);
  });

  test("is no larger than a page may ask for, and wastes nothing between clips", () => {
    expect(bytes.length + JSON.stringify(index).length).toBeLessThan(2_500_000);
    const ends = phrases.reduce((end, text) => {
      const place = index.phrases[text];
      expect(place?.from).toBe(end);
      return end + (place?.bytes ?? 0);
    }, 0);
    expect(ends).toBe(bytes.length);
  });

  test("decodes each phrase to exactly the length that its index states", () => {
    for (const text of phrases)
      expect(pack.decode(text).length, text).toBe(index.phrases[text]?.samples);
  });

  // Within 1 LU of each other; under −1 dBTP, with room for a beat of the hands on top.
  test("has every phrase at one loudness, and none too near full scale", () => {
    const levels = phrases.map((text) => loudness(pack.decode(text), 24_000));
    expect(Math.max(...levels) - Math.min(...levels)).toBeLessThan(1);
    expect(Math.min(...levels)).toBeGreaterThan(-21);
    for (const text of phrases) expect(truePeak(pack.decode(text)), text).toBeLessThan(-2.9);
  });

  test("begins and ends each phrase in silence, with the words close behind", () => {
    for (const text of phrases) {
      const samples = pack.decode(text);
      // The first and the last millisecond; then 20 ms in which the first sound has begun.
      expect(peak(samples.subarray(0, 24)), text).toBeLessThan(-40);
      expect(peak(samples.subarray(-24)), text).toBeLessThan(-40);
      expect(peak(samples.subarray(0, 480)), text).toBeGreaterThan(-46);
      expect(peak(samples.subarray(-960)), text).toBeGreaterThan(-46);
    }
  });

  test("refuses a phrase that it was never given", () => {
    expect(() => pack.decode("Quite another sentence.")).toThrow("Quite another sentence.");
  });

  test("speaks each sentence in the time that the script allows it", () => {
    const { spoken } = lengthsOf(index, 1);
    const lengths = Object.entries(script.source.sentences).flatMap(([key, { example, within }]) =>
      forms.map((form, i) => ({
        said: `${key} ${form}`,
        seconds: spoken(script.say(key, form, example.slots)) ?? Number.POSITIVE_INFINITY,
        most: within[i] ?? 0,
      })),
    );
    expect(lengths.length).toBeGreaterThan(230);
    expect(lengths.filter(({ seconds, most }) => seconds > most)).toEqual([]);
  });

  // Comfortable: 150–200 words a minute (Sutton et al., AAC 1995). Short phrases end slowly.
  test("speaks at a pace that is easy to follow", () => {
    const long = phrases.filter((text) => text.split(" ").length >= 6);
    const words = long.reduce((sum, text) => sum + text.split(/[ -]/).length, 0);
    const seconds = long.reduce((sum, text) => sum + pack.decode(text).length / 24_000, 0);
    expect((60 * words) / seconds).toBeGreaterThan(150);
    expect((60 * words) / seconds).toBeLessThan(200);
  });
});

test("A pack decodes a phrase to the same samples whatever was decoded before it", async () => {
  const { index, bytes } = builtPack("en");
  const some = Object.keys(index.phrases).filter((_, i) => i % 20 === 0);
  const backwards = await openPack(index, bytes);
  for (const text of some.toReversed()) backwards.decode(text);
  for (const text of some) {
    const alone = await openPack(index, bytes);
    expect(Buffer.compare(bytesOf(backwards.decode(text)), bytesOf(alone.decode(text))), text).toBe(
      0,
    );
  }
  const [first = ""] = some;
  expect(backwards.decode(first)).toBe(backwards.decode(first));
});

/** Compared as bytes: sample by sample takes a thousand times as long. */
function bytesOf(samples: Float32Array): Uint8Array {
  return new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength);
}
