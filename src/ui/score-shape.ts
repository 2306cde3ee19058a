// The score's shape: what has been placed where, as plain data between score-model.ts, which decides,
// and score-picture.tsx, which draws. Units are CSS px at the usual size of text; y grows downward and
// is 0 at the floor of the bath.
import type { Cue } from "../timeline/score.ts";

interface Lane {
  readonly top: number;
  readonly bottom: number;
}

/** Words, hung above the bar that lasts as long as they do. */
export interface Word {
  /** Index into the section's cues, as everywhere below. */
  readonly cue: number;
  readonly x: number;
  /** Units the speech itself lasts. */
  readonly spoken: number;
  readonly lines: readonly string[];
  /** Top of the first line. */
  readonly y: number;
}

/** A tone on its line. */
export interface Tick {
  readonly cue: number;
  readonly kind: Cue["kind"];
  readonly tone: string;
  readonly x: number;
}

/** What the hands do. */
export interface Note {
  /** Index into the section's moments. */
  readonly moment: number;
  readonly x: number;
  /** What stands beneath it, and in which row of names; null where a neighbour says it. */
  readonly name: string | null;
  readonly row: number;
  /** When, where there is room for it. */
  readonly clock: string | null;
}

/** A piece of the bath: it rises, lies level, swings once over and back, falls. */
export interface Stroke {
  readonly kind: "rise" | "level" | "swing" | "fall";
  readonly from: number;
  readonly to: number;
}

interface StretchBase {
  /** `[from, to)`, seconds from the press. */
  readonly from: number;
  readonly to: number;
}

/** Time drawn to scale: `x = (seconds − from) · scale`. */
export interface OpenStretch extends StretchBase {
  readonly kind: "open";
  readonly scale: number;
  /** Units; more than its time takes where its last words need room. */
  readonly width: number;
  readonly words: readonly Word[];
  readonly ticks: readonly Tick[];
  readonly notes: readonly Note[];
  /** In units from the left. */
  readonly strokes: readonly Stroke[];
}

/** Time in which nothing new happens, with its length written. */
export interface FoldedStretch extends StretchBase {
  readonly kind: "folded";
  /** The bath on either side of the length written: in units from the left edge, and back from the right one. */
  readonly begins: readonly Stroke[];
  readonly ends: readonly Stroke[];
  /** Those of a bout that goes on and on. */
  readonly moments: readonly number[];
  readonly cues: readonly number[];
  readonly length: string;
}

export type Stretch = OpenStretch | FoldedStretch;

export interface ScoreSystem {
  /** Id of the bath; null where the section only tells. */
  readonly bath: string | null;
  readonly stretches: readonly Stretch[];
  readonly lanes: {
    readonly words: Lane;
    readonly tones: Lane;
    readonly hands: Lane;
    /** The names of the notes. */
    readonly names: Lane;
    /** The clock, at the foot. */
    readonly clock: Lane;
  };
}

/** An item of the section with its index there. */
export type Numbered<Item> = readonly [index: number, item: Item];

/** Units a second: where hands work, and where only words are heard. */
export const handScale = 14;
export const wordScale = 54;
