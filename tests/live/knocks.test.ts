import { describe, expect, test } from "vitest";
import { type OwnSound, openKnockDetector } from "../../src/live/knocks.ts";
import { gain } from "../../src/tones/loudness.ts";
import { openPack } from "../../src/voice/pack.ts";
import { builtKit } from "../browser/built-kit.ts";
import { builtPack } from "../voice/built-pack.ts";
import { heardIn, laidInto } from "./knock-hearing.ts";
import {
  add,
  clinking,
  filling,
  gulping,
  over,
  room,
  type Scene,
  slamming,
  speech,
  splashingTap,
  steadyTap,
} from "./knock-scenes.ts";
import { type Hand, hands, knock, randomFrom, rate } from "./knock-sounds.ts";

const { index, bytes } = builtPack("en");
const pack = await openPack(index, bytes);
const words = Object.keys(index.phrases)
  .filter((_, i) => i % 9 === 0)
  .map((text) => pack.decode(text));

function knocked(scene: Scene, seconds: number, hand: Hand, dBFS: number) {
  const random = randomFrom(11);
  const samples = scene(random, seconds);
  return { samples, knocks: laidInto(samples, random, hand, dBFS) };
}

/** A tone of the kit every `every` seconds, loud, in a quiet room. */
function tonesOnly(name: "press" | "over" | "pour-out", every: number, seconds: number) {
  const samples = room(randomFrom(5), seconds);
  const own: OwnSound[] = [];
  for (let from = 1; from < seconds - 2; from += every) {
    const tone = builtKit.samples(name);
    add(samples, tone, Math.round(from * rate), 1);
    own.push({ from, to: from + tone.length / rate, kind: "tone" });
  }
  return { samples, own };
}

describe("A knock", () => {
  const least = { fingertip: 0.75, knuckle: 0.85, ring: 0.9 };

  test.each(hands)(
    "of a %s is found in a quiet room, 30 dB above it, and nothing else is",
    (hand) => {
      const { samples, knocks } = knocked(room, 30, hand, -36);
      const heard = heardIn(samples, knocks);
      expect(heard.found / heard.knocks).toBeGreaterThan(least[hand]);
      expect(heard.false).toBe(0);
    },
  );

  test("of a knuckle is found beside a tap, 16 dB above it", () => {
    for (const scene of [steadyTap, splashingTap]) {
      const { samples, knocks } = knocked(scene, 30, "knuckle", -26);
      const heard = heardIn(samples, knocks);
      expect(heard.found / heard.knocks).toBeGreaterThan(0.75);
      expect(heard.false).toBeLessThan(2);
    }
  });

  test("is told within 80 ms of its contact, and its time is that contact's within 10", () => {
    const { samples, knocks } = knocked(room, 20, "knuckle", -30);
    const { late } = heardIn(samples, knocks);
    expect(Math.max(...late)).toBeLessThan(0.08);
    const detector = openKnockDetector(rate);
    for (const at of detector.hear(samples, 0)) {
      expect(Math.min(...knocks.map((each) => Math.abs(each - at)))).toBeLessThan(0.01);
    }
  });

  test("that follows another in a third of a second is a second one, in 50 ms it is the same", () => {
    const two = (apart: number) => {
      const samples = room(randomFrom(2), 4);
      const one = knock(randomFrom(8), "plastic", "knuckle");
      for (const at of [2, 2 + apart]) add(samples, one, Math.round(at * rate), gain(-30));
      return openKnockDetector(rate).hear(samples, 0).length;
    };
    expect(two(0.3)).toBe(2);
    expect(two(0.05)).toBe(1);
  });

  test("is the same however the samples are cut into blocks, and whenever the clock began", () => {
    const { samples } = knocked(splashingTap, 15, "ring", -25);
    const inBlocks = (size: () => number, start: number) => {
      const detector = openKnockDetector(rate);
      const told: number[] = [];
      for (let i = 0; i < samples.length; ) {
        const block = samples.subarray(i, i + size());
        told.push(...detector.hear(block, start + i / rate).map((at) => at - start));
        i += block.length;
      }
      return told.map((at) => Math.round(at * 1e6));
    };
    const whole = inBlocks(() => samples.length, 0);
    expect(whole.length).toBeGreaterThan(5);
    const random = randomFrom(4);
    expect(inBlocks(() => 1 + Math.floor(random() * 3000), 0)).toEqual(whole);
    expect(inBlocks(() => 128, 1234.5)).toEqual(whole);
  });

  test("is found at 48 kHz as at 24", () => {
    const { samples, knocks } = knocked(room, 20, "knuckle", -30);
    const twice = new Float32Array(2 * samples.length);
    for (let i = 0; i < samples.length; i += 1) {
      const here = samples[i] ?? 0;
      twice[2 * i] = here;
      twice[2 * i + 1] = (here + (samples[i + 1] ?? here)) / 2;
    }
    const found = openKnockDetector(2 * rate).hear(twice, 0);
    const near = knocks.filter((each) => found.some((at) => Math.abs(at - each) < 0.02));
    expect(near.length / knocks.length).toBeGreaterThan(0.75);
  });
});

describe("What is no knock", () => {
  test.each<[string, Scene, number]>([
    ["a quiet room", room, 0],
    ["a steady tap", steadyTap, 0],
    ["a splashing tap", splashingTap, 1],
    ["a vessel that fills", filling, 1],
    ["a tank that gulps as it empties", gulping, 2],
    ["clinking glass", clinking, 1],
    ["a door", slamming, 1],
    ["speech", speech(words), 1],
    ["speech over water", over(speech(words), splashingTap), 1],
  ])("is not told: %s", (_, scene, most) => {
    expect(heardIn(scene(randomFrom(21), 30)).false).toBeLessThanOrEqual(most);
  });
});

describe("The program's own sounds", () => {
  test("are not knocks", () => {
    for (const [name, every] of [
      ["press", 0.7],
      ["over", 1.25],
      ["pour-out", 2.5],
    ] as const) {
      const { samples, own } = tonesOnly(name, every, 15);
      expect(heardIn(samples, [], own).false, name).toBe(0);
    }
  });

  test("make it deaf where each begins, and only there", () => {
    const samples = room(randomFrom(2), 4);
    add(samples, knock(randomFrom(8), "plastic", "knuckle"), 2 * rate, gain(-30));
    const toldWith = (from: number, to: number) =>
      openKnockDetector(rate, () => [{ from, to, kind: "tone" }]).hear(samples, 0).length;
    expect(toldWith(1.95, 2.2)).toBe(0);
    expect(toldWith(2.02, 2.2)).toBe(0);
    expect(toldWith(1.8, 2.3)).toBe(1);
    expect(toldWith(2.1, 2.3)).toBe(1);
  });
});
