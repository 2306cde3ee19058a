// What the first screen loads, and what is loaded behind it, compressed as a good host would.
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { brotliCompressSync } from "node:zlib";
import type { Table } from "./table.ts";

const dist = fileURLToPath(new URL("../../dist/", import.meta.url));
const brotli = (file: string) => brotliCompressSync(readFileSync(join(dist, file))).length;

/** The scripts that the page names, and all that they import before anything runs. */
function firstScripts(): readonly string[] {
  const html = readFileSync(join(dist, "index.html"), "utf8");
  const queue = [...html.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map(
    (m) => m[1] ?? "",
  );
  const seen = new Set<string>();
  for (const file of queue) {
    if (seen.has(file)) continue;
    seen.add(file);
    const script = readFileSync(join(dist, file), "utf8");
    for (const [, name] of script.matchAll(/(?:from|import)\s*"\.\/([^"]+\.js)"/g)) {
      queue.push(`assets/${name}`);
    }
  }
  return [...seen];
}

export function firstScriptBytes(): number {
  return firstScripts().reduce((sum, file) => sum + brotli(file), 0);
}

export async function downloadBench(): Promise<Table> {
  const all = readdirSync(dist, { recursive: true, encoding: "utf8" }).filter((file) =>
    statSync(join(dist, file)).isFile(),
  );
  const first = new Set(firstScripts());
  const sum = (files: readonly string[]) => files.reduce((total, file) => total + brotli(file), 0);
  const kB = (bytes: number) => (bytes / 1000).toFixed(1);
  const scripts = all.filter((file) => file.endsWith(".js") && !/sw|workbox/.test(file));
  return {
    title: "Download, brotli",
    rows: [
      { what: "script of the first screen", kB: kB(sum([...first])) },
      { what: "script loaded behind it", kB: kB(sum(scripts.filter((file) => !first.has(file)))) },
      {
        what: "English voice pack with its index",
        kB: kB(sum(["sound/en.pack", "sound/en.json"])),
      },
      {
        what: "English pack of asking by ear, with its index",
        kB: kB(sum(["sound/en-ear.pack", "sound/en-ear.json"])),
      },
      { what: "tones", kB: kB(sum(["sound/tones.pcm", "sound/tones.json"])) },
    ],
  };
}
