// How many knocks on the bench are heard, and how many that were none: in made-up rooms, over water, speech
// and the program's own run. All from seeds, so that the same code gives the same table.
import type { Language } from "../../src/units/language.ts";
import { openPack } from "../../src/voice/pack.ts";
import { heardIn, laidInto, type Outcome, together } from "../live/knock-hearing.ts";
import * as scenes from "../live/knock-scenes.ts";
import { hands, randomFrom, rate } from "../live/knock-sounds.ts";
import { builtPack } from "../voice/built-pack.ts";
import { level } from "../voice/water.ts";
import { ownRun } from "./own-run.ts";
import { spread, type Table } from "./table.ts";

const MINUTES = 30;
/** Minutes of knocks, one every 1 to 2 s, for each of fingertip, knuckle and ring. */
const KNOCKED = 4;
/** Minutes of the program's own run with knocks in it: up to the second minute of the development, or so. */
const OF_OWN_RUN = 8;

async function spokenIn(language: Language): Promise<scenes.Scene> {
  const { index, bytes } = builtPack(language);
  const pack = await openPack(index, bytes);
  const some = Object.keys(index.phrases).filter((_, i) => i % 4 === 0);
  return scenes.speech(some.map((text) => pack.decode(text)));
}

const minutesOf = (scene: scenes.Scene, minutes: number, seed: number): Outcome =>
  together(Array.from({ length: minutes }, (_, i) => heardIn(scene(randomFrom(seed + i), 60))));

const anHour = ({ false: told, seconds }: Outcome): number =>
  Math.round((10 * told * 3600) / seconds) / 10;

/** False knocks an hour, nobody knocking. */
export async function falseKnockBench(): Promise<Table> {
  const { speech: _, add: __, over, ...bare } = scenes;
  const english = await spokenIn("en");
  const german = await spokenIn("de");
  const among: Readonly<Record<string, scenes.Scene>> = {
    "quiet room": bare.room,
    "steady tap": bare.steadyTap,
    "splashing tap": bare.splashingTap,
    "vessel filling": bare.filling,
    "tank gulping as it empties, 4 gulps a second": bare.gulping,
    "drops into water, 2 a second": bare.dripping,
    "drops on sheet steel, 1 a second": bare.drippingOnSteel,
    "speech, English": english,
    "speech, German": german,
    "speech, French": await spokenIn("fr"),
    "speech, Portuguese": await spokenIn("pt"),
    "speech and splashing tap": over(german, bare.splashingTap),
    "glasses clinking, 30 a minute": bare.clinking,
    "door, 12 a minute": bare.slamming,
    "steps, 90 a minute": bare.stepping,
    "cap dropped, 6 a minute, bouncing": bare.droppingCap,
  };
  const rows = Object.entries(among).map(([scene, made]) => {
    const outcome = minutesOf(made, MINUTES, 1000);
    return { scene, minutes: Math.round(outcome.seconds / 60), "false an hour": anHour(outcome) };
  });
  for (const [language, told] of [
    ["en", true],
    ["de", true],
    ["de", false],
  ] as const) {
    const { samples, own } = await ownRun(language, randomFrom(3));
    const outcome = heardIn(samples, [], told ? own : []);
    const minutes = Math.round(outcome.seconds / 60);
    const scene = `own run, ${language}${told ? "" : ", its sounds not told"}`;
    rows.push({ scene, minutes, "false an hour": anHour(outcome) });
  }
  return { title: "Knocks heard where nobody knocks", rows };
}

/** Per cent of knocks that are found, by what knocks and how far its loudest 10 ms are above the scene. */
export async function knockBench(): Promise<Table> {
  const english = await spokenIn("en");
  const levels: readonly (readonly [string, scenes.Scene, readonly number[]])[] = [
    ["quiet room", scenes.room, [40, 30, 20]],
    ["steady tap", scenes.steadyTap, [20, 12]],
    ["splashing tap", scenes.splashingTap, [20, 12]],
    ["tank gulping", scenes.gulping, [25, 15]],
    ["speech", english, [25, 15]],
  ];
  const rows = levels.flatMap(([scene, made, above]) =>
    above.map((dB) => {
      const outcomes = hands.map((hand) => {
        const random = randomFrom(50);
        const samples = made(random, 60 * KNOCKED);
        const loud = 20 * Math.log10(level(samples)) + dB;
        return heardIn(samples, laidInto(samples, random, hand, loud));
      });
      return rowOf(scene, dB, outcomes);
    }),
  );
  const ownOutcomes: Outcome[] = [];
  for (const hand of hands) {
    const random = randomFrom(60);
    const { samples, own } = await ownRun("en", random);
    const beginning = samples.slice(0, 60 * OF_OWN_RUN * rate);
    ownOutcomes.push(heardIn(beginning, laidInto(beginning, random, hand, -26), own));
  }
  rows.push(rowOf("own run (above the room)", 40, ownOutcomes));
  return { title: "Knocks found, per cent", rows };
}

function rowOf(scene: string, dB: number, outcomes: readonly Outcome[]) {
  const all = together(outcomes);
  const found = outcomes.map((each) => Math.round((100 * each.found) / each.knocks));
  const late = spread(all.late.map((seconds) => Math.round(1000 * seconds)));
  return {
    scene,
    "dB above it": dB,
    knocks: all.knocks,
    ...Object.fromEntries(hands.map((hand, i) => [hand, found[i] ?? 0])),
    false: all.false,
    "told after, ms": `${late.median} (${late.most})`,
  };
}
