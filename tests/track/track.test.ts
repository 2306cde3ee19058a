import { describe, expect, test } from "vitest";
import type { Cue } from "../../src/timeline/score.ts";
import { type Sources, soundOf } from "../../src/timeline/sound.ts";
import { sampleRate } from "../../src/tones/designs.ts";
import { pcmOf, wavHeader } from "../../src/tones/wav.ts";
import { layOut } from "../../src/track/layout.ts";
import { mix, trackSamples } from "../../src/track/mix.ts";
import { sheetOf } from "../../src/track/sheet.ts";
import { trackOf } from "../../src/track/track.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled, english, estimatedLengths } from "../timeline/scene.ts";

const timeline = compiled({
  ...gullrock,
  developer: { ...gullrock.developer, leaflet: [{ temperature: { f: 69 }, time: "1:30" }] },
  baths: { stop: { time: "0:30" }, fixer: { time: "1:00" }, wash: { time: "1:00" } },
});

const lengths = estimatedLengths(1);
/** With nothing but the timeline's own sounds, wherever the waits are short. */
const trackWith = (gap: number) =>
  trackOf({ timeline, script: english, lengths, speaks: true }, { gap, waits: "pass" });

/** Full-scale constants stand for sounds, so that where each lies can be read off the samples. */
const markers: Sources = {
  phrase: () => new Float32Array(sampleRate * 9).fill(0.25),
  tone: () => new Float32Array(sampleRate * 2).fill(0.5),
};

describe("A section's place in the track", () => {
  test("comes a wait after the end of the one before", () => {
    const { starts } = layOut(timeline, 60);
    expect(starts.map(({ id }) => id)).toEqual(timeline.sections.map(({ id }) => id));
    for (const [i, section] of timeline.sections.entries()) {
      const next = starts[i + 1];
      if (next === undefined) continue;
      const ends = Math.max(section.seconds, ...section.cues.map((cue) => cue.until));
      expect(next.at - (starts[i]?.at ?? 0)).toBeCloseTo(ends + 60, 2);
    }
  });
});

/** The pieces of a track, joined. */
function whole(gap: number, sources: Sources): Float32Array {
  const track = new Float32Array(trackSamples(trackWith(gap)));
  let at = 0;
  for (const piece of mix(trackWith(gap), sources)) {
    track.set(piece, at);
    at += piece.length;
  }
  expect(at).toBe(track.length);
  return track;
}

describe("The mixed track", () => {
  test("is the same where a sound runs over from one piece into the next", () => {
    const gap = 7.3;
    const track = whole(gap, markers);
    const expected = new Float32Array(track.length);
    const { starts } = layOut(timeline, gap);
    for (const [i, section] of timeline.sections.entries()) {
      for (const cue of section.cues) {
        const at = Math.round(((starts[i]?.at ?? 0) + cue.at) * sampleRate);
        for (const [j, sample] of soundOf(cue, markers).entries()) {
          expected[at + j] = Math.min(1, (expected[at + j] ?? 0) + sample);
        }
      }
    }
    expect(track.findIndex((sample, i) => sample !== expected[i])).toBe(-1);
  });

  test("sounds within a sample of every pour-in and pour-out, and is silent before it", () => {
    const gap = 3;
    const track = whole(gap, { ...markers, phrase: () => new Float32Array(0) });
    const { starts } = layOut(timeline, gap);
    let seen = 0;
    for (const [i, section] of timeline.sections.entries()) {
      for (const { at, do: deed } of section.moments) {
        if (deed !== "pour-in" && deed !== "pour-out") continue;
        const sample = Math.round(((starts[i]?.at ?? 0) + at) * sampleRate);
        expect(track[sample]).toBe(0.5);
        expect(track[sample - 2]).toBe(0);
        seen += 1;
      }
    }
    expect(seen).toBe(10);
  });

  test("never leaves the range of a sample, however much sounds at once", () => {
    const loud: Sources = {
      phrase: () => new Float32Array(sampleRate * 9).fill(0.9),
      tone: () => new Float32Array(sampleRate * 2).fill(0.9),
    };
    const track = whole(0, loud);
    expect(track.reduce((most, sample) => Math.max(most, sample), 0)).toBe(1);
  });
});

describe("A cue's sound", () => {
  const cue = (channel: "voice" | "tone", seconds: number, sounds: readonly string[]): Cue => ({
    at: 5,
    until: 5 + seconds,
    channel,
    kind: "tell",
    moment: null,
    sounds,
  });

  test("is as long as the cue, to the sample", () => {
    expect(soundOf(cue("voice", 1.5, ["a", "b"]), markers)).toHaveLength(36_000);
    expect(soundOf(cue("tone", 0.3, ["rest"]), markers)).toHaveLength(7_200);
  });

  test("parts two phrases by a breath", () => {
    const short: Sources = { ...markers, phrase: () => new Float32Array(100).fill(0.25) };
    const sound = soundOf(cue("voice", (100 + 2880 + 100) / sampleRate, ["a", "b"]), short);
    expect([sound[99], sound[100], sound[2979], sound[2980], sound[3079]]).toEqual([
      0.25, 0, 0, 0.25, 0.25,
    ]);
  });

  test("fades where the next moment cuts it off", () => {
    const sound = soundOf(cue("tone", 0.3, ["rest"]), markers);
    expect(sound.at(-1)).toBe(0);
    expect(sound.at(-200)).toBe(0.5);
  });
});

describe("A WAV file", () => {
  test("says what it holds: 16-bit mono, its rate and its length", () => {
    const pcm = pcmOf(new Float32Array([0, 1, -1]));
    const bytes = new Uint8Array([...wavHeader(3, 24_000), ...pcm]);
    const view = new DataView(bytes.buffer);
    const text = (at: number) => String.fromCharCode(...bytes.subarray(at, at + 4));
    expect([text(0), text(8), text(12), text(36)]).toEqual(["RIFF", "WAVE", "fmt ", "data"]);
    expect(view.getUint32(4, true)).toBe(bytes.length - 8);
    expect(view.getUint32(24, true)).toBe(24_000);
    expect(view.getUint32(28, true)).toBe(48_000);
    expect([44, 46, 48].map((at) => view.getInt16(at, true))).toEqual([0, 32767, -32767]);
  });
});

describe("A wait", () => {
  const waits = (gap: number, waits: "pass" | "stay", speaks = true) =>
    trackOf({ timeline, script: english, lengths, speaks }, { gap, waits }).cues.filter(
      ({ section }) => section === null,
    );
  const between = timeline.sections.length - 1;

  test("says how soon it goes on, so many seconds before it does", () => {
    const told = waits(60, "pass").flatMap(({ cue, at }) =>
      cue.says ? [{ at, says: cue.says }] : [],
    );
    expect(told).toHaveLength(2 * between);
    const { starts } = layOut(timeline, 60);
    expect(told.slice(0, 2).map(({ at, says }) => [(starts[1]?.at ?? 0) - at, says])).toEqual([
      [30, "It starts in half a minute."],
      [10, "It starts in ten seconds."],
    ]);
  });

  test.each(["pass", "stay"] as const)("is never silent for more than 30 s: %s", (kind) => {
    for (const gap of [5, 31, 60, 100, 3600]) {
      const track = trackOf(
        { timeline, script: english, lengths, speaks: true },
        { gap, waits: kind },
      );
      for (const [i, section] of timeline.sections.entries()) {
        const next = track.starts[i + 1]?.at;
        if (next === undefined) continue;
        const ends = Math.max(section.seconds, ...section.cues.map(({ until }) => until));
        let heard = (track.starts[i]?.at ?? 0) + ends;
        for (const { at, until } of track.cues.filter(
          (cue) => cue.section === null && cue.at >= heard && cue.at < next,
        )) {
          expect(at - heard).toBeLessThanOrEqual(30.001);
          heard = Math.max(heard, until);
        }
        expect(next - heard).toBeLessThanOrEqual(30.001);
      }
    }
  });

  test("that is played over and over is told in each pass: in words, or by a tone where they would come again too soon", () => {
    for (const gap of [2.1, 20, 29, 31, 100]) {
      const track = trackOf(
        { timeline, script: english, lengths, speaks: true },
        { gap, waits: "stay" },
      );
      const loops = track.chapters.filter((chapter) => chapter.loops);
      expect(loops).toHaveLength(between);
      for (const { at, until } of loops) {
        const inside = track.cues.filter((cue) => cue.at >= at && cue.until <= until);
        expect(inside.length).toBeGreaterThan(0);
        expect(inside[0]?.cue.says).toBe(gap < 30 ? undefined : "Waiting for your press.");
        // From the last sound of one pass to the first of the next.
        const first = (inside[0]?.at ?? Number.NaN) - at;
        expect(until - (inside.at(-1)?.until ?? Number.NaN) + first).toBeLessThanOrEqual(31);
      }
    }
  });

  test("that is hardly one is not played over and over", () => {
    for (const gap of [0, 0.001, 1]) {
      const track = trackOf(
        { timeline, script: english, lengths, speaks: true },
        { gap, waits: "stay" },
      );
      expect(track.chapters.some(({ loops }) => loops)).toBe(false);
      expect(track.cues.some(({ section }) => section === null)).toBe(false);
    }
  });

  test("says nothing where tones alone are wanted", () => {
    for (const kind of ["pass", "stay"] as const)
      expect(waits(100, kind, false).some(({ cue }) => cue.channel === "voice")).toBe(false);
  });

  test("keeps half a second from the words around it", () => {
    const spoken = trackWith(60).cues.filter(({ cue }) => cue.channel === "voice");
    for (const [i, { at }] of spoken.entries()) {
      expect(at - (spoken[i - 1]?.until ?? -1)).toBeGreaterThanOrEqual(0.5);
    }
  });
});

describe("The sheet", () => {
  const sheet = sheetOf(timeline, english);

  test("keeps to 40 columns", () => {
    for (const line of sheet.split("\n")) expect(line.length, line).toBeLessThanOrEqual(40);
  });

  test("names every section, and every pour", () => {
    for (const section of timeline.sections) expect(sheet).toContain(section.title);
    expect(sheet.match(/POUR (IN|OUT)/g)).toHaveLength(10);
  });
});
