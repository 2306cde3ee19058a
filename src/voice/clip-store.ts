// Clips kept between builds, one file each, named by all that went in: a changed sentence is
// spoken anew, and nothing else is. Build only.
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Clip, clipMade } from "./clip.ts";

const folder = fileURLToPath(new URL("../../node_modules/.cache/tankside/clips/", import.meta.url));

const fileOf = (engineHash: string, text: string): string =>
  join(folder, createHash("sha256").update(`${clipMade}\n${engineHash}\n${text}`).digest("hex"));

export function keptClip(engineHash: string, text: string): Clip | null {
  const file = fileOf(engineHash, text);
  if (!existsSync(file)) return null;
  const bytes = readFileSync(file);
  return { samples: bytes.readUInt32LE(0), bytes: new Uint8Array(bytes.subarray(4)) };
}

export function keepClip(engineHash: string, text: string, clip: Clip): void {
  mkdirSync(folder, { recursive: true });
  const samples = Buffer.alloc(4);
  samples.writeUInt32LE(clip.samples);
  writeWhole(fileOf(engineHash, text), Buffer.concat([samples, clip.bytes]));
}

/** Written beside and moved into place, so that a file is there whole or not at all. */
export function writeWhole(file: string, content: Uint8Array | string): void {
  const beside = `${file}.${process.pid}`;
  writeFileSync(beside, content);
  renameSync(beside, file);
}
