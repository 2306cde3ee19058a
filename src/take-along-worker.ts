// The worker in which the page makes a file to take along, so that the page answers all the while. Its pieces become
// the browser's here, which may put them on the disk: the page itself never holds any.
import { fileMaker, type MakeFile, type WorkerSession } from "./take-along.ts";
import type { FileWish } from "./track/files.ts";

/** First a session; then, whenever a person asks for it, the one file. */
export type WorkerAsked =
  | { readonly kind: "session"; readonly session: WorkerSession }
  | { readonly kind: "file"; readonly wish: FileWish };

/** What the page is told: how far it is, from 0 to 1; the file, or that it is longer than such a file can be. */
export type WorkerTold = number | Blob | "too-long";

const types: { readonly [kind in FileWish["kind"]]: string } = {
  mp3: "audio/mpeg",
  wav: "audio/wav",
  vtt: "text/vtt",
  srt: "application/x-subrip",
  ssml: "application/ssml+xml",
  ics: "text/calendar",
  txt: "text/plain",
};

let maker: Promise<MakeFile> | null = null;

self.addEventListener("message", ({ data }: MessageEvent<WorkerAsked>) => {
  switch (data.kind) {
    case "session":
      maker = fileMaker(data.session);
      // It is told of to whoever asks for a file.
      maker.catch(() => {});
      break;
    case "file":
      // What goes wrong is the worker's own error, which the page is told of.
      make(data.wish).then(tell, (error: unknown) => reportError(error));
      break;
  }
});

/** The page is told again once so much more is made, from 0 to 1. */
const TOLD = 0.01;

/** As a stream, from which the browser takes piece by piece: each Blob would have to be waited for. */
async function make(wish: FileWish): Promise<Blob | "too-long"> {
  if (maker === null) throw new Error("a file was asked for before a session was told of");
  const file = await (await maker)(wish);
  if (file === null) return "too-long";
  const pieces = file.pieces[Symbol.iterator]();
  let made = 0;
  let told = 0;
  const readable = new ReadableStream<Uint8Array>({
    pull(out) {
      const { done, value } = pieces.next();
      if (done) {
        out.close();
        return;
      }
      made += value.length;
      if (made >= told) {
        tell(made / file.bytes);
        told = made + TOLD * file.bytes;
      }
      out.enqueue(value);
    },
  });
  return new Response(readable, { headers: { "Content-Type": types[wish.kind] } }).blob();
}

const tell = (told: WorkerTold): void => self.postMessage(told);
