// Files to take along, made in a worker of the browser; links copied and handed on.
import { fetchPackedSounds } from "./live/browser-sounds.ts";
import type { Worksheet } from "./plan/worksheet.ts";
import type { WorkerAsked, WorkerTold } from "./take-along-worker.ts";
import type { FileWish } from "./track/files.ts";
import type { Making, TakePorts } from "./ui/take-port.ts";
import { type Language, spokenIn } from "./units/language.ts";
import { noClips, type OwnClips, type Speaker } from "./voice/speaker.ts";

type Parts = Pick<TakePorts, "saveFile" | "print"> & {
  /** Who speaks a language, as chosen on this device. */
  readonly speakerOf: (language: Language) => Promise<Speaker>;
};

/** A worker that unpacks a session's sounds, or has unpacked them: for one file at a time. */
interface Opened {
  readonly worksheet: Worksheet;
  readonly own: OwnClips;
  readonly worker: Worker;
  /** Rejects where a sound could not be fetched. */
  readonly handed: Promise<void>;
}

export function browserTakeAlong({ speakerOf, ...given }: Parts): TakePorts {
  let held: Opened | null = null;
  let holding: Worksheet | null = null;

  async function ownFor(worksheet: Worksheet): Promise<OwnClips> {
    const speaker = await speakerOf(spokenIn(worksheet.language));
    // A voice of the device cannot be caught in a file, which is told beforehand.
    return speaker.kind === "clips" ? speaker.own : noClips;
  }

  async function hold(worksheet: Worksheet): Promise<void> {
    const own = await ownFor(worksheet);
    if (holding === worksheet && held === null) held = opened(worksheet, own);
  }

  function letGo(): void {
    held?.worker.terminate();
    held = null;
  }

  async function make(
    worksheet: Worksheet,
    wish: FileWish,
    told: (done: number) => void,
  ): Promise<Making> {
    const own = await ownFor(worksheet);
    // One that was opened for another voice, or another session, is of no use any more.
    if (held?.worksheet !== worksheet || held.own !== own) letGo();
    const { worker, handed } = held ?? opened(worksheet, own);
    held = null;
    const making = working(worker, handed, wish, told);
    making.file.then(
      () => {
        // What it has unpacked is there for the next.
        if (holding === worksheet && held === null) held = { worksheet, own, worker, handed };
        else worker.terminate();
      },
      () => {
        worker.terminate();
        if (holding === worksheet) void hold(worksheet);
      },
    );
    return making;
  }

  return {
    ...given,
    make,
    holdReady(worksheet) {
      holding = worksheet;
      void hold(worksheet);
      return () => {
        holding = null;
        letGo();
      };
    },
    deviceSpeaks: async (language) => (await speakerOf(language)).kind === "device",
    now: () => Date.now(),
    address: () => location.href.replace(/#.*$/, ""),
    async copy(text) {
      try {
        await navigator.clipboard.writeText(text);
        return true;
      } catch {
        return false;
      }
    },
    share:
      "share" in navigator
        ? // Whoever turns back from it has shared nothing, and nothing is wrong.
          (title, url) => navigator.share({ title, url }).catch(() => {})
        : null,
  };
}

function opened(worksheet: Worksheet, own: OwnClips): Opened {
  const worker = new Worker(new URL("./take-along-worker.ts", import.meta.url), { type: "module" });
  const handed = fetchPackedSounds(spokenIn(worksheet.language)).then((bytes) => {
    const { pack, kit, stretcher, encoder } = bytes;
    // Handed over, not copied: they were fetched for this file alone.
    ask(
      worker,
      { kind: "session", session: { worksheet, own, bytes } },
      [pack, kit, stretcher, encoder].map(({ buffer }) => buffer),
    );
  });
  // Whoever waits for a file is told.
  handed.catch(() => {});
  return { worksheet, own, worker, handed };
}

function working(
  worker: Worker,
  handed: Promise<void>,
  wish: FileWish,
  told: (done: number) => void,
): Making {
  let cancel = () => {};
  const file = new Promise<Blob | "too-long">((resolve, reject) => {
    cancel = () => reject(new Error("cancelled"));
    worker.onerror = () => reject(new Error("the worker failed"));
    worker.onmessage = ({ data }: MessageEvent<WorkerTold>) => {
      if (typeof data === "number") told(data);
      else resolve(data);
    };
    handed.then(() => ask(worker, { kind: "file", wish }), reject);
  });
  return { file, cancel: () => cancel() };
}

const ask = (worker: Worker, asked: WorkerAsked, handed: Transferable[] = []): void =>
  worker.postMessage(asked, handed);
