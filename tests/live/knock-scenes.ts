// What a microphone on the bench hears while nobody knocks, minute by minute from a seed: room, water of
// several kinds, speech, glass, doors. Levels are dBFS, root of the mean square, as a device would have
// them that lies a metre from it all with its gain left alone.
import { gain } from "../../src/tones/loudness.ts";
import { level } from "../voice/water.ts";
import {
  between,
  bubble,
  capBlow,
  clink,
  drip,
  dripOnSteel,
  oneOf,
  type Random,
  rate,
  slam,
  step,
} from "./knock-sounds.ts";

/** Samples of so many seconds. */
export type Scene = (random: Random, seconds: number) => Float32Array;

const ROOM = -66;
const WATER = -42;
const SPEECH = -32;

/** White, cut below and above by one pole each. */
function noise(random: Random, samples: number, above: number, below: number): Float32Array {
  const [rising, falling] = [above, below].map((hz) => 1 - Math.exp((-2 * Math.PI * hz) / rate));
  let [low, slow] = [0, 0];
  const out = new Float32Array(samples);
  for (let i = 0; i < samples; i += 1) {
    low += (falling ?? 0) * (2 * random() - 1 - low);
    slow += (rising ?? 0) * (low - slow);
    out[i] = low - slow;
  }
  return out;
}

/** Brought to a level. */
function at(dB: number, samples: Float32Array): Float32Array {
  const factor = gain(dB) / level(samples);
  return samples.map((sample) => sample * factor);
}

export function add(all: Float32Array, sound: Float32Array, from: number, factor: number): void {
  const end = Math.min(sound.length, all.length - from);
  for (let i = Math.max(0, -from); i < end; i += 1)
    all[from + i] = (all[from + i] ?? 0) + factor * (sound[i] ?? 0);
}

function sum(...parts: readonly Float32Array[]): Float32Array {
  const all = new Float32Array(parts[0]?.length ?? 0);
  for (const part of parts) add(all, part, 0, 1);
  return all;
}

/** So many a second at random, their loudest 10 ms anywhere between two levels. */
function sprinkled(
  random: Random,
  seconds: number,
  many: number,
  [least, most]: readonly [number, number],
  sound: (random: Random) => Float32Array,
): Float32Array {
  const all = new Float32Array(seconds * rate);
  // A stock of sounds, drawn from again and again: as many as bubbles are would take too long.
  const stock = Array.from({ length: Math.min(60, Math.ceil(many * seconds)) }, () =>
    sound(random),
  );
  for (let n = 0; n < many * seconds; n += 1) {
    const from = Math.floor(random() * all.length);
    add(all, oneOf(random, stock), from, gain(between(random, least, most)));
  }
  return all;
}

export const room: Scene = (random, seconds) => {
  const air = at(ROOM, noise(random, seconds * rate, 60, 900));
  return air.map(
    (sample, i) =>
      sample + gain(ROOM - 6) * Math.sin((2 * Math.PI * 100 * i) / rate) + 2e-5 * random(),
  );
};

/** @param depth of its swelling, and how often a second it sputters. */
function tap(
  random: Random,
  seconds: number,
  dB: number,
  depth: number,
  sputters: number,
): Float32Array {
  const jet = noise(random, seconds * rate, between(random, 250, 900), between(random, 2500, 6000));
  const pace = between(random, 1, 5);
  let [swell, aim] = [1, 1];
  return at(
    dB,
    jet.map((sample, i) => {
      if (random() < sputters / rate) aim = between(random, 1 - depth, 1 + depth);
      swell += (aim - swell) / (0.012 * rate);
      return sample * swell * (1 + 0.5 * depth * Math.sin((2 * Math.PI * pace * i) / rate));
    }),
  );
}

/** A splat of water: noise that comes within some ms and goes within tens. */
function splat(random: Random): Float32Array {
  const [comes, goes] = [between(random, 0.003, 0.015), between(random, 0.01, 0.05)];
  const wet = noise(random, Math.round((comes + 5 * goes) * rate), 500, 5000);
  return at(
    0,
    wet.map((sample, i) => {
      const t = i / rate;
      return sample * Math.min(1, t / comes) * Math.exp(-Math.max(0, t - comes) / goes);
    }),
  );
}

export const steadyTap: Scene = (random, seconds) => tap(random, seconds, WATER, 0.15, 2);
export const splashingTap: Scene = (random, seconds) =>
  sum(
    tap(random, seconds, WATER, 0.45, 12),
    sprinkled(random, seconds, 40, [WATER - 6, WATER + 8], bubble),
    sprinkled(random, seconds, 4, [WATER - 3, WATER + 6], splat),
  );
/** A graduate or tank being filled: bubbles in plenty, over a softer jet. */
export const filling: Scene = (random, seconds) =>
  sum(
    room(random, seconds),
    tap(random, seconds, WATER - 6, 0.3, 5),
    sprinkled(random, seconds, 80, [WATER - 12, WATER + 4], (each) => bubble(each, 300, 2500)),
  );
/** A tank being emptied: it gulps some four times a second. */
export const gulping: Scene = (random, seconds) =>
  sum(
    room(random, seconds),
    tap(random, seconds, WATER - 6, 0.4, 6),
    sprinkled(random, seconds, 4, [WATER, WATER + 10], (each) => bubble(each, 120, 450)),
    sprinkled(random, seconds, 30, [WATER - 12, WATER], (each) => bubble(each, 400, 2500)),
  );
export const dripping: Scene = (random, seconds) =>
  sum(room(random, seconds), sprinkled(random, seconds, 2, [ROOM + 10, ROOM + 32], drip));
export const drippingOnSteel: Scene = (random, seconds) =>
  sum(room(random, seconds), sprinkled(random, seconds, 1, [ROOM + 5, ROOM + 25], dripOnSteel));

export const clinking: Scene = (random, seconds) =>
  sum(room(random, seconds), sprinkled(random, seconds, 0.5, [ROOM + 15, ROOM + 45], clink));
export const slamming: Scene = (random, seconds) =>
  sum(room(random, seconds), sprinkled(random, seconds, 0.2, [ROOM + 20, ROOM + 40], slam));
export const stepping: Scene = (random, seconds) =>
  sum(room(random, seconds), sprinkled(random, seconds, 1.5, [ROOM + 5, ROOM + 25], step));
/** A cap that falls and bounces, each bounce sooner and softer. */
export const droppingCap: Scene = (random, seconds) =>
  sum(room(random, seconds), sprinkled(random, seconds, 0.1, [ROOM + 20, ROOM + 40], bouncing));

function bouncing(random: Random): Float32Array {
  const all = new Float32Array(Math.round(1.5 * rate));
  const keeps = between(random, 0.45, 0.7);
  let [t, gap, loud] = [0, between(random, 0.12, 0.3), 1];
  while (gap > 0.01) {
    add(all, capBlow(random), Math.round(t * rate), loud);
    t += gap;
    gap *= keeps;
    loud *= keeps;
  }
  return all;
}

/** Phrases one after another, as people talk who work: @param phrases at 24 kHz. */
export function speech(phrases: readonly Float32Array[]): Scene {
  return (random, seconds) => {
    const all = room(random, seconds);
    for (let from = 0; from < all.length; ) {
      const phrase = oneOf(random, phrases);
      add(all, phrase, from, gain(SPEECH + between(random, -5, 5)) / level(phrase));
      from += phrase.length + Math.round(between(random, 0.1, 1.5) * rate);
    }
    return all;
  };
}

export const over =
  (...scenes: readonly Scene[]): Scene =>
  (random, seconds) =>
    sum(...scenes.map((scene) => scene(random, seconds)));
