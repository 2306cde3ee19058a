// The package ships no types; these are the parts that the build calls.
declare module "@echogarden/espeak-ng-emscripten" {
  interface Worker {
    /** 0 where there is such a voice. */
    set_voice(identifier: string): number;
    set_rate(wordsAMinute: number): void;
    get_samplerate(): number;
    /** Gives the sound piece by piece; a piece is its own copy. Stops where the answer is true. */
    synthesize(text: string, piece: (samples: Int16Array) => boolean): void;
  }
  export default function open(): Promise<{
    readonly HEAPU8: Uint8Array;
    readonly eSpeakNGWorker: new () => Worker;
  }>;
}
