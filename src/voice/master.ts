// A clip as the engine spoke it in; the same clip made to carry over running water out: cleared
// of rumble, brightened, evened out, and cut to what is said. Build only. The filters are
// Web Audio's own, run offline in Node.
import {
  AudioBufferSourceNode,
  BiquadFilterNode,
  DynamicsCompressorNode,
  GainNode,
  OfflineAudioContext,
  WaveShaperNode,
} from "node-web-audio-api";
import { gain } from "../tones/loudness.ts";
import type { CodedRate } from "./encode.ts";
import { fadeEnds } from "./fade.ts";
import type { Speech } from "./speech.ts";
import type { Voice } from "./voices.ts";

/**
 * Chosen with a recogniser that had every phrase of the English script to pick from, at one
 * loudness, in noise shaped like a running tap. With the noise about 8 dB below the voice it got
 * 13 phrases in 100 as spoken and 30 with an equaliser alone; about 10 dB below, 92 like this (90
 * once coded), and 99 where it was quiet. Limiting harder is louder still, but costs words then.
 */
export const shape = {
  rumbleBelow: 300, // Hz; small loudspeakers give nothing back down there
  brightAbove: 1500, // Hz
  brighter: 12, // dB
  threshold: -40, // dB
  ratio: 8,
  attack: 0.002, // s
  release: 0.1, // s
  drive: 2, // how far the loudest pulses are pushed into the soft limit
};

/** tanh over ±4, beyond which it is flat to three places. */
const softLimit = Float32Array.from({ length: 4097 }, (_, i) => Math.tanh((i / 2048 - 1) * 4));

/** On a busy machine the engine now and then renders nothing at all: so often it is asked. */
const ATTEMPTS = 3;

/** Filtered and evened out, a little later than it came: the compressor looks 6 ms ahead. */
const shaped = async (speech: Speech, rate: CodedRate, attempt = 1): Promise<Float32Array> => {
  const { samples, sampleRate } = speech;
  const length = Math.ceil((samples.length / sampleRate + 0.05) * rate);
  const context = new OfflineAudioContext(1, length, rate);
  const buffer = context.createBuffer(1, samples.length, sampleRate);
  buffer.copyToChannel(new Float32Array(samples), 0);
  const source = new AudioBufferSourceNode(context, { buffer });
  const nodes = [
    new BiquadFilterNode(context, { type: "highpass", frequency: shape.rumbleBelow, Q: 0.7 }),
    new BiquadFilterNode(context, {
      type: "highshelf",
      frequency: shape.brightAbove,
      gain: shape.brighter,
    }),
    new DynamicsCompressorNode(context, {
      threshold: shape.threshold,
      ratio: shape.ratio,
      attack: shape.attack,
      release: shape.release,
      knee: 10,
    }),
    new GainNode(context, { gain: shape.drive / 4 }),
    new WaveShaperNode(context, { curve: softLimit }),
  ];
  nodes.reduce<AudioNode>((from, to) => from.connect(to), source).connect(context.destination);
  source.start();
  // Its types know nothing of that.
  const rendered: AudioBuffer | null = await context.startRendering();
  if (rendered !== null) return rendered.getChannelData(0);
  if (attempt === ATTEMPTS) throw new Error("The engine rendered nothing.");
  return shaped(speech, rate, attempt + 1);
};

/**
 * What is said, without the silence around it. Shaping brings the engine's silence up to −40
 * dBFS, the softest onset starts above −36 and a last breath fades out through −28; a few
 * milliseconds more are kept and faded, so that no consonant is cut.
 */
const trimmed = (samples: Float32Array, rate: number, room: Voice["room"]): Float32Array => {
  const ms = rate / 1000;
  const first = samples.findIndex((value) => Math.abs(value) > gain(-36));
  const last = samples.findLastIndex((value) => Math.abs(value) > gain(-28));
  if (first < 0 || last < first) throw new Error("The engine spoke nothing but silence.");
  const said = samples.slice(
    Math.max(0, first - Math.round(room.before * ms)),
    last + Math.round(room.after * ms),
  );
  fadeEnds(said, Math.round(4 * ms), Math.round(12 * ms));
  return said;
};

/**
 * At 16 kHz where the engine speaks at that, else at 24 kHz: never fewer samples than it spoke, so
 * that nothing is folded down. At a level still to be set.
 */
export const master = async (
  speech: Speech,
  room: Voice["room"],
): Promise<{ readonly samples: Float32Array; readonly sampleRate: CodedRate }> => {
  const sampleRate = speech.sampleRate === 16000 ? 16000 : 24000;
  return { samples: trimmed(await shaped(speech, sampleRate), sampleRate, room), sampleRate };
};
