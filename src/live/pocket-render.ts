// A layout in, its track out, made in slices so short that no press waits for one. What was made before is
// kept by its key, so that an answer in the middle of a session costs no more than the answer.
import type { Cue } from "../timeline/score.ts";
import type { Laid, Piece, PocketTrack, Rendering } from "./pocket-shape.ts";

/** Ms that a slice may take before others get their turn. */
const SLICE = 8;
/** A sound may reach over into the piece behind; no piece has more than these in it. */
const SOUNDING = 24;

/**
 * @param breathe resolves when others have had their turn.
 * @param now ms on any clock.
 */
export function openRenderer(
  track: PocketTrack,
  soundOf: (cue: Cue) => Float32Array,
  breathe: () => Promise<void>,
  now: () => number,
): (laid: Laid) => Rendering {
  const known = new Map<string, Blob>();
  let latest: readonly { readonly cue: Cue; readonly sound: Float32Array }[] = [];

  function sounding(cue: Cue): Float32Array {
    const heard = latest.find((each) => each.cue === cue);
    if (heard !== undefined) return heard.sound;
    const sound = soundOf(cue);
    latest = [...latest.slice(1 - SOUNDING), { cue, sound }];
    return sound;
  }

  /** A voice's clips are decoded one by one, since a whole piece of them may take longer than a slice. */
  function* steps(pieces: readonly Piece[]): Generator<void, readonly Blob[]> {
    const blobs: Blob[] = [];
    for (const piece of pieces) {
      let blob = known.get(piece.key);
      if (blob === undefined) {
        for (const { cue } of piece.sounds) {
          sounding(cue);
          yield;
        }
        blob = new Blob([track.pieceBytes(piece, sounding) as Uint8Array<ArrayBuffer>]);
        known.set(piece.key, blob);
      }
      blobs.push(blob);
      yield;
    }
    return blobs;
  }

  async function made(laid: Laid, isOff: () => boolean): Promise<Blob | null> {
    const making = steps(laid.sections.flatMap(({ pieces }) => pieces));
    let since = now();
    let step = making.next();
    for (; step.done !== true; step = making.next()) {
      if (now() - since < SLICE) continue;
      await breathe();
      since = now();
      if (isOff()) return null;
    }
    const used = new Set(laid.sections.flatMap(({ pieces }) => pieces.map(({ key }) => key)));
    for (const key of known.keys()) if (!used.has(key)) known.delete(key);
    const header = track.headerBytes(laid) as Uint8Array<ArrayBuffer>;
    return new Blob([header, ...step.value], { type: "audio/wav" });
  }

  return (laid) => {
    let off = false;
    return {
      track: made(laid, () => off),
      callOff() {
        off = true;
      },
    };
  };
}
