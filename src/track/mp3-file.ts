// A track's samples in, an MP3 file out, piece by piece: the tag, a frame that says how many follow and by how
// much the encoder is late, so that players that heed it begin on the sample, and the frames.
import { encoderDelay, frameBytes, frameSamples, framesOf, type Mp3Encoder } from "../tones/mp3.ts";
import { bigEndian, latin } from "./bytes.ts";

/** MPEG 2, layer III, no checksum; 64 kb/s, 24 kHz; mono, original. */
const FRAME_HEADER = Uint8Array.of(0xff, 0xf3, 0x84, 0xc4);
/** Bytes of a mono frame of MPEG 2 before what it holds. */
const SIDE = 4 + 9;
/** Where the encoder's part of the frame begins, by the custom of players. */
const ENCODER = SIDE + 120;

/** @throws where the encoder gives another number of frames than it says: then no time in the file would hold. */
export function* mp3Pieces(
  tag: Uint8Array,
  samples: number,
  pieces: Iterable<Float32Array>,
  encoder: Mp3Encoder,
): Generator<Uint8Array> {
  const frames = framesOf(samples);
  yield tag;
  yield infoFrame(samples, frames);
  let bytes = 0;
  for (const piece of pieces) {
    const coded = encoder.encode(piece);
    bytes += coded.length;
    yield coded;
  }
  const last = encoder.flush();
  bytes += last.length;
  if (bytes !== frames * frameBytes) throw new Error(`${bytes} bytes are not ${frames} frames.`);
  yield last;
}

/** The bytes of it all. */
export const mp3Bytes = (tag: Uint8Array, samples: number): number =>
  tag.length + (framesOf(samples) + 1) * frameBytes;

function infoFrame(samples: number, frames: number): Uint8Array {
  const frame = new Uint8Array(frameBytes);
  const put = (at: number, bytes: Uint8Array) => frame.set(bytes, at);
  const padding = frames * frameSamples - samples - encoderDelay;
  put(0, FRAME_HEADER);
  put(SIDE, latin("Info"));
  put(SIDE + 4, bigEndian(15, 4)); // All four are told: frames, bytes, places, quality.
  put(SIDE + 8, bigEndian(frames, 4));
  put(SIDE + 12, bigEndian((frames + 1) * frameBytes, 4));
  // At a constant bit rate a hundredth of the time is a hundredth of the bytes.
  put(
    SIDE + 16,
    Uint8Array.from({ length: 100 }, (_, i) => (i * 256) / 100),
  );
  put(ENCODER, latin("LAME3.100"));
  put(ENCODER + 9, Uint8Array.of(1)); // A constant bit rate.
  put(ENCODER + 20, Uint8Array.of(64));
  put(ENCODER + 21, bigEndian(encoderDelay * 4096 + padding, 3));
  put(ENCODER + 28, bigEndian((frames + 1) * frameBytes, 4));
  put(ENCODER + 34, bigEndian(checksum(frame.subarray(0, ENCODER + 34)), 2));
  return frame;
}

/** CRC-16 with the polynomial 0x8005, bits reversed, as the frame's own custom has it. */
function checksum(bytes: Uint8Array): number {
  let crc = 0;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >> 1) ^ 0xa001 : crc >> 1;
  }
  return crc;
}
