// What the pocket way is made of: types alone. A track is laid out and mixed by the stage beside this one
// (track/pocket-track.ts), an audio element plays it (browser-pocket.ts); both are ports here.
import type { Cue, Section } from "../timeline/score.ts";
import type { OwnSound } from "./knocks.ts";
import type { Outlet } from "./outlet.ts";

export interface Piece {
  /** Two pieces of the same key sound the same. */
  readonly key: string;
  /** What sounds in it. */
  readonly sounds: readonly { readonly cue: Cue }[];
}

export interface LaidSection {
  /** Seconds into the track at which its press was. */
  readonly start: number;
  /** Seconds into the section from which on it waits. */
  readonly waits: number;
  readonly pieces: readonly Piece[];
}

export interface Laid {
  readonly sections: readonly LaidSection[];
  readonly pieceSeconds: number;
  /** Waiting so long, seconds, a player turns back by so much. */
  readonly turn: { readonly at: number; readonly back: number };
}

export interface PocketTrack {
  lay(sections: readonly Section[]): Laid;
  pieceBytes(piece: Piece, soundOf: (cue: Cue) => Float32Array): Uint8Array;
  headerBytes(laid: Laid): Uint8Array;
}

/** One audio element. Positions are seconds into its track, times seconds on the steady clock. */
export interface PocketPlayer {
  now(): number;
  /**
   * Takes a track in place of what it plays.
   * @param at where to begin, asked when it can.
   * @returns whether it plays; `not-let` where only a press would let it.
   */
  load(track: Blob, at: () => number): Promise<"plays" | "not-let" | "cannot">;
  seek(to: number): void;
  position(): number;
  paused(): boolean;
  /** Whether it was let; false where only a press would let it. */
  play(): Promise<boolean>;
  /** Called where it stopped and nobody here had asked it to: a headset was pulled out, someone rang. */
  onPauseUnasked(act: () => void): void;
  after(seconds: number, act: () => void): () => void;
}

/** One track being made; null where it was called off. */
export interface Rendering {
  readonly track: Promise<Blob | null>;
  callOff(): void;
}

export interface PocketParts {
  readonly player: PocketPlayer;
  readonly lay: (sections: readonly Section[]) => Laid;
  readonly render: (laid: Laid) => Rendering;
  /** Seconds by which what is played is heard late, as with wireless headphones. */
  readonly delay: number;
  /** It is heard from now on: whatever was heard before is to fall silent. */
  readonly begins: () => void;
  /** It cannot be had. */
  readonly failed: () => void;
  /** It stands still, and was not let go on. */
  readonly silent: () => void;
}

export interface Pocket extends Outlet {
  /** To be called now and then: whether it went on since the last time. Tries to wake what stands still. */
  check(): boolean;
  /** To be called from a press, where it is not heard: what was not let sound before may be now. */
  wake(): void;
  /** Seconds on the steady clock, less those in which it stood still. */
  clock(): number;
  /** What it sounds about now, on the steady clock; a track that may be off by a little is given so much room. */
  sounding(): readonly OwnSound[];
  /** Calls back once nothing sounds. */
  whenFree(act: () => void): void;
}
