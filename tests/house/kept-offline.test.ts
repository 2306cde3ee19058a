import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { notKeptOffline } from "../../src/kept-offline.ts";

/** A folder as the build leaves it, with a worker that keeps some of it. */
function built(files: readonly string[], kept: readonly string[]): string {
  const dist = mkdtempSync(join(tmpdir(), "tankside-"));
  const entries = kept.map((url) => `{url:"${url}",revision:null}`);
  const worker = `s.precacheAndRoute([${entries.join(",")}],{}),s.cleanupOutdatedCaches()`;
  for (const [file, text] of [
    ...files.map((it) => [it, ""] as const),
    ["sw.js", worker] as const,
  ]) {
    mkdirSync(dirname(join(dist, file)), { recursive: true });
    writeFileSync(join(dist, file), text);
  }
  return dist;
}

test("a page that is kept whole lacks nothing", () => {
  const page = ["index.html", "assets/first-a1.js", "sound/en.pack"];
  expect(notKeptOffline(built(page, page))).toEqual([]);
});

test("a file that the service worker passes over is named", () => {
  const page = ["index.html", "assets/first-a1.js", "assets/type.ttf", "sound/en.pack"];
  const lacking = notKeptOffline(built(page, ["index.html", "assets/first-a1.js"]));
  expect([...lacking].sort()).toEqual(["assets/type.ttf", "sound/en.pack"]);
});

test("what no run needs is not asked for: the worker, schemas, pictures, voices fetched when wanted", () => {
  const voices = ["sound/de.pack", "sound/de-ear.pack"];
  const aside = ["workbox-9c19.js", "schema/plan.json", "pictures/run.png", ...voices];
  expect(notKeptOffline(built(["index.html", ...aside], ["index.html"]))).toEqual([]);
  for (const needed of ["sound/de.json", "sound/en-ear.pack", "sound/de-ear.json"])
    expect(notKeptOffline(built(["index.html", needed], ["index.html"]))).toEqual([needed]);
});

test("a worker that keeps nothing, or is none, is a mistake", () => {
  expect(() => notKeptOffline(built(["index.html"], []))).toThrow("keeps nothing");
});
