// The worker in which the page makes a file to take along, so that the page answers all the while. Its pieces become
// the browser's here, which may put them on the disk: the page itself never holds any.
import { makeInWorker, type WorkerWish } from "./take-along.ts";

/** What the page is told: how far it is, from 0 to 1; the file, or that it is longer than such a file can be. */
export type WorkerTold = number | Blob | "too-long";

self.addEventListener("message", ({ data }: MessageEvent<WorkerWish>) => {
  // What goes wrong is the worker's own error, which the page is told of.
  make(data).then(tell, (error: unknown) => reportError(error));
});

/** So much at a time is handed to the browser, bytes: each handing over costs, whatever its size. */
const HANDFUL = 12_000_000;

async function make(wish: WorkerWish): Promise<Blob | "too-long"> {
  const handed: Blob[] = [];
  let held: Uint8Array<ArrayBuffer>[] = [];
  let bytes = 0;
  const hand = () => {
    handed.push(new Blob(held));
    held = [];
    bytes = 0;
  };
  const isWhole = await makeInWorker(wish, async (piece, done) => {
    held.push(piece as Uint8Array<ArrayBuffer>);
    bytes += piece.length;
    tell(done);
    if (bytes < HANDFUL) return;
    hand();
    // The browser takes them only once others have had their turn.
    await new Promise((resolve) => setTimeout(resolve));
  });
  hand();
  return isWhole ? new Blob(handed) : "too-long";
}

const tell = (told: WorkerTold): void => self.postMessage(told);
