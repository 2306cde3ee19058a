// Samples in, MP3 frames out, by the encoder whose WebAssembly file is handed in: a file of its own, which
// anyone may replace by their own build of it.
import { sampleRate } from "./designs.ts";
import { bitRate, type Mp3Encoder } from "./mp3.ts";

/** Samples encoded at a time: a minute, as a track is mixed. */
const MOST = 60 * sampleRate;
/** What a call may give at most, by the encoder's manual: 1.25 bytes a sample and 7200. */
const MOST_BYTES = 1.25 * MOST + 7200;

/** The encoder's own names, one letter each, as its build made them. */
interface Exports {
  readonly e: WebAssembly.Memory;
  /** To be called once, before anything else. */
  readonly f: () => void;
  readonly g: (channels: number, rate: number, bits: number) => number;
  readonly h: (
    coder: number,
    left: number,
    right: number,
    samples: number,
    to: number,
    room: number,
  ) => number;
  readonly i: (coder: number, to: number, room: number) => number;
  readonly l: (bytes: number) => number;
}

/** One track's; @param wasm the encoder's file, wherever it was read from. */
export async function openMp3(wasm: BufferSource): Promise<Mp3Encoder> {
  const grow = { to: (_bytes: number) => 0 };
  const { instance } = await WebAssembly.instantiate(wasm, {
    // In this order: writes, says a file's place, asks for room, ends. There are no files, and it has nothing to say.
    a: { b: () => 0, d: () => 70, c: (bytes: number) => grow.to(bytes), a: ended },
  });
  const lame = instance.exports as unknown as Exports;
  grow.to = (bytes) => {
    lame.e.grow(Math.max(0, Math.ceil((bytes - lame.e.buffer.byteLength) / 65_536)));
    return 1;
  };
  lame.f();
  const coder = lame.g(1, sampleRate, bitRate);
  const input = lame.l(2 * MOST);
  const output = lame.l(MOST_BYTES);
  const given = (count: number) => new Uint8Array(lame.e.buffer, output, count).slice();

  return {
    encode(samples) {
      if (samples.length > MOST) throw new Error("More samples than fit at a time.");
      const pcm = new Int16Array(lame.e.buffer, input, samples.length);
      for (let i = 0; i < samples.length; i += 1) pcm[i] = Math.round((samples[i] ?? 0) * 32767);
      return given(lame.h(coder, input, input, samples.length, output, MOST_BYTES));
    },
    flush: () => given(lame.i(coder, output, MOST_BYTES)),
  };
}

function ended(status: number): never {
  throw new Error(`The MP3 encoder ended with ${status}.`);
}
