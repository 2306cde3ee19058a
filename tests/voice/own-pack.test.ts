import fc from "fast-check";
import { strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { type OwnPack, readOwnPack, writeOwnPack } from "../../src/voice/own-pack.ts";
import { phrases } from "./built-pack.ts";

const clip = (length: number, from = 0) =>
  Int16Array.from({ length }, (_, i) => ((i + from) * 7919) % 32768);
const pack: OwnPack = {
  language: "en",
  name: "Mine",
  clips: new Map([
    ["Lights out.", clip(2400)],
    ["Lid locked.", clip(4800, 3)],
  ]),
};
const read = (bytes: Uint8Array, language = "en", said: readonly string[] = phrases) =>
  readOwnPack(bytes, language, said);
const whyOf = async (bytes: Uint8Array, language?: string) => {
  const result = await read(bytes, language);
  return result.kind === "refused" ? result.why : null;
};
const indexOf = (bytes: Uint8Array) =>
  JSON.parse(new TextDecoder().decode(unzipSync(bytes)["index.json"]));

/** The file with its index, or one of its clips, made another. */
async function changed(change: (files: Record<string, Uint8Array>) => void): Promise<Uint8Array> {
  const files = unzipSync(await writeOwnPack(pack));
  change(files);
  return zipSync(files);
}
const withIndex = (index: unknown) =>
  changed((files) => {
    files["index.json"] = strToU8(JSON.stringify(index));
  });

describe("A voice saved and read back", () => {
  test("is the same voice, to the sample, whatever was recorded", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.uniqueArray(fc.constantFrom(...phrases), { maxLength: 8 }),
        fc.string(),
        fc.array(fc.int16Array({ minLength: 1, maxLength: 500 }), { minLength: 8, maxLength: 8 }),
        async (texts, name, clips) => {
          const mine: OwnPack = {
            language: "en",
            name,
            clips: new Map(texts.map((text, i) => [text, clips[i] ?? clip(1)])),
          };
          const back = await read(await writeOwnPack(mine));
          expect(back).toEqual({ kind: "pack", pack: mine, unknown: [] });
        },
      ),
      { numRuns: 50 },
    );
  });

  test("is the same bytes every time", async () => {
    expect(await writeOwnPack(pack)).toEqual(await writeOwnPack(pack));
  });

  test("holds an index and a WAV a phrase, as other programs read them", async () => {
    const bytes = await writeOwnPack(pack);
    expect(indexOf(bytes)).toEqual({
      tanksideVoice: 1,
      language: "en",
      name: "Mine",
      sampleRate: 24000,
      phrases: [
        { text: "Lights out.", file: "001.wav", samples: 2400 },
        { text: "Lid locked.", file: "002.wav", samples: 4800 },
      ],
    });
    const wav = unzipSync(bytes)["001.wav"] ?? new Uint8Array();
    const view = new DataView(wav.buffer, wav.byteOffset);
    expect(new TextDecoder().decode(wav.subarray(8, 12))).toBe("WAVE");
    expect([view.getUint16(22, true), view.getUint32(24, true), view.getUint16(34, true)]).toEqual([
      1, 24_000, 16,
    ]);
    expect(wav).toHaveLength(44 + 4800);
  });

  test("leaves out what the script does not say, and tells which", async () => {
    const result = await read(await writeOwnPack(pack), "en", ["Lid locked."]);
    expect(result).toMatchObject({ kind: "pack", unknown: ["Lights out."] });
    expect(result.kind === "pack" && [...result.pack.clips.keys()]).toEqual(["Lid locked."]);
  });
});

describe("A voice is refused", () => {
  test("where the file is none: a text, nothing, a zip of something else", async () => {
    for (const bytes of [strToU8("RIFF"), new Uint8Array(), zipSync({ "a.txt": strToU8("a") })])
      expect(await whyOf(bytes)).toEqual({ kind: "foreign" });
    expect(await whyOf(await withIndex({ films: [] }))).toEqual({ kind: "foreign" });
  });

  test("where it was made by another make of the program", async () => {
    const index = indexOf(await writeOwnPack(pack));
    expect(await whyOf(await withIndex({ ...index, tanksideVoice: 2 }))).toEqual({
      kind: "other-version",
    });
  });

  test("where it speaks another language, which is named", async () => {
    expect(await whyOf(await writeOwnPack(pack), "de")).toEqual({
      kind: "other-language",
      language: "en",
    });
  });

  test("where the index does not fit what is there", async () => {
    const index = indexOf(await writeOwnPack(pack));
    const [first, second] = index.phrases;
    const faulty = [
      { ...index, phrases: [{ ...first, samples: 2399 }, second] },
      { ...index, phrases: [{ ...first, file: "003.wav" }, second] },
      { ...index, phrases: [first, first] },
      { ...index, phrases: "all" },
      { ...index, sampleRate: 48000 },
      { ...index, name: 3 },
    ];
    for (const each of faulty)
      expect(await whyOf(await withIndex(each))).toEqual({ kind: "damaged" });
  });

  test("where a clip has another rate, width or number of channels", async () => {
    for (const [at, value] of [
      [24, 0x44],
      [34, 8],
      [22, 2],
    ] as const) {
      const bytes = await changed((files) => {
        const wav = new Uint8Array(files["002.wav"] ?? []);
        wav[at] = value;
        files["002.wav"] = wav;
      });
      expect(await whyOf(bytes)).toEqual({ kind: "other-sound", file: "002.wav" });
    }
  });

  test("where a clip lasts more than 8 seconds", async () => {
    const long = { ...pack, clips: new Map([["Lights out.", clip(8 * 24_000 + 240)]]) };
    expect(await whyOf(await writeOwnPack(long))).toEqual({ kind: "too-large" });
  });

  test("where it would unpack to more than a whole script takes", async () => {
    const bomb = zipSync({ "index.json": new Uint8Array(257 * 2 ** 20) }, { level: 1 });
    expect(await whyOf(bomb)).toEqual({ kind: "too-large" });
  });

  test("where any byte of it was lost or changed, or else nothing of the voice is", async () => {
    const bytes = await writeOwnPack(pack);
    await fc.assert(
      fc.asyncProperty(
        fc.nat(bytes.length - 1),
        fc.integer({ min: 1, max: 255 }),
        fc.boolean(),
        async (at, by, cut) => {
          const spoilt = cut ? bytes.slice(0, at) : bytes.slice();
          if (!cut) spoilt[at] = (spoilt[at] ?? 0) ^ by;
          const result = await read(spoilt);
          if (result.kind === "pack") expect(result).toEqual({ kind: "pack", pack, unknown: [] });
          if (cut) expect(result.kind).toBe("refused");
        },
      ),
      { numRuns: 300 },
    );
  });
});
