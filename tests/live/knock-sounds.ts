// Sounds of a bench, made up from a seed: knocks, and what is most like them. Each is a blow on something
// that has modes: a short force, damped sines, some contact noise, and a small room's early echoes.

/** Samples a second of every sound here. */
export const rate = 24_000;

export type Random = () => number;

/** From 0 to 1, the same for the same seed. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

export const between = (random: Random, least: number, most: number): number =>
  least + (most - least) * random();
/** Even over octaves. */
const octaves = (random: Random, least: number, most: number): number =>
  least * (most / least) ** random();
export const oneOf = <T>(random: Random, all: readonly T[]): T => {
  const one = all[Math.floor(random() * all.length)];
  if (one === undefined) throw new Error("nothing to choose from");
  return one;
};

interface Body {
  /** Hz, the lowest mode and the highest. */
  readonly modes: readonly [number, number];
  readonly count: number;
  /** Seconds in which the lowest and the highest mode fall by 8.7 dB. */
  readonly dies: readonly [number, number];
  /** dB an octave by which higher modes are weaker. */
  readonly tilt: number;
}

/** From memory of such things: boards are damped well, sheet steel less, glass hardly. */
const bodies = {
  wood: { modes: [90, 3500], count: 12, dies: [0.022, 0.004], tilt: 3 },
  plastic: { modes: [130, 4500], count: 10, dies: [0.014, 0.003], tilt: 2 },
  steel: { modes: [110, 7000], count: 22, dies: [0.035, 0.012], tilt: 1.5 },
  cap: { modes: [500, 5000], count: 8, dies: [0.009, 0.003], tilt: 0 },
  glass: { modes: [1500, 9000], count: 6, dies: [0.5, 0.12], tilt: 1 },
  door: { modes: [45, 1500], count: 14, dies: [0.16, 0.03], tilt: 5 },
  floor: { modes: [50, 900], count: 8, dies: [0.05, 0.012], tilt: 5 },
} satisfies Record<string, Body>;

/** Seconds that the force lasts: the softer, the longer, and the less treble. */
const tools = {
  knuckle: [0.0012, 0.003],
  fingertip: [0.003, 0.006],
  ring: [0.0002, 0.0006],
  hard: [0.0001, 0.0005],
  sole: [0.004, 0.012],
  leaf: [0.003, 0.01],
} as const;

/** A blow, its loudest 10 ms at 1 (root of the mean square); the contact is its first sample. */
function blow(random: Random, body: Body, tool: keyof typeof tools, noise = 0.15): Float32Array {
  const [lowest, highest] = body.modes;
  const longest = Math.max(...body.dies);
  const out = new Float32Array(Math.round((0.1 + 4 * longest) * rate));
  const [shortest, longestForce] = tools[tool];
  const force = pulse(between(random, shortest, longestForce));
  const span = Math.log2(highest / lowest);
  for (let mode = 0; mode < body.count; mode += 1) {
    const pitch = octaves(random, lowest, highest);
    const up = Math.log2(pitch / lowest);
    const dies =
      body.dies[0] * (body.dies[1] / body.dies[0]) ** (up / span) * between(random, 0.7, 1.4);
    const strength = 10 ** ((-body.tilt * up + between(random, -6, 6)) / 20);
    ring(out, force, pitch, dies, strength);
  }
  const rms = loudest(out);
  for (let i = 0; i < 0.008 * rate; i += 1) {
    out[i] = (out[i] ?? 0) + noise * rms * 3 * (2 * random() - 1) * Math.exp(-i / (0.0015 * rate));
  }
  return levelled(inRoom(random, out));
}

function pulse(seconds: number): Float32Array {
  const length = Math.max(1, Math.round(seconds * rate));
  return Float32Array.from({ length }, (_, i) => Math.sin((Math.PI * (i + 0.5)) / length) / length);
}

/** Adds a mode struck by a force: a resonator of two poles. */
function ring(
  out: Float32Array,
  force: Float32Array,
  pitch: number,
  dies: number,
  strength: number,
): void {
  const radius = Math.exp(-1 / (dies * rate));
  const angle = (2 * Math.PI * pitch) / rate;
  const [a1, a2] = [2 * radius * Math.cos(angle), -radius * radius];
  const scale = strength * Math.sin(angle);
  let [y1, y2] = [0, 0];
  for (let i = 0; i < out.length; i += 1) {
    const y = a1 * y1 + a2 * y2 + scale * (force[i] ?? 0);
    [y2, y1] = [y1, y];
    out[i] = (out[i] ?? 0) + y;
  }
}

/** Echoes of a small room: sparse, dying by 60 dB in 0.2 to 0.5 s, 2 to 10 dB below the blow in all. */
function inRoom(random: Random, dry: Float32Array): Float32Array {
  const seconds = between(random, 0.2, 0.5);
  const echoes = Math.round(seconds * 400);
  const below = 10 ** (-between(random, 2, 10) / 20);
  const at = Array.from({ length: echoes }, () => between(random, 0.002, seconds));
  const strengths = at.map((t) => (random() < 0.5 ? -1 : 1) * Math.exp((-6.9 * t) / seconds));
  const all = Math.sqrt(strengths.reduce((sum, each) => sum + each * each, 0));
  const out = new Float32Array(dry.length + Math.round(seconds * rate));
  out.set(dry);
  let last = 0;
  const dull = dry.map((sample) => {
    last += 0.6 * (sample - last);
    return last;
  });
  at.forEach((t, i) => {
    const from = Math.round(t * rate);
    const strength = (below * (strengths[i] ?? 0)) / all;
    for (let j = 0; j < dull.length; j += 1) {
      out[from + j] = (out[from + j] ?? 0) + strength * (dull[j] ?? 0);
    }
  });
  return out;
}

/** Root of the mean square of the loudest 10 ms. */
function loudest(samples: Float32Array): number {
  const length = Math.min(samples.length, Math.round(0.01 * rate));
  let [sum, most] = [0, 0];
  for (let i = 0; i < samples.length; i += 1) {
    sum += (samples[i] ?? 0) ** 2 - (samples[i - length] ?? 0) ** 2;
    most = Math.max(most, sum);
  }
  return Math.sqrt(most / length);
}

function levelled(samples: Float32Array): Float32Array {
  const factor = 1 / loudest(samples);
  return samples.map((sample) => sample * factor);
}

export const surfaces = ["wood", "plastic", "steel"] as const;
export const hands = ["knuckle", "fingertip", "ring"] as const;
export type Surface = (typeof surfaces)[number];
export type Hand = (typeof hands)[number];

export const knock = (random: Random, surface: Surface, hand: Hand): Float32Array =>
  blow(random, bodies[surface], hand);
export const clink = (random: Random): Float32Array => blow(random, bodies.glass, "hard", 0.05);
export const slam = (random: Random): Float32Array => blow(random, bodies.door, "leaf");
export const step = (random: Random): Float32Array => blow(random, bodies.floor, "sole");
export const capBlow = (random: Random): Float32Array => blow(random, bodies.cap, "hard");
export const dripOnSteel = (random: Random): Float32Array => blow(random, bodies.steel, "hard");

/** A bubble: one sine that rises a little as it dies. Level as of a blow. */
export function bubble(random: Random, least = 400, most = 4000): Float32Array {
  const pitch = octaves(random, least, most);
  // The larger a bubble, the longer it rings: about 14 periods of its own.
  const dies = (between(random, 8, 20) / pitch) * 0.8;
  const rises = between(random, 0, 0.15);
  const out = new Float32Array(Math.round((6 * dies + 0.003) * rate));
  let angle = 0;
  for (let i = 0; i < out.length; i += 1) {
    const t = i / rate;
    angle += (2 * Math.PI * pitch * (1 + rises * (t / (6 * dies)))) / rate;
    out[i] = Math.sin(angle) * Math.exp(-t / dies) * Math.min(1, t / 0.001);
  }
  return levelled(out);
}

/** A drop that falls into water: a faint tap, and the bubble that it encloses. */
export function drip(random: Random): Float32Array {
  const enclosed = bubble(random, 500, 3000);
  const after = Math.round(between(random, 0.008, 0.03) * rate);
  const out = new Float32Array(after + enclosed.length);
  const tap = between(random, 0.05, 0.4);
  for (let i = 0; i < 0.004 * rate; i += 1)
    out[i] = tap * 2 * (2 * random() - 1) * Math.exp(-i / (0.0012 * rate));
  enclosed.forEach((sample, i) => {
    out[after + i] = (out[after + i] ?? 0) + sample;
  });
  return levelled(inRoom(random, out));
}
