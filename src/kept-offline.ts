// A built folder in, what of it the service worker does not keep out. A page that is to be whole without a
// network lacks nothing; the tool that writes the worker passes over a file that is too large, or of a kind
// that nobody told it of, with a warning at most.
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";

/** What is not needed to run: the worker itself, what people read elsewhere, and voices kept when first wanted. */
const needless = [
  /^sw\.js$/,
  /^workbox-\w+\.js$/,
  /^(?:schema|pictures)\//,
  /^sound\/(?!en\.|en-ear\.)[\w-]+\.pack$/,
];

/** @throws where the folder has no worker that keeps anything. */
export function notKeptOffline(dist: string): readonly string[] {
  const worker = readFileSync(join(dist, "sw.js"), "utf8");
  const list = /precacheAndRoute\(\[(.*?)\]/s.exec(worker)?.[1] ?? "";
  const kept = new Set([...list.matchAll(/url:\s*"([^"]+)"/g)].map(([, url]) => url));
  if (kept.size === 0) throw new Error("the service worker keeps nothing");
  return readdirSync(dist, { recursive: true, encoding: "utf8" })
    .filter((file) => statSync(join(dist, file)).isFile())
    .map((file) => file.replaceAll("\\", "/"))
    .filter((file) => !kept.has(file) && !needless.some((pattern) => pattern.test(file)));
}
