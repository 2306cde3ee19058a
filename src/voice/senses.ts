// By which senses a run reaches a person on this device: types alone, since the live run, the logbook and the
// screens must mean the same by them.

/** Whose voice says the words: the program's, a screen reader's, or nobody's. Never two. */
export type WhoSpeaks = "program" | "reader" | "tones";

export const whoSpeaksIds: readonly WhoSpeaks[] = ["program", "reader", "tones"];

export interface Senses {
  /** Null as long as nobody was asked: then the program speaks. */
  readonly speaks: WhoSpeaks | null;
  /** Each signal also as a vibration. */
  readonly vibrates: boolean;
  /** What is said also in writing, where there is light. */
  readonly captions: boolean;
}

export const usualSenses: Senses = { speaks: null, vibrates: false, captions: false };
