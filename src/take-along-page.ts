// Files to take along, made in a worker of the browser; links copied and handed on.
import { fetchPackedSounds } from "./live/browser-sounds.ts";
import type { Worksheet } from "./plan/worksheet.ts";
import type { WorkerWish } from "./take-along.ts";
import type { WorkerTold } from "./take-along-worker.ts";
import type { FileWish } from "./track/files.ts";
import type { Making, TakePorts } from "./ui/take-port.ts";
import { type Language, spokenIn } from "./units/language.ts";
import { noClips, type Speaker } from "./voice/speaker.ts";

const types: { readonly [kind in FileWish["kind"]]: string } = {
  mp3: "audio/mpeg",
  wav: "audio/wav",
  vtt: "text/vtt",
  srt: "application/x-subrip",
  ssml: "application/ssml+xml",
  ics: "text/calendar",
  txt: "text/plain",
};

type Parts = Pick<TakePorts, "saveFile" | "print"> & {
  /** Who speaks a language, as chosen on this device. */
  readonly speakerOf: (language: Language) => Promise<Speaker>;
};

export function browserTakeAlong({ speakerOf, ...given }: Parts): TakePorts {
  async function make(
    worksheet: Worksheet,
    wish: FileWish,
    told: (done: number) => void,
  ): Promise<Making> {
    const language = spokenIn(worksheet.language);
    const [bytes, speaker] = await Promise.all([fetchPackedSounds(language), speakerOf(language)]);
    // A voice of the device cannot be caught in a file, which is told beforehand.
    const own = speaker.kind === "clips" ? speaker.own : noClips;
    return working({ wish, worksheet, own, bytes }, told);
  }

  return {
    ...given,
    make,
    deviceSpeaks: async (language) => (await speakerOf(language)).kind === "device",
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

function working(wish: WorkerWish, told: (done: number) => void): Making {
  const worker = new Worker(new URL("./take-along-worker.ts", import.meta.url), { type: "module" });
  let cancel = () => {};
  const file = new Promise<Blob | "too-long">((resolve, reject) => {
    cancel = () => reject(new Error("cancelled"));
    worker.addEventListener("error", () => reject(new Error("the worker failed")));
    worker.addEventListener("message", ({ data }: MessageEvent<WorkerTold>) => {
      if (typeof data === "number") told(data);
      else if (data === "too-long") resolve(data);
      else resolve(data.slice(0, data.size, types[wish.wish.kind]));
    });
    const { pack, kit, stretcher, encoder } = wish.bytes;
    // Handed over, not copied: they were fetched for this file alone.
    worker.postMessage(
      wish,
      [pack, kit, stretcher, encoder].map(({ buffer }) => buffer),
    );
  });
  const over = () => worker.terminate();
  file.then(over, over);
  return { file, cancel: () => cancel() };
}
