// The microphone's samples in, the times of knocks on the bench out. Plain arithmetic on the energy of seven
// bands, a millisecond at a time: what is louder all at once than just now and of late is looked at
// 50 ms later (knock-judged.ts). Nothing is kept past a quarter of a second, and nothing leaves.
import { type BandFilters, bands, openBandFilters } from "./knock-bands.ts";
import { AFTER, BEFORE, type Knock, knockIn } from "./knock-judged.ts";

/** A sound that the program itself makes, in seconds on the audio clock as it leaves the loudspeaker. */
export interface OwnSound {
  readonly from: number;
  readonly to: number;
  readonly kind: "tone" | "voice";
}

export interface KnockDetector {
  /**
   * @param samples the next block, of any length.
   * @param at seconds on the audio clock of its first sample.
   * @returns the first contact of each knock that is certain by now, in seconds on that clock.
   */
  hear(samples: Float32Array, at: number): readonly number[];
}

/** dB that a band must rise: above what it was of late, and above the 30 ms before. */
const ABOVE_LATELY = 5;
const ABOVE_BEFORE = 8;
/** Of the six bands from 110 Hz on, so many must rise, or two by so much together. */
const RISING = 3;
const TWO_RISE = 24;
/** A band counts as risen for so many ms: low ones take longer to rise. */
const TOGETHER = 6;
/** A rise so many ms after the last one is a noise of its own. */
const ANEW = 15;
/** After a knock, ms: a second contact is the same knock. As long as presses.ts takes it for one. */
const SAME = 90;
/** Frames in which a knock may still be heard in the room. */
const LASTS = 120;
/** How loud a band was of late: its loudest 20 ms but for the loudest eighth, of 1.5 s. */
const SLOT = 20;
const SLOTS = 75;
const BUT_FOR = 0.12;
/** dB that a knock must stand above the quarter of a second before it; more while the program speaks. */
const ABOVE_BEFORE_IT = 10;
const ABOVE_OWN_VOICE = 13;
/**
 * Nothing is heard about the beginning of a sound of our own, seconds: what is told of a loudspeaker's
 * delay is off by tens of ms, a microphone's is 10 to 30, and the sound takes 3 for a metre. Its middle
 * needs no such care: a tone neither rises nor dies as a knock does.
 */
const DEAF = { before: 0.03, after: 0.12 };
/** A voice is heard so much longer than it is sounded, by those delays and the room's echo. */
const ECHO = 0.3;
/** −80 dBFS: less is a microphone's own noise, or a gate that has closed. */
const FLOOR = 1e-8;
/** Frames until the room is known. */
const WARM = 50;
const history = 512;

const dB = (ratio: number): number => 10 * Math.log10(ratio);

/** @param ownSounds all those that may be in the microphone now. */
export function openKnockDetector(
  sampleRate: number,
  ownSounds: () => readonly OwnSound[] = () => [],
): KnockDetector {
  const filters: BandFilters = openBandFilters(sampleRate);
  const heard: Float64Array[] = Array.from({ length: history }, () => new Float64Array(bands));
  const lately = openLately();
  /** Frames since the start. */
  let now = 0;
  /** Not judged yet. What follows soon is noted too: it may be a knock after a scrape, or a vowel. */
  let noises: readonly { readonly at: number; readonly lately: Float64Array }[] = [];
  let knocks: readonly number[] = [];
  let rest = new Float32Array(0);

  const frameAt = (index: number): Float64Array =>
    heard[(index + history) % history] ?? new Float64Array(bands);

  /** @returns the knock that this frame made certain, counted in frames since the start. */
  function next(energies: Float64Array): Knock | null {
    heard[now % history] = energies;
    lately.add(energies);
    const at = now;
    now += 1;
    const last = knocks.at(-1) ?? Number.NEGATIVE_INFINITY;
    if (at < BEFORE + WARM) return null;
    if (at < last + SAME) noises = [];
    else if (at > (noises.at(-1)?.at ?? 0) + ANEW && rises(at)) {
      noises = [...noises, { at, lately: lately.levels().slice() }];
    }
    const noise = noises[0];
    if (noise === undefined || at < noise.at + AFTER) return null;
    noises = noises.slice(1);
    const from = noise.at - BEFORE;
    const frames = Array.from({ length: BEFORE + AFTER }, (_, i) => frameAt(from + i));
    const known = (frame: number) =>
      knocks.some((knock) => from + frame >= knock - 10 && from + frame < knock + LASTS);
    const knock = knockIn({ frames, lately: noise.lately, known });
    return knock === null ? null : { ...knock, contact: from + knock.contact };
  }

  function rises(at: number): boolean {
    let [rising, lowRising, together] = [0, 0, 0];
    const levels = lately.levels();
    for (let band = 1; band < bands; band += 1) {
      let [most, before] = [0, 0];
      for (let i = 0; i < TOGETHER; i += 1) most = Math.max(most, frameAt(at - i)[band] ?? 0);
      const above = dB(most / (levels[band] ?? 1));
      if (above <= ABOVE_LATELY) continue;
      for (let i = TOGETHER; i < TOGETHER + 30; i += 1) before += (frameAt(at - i)[band] ?? 0) / 30;
      const sudden = dB(most / (before + 1e-30));
      const risen = Math.min(above, sudden - ABOVE_BEFORE + ABOVE_LATELY);
      if (risen <= ABOVE_LATELY) continue;
      rising += 1;
      if (band < 5) lowRising += 1;
      together += Math.min(20, risen);
    }
    return lowRising > 0 && (rising >= RISING || (rising >= 2 && together > TWO_RISE));
  }

  return {
    hear(samples, at) {
      const { frame } = filters;
      const all = new Float32Array(rest.length + samples.length);
      all.set(rest);
      all.set(samples, rest.length);
      const first = now;
      const found: number[] = [];
      let done = 0;
      for (; done + frame <= all.length; done += frame) {
        const knock = next(filters.through(all, done));
        if (knock === null) continue;
        const contact = at + ((knock.contact - first) * frame - rest.length) / sampleRate;
        if (knock.above < needed(contact, ownSounds())) continue;
        knocks = [...knocks.slice(-5), knock.contact];
        found.push(contact);
      }
      rest = all.slice(done);
      return found;
    },
  };
}

/** dB above what was before, for a contact at such a time to be a knock. */
function needed(contact: number, own: readonly OwnSound[]): number {
  const begins = ({ from }: OwnSound) =>
    contact >= from - DEAF.before && contact < from + DEAF.after;
  if (own.some(begins)) return Number.POSITIVE_INFINITY;
  const speaks = ({ kind, from, to }: OwnSound) =>
    kind === "voice" && contact >= from && contact < to + ECHO;
  return own.some(speaks) ? ABOVE_OWN_VOICE : ABOVE_BEFORE_IT;
}

/** How loud each band was of late: the level that its 20 ms keep below, but for the loudest eighth. */
function openLately() {
  const slots = Array.from({ length: bands }, () => ({
    inTime: [] as number[],
    byLevel: [] as number[],
  }));
  const slot = new Float64Array(bands);
  const levels = new Float64Array(bands).fill(1);
  let frames = 0;
  return {
    levels: () => levels,
    add(energies: Float64Array) {
      for (let band = 0; band < bands; band += 1)
        slot[band] = Math.max(slot[band] ?? 0, energies[band] ?? 0);
      frames += 1;
      if (frames % SLOT !== 0) return;
      for (const [band, { inTime, byLevel }] of slots.entries()) {
        const level = slot[band] ?? 0;
        inTime.push(level);
        const place = byLevel.findIndex((other) => other >= level);
        byLevel.splice(place < 0 ? byLevel.length : place, 0, level);
        const oldest = inTime.length > SLOTS ? inTime.shift() : undefined;
        if (oldest !== undefined) byLevel.splice(byLevel.indexOf(oldest), 1);
        const quiet = byLevel[Math.floor((1 - BUT_FOR) * (byLevel.length - 1))] ?? 0;
        levels[band] = Math.max(FLOOR, quiet);
      }
      slot.fill(0);
    },
  };
}
