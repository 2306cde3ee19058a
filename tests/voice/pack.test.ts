import { describe, expect, test } from "vitest";
import { everyPhrase, forms, packNames } from "../../src/script/script.ts";
import { scriptIn } from "../../src/script/scripts.ts";
import { lengthsOf } from "../../src/timeline/lengths.ts";
import { loudness, truePeak } from "../../src/tones/loudness.ts";
import { languages } from "../../src/units/language.ts";
import { openDecoder } from "../../src/voice/decoder.ts";
import { openPack, packFile, readIndex, writePack } from "../../src/voice/pack.ts";
import { splitPackets } from "../../src/voice/packets.ts";
import { builtPack, peak, soundFile } from "./built-pack.ts";

const packs = await Promise.all(
  languages.flatMap((language) =>
    packNames.map(async (name) => {
      const { index, bytes } = builtPack(language, name);
      const pack = await openPack(index, bytes);
      return { language, name, index, bytes, pack, script: await scriptIn(language) };
    }),
  ),
);

/** Bytes that a page may ask for at once, and phrases that are surely there. */
const bounds = {
  run: { bytes: 2_500_000, phrases: 300 },
  ear: { bytes: 1_000_000, phrases: 90 },
} as const;

describe.each(packs)("The $name pack in $language", ({ name, index, bytes, pack, script }) => {
  const most = bounds[name];
  const phrases = Object.keys(index.phrases);
  /** A phrase for each clip: those that share one need not be heard twice. */
  const clips = [
    ...new Map(phrases.map((text) => [index.phrases[text]?.from, text] as const)).values(),
  ];

  test("holds every phrase of its part of the script and no other", () => {
    expect([...phrases].sort()).toEqual([...everyPhrase(script, name)].sort());
    expect(phrases.length).toBeGreaterThan(most.phrases);
  });

  test("is no larger than a page may ask for, wastes nothing between clips, and holds none twice", () => {
    const kept = soundFile(`${packFile(index.language, name)}.json`);
    expect(bytes.length + kept.length).toBeLessThan(most.bytes);
    const places = clips.map((text) => index.phrases[text]);
    let end = 0;
    for (const place of places) {
      expect(place?.from).toBe(end);
      end += place?.bytes ?? 0;
    }
    expect(end).toBe(bytes.length);
    const sounds = places.map((place) =>
      Buffer.from(bytes.subarray(place?.from, (place?.from ?? 0) + (place?.bytes ?? 0))),
    );
    expect(new Set(sounds.map((sound) => sound.toString("base64"))).size).toBe(sounds.length);
    expect(clips.length).toBeGreaterThan(most.phrases);
  });

  test("decodes each phrase to exactly the length that its index states", () => {
    for (const text of phrases)
      expect(pack.decode(text).length, text).toBe(index.phrases[text]?.samples);
  });

  // Within 1 LU of each other; under −1 dBTP, with room for a beat of the hands on top.
  test("has every phrase at one loudness, and none too near full scale", () => {
    const levels = clips.map((text) => loudness(pack.decode(text), 24_000));
    expect(Math.max(...levels) - Math.min(...levels)).toBeLessThan(1);
    expect(Math.min(...levels)).toBeGreaterThan(-21);
    for (const text of clips) expect(truePeak(pack.decode(text)), text).toBeLessThan(-2.9);
  });

  test("begins and ends each phrase in silence, with the words close behind", () => {
    for (const text of clips) {
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
});

describe.each(languages)("The voice in %s", (language) => {
  const of = packs.filter((each) => each.language === language);
  const [{ index, script }] = of as [(typeof of)[number]];
  const places = Object.assign({}, ...of.map((each) => each.index.phrases));

  test("speaks each sentence in the time that the script allows it", () => {
    const { spoken } = lengthsOf({ ...index, phrases: places }, 1);
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
    const long = Object.keys(places).filter((text) => text.split(" ").length >= 6);
    const words = long.reduce((sum, text) => sum + text.split(/[ -]/).length, 0);
    const seconds = long.reduce((sum, text) => sum + places[text].samples / 24_000, 0);
    expect((60 * words) / seconds).toBeGreaterThan(150);
    expect((60 * words) / seconds).toBeLessThan(200);
  });
});

test("An index is read as it was written, and phrases that sound alike share one clip", () => {
  const about = { language: "en", voice: "a voice", sampleRate: 24000, made: "of this" } as const;
  const clip = (bytes: readonly number[], samples: number) => ({
    bytes: Uint8Array.from(bytes),
    samples,
  });
  const { index, parts } = writePack(
    about,
    new Map([
      ["the tank.", clip([1, 2, 3], 480)],
      ["One.", clip([4], 240)],
      ["The tank.", clip([1, 2, 3], 480)],
      ["12", clip([1, 23], 480)],
      ["Longer.", clip([4], 480)],
    ]),
  );
  expect(Buffer.concat(parts)).toEqual(Buffer.from([1, 23, 1, 2, 3, 4, 4]));
  const { phrases, ...rest } = readIndex(JSON.parse(JSON.stringify(index)));
  expect(rest).toEqual(about);
  expect(phrases["the tank."]).toEqual({ from: 2, bytes: 3, samples: 480 });
  expect(phrases["The tank."]).toEqual(phrases["the tank."]);
  expect(phrases["One."]).toEqual({ from: 5, bytes: 1, samples: 240 });
  expect(phrases["Longer."]?.samples).toBe(480);
  expect(() => readIndex({ ...about, phrases: { "The tank.": "the tank." } })).toThrow("The tank.");
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

test("A decoder gives the same samples for the three thousandth clip as for the first", async () => {
  const { index, bytes } = builtPack("en");
  const places = Object.values(index.phrases).toSorted((a, b) => a.bytes - b.bytes);
  const packetsOf = ({ from, bytes: size }: (typeof places)[number]) =>
    splitPackets(bytes.subarray(from, from + size));
  const short = places.slice(0, 10).map(packetsOf);
  const longest = places.slice(-1).flatMap(packetsOf);
  const decode = await openDecoder();
  const first = decode(longest).slice();
  for (let clip = 0; clip < 3000; clip += 1) decode(short[clip % short.length] ?? []);
  expect(Buffer.compare(bytesOf(decode(longest)), bytesOf(first))).toBe(0);
});

/** Compared as bytes: sample by sample takes a thousand times as long. */
function bytesOf(samples: Float32Array): Uint8Array {
  return new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength);
}

test.each(languages)("No phrase in %s lies in both packs", (language) => {
  const run = new Set(Object.keys(builtPack(language).index.phrases));
  const both = Object.keys(builtPack(language, "ear").index.phrases).filter((it) => run.has(it));
  expect(both).toEqual([]);
  expect(run.size).toBeGreaterThan(bounds.run.phrases);
});
