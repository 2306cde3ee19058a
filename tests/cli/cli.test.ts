import { spawnSync } from "node:child_process";
import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tankside as run } from "../../src/command-line.ts";
import type { Plan } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { fileMaker } from "../../src/take-along.ts";
import type { Timeline } from "../../src/timeline/score.ts";
import { sampleRate } from "../../src/tones/designs.ts";
import { readIndex } from "../../src/voice/pack.ts";
import { gullrock } from "../plan/worksheets.ts";
import { brokenLaws } from "../timeline/laws.ts";
import { chapterOf, readId3 } from "../track/read-marks.ts";

const folder = mkdtempSync(join(tmpdir(), "tankside-"));
const inFolder = (name: string) => join(folder, name);

/** As a process of its own. */
function spawned(args: readonly string[], input = "") {
  return spawnSync(process.execPath, ["--import", "tsx", "src/cli.ts", ...args], {
    input,
    encoding: "utf8",
    maxBuffer: 2 ** 28,
  });
}

/** The same without the process, whose start takes longer than most of what is asked of it. */
async function tankside(args: readonly string[], input = "") {
  const { status, out: stdout = "", error: stderr = "" } = await run(args, () => input);
  return { status, stdout, stderr };
}

/** A worksheet file, short enough to render quickly. */
const short = {
  ...gullrock,
  developer: { ...gullrock.developer, leaflet: [{ temperature: { f: 69 }, time: "2:00" }] },
  baths: { fixer: { time: "1:00" }, wash: { time: "1:00" } },
  voice: { rate: 1.1 },
};
const file = inFolder("short.json");
writeFileSync(file, JSON.stringify(short));

describe("The command line", () => {
  test("prints the plan of a worksheet, from a file or from standard input", async () => {
    const fromFile = await tankside(["plan", file]);
    expect(fromFile.status).toBe(0);
    expect((JSON.parse(fromFile.stdout) as Plan).developmentSeconds).toBe(120);
    const piped = spawned(["plan", "-"], JSON.stringify(short));
    expect([piped.status, piped.stdout]).toEqual([0, fromFile.stdout]);
  });

  test("shows in the plan what is asked beside the development, and names its faults by path", async () => {
    const mixing = { target: { f: 68 }, stock: { f: 72 }, cold: { f: 60 }, hot: { f: 110 } };
    const asked = await tankside(["plan", "-"], JSON.stringify({ ...short, mixing }));
    expect(asked.status).toBe(0);
    const { working } = JSON.parse(asked.stdout) as Plan;
    expect(working.filter(({ about }) => about === "mixing").map(({ label }) => label)).toEqual([
      "Water to add",
      "From the hot tap",
      "From the cold tap",
      "To the marks",
    ]);
    const swapped = { ...mixing, cold: { f: 111 } };
    const refused = await tankside(["plan", "-"], JSON.stringify({ ...short, mixing: swapped }));
    expect(refused.status).toBe(2);
    expect(refused.stderr).toContain(
      'mixing.cold holds { "f": 111 }; it may hold 110 °F or less, since mixing.hot is no warmer',
    );
  });

  test("prints a timeline that keeps the laws, the same bytes each time", async () => {
    const { stdout, status } = await tankside(["timeline", file]);
    expect(status).toBe(0);
    expect(brokenLaws(JSON.parse(stdout) as Timeline)).toEqual([]);
    expect(spawned(["timeline", file]).stdout).toBe(stdout);
  });

  test("prints a sheet of 40 columns", async () => {
    const { stdout, status } = await tankside(["sheet", file]);
    expect(status).toBe(0);
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(40);
    expect(stdout).toContain("POUR OUT");
  });

  test("renders a track that sounds within 5 ms of every pour-in and pour-out, and says where sections start", async () => {
    const out = inFolder("short.wav");
    const { stdout, status } = await tankside(["render", file, out, "--gap", "5"]);
    expect(status).toBe(0);
    const starts = JSON.parse(stdout) as { id: string; at: number }[];
    const timeline = JSON.parse((await tankside(["timeline", file])).stdout) as Timeline;
    expect(starts.map(({ id }) => id)).toEqual(timeline.sections.map(({ id }) => id));
    const wav = readFileSync(out);
    const loudest = (from: number, to: number) => {
      let most = 0;
      for (let i = Math.round(from * sampleRate); i < to * sampleRate; i += 1) {
        most = Math.max(most, Math.abs(wav.readInt16LE(44 + 2 * i)) / 32768);
      }
      return most;
    };
    let seen = 0;
    for (const [i, section] of timeline.sections.entries()) {
      for (const { at, do: deed } of section.moments) {
        if (deed !== "pour-in" && deed !== "pour-out") continue;
        const moment = (starts[i]?.at ?? 0) + at;
        expect(loudest(moment, moment + 0.005), `${deed} at ${at}`).toBeGreaterThan(0.05);
        expect(loudest(moment - 0.3, moment - 0.001), `before ${deed} at ${at}`).toBeLessThan(0.01);
        seen += 1;
      }
    }
    expect(seen).toBe(10);
  });

  test("says that it could not write where the disk takes all but the end of the last piece", async () => {
    const [out, cut] = [inFolder("whole.wav"), inFolder("cut.wav")];
    const render = (to: string) => ["render", file, to, "--gap", "0"];
    expect((await tankside(render(out))).status).toBe(0);
    // Blocks of 512 bytes: a file that grows beyond them is written short first, and refused at the next write.
    const blocks = Math.floor((statSync(out).size - 1) / 512);
    const { status, stdout, stderr } = spawnSync(
      "sh",
      [
        "-c",
        `ulimit -f ${blocks} && exec "$@"`,
        "sh",
        process.execPath,
        ...["--import", "tsx", "src/cli.ts", ...render(cut)],
      ],
      { encoding: "utf8" },
    );
    expect([status, stdout]).toEqual([1, ""]);
    expect(stderr).toMatch(/^OUT holds .*EFBIG/);
    expect(readdirSync(folder).filter((name) => name.startsWith("cut"))).toEqual([]);
  });

  test("renders captions, and what is planned for a day as an entry for a calendar", async () => {
    const out = inFolder("short.vtt");
    expect((await tankside(["render", file, out])).status).toBe(0);
    expect(readFileSync(out, "utf8")).toMatch(/^WEBVTT\n\n00:00:00\.\d{3} --> /);
    const entry = inFolder("short.ics");
    const asked = await tankside(["render", file, entry, "--at", "2026-12-05T18:30"]);
    expect(asked.status).toBe(0);
    expect(readFileSync(entry, "utf8")).toMatch(/\r\nDTSTART:20261205T183000\r\n/);
  });

  test("renders an MP3 file with a chapter a section, the page's own bytes", async () => {
    const out = inFolder("short.mp3");
    const { stdout, status } = await tankside(["render", file, out, "--gap", "5"]);
    expect(status).toBe(0);
    const written = readFileSync(out);
    const chapters = readId3(written)
      .frames.filter(({ id }) => id === "CHAP")
      .map(chapterOf);
    const starts = JSON.parse(stdout) as { id: string; at: number }[];
    expect(chapters.map(({ at }) => at / 1000)).toEqual(starts.map(({ at }) => at));
    // The page's worker makes it of the same bytes of sound by the same function.
    const soundFile = async (name: string) => readFileSync(`public/sound/${name}`);
    const bytesOf = async (name: string) => new Uint8Array(await soundFile(name));
    const make = await fileMaker({
      worksheet: short as Worksheet,
      own: new Map(),
      bytes: {
        index: readIndex(JSON.parse((await soundFile("en.json")).toString())),
        pack: await bytesOf("en.pack"),
        kitIndex: JSON.parse((await soundFile("tones.json")).toString()),
        kit: await bytesOf("tones.pcm"),
        stretcher: new Uint8Array(readFileSync("node_modules/@echogarden/sonic-wasm/sonic.wasm")),
        encoder: await bytesOf("lame.wasm"),
      },
    });
    const made = await make({ kind: "mp3", gap: 5, waits: "pass" });
    expect(Buffer.concat([...(made?.pieces ?? [])]).equals(written)).toBe(true);
  });

  test("refuses a worksheet by field, what it holds and what it may, a line a fault, and writes nothing", async () => {
    const bad = {
      ...short,
      developer: { ...short.developer, leaflet: [{ temperature: { f: 69 }, time: "9.30" }] },
      tank: { ...short.tank, pourin: 3, pourIn: "ten" },
    };
    const out = inFolder("bad.wav");
    const { status, stdout, stderr } = spawned(["render", "-", out], JSON.stringify(bad));
    expect(status).toBe(2);
    expect(stdout).toBe("");
    expect(existsSync(out)).toBe(false);
    const lines = stderr.trim().split("\n");
    expect(lines).toHaveLength(3);
    expect(stderr).toMatch(/^developer\.leaflet\[0\]\.time .*"9\.30".*9:30/m);
    expect(stderr).toMatch(/^tank\.pourIn .*"ten"/m);
    expect(stderr).toMatch(/^tank\.pourin .*pourIn/m);
  });

  test("prints a plan with a stop and exits 3; the rest is written only if the stop is accepted", async () => {
    const stopped = JSON.stringify({
      ...short,
      developer: { ...short.developer, stockPerFilm: { ml: 500 } },
    });
    const plan = spawned(["plan", "-"], stopped);
    expect(plan.status).toBe(3);
    expect((JSON.parse(plan.stdout) as Plan).warnings.map(({ id }) => id)).toContain("stock-short");
    for (const command of ["timeline", "sheet"]) {
      const refused = await tankside([command, "-"], stopped);
      expect([refused.status, refused.stdout]).toEqual([3, ""]);
      expect(refused.stderr).toMatch(/^stop: /);
    }
    expect((await tankside(["plan", "-", "--accept"], stopped)).status).toBe(0);
    expect((await tankside(["timeline", "-", "--accept"], stopped)).status).toBe(0);
  });

  test.each([
    [["plan"], /^FILE holds nothing/],
    [["plan", "/no/such/file"], /^FILE holds .*ENOENT/],
    [["fly", "x"], /^COMMAND holds "fly"/],
    [["render", file, "out.txt"], /^OUT holds "out.txt".*\.mp3.*\.wav.*\.vtt.*\.ics/],
    [["render", file, inFolder("x.wav"), "--gap", "long"], /^--gap holds "long"/],
    [["plan", file, "--fast"], /--fast/],
  ])("answers %j in words, without a stack trace", async (args, says) => {
    const { status, stderr } = await tankside(args);
    expect(status).toBe(2);
    expect(stderr).toMatch(says);
    expect(stderr).not.toMatch(/\n\s+at /);
  });

  test("never answers a worthless file with a stack trace", { timeout: 60_000 }, async () => {
    const texts = fc.sample(fc.oneof(fc.string(), fc.json()), { numRuns: 6, seed: 7 });
    for (const text of ["", "\ufeff", "[]", "null", "{", ...texts]) {
      const { status, stderr } = await tankside(["plan", "-"], text);
      expect(status).toBe(2);
      expect(stderr).toMatch(/\S/);
      expect(stderr).not.toMatch(/\n\s+at /);
    }
  });
});
