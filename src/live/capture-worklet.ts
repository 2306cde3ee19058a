// What the microphone hears, handed on in parts, on the audio thread: a busy page loses nothing of it.
// A module of its own, because that thread loads its own files.

/** The part of that thread's world that is used here; its types are in no library. */
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, made: new () => AudioWorkletProcessor): void;

/** Samples in a part: about 40 ms. */
const PART = 2048;

class Capture extends AudioWorkletProcessor {
  #part = new Float32Array(PART);
  #filled = 0;

  process([input]: readonly (readonly Float32Array[])[]): boolean {
    const heard = input?.[0];
    if (heard === undefined) return true;
    this.#part.set(heard, this.#filled);
    this.#filled += heard.length;
    if (this.#filled + heard.length > PART) {
      this.port.postMessage(this.#part.slice(0, this.#filled));
      this.#filled = 0;
    }
    return true;
  }
}

registerProcessor("capture", Capture);
