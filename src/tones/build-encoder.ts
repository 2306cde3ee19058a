// The MP3 encoder as a file of its own, taken out of the package that carries it within a script. Its licence asks
// that whoever uses a program may put their own build of the encoder in its place: so it is a file, read as it is.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const carrier = () =>
  createRequire(import.meta.url)
    .resolve("@mediabunny/mp3-encoder")
    .replace(/bundles[\\/].*$/, "modules/build/lame.js");

/** @throws where the package carries it in another way than the version that is pinned. */
export function encoderFile(): Uint8Array {
  const [, inBase64] = /base64Decode\("([^"]+)"\)/.exec(readFileSync(carrier(), "utf8")) ?? [];
  if (inBase64 === undefined) throw new Error("The MP3 encoder was not found in its package.");
  return Buffer.from(inBase64, "base64");
}
