import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";

const src = fileURLToPath(new URL("../../src/", import.meta.url));

/** Who may import whom: a place imports from places before it, and from itself. */
const order = [
  ["units"],
  ["trade"],
  ["plan"],
  ["process"],
  ["script"],
  ["tones"],
  ["voice"],
  ["timeline"],
  ["live", "track", "logbook"],
  ["ui"],
];
const rank = (place: string): number => order.findIndex((places) => places.includes(place));

const files = readdirSync(src, { recursive: true, encoding: "utf8" }).filter((file) =>
  /\.tsx?$/.test(file),
);

interface Import {
  readonly from: string;
  readonly to: string;
}

const imports: readonly Import[] = files.flatMap((file) => {
  const text = readFileSync(join(src, file), "utf8");
  const names = [...text.matchAll(/(?:from|import)\s*\(?\s*"(\.[^"]+)"/g)].map((match) => match[1]);
  return names.map((name) => ({
    from: file,
    to: relative(src, join(src, dirname(file), name ?? "")),
  }));
});

const placeOf = (file: string): string => file.split("/")[0] ?? "";
const inHouse = ({ to }: Import): boolean => !to.startsWith("..") && /\.tsx?$/.test(to);

describe("The house", () => {
  test("is read from its own files", () => {
    expect(files.length).toBeGreaterThan(60);
    expect(imports.filter(inHouse).length).toBeGreaterThan(150);
    for (const [place] of order) expect(files.some((file) => placeOf(file) === place)).toBe(true);
  });

  test("has no room that the pipeline does not know", () => {
    const rooms = new Set(files.filter((file) => file.includes("/")).map(placeOf));
    for (const room of rooms) expect(rank(room), room).toBeGreaterThanOrEqual(0);
  });

  test("nothing imports upward, nor from its neighbour", () => {
    const upward = imports.filter(inHouse).filter(({ from, to }) => {
      if (!from.includes("/")) return false;
      return placeOf(from) !== placeOf(to) && rank(placeOf(to)) >= rank(placeOf(from));
    });
    expect(upward).toEqual([]);
  });

  test("the pure stages import no module of Node and none of the browser's libraries", () => {
    const pure = ["units", "trade", "plan", "process", "script", "timeline", "track"];
    const worldly = files
      .filter((file) => pure.includes(placeOf(file)) && !file.endsWith("publish-schema.ts"))
      .filter((file) =>
        /from "(?:node:|preact|@preact|idb)/.test(readFileSync(join(src, file), "utf8")),
      );
    expect(worldly).toEqual([]);
  });

  test("no file passes 300 lines, and one past 200 says why", () => {
    for (const file of files) {
      const lines = readFileSync(join(src, file), "utf8").split("\n");
      expect(lines.length, file).toBeLessThanOrEqual(300);
      if (lines.length > 200)
        expect(lines.slice(0, 6).join(" "), file).toMatch(/[Pp]ast 200 lines/);
    }
  });
});
