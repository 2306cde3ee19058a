// Sessions of given lengths, compiled with the lengths of the true voice pack.
import { readFileSync } from "node:fs";
import { planOf } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { type Lengths, lengthsOf } from "../../src/timeline/lengths.ts";
import type { Timeline } from "../../src/timeline/score.ts";
import { compile } from "../../src/timeline/timeline.ts";
import { writeClockTime } from "../../src/units/clock-time.ts";
import { readIndex } from "../../src/voice/pack.ts";
import { gullrock } from "../plan/worksheets.ts";
import { english } from "../timeline/scene.ts";

const soundFile = (name: string) =>
  readFileSync(new URL(`../../public/sound/${name}`, import.meta.url));

export const packIndex = readIndex(JSON.parse(soundFile("en.json").toString()));
export const packBytes = soundFile("en.pack");
export const kitIndex = JSON.parse(soundFile("tones.json").toString());
export const kitBytes = soundFile("tones.pcm");

/** A session whose timed baths last about so many hours, agitated every half minute. */
export function sessionOf(hours: number): Worksheet {
  const minutes = hours * 60 - 25;
  return {
    ...gullrock,
    agitation: { first: 30, every: 30, for: 5, perInversion: 2.5, taps: 2 },
    developer: {
      ...gullrock.developer,
      leaflet: [
        { temperature: gullrock.developer.temperature, time: writeClockTime(minutes * 60) },
      ],
    },
  };
}

export function compiler(worksheet: Worksheet): () => Timeline {
  const plan = planOf(worksheet);
  const lengths: Lengths = lengthsOf(packIndex, worksheet.voice?.rate ?? 1);
  return () => compile(worksheet, plan, english, lengths);
}
