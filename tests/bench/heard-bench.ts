// What of the voice is understood: every phrase of the English pack, as it is played, picked out by a
// recogniser that has all of them and some others to choose from; in silence, and over running water.
// The recogniser is Debian's pocketsphinx with pocketsphinx-en-us; without it nothing is measured.
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gain } from "../../src/tones/loudness.ts";
import { pcmOf, wavHeader } from "../../src/tones/wav.ts";
import { openPack } from "../../src/voice/pack.ts";
import { level, water } from "../voice/water.ts";
import { packBytes, packIndex } from "./sessions.ts";
import type { Table } from "./table.ts";

const model = "/usr/share/pocketsphinx/model/en-us";
const rate = 16_000;

/** dB by which the voice stands above the noise, both by the mean of their squares. */
const conditions = { "in silence": null, "water 10 dB below": 10 } as const;

/** Sounds that the recogniser's dictionary lacks. */
const pronounced = ["inversions IH N V ER ZH AH N Z"];

/** Sentences that nobody says here, to be taken for what is said where that is unclear. */
const distractors = [
  "the kettle is on the stove",
  "put the boat in the water",
  "open the window a little",
  "turn the radio down",
  "the second bus leaves at noon",
  "where did you leave the keys",
  "five minutes late again",
  "a quarter to seven",
  "pour the tea",
  "press the other button",
  "the door is open",
  "then rest a while",
];

interface Heard {
  readonly phrase: string;
  readonly as: string;
}

export async function heardBench(): Promise<Table> {
  const title = "Phrases of the English voice that a recogniser picks out of all of them";
  if (spawnSync("pocketsphinx_batch").error) {
    return { title, rows: [{ condition: "pocketsphinx is not installed: nothing measured" }] };
  }
  const pack = await openPack(packIndex, packBytes);
  const phrases = Object.keys(packIndex.phrases);
  const rows = Object.entries(conditions).map(([condition, above]) => {
    const heard = recognised(phrases, (phrase) => withNoise(atRate(pack.decode(phrase)), above));
    const wrong = heard.filter(({ phrase, as }) => as !== spelled(phrase));
    for (const { phrase, as } of wrong) console.log(`${condition}: “${phrase}” heard as “${as}”`);
    const right = heard.length - wrong.length;
    return {
      condition,
      phrases: heard.length,
      right,
      "per cent": ((100 * right) / heard.length).toFixed(1),
    };
  });
  return { title, rows };
}

/** As the recogniser's grammar has it: lower case, words alone. */
function spelled(phrase: string): string {
  return phrase
    .toLowerCase()
    .replace(/[^a-z' ]+/g, " ")
    .trim()
    .replace(/\s+/g, " ");
}

function recognised(
  phrases: readonly string[],
  samplesOf: (phrase: string) => Float32Array,
): readonly Heard[] {
  const folder = mkdtempSync(join(tmpdir(), "heard-"));
  try {
    const sentences = [...new Set([...phrases.map(spelled), ...distractors])];
    writeFileSync(
      join(folder, "said.jsgf"),
      `#JSGF V1.0;\ngrammar said;\npublic <said> = ${sentences.join(" |\n ")};\n`,
    );
    const dictionary = readFileSync(join(model, "cmudict-en-us.dict"), "utf8");
    writeFileSync(join(folder, "said.dict"), `${dictionary.trimEnd()}\n${pronounced.join("\n")}\n`);
    phrases.forEach((phrase, i) => {
      writeFileSync(join(folder, `${i}.wav`), wave(samplesOf(phrase)));
    });
    writeFileSync(join(folder, "said.ctl"), `${phrases.map((_, i) => i).join("\n")}\n`);
    const args = {
      "-hmm": join(model, "en-us"),
      "-dict": join(folder, "said.dict"),
      "-jsgf": join(folder, "said.jsgf"),
      "-ctl": join(folder, "said.ctl"),
      "-cepdir": folder,
      "-cepext": ".wav",
      "-adcin": "yes",
      "-adchdr": "44",
      "-hyp": join(folder, "said.hyp"),
      "-bestpath": "no",
    };
    spawnSync("pocketsphinx_batch", Object.entries(args).flat(), { stdio: "ignore" });
    const found = join(folder, "said.hyp");
    const lines = existsSync(found) ? readFileSync(found, "utf8").trimEnd().split("\n") : [];
    return phrases.map((phrase, i) => ({
      phrase,
      as: (lines[i] ?? "").replace(/\s*\(\d+ [^)]*\)\s*$/, ""),
    }));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** From 24 kHz to 16 kHz by a windowed sinc: two samples in for every three. */
function atRate(samples: Float32Array): Float32Array {
  const ratio = 24_000 / rate;
  const reach = 24;
  const out = new Float32Array(Math.floor(samples.length / ratio));
  for (let i = 0; i < out.length; i += 1) {
    const centre = i * ratio;
    let sum = 0;
    for (let j = Math.ceil(centre - reach); j <= centre + reach; j += 1) {
      const x = (j - centre) / ratio;
      const sinc = x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
      const window = 0.5 + 0.5 * Math.cos((Math.PI * (j - centre)) / reach);
      sum += (samples[j] ?? 0) * sinc * window;
    }
    out[i] = sum / ratio;
  }
  return out;
}

/** The voice with half a second of quiet about it, and noise like a running tap under it all. */
function withNoise(voice: Float32Array, above: number | null): Float32Array {
  const quiet = rate / 2;
  const out = new Float32Array(voice.length + 2 * quiet);
  out.set(voice, quiet);
  if (above === null) return out;
  const noise = water(out.length, rate);
  const under = (level(voice) / level(noise)) * gain(-above);
  return out.map((sample, i) => sample + under * (noise[i] ?? 0));
}

function wave(samples: Float32Array): Buffer {
  const within = samples.map((sample) => Math.max(-1, Math.min(1, sample)));
  return Buffer.concat([wavHeader(within.length, rate), pcmOf(within)]);
}
