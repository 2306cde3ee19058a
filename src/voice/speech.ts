// What every synthesiser gives: the samples of a phrase. Apart from each of them, so that a clip is made
// the same way whoever spoke it.

/** 16-bit mono samples as a fraction of full scale. */
export interface Speech {
  readonly sampleRate: number;
  readonly samples: Float32Array;
}

/** Speaks a phrase: the same samples every time, whatever was spoken before it. */
export type Speak = (text: string) => Promise<Speech>;
