// Samples in, a WAV file's bytes out: RIFF, 16-bit PCM, mono. The header comes first and states the
// length, so that the samples can follow piece by piece, and more chunks behind them.

const littleEndian = new Uint8Array(new Uint16Array([1]).buffer)[0] === 1;

/** The most samples that the format's 32-bit lengths can state, with 16 MB for what follows: about 24 hours at 24 kHz. */
export const mostSamples = Math.floor((2 ** 32 - 1 - 36 - 2 ** 24) / 2);

/**
 * @param samples in the whole file, at most `mostSamples`.
 * @param more bytes of chunks behind the samples, an even number.
 */
export function wavHeader(samples: number, sampleRate: number, more = 0): Uint8Array {
  const bytes = new Uint8Array(44);
  const view = new DataView(bytes.buffer);
  const word = (at: number, text: string) => {
    for (let i = 0; i < 4; i += 1) view.setUint8(at + i, text.charCodeAt(i));
  };
  word(0, "RIFF");
  view.setUint32(4, 36 + samples * 2 + more, true);
  word(8, "WAVE");
  word(12, "fmt ");
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true); // PCM
  view.setUint16(22, 1, true); // mono
  view.setUint32(24, sampleRate, true);
  view.setUint32(28, sampleRate * 2, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  word(36, "data");
  view.setUint32(40, samples * 2, true);
  return bytes;
}

/** @param samples from −1 to 1. */
export function pcmOf(samples: Float32Array): Uint8Array {
  // A typed array is several times as fast as a DataView, but has the machine's own byte order.
  const pcm = new Int16Array(samples.length);
  for (let i = 0; i < samples.length; i += 1) {
    const sample = samples[i];
    // Most of a track is silent.
    if (sample) pcm[i] = Math.round(sample * 32767);
  }
  const bytes = new Uint8Array(pcm.buffer);
  if (!littleEndian) for (let i = 0; i < bytes.length; i += 2) bytes.subarray(i, i + 2).reverse();
  return bytes;
}
