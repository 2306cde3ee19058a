// Clips kept between builds, one file each, named by all that went in: a changed sentence is
// spoken anew, and nothing else is. Build only.
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Clip } from "./clip.ts";

const folder = fileURLToPath(new URL("../../node_modules/.cache/tankside/clips/", import.meta.url));

const fileOf = (made: string, text: string): string =>
  join(folder, createHash("sha256").update(`${made}\n${text}`).digest("hex"));

/** @param made all that the clip follows from besides its text. */
export function keptClip(made: string, text: string): Clip | null {
  const file = fileOf(made, text);
  if (!existsSync(file)) return null;
  const bytes = readFileSync(file);
  return { samples: bytes.readUInt32LE(0), bytes: new Uint8Array(bytes.subarray(4)) };
}

export function keepClip(made: string, text: string, clip: Clip): void {
  mkdirSync(folder, { recursive: true });
  const samples = Buffer.alloc(4);
  samples.writeUInt32LE(clip.samples);
  writeWhole(fileOf(made, text), Buffer.concat([samples, clip.bytes]));
}

/** Written beside and moved into place, so that a file is there whole or not at all. */
export function writeWhole(file: string, content: Uint8Array | string): void {
  const beside = `${file}.${process.pid}`;
  writeFileSync(beside, content);
  renameSync(beside, file);
}
