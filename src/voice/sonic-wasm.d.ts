// The stretching library ships no types; this is the part of it that stretch.ts uses.
declare module "@echogarden/sonic-wasm" {
  interface SonicModule {
    _sonicCreateStream(sampleRate: number, channels: number): number;
    _sonicSetSpeed(stream: number, speed: number): void;
    _sonicWriteFloatToStream(stream: number, samples: number, count: number): number;
    _sonicFlushStream(stream: number): number;
    _sonicReadFloatFromStream(stream: number, samples: number, most: number): number;
    _sonicDestroyStream(stream: number): void;
    _malloc(bytes: number): number;
    _free(pointer: number): void;
  }
  export default function Sonic(options: {
    instantiateWasm(
      imports: WebAssembly.Imports,
      done: (instance: WebAssembly.Instance, module: WebAssembly.Module) => void,
    ): object;
  }): Promise<SonicModule>;
}
