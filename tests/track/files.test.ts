import { readFileSync } from "node:fs";
import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import { encoderFile } from "../../src/tones/build-encoder.ts";
import { sampleRate } from "../../src/tones/designs.ts";
import { openMp3 } from "../../src/tones/lame.ts";
import { encoderDelay, frameBytes, frameSamples, framesOf } from "../../src/tones/mp3.ts";
import { pcmOf } from "../../src/tones/wav.ts";
import { type FileWish, fileOf, type Session } from "../../src/track/files.ts";
import { mix, trackSamples } from "../../src/track/mix.ts";
import { trackOf } from "../../src/track/track.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled, english, estimatedLengths } from "../timeline/scene.ts";
import { chapterOf, chunksOf, contentsOf, inStepOf, readId3, textOf } from "./read-marks.ts";

const worksheet = {
  ...gullrock,
  title: "Gullrock Light, “Thursday” ½",
  developer: {
    ...gullrock.developer,
    leaflet: [{ temperature: { f: 69 as const }, time: "1:30" }],
  },
  baths: { stop: { time: "0:30" }, fixer: { time: "1:00" }, wash: { time: "1:00" } },
};
const timeline = compiled(worksheet);

const session: Session = {
  worksheet,
  timeline,
  script: english,
  lengths: estimatedLengths(1),
  speaks: true,
  sources: async () => ({
    phrase: () => new Float32Array(sampleRate).fill(0.1),
    tone: () => Float32Array.from({ length: 6000 }, (_, i) => 0.4 * Math.sin(i / 5)),
  }),
  encoder: () => openMp3(encoderFile() as Uint8Array<ArrayBuffer>),
};

async function made(wish: Partial<FileWish> & Pick<FileWish, "kind">): Promise<Buffer> {
  const file = await fileOf(session, { gap: 10, waits: "pass", ...wish });
  if (file === null) throw new Error("too long");
  return Buffer.concat([...file.pieces]);
}

const track = trackOf(session, { gap: 10, waits: "pass" });

describe("An MP3 file", () => {
  let file: Buffer;
  beforeAll(async () => {
    file = await made({ kind: "mp3" });
  });

  test("is called by the worksheet's title, and holds a chapter a section, in order", () => {
    const { frames } = readId3(file);
    const one = (id: string) => frames.filter((frame) => frame.id === id);
    const [title] = one("TIT2");
    expect(title && textOf(title)).toBe(worksheet.title);
    const chapters = one("CHAP").map(chapterOf);
    expect(chapters.map((chapter) => chapter.title)).toEqual(
      timeline.sections.map((section) => section.title),
    );
    expect(chapters.map(({ at }) => at)).toEqual(
      track.starts.map(({ at }) => Math.round(at * 1000)),
    );
    for (const [i, { until }] of chapters.slice(0, -1).entries()) {
      expect(until).toBe(chapters[i + 1]?.at);
    }
    const [contents] = one("CTOC");
    expect(contents && contentsOf(contents)).toEqual(chapters.map(({ id }) => id));
  });

  test("holds its words, each with its time to the millisecond", () => {
    const [inStep] = readId3(file).frames.filter(({ id }) => id === "SYLT");
    const lines = inStep === undefined ? [] : inStepOf(inStep);
    const spoken = track.cues.filter(({ cue }) => cue.says !== undefined);
    expect(spoken.length).toBeGreaterThan(50);
    expect(lines.filter(({ text }) => !text.startsWith("["))).toEqual(
      spoken.map(({ cue, at }) => ({ text: cue.says, at: Math.round(at * 1000) })),
    );
  });

  test("says before its frames how many there are, and how much of them is none of the track", () => {
    const { bytes } = readId3(file);
    const frames = (file.length - bytes) / frameBytes;
    expect(Number.isInteger(frames)).toBe(true);
    const info = file.subarray(bytes, bytes + frameBytes);
    expect(info.toString("latin1", 13, 17)).toBe("Info");
    expect(info.readUInt32BE(21)).toBe(frames - 1);
    const delays = info.readUIntBE(133 + 21, 3);
    expect(delays >> 12).toBe(encoderDelay);
    expect((frames - 1) * frameSamples - (delays >> 12) - (delays & 4095)).toBe(
      trackSamples(track),
    );
    for (let at = bytes; at < file.length; at += frameBytes) {
      expect(file.readUInt16BE(at)).toBe(0xfff3);
    }
  });

  test("is the same bytes again", async () => {
    expect((await made({ kind: "mp3" })).equals(file)).toBe(true);
  });

  test("has as many frames as are foretold, whatever the length", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(fc.integer({ min: 0, max: 20_000 }), fc.constantFrom(576, 1152, 5760)),
        async (samples) => {
          const encoder = await session.encoder();
          const bytes = encoder.encode(new Float32Array(samples)).length + encoder.flush().length;
          expect(bytes / frameBytes).toBe(framesOf(samples));
        },
      ),
      { numRuns: 12 },
    );
  });
});

test.each(["mp3", "wav", "vtt"] as const)(
  "Of a file to be made it is known how many bytes it has: %s",
  async (kind) => {
    const file = await fileOf(session, { kind, gap: 10, waits: "stay" });
    const lengths = Array.from(file?.pieces ?? [], ({ length }) => length);
    expect(lengths.reduce((sum, length) => sum + length)).toBe(file?.bytes);
  },
);

describe("A WAV file", () => {
  test("holds the track behind 44 bytes, then its name, its chapters and the same tag", async () => {
    const file = await made({ kind: "wav" });
    const chunks = chunksOf(file);
    expect(chunks.map(({ id }) => id)).toEqual(["fmt ", "data", "LIST", "cue ", "LIST", "id3 "]);
    expect(chunks[1]?.content.byteOffset).toBe(file.byteOffset + 44);
    expect(chunks[1]?.content.length).toBe(2 * trackSamples(track));
    const cues = Buffer.from(chunks[3]?.content ?? []);
    expect(cues.readUInt32LE(0)).toBe(timeline.sections.length);
    expect(timeline.sections.map((_, i) => cues.readUInt32LE(4 + 24 * i + 20))).toEqual(
      track.starts.map(({ at }) => Math.round(at * sampleRate)),
    );
    const labels = Buffer.from(chunks[4]?.content ?? []).toString("utf8");
    for (const { title } of timeline.sections) expect(labels).toContain(`${title}\0`);
    const { frames } = readId3(chunks[5]?.content ?? new Uint8Array());
    expect(frames.filter(({ id }) => id === "CHAP")).toHaveLength(timeline.sections.length);
  });

  test("holds every sample that is mixed, what is silent and what is not", async () => {
    const data = chunksOf(await made({ kind: "wav" }))[1]?.content ?? new Uint8Array();
    const whole = Array.from(mix(track, await session.sources()), (piece) => pcmOf(piece));
    expect(Buffer.concat(whole).equals(data)).toBe(true);
    expect(data.some((byte) => byte !== 0)).toBe(true);
  });

  test("marks each wait as a loop where it is to be played over and over", async () => {
    const chunks = chunksOf(await made({ kind: "wav", waits: "stay" }));
    const loops = Buffer.from(chunks.find(({ id }) => id === "smpl")?.content ?? []);
    const count = timeline.sections.length - 1;
    expect(loops.readUInt32LE(28)).toBe(count);
    for (let i = 0; i < count; i += 1) {
      const [from, to] = [8, 12].map((at) => loops.readUInt32LE(36 + 24 * i + at));
      expect(Math.abs((to ?? 0) + 1 - (from ?? 0) - 10 * sampleRate)).toBeLessThan(30);
      expect((to ?? 0) + 1).toBe(Math.round((track.starts[i + 1]?.at ?? 0) * sampleRate));
    }
    const { frames } = readId3(chunks.find(({ id }) => id === "id3 ")?.content ?? new Uint8Array());
    const titles = frames.filter(({ id }) => id === "CHAP").map((frame) => chapterOf(frame).title);
    expect(titles.filter((title) => title === "Wait")).toHaveLength(count);
  });

  test("longer than its lengths can state is none", async () => {
    const long = { ...session, timeline: { ...timeline, sections: timeline.sections } };
    expect(await fileOf(long, { kind: "wav", gap: 9000, waits: "pass" })).toBeNull();
    expect(await fileOf(long, { kind: "vtt", gap: 9000, waits: "pass" })).not.toBeNull();
  });
});

test("The encoder that was built is the one of its package", () => {
  const built = readFileSync(new URL("../../public/sound/lame.wasm", import.meta.url));
  expect(built.equals(encoderFile())).toBe(true);
});
