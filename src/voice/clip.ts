// A phrase's text in, its finished clip out: spoken, shaped, set to one loudness and coded. Build
// only. The level is set by what comes out of the decoder, since coding changes it.
import { gain, loudness, truePeak } from "../tones/loudness.ts";
import { openDecoder, preSkip } from "./decoder.ts";
import { bitrate, type CodedRate, encode, type Pains } from "./encode.ts";
import { engineHash, openVoice } from "./engines.ts";
import { master, shape } from "./master.ts";
import { joinPackets } from "./packets.ts";
import type { Voice } from "./voices.ts";

/** A coded clip and its exact length at 24 kHz once decoded. */
export interface Clip {
  readonly bytes: Uint8Array;
  readonly samples: number;
}

/**
 * LUFS and dBTP. The ceiling leaves room for a beat of the hands under the voice; the loudness
 * is the highest at which every clip stays below it.
 */
const target = { loudness: -20, ceiling: -3 };

/** Clips are whole hundredths of a second, in samples, so that a timeline's times read well. */
const step = 240;

/** dB within which the level is set; the peak is kept below the ceiling all the same. */
const tolerance = 0.2;

/** LU by which a phrase may be softer than the others for the sake of its peaks. */
const forgiven = 0.75;

/** All that a clip follows from besides its text, as text. */
export const clipMade = (voice: Voice): string =>
  JSON.stringify({
    clips: 9,
    furtherAttempts,
    forgiven,
    voice,
    target,
    step,
    shape,
    bitrate,
    engine: engineHash(voice),
  });

interface Attempt {
  readonly pains: Pains;
  /** What the highest peaks are pressed down to, as a part of themselves. */
  readonly peaks: number;
}

/**
 * A few phrases, a nasal vowel in them, come out of a coder that tries less hard with a burst of noise;
 * and one or two have a peak so high that at the loudness of the others it would pass the ceiling.
 */
const furtherAttempts: readonly Attempt[] = [
  { pains: 10, peaks: 1 },
  { pains: 10, peaks: 0.6 },
];

/** Peaks pressed down softly: the tangent hyperbolic, by which a voice is not heard to break. */
function pressed(samples: Float32Array, peaks: number): Float32Array {
  if (peaks === 1) return samples;
  const highest = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  return samples.map((sample) => Math.tanh(sample / (peaks * highest)) * peaks * highest);
}

/** Rounds of coding and listening until a level is right. */
const rounds = 5;

/** One for all voices: each clip is decoded from a fresh state. */
let decoder: ReturnType<typeof openDecoder> | null = null;

export const openSpeaker = async (voice: Voice): Promise<(text: string) => Promise<Clip>> => {
  const speak = await openVoice(voice);
  decoder ??= openDecoder();
  const decode = await decoder;

  /** Null where the level cannot be reached. */
  function coded(spoken: Float32Array, sampleRate: CodedRate, pains: Pains): Clip | null {
    const samples = Math.ceil((spoken.length * (24000 / sampleRate)) / step) * step;
    const said = new Float32Array((samples * sampleRate) / 24000);
    said.set(spoken);
    let level = target.loudness - loudness(spoken, sampleRate) + voice.codingLoss;
    for (let round = 0; round < rounds; round++) {
      const louder = gain(level);
      const packets = encode(
        said.map((sample) => sample * louder),
        sampleRate,
        pains,
      );
      const heard = decode(packets).slice(preSkip, preSkip + samples);
      const room = target.ceiling - truePeak(heard);
      const missing = target.loudness - loudness(heard, 24000);
      // A phrase of high peaks stays softer than the others, by no more than ears forgive.
      const softer = missing > 0 && missing < forgiven && room < tolerance;
      if (room >= 0 && (Math.abs(missing) < tolerance || softer))
        return { bytes: joinPackets(packets), samples };
      level += Math.min(missing, room);
    }
    return null;
  }

  return async (text) => {
    const { samples, sampleRate } = await master(await speak(text), voice.room);
    for (const { pains, peaks } of [{ pains: voice.pains, peaks: 1 }, ...furtherAttempts]) {
      const clip = coded(pressed(samples, peaks), sampleRate, pains);
      if (clip !== null) return clip;
    }
    throw new Error(`"${text}" cannot be coded at its level.`);
  };
};
