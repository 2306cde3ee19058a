// A phrase's text in, its finished clip out: spoken, shaped, set to one loudness and coded. Build
// only. The level is set by what comes out of the decoder, since coding changes it.
import { gain, loudness, truePeak } from "../tones/loudness.ts";
import { openDecoder, preSkip } from "./decoder.ts";
import { bitrate, encode } from "./encode.ts";
import { openEngine } from "./engine.ts";
import { master, shape } from "./master.ts";
import { joinPackets } from "./packets.ts";

/** A coded clip and its exact length at 24 kHz once decoded. */
export interface Clip {
  readonly bytes: Uint8Array;
  readonly samples: number;
}

interface Voice {
  readonly name: string;
  /** How much longer each sound lasts than the voice's own. */
  readonly stretch: number;
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

/**
 * Of about 110 phrases with a number, clean and each to be picked out of the whole script, a
 * recogniser took twelve of the engine's `slt` for another ("forty", "fifty", "sixty" and "ninety
 * minutes" for the teens every time), ten of its `kal16`, and three of this one's. Its own pace
 * is about 170 words a minute.
 */
export const voice: Voice = { name: "rms", stretch: 1 };

/** All that a clip follows from besides its text and the engine, as text. */
export const clipMade = JSON.stringify({ clips: 3, voice, target, step, shape, bitrate });

export const openSpeaker = async (
  engine: BufferSource,
): Promise<(text: string) => Promise<Clip>> => {
  const speak = await openEngine(engine);
  const decode = await openDecoder();
  return async (text) => {
    const speech = await speak(text, voice.name, voice.stretch);
    if (speech.sampleRate !== 16000)
      throw new Error(`Voice "${voice.name}" does not speak at 16 kHz.`);
    const spoken = await master(speech);
    const samples = Math.ceil((spoken.length * 1.5) / step) * step;
    const said = new Float32Array(samples / 1.5);
    said.set(spoken);
    let level = target.loudness - loudness(spoken, 16000) + codingLoss;
    for (let round = 0; ; round++) {
      const packets = encode(said.map((sample) => sample * gain(level)));
      const heard = decode(packets).slice(preSkip, preSkip + samples);
      const room = target.ceiling - truePeak(heard);
      const missing = Math.min(target.loudness - loudness(heard, 24000), room);
      if ((Math.abs(missing) < tolerance && room >= 0) || round === 4)
        return { bytes: joinPackets(packets), samples };
      level += missing;
    }
  };
};
