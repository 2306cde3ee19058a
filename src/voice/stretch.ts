// Speech in, the same speech slower or faster out, its pitch kept, by the Sonic library. What comes
// out is fitted to the length that the compiler reckoned with, which is at most a few milliseconds off.
import Sonic from "@echogarden/sonic-wasm";
import { samplesAtRate } from "./pack.ts";

export type Stretch = (samples: Float32Array, rate: number) => Float32Array;

const SAMPLE_RATE = 24_000;
/** Samples over which a clip is faded where it had to be cut to length (4 ms). */
const FADE = 96;

/** @param wasm the library's `sonic.wasm`, wherever it was read from. */
export async function openStretch(wasm: BufferSource): Promise<Stretch> {
  let memory: WebAssembly.Memory | null = null;
  const module = await Sonic({
    instantiateWasm(imports, done) {
      void WebAssembly.instantiate(wasm, imports).then(({ instance, module: compiled }) => {
        memory =
          Object.values(instance.exports).find((each) => each instanceof WebAssembly.Memory) ??
          null;
        done(instance, compiled);
      });
      return {};
    },
  });

  function heap(pointer: number, count: number): Float32Array {
    if (memory === null) throw new Error("The stretcher exports no memory.");
    return new Float32Array(memory.buffer, pointer, count);
  }

  return (samples, rate) => {
    if (rate === 1) return samples;
    const length = samplesAtRate(samples.length, rate);
    const most = Math.max(samples.length, 2 * length);
    const buffer = module._malloc(most * 4);
    const stream = module._sonicCreateStream(SAMPLE_RATE, 1);
    module._sonicSetSpeed(stream, rate);
    heap(buffer, samples.length).set(samples);
    module._sonicWriteFloatToStream(stream, buffer, samples.length);
    module._sonicFlushStream(stream);
    const count = module._sonicReadFloatFromStream(stream, buffer, most);
    const stretched = heap(buffer, count).slice();
    module._sonicDestroyStream(stream);
    module._free(buffer);
    return fitted(stretched, length);
  };
}

function fitted(samples: Float32Array, length: number): Float32Array {
  const fit = new Float32Array(length);
  fit.set(samples.subarray(0, length));
  if (samples.length <= length) return fit;
  for (let i = 0; i < FADE; i += 1) {
    const at = length - 1 - i;
    fit[at] = (fit[at] ?? 0) * (i / FADE);
  }
  return fit;
}
