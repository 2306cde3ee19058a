import { existsSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { tankside as run } from "../../src/command-line.ts";

const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
const blocks = [...readme.matchAll(/```(\w*)\n([\s\S]*?)```/g)].map(([, kind, text]) => ({
  kind: kind ?? "",
  text: text ?? "",
}));
const example = "tests/golden/gullrock-inversion.json";

const tankside = (...args: readonly string[]) => run(args, () => "");

describe("The README", () => {
  test("opens with the job in one paragraph, then two commands", () => {
    expect(readme).toMatch(
      /^# Tankside\n\n[^\n#`][\s\S]*?\n\n```sh\nnpm start .*\nnpm test .*\n```/,
    );
    const scripts = JSON.parse(readFileSync("package.json", "utf8")).scripts;
    expect(scripts.start && scripts.test).toBeTruthy();
  });

  test("prints the cue sheet that the command line prints", async () => {
    const { out } = await tankside("sheet", example);
    const sheets = blocks.filter(({ kind }) => kind === "");
    expect(sheets).toHaveLength(2);
    for (const { text } of sheets) expect(out).toContain(text);
  });

  test("gives commands that work", async () => {
    const commands = blocks
      .filter(({ kind }) => kind === "sh")
      .flatMap(({ text }) => [...text.matchAll(/^npm run --silent tankside -- (.*)$/gm)])
      .map(([, args]) => (args ?? "").split(" "));
    expect(commands.map(([name]) => name)).toEqual([
      "plan",
      "timeline",
      "sheet",
      "render",
      "render",
      "render",
      "render",
    ]);
    for (const args of commands.filter(([name]) => name !== "render")) {
      expect((await tankside(...args)).status).toBe(0);
    }
  });

  test("shows pictures, and links to pages, that are there", () => {
    const links = [...readme.matchAll(/\]\(([^)]+)\)/g)].map(([, path]) => path ?? "");
    const paths = links.filter((link) => !link.startsWith("https://"));
    expect(paths.length).toBeGreaterThan(5);
    for (const path of paths) expect(existsSync(path), path).toBe(true);
  });
});
