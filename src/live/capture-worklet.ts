// What the microphone hears, handed on in parts, on the audio thread: a busy page loses nothing of it.
// A module of its own, because that thread loads its own files.

/** The part of that thread's world that is used here; its types are in no library. */
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}
interface Options {
  readonly processorOptions: { readonly part: number };
}
declare function registerProcessor(
  name: string,
  made: new (options: Options) => AudioWorkletProcessor,
): void;
/** Seconds on the context's clock of the samples in hand, and how many of them there are a second. */
declare const currentTime: number;
declare const sampleRate: number;

class Capture extends AudioWorkletProcessor {
  readonly #part: Float32Array;
  #filled = 0;

  constructor({ processorOptions }: Options) {
    super();
    this.#part = new Float32Array(processorOptions.part);
  }

  process([input]: readonly (readonly Float32Array[])[]): boolean {
    const heard = input?.[0];
    if (heard === undefined) return true;
    this.#part.set(heard, this.#filled);
    this.#filled += heard.length;
    if (this.#filled + heard.length > this.#part.length) {
      const at = currentTime + (heard.length - this.#filled) / sampleRate;
      this.port.postMessage({ samples: this.#part.slice(0, this.#filled), at });
      this.#filled = 0;
    }
    return true;
  }
}

registerProcessor("capture", Capture);
