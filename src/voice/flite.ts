// Words in, 16-bit PCM out: Flite, a small English synthesiser, as one WebAssembly command. It
// asks its host for a dozen WASI calls; they are answered here from memory, with a clock that
// stands still, so that the same words always give the same samples and nothing is written to
// a disk. (Node's own WASI, still experimental, crashed in a long run of short-lived instances.)

import type { Speak, Speech } from "./speech.ts";

const ok = 0;
const badFile = 8;
const noEntry = 44;
const folder = 3;
const waveFile = 4;

/** What one run of the command reads and writes. */
interface Run {
  readonly argv: readonly Uint8Array[];
  /** The sound file, piece by piece. */
  readonly chunks: Uint8Array[];
  readonly complaints: string[];
}

const runOf = (args: readonly string[]): Run => ({
  argv: args.map((arg) => new TextEncoder().encode(`${arg}\0`)),
  chunks: [],
  complaints: [],
});

/** Answers the command's calls for the run that is on. */
const host = (run: () => Run, memory: () => ArrayBuffer) => {
  const view = () => new DataView(memory());
  const bytes = (from: number, length: number) => new Uint8Array(memory(), from, length);
  return {
    args_sizes_get: (count: number, size: number) => {
      const { argv } = run();
      view().setUint32(count, argv.length, true);
      view().setUint32(
        size,
        argv.reduce((sum, arg) => sum + arg.length, 0),
        true,
      );
      return ok;
    },
    args_get: (pointers: number, strings: number) => {
      let to = strings;
      for (const [index, arg] of run().argv.entries()) {
        view().setUint32(pointers + 4 * index, to, true);
        bytes(to, arg.length).set(arg);
        to += arg.length;
      }
      return ok;
    },
    clock_time_get: (_clock: number, _precision: bigint, time: number) => {
      view().setBigUint64(time, 0n, true);
      return ok;
    },
    fd_prestat_get: (fd: number, to: number) => {
      if (fd !== folder) return badFile;
      view().setUint8(to, 0);
      view().setUint32(to + 4, 1, true);
      return ok;
    },
    fd_prestat_dir_name: (_fd: number, to: number) => {
      view().setUint8(to, "/".charCodeAt(0));
      return ok;
    },
    fd_fdstat_get: (fd: number, to: number) => {
      const [directory, regular, terminal] = [3, 4, 2];
      bytes(to, 24).fill(0xff);
      view().setUint8(to, fd === folder ? directory : fd === waveFile ? regular : terminal);
      view().setUint16(to + 2, 0, true);
      return ok;
    },
    fd_fdstat_set_flags: () => ok,
    path_open: (_d: number, _f: number, path: number, length: number, ...rest: unknown[]) => {
      if (new TextDecoder().decode(bytes(path, length)) !== "wav") return noEntry;
      view().setUint32(Number(rest.at(-1)), waveFile, true);
      return ok;
    },
    fd_write: (fd: number, vectors: number, count: number, written: number) => {
      let total = 0;
      for (let i = 0; i < count; i++) {
        const from = view().getUint32(vectors + 8 * i, true);
        const piece = bytes(from, view().getUint32(vectors + 8 * i + 4, true)).slice();
        if (fd === waveFile) run().chunks.push(piece);
        else run().complaints.push(new TextDecoder().decode(piece));
        total += piece.length;
      }
      view().setUint32(written, total, true);
      return ok;
    },
    fd_read: () => badFile,
    fd_seek: () => badFile,
    fd_close: () => ok,
    proc_exit: (code: number) => {
      throw new Error(`The engine gave up with status ${code}. ${run().complaints.join("")}`);
    },
  };
};

/** The samples of a RIFF file as this engine writes it: 44 bytes of header, one channel. */
const readWave = (chunks: readonly Uint8Array[]): Speech => {
  const file = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let to = 0;
  for (const chunk of chunks) {
    file.set(chunk, to);
    to += chunk.length;
  }
  const view = new DataView(file.buffer);
  const samples = new Float32Array((file.length - 44) >> 1);
  for (let i = 0; i < samples.length; i++) samples[i] = view.getInt16(44 + 2 * i, true) / 32768;
  return { sampleRate: view.getUint32(24, true), samples };
};

/**
 * Makes an engine of the command's bytes. `stretch` lengthens every sound: 1 is the voice's
 * own pace. The engine remembers the sentence before, so its memory is put back to what it was
 * when it was born: the same bytes as from a fresh instance, in a quarter of the time.
 */
export const openFlite = async (
  wasm: BufferSource,
  voice: string,
  stretch: number,
): Promise<Speak> => {
  let run = runOf([]);
  const imports = host(
    () => run,
    () => memory.buffer,
  );
  const { instance } = await WebAssembly.instantiate(wasm, { wasi_snapshot_preview1: imports });
  const memory = instance.exports.memory as WebAssembly.Memory;
  const start = instance.exports._start as () => void;
  const born = new Uint8Array(memory.buffer).slice();
  return async (text) => {
    const how = ["-voice", voice, "--setf", `duration_stretch=${stretch}`];
    run = runOf(["flite", ...how, "-t", text, "-o", "/wav"]);
    const bytes = new Uint8Array(memory.buffer);
    bytes.set(born);
    bytes.fill(0, born.length);
    start();
    if (run.chunks.length === 0)
      throw new Error(`Nothing was spoken for "${text}". ${run.complaints.join("")}`);
    return readWave(run.chunks);
  };
};
