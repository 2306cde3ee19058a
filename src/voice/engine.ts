// Words in, 16-bit PCM out: Flite, a small English synthesiser, as one WebAssembly command. It
// asks its host for a dozen WASI calls; they are answered here from memory, with a clock that
// stands still, so that the same words always give the same samples and nothing is written to
// a disk. (Node's own WASI, still experimental, crashed in a long run of short-lived instances.)

/** 16-bit mono samples as a fraction of full scale. */
export interface Speech {
  readonly sampleRate: number;
  readonly samples: Float32Array;
}

export type Engine = (text: string, voice: string, stretch: number) => Promise<Speech>;

const ok = 0;
const badFile = 8;
const noEntry = 44;
const folder = 3;
const waveFile = 4;

class Exit extends Error {}

/** What one run of the command reads and writes. */
const host = (args: readonly string[], memory: () => ArrayBuffer) => {
  const argv = args.map((arg) => new TextEncoder().encode(`${arg}\0`));
  const chunks: Uint8Array[] = [];
  const complaints: string[] = [];
  const view = () => new DataView(memory());
  const bytes = (from: number, length: number) => new Uint8Array(memory(), from, length);
  const imports = {
    args_sizes_get: (count: number, size: number) => {
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
      for (const [index, arg] of argv.entries()) {
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
        if (fd === waveFile) chunks.push(piece);
        else complaints.push(new TextDecoder().decode(piece));
        total += piece.length;
      }
      view().setUint32(written, total, true);
      return ok;
    },
    fd_read: () => badFile,
    fd_seek: () => badFile,
    fd_close: () => ok,
    proc_exit: (code: number) => {
      throw new Exit(String(code));
    },
  };
  return { imports, chunks, complaints };
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
 * own pace. Each sentence gets a fresh instance, since the engine remembers the one before.
 */
export const openEngine = async (wasm: BufferSource): Promise<Engine> => {
  const command = await WebAssembly.compile(wasm);
  return async (text, voice, stretch) => {
    const args = ["flite", "-voice", voice, "--setf", `duration_stretch=${stretch}`];
    const { imports, chunks, complaints } = host(
      [...args, "-t", text, "-o", "/wav"],
      () => (exports.memory as WebAssembly.Memory).buffer,
    );
    const { exports } = await WebAssembly.instantiate(command, { wasi_snapshot_preview1: imports });
    try {
      (exports._start as () => void)();
    } catch (error) {
      if (!(error instanceof Exit)) throw error;
    }
    if (chunks.length === 0)
      throw new Error(`Nothing was spoken for "${text}". ${complaints.join("")}`);
    return readWave(chunks);
  };
};
