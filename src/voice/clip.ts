// A phrase's text in, its finished clip out: spoken, shaped, set to one loudness and coded. Build
// only. The level is set by what comes out of the decoder, since coding changes it.
import { gain, loudness, truePeak } from "../tones/loudness.ts";
import { openDecoder, preSkip } from "./decoder.ts";
import { bitrate, encode } from "./encode.ts";
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

/** dB that coding takes off such bright speech, on average: a first guess. */
const codingLoss = 1.7;

/** dB within which the level is set; the peak is kept below the ceiling all the same. */
const tolerance = 0.2;

/** All that a clip follows from besides its text, as text. */
export const clipMade = (voice: Voice): string =>
  JSON.stringify({ clips: 6, voice, target, step, shape, bitrate, engine: engineHash(voice) });

export const openSpeaker = async (voice: Voice): Promise<(text: string) => Promise<Clip>> => {
  const speak = await openVoice(voice);
  const decode = await openDecoder();
  return async (text) => {
    const { samples: spoken, sampleRate } = await master(await speak(text));
    const samples = Math.ceil((spoken.length * (24000 / sampleRate)) / step) * step;
    const said = new Float32Array((samples * sampleRate) / 24000);
    said.set(spoken);
    let level = target.loudness - loudness(spoken, sampleRate) + codingLoss;
    for (let round = 0; ; round++) {
      const packets = encode(
        said.map((sample) => sample * gain(level)),
        sampleRate,
      );
      const heard = decode(packets).slice(preSkip, preSkip + samples);
      const room = target.ceiling - truePeak(heard);
      const missing = Math.min(target.loudness - loudness(heard, 24000), room);
      if ((Math.abs(missing) < tolerance && room >= 0) || round === 4)
        return { bytes: joinPackets(packets), samples };
      level += missing;
    }
  };
};
