// Words in, PCM out: eSpeak NG, a small synthesiser of many languages, as a WebAssembly module. A build
// tool alone (its licence is GPL 3): what it speaks is shipped, nothing of itself.
import Module from "@echogarden/espeak-ng-emscripten";
import type { Speak } from "./speech.ts";

/** @throws where the engine has no such voice. */
export async function openEspeak(name: string, wordsAMinute: number): Promise<Speak> {
  const module = await Module();
  const engine = new module.eSpeakNGWorker();
  if (engine.set_voice(name) !== 0) throw new Error(`The engine has no voice "${name}".`);
  engine.set_rate(wordsAMinute);
  spoken("");
  // It remembers the sentence before, and where its noise had come to: its memory is put back to what
  // it was, so that the same words always give the same samples.
  const born = module.HEAPU8.slice();
  return async (text) => {
    module.HEAPU8.set(born);
    module.HEAPU8.fill(0, born.length);
    const samples = spoken(text);
    if (samples.length === 0) throw new Error(`Nothing was spoken for "${text}".`);
    return { sampleRate: engine.get_samplerate(), samples };
  };

  function spoken(text: string): Float32Array {
    const pieces: Int16Array[] = [];
    engine.synthesize(text, (piece) => {
      pieces.push(piece);
      return false;
    });
    const samples = new Float32Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
    let to = 0;
    for (const piece of pieces) {
      for (const sample of piece) samples[to++] = sample / 32768;
    }
    return samples;
  }
}
