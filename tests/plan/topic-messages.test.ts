// Every warning about warmth, contrast, baths and hands, as a person meets it: read the file when it moves.
import { expect, test } from "vitest";
import * as baths from "../../src/plan/bath-messages.ts";
import * as contrast from "../../src/plan/contrast-messages.ts";
import type { Warning } from "../../src/plan/line.ts";
import * as warmth from "../../src/plan/warmth-messages.ts";
import { allEnglish } from "../../src/plan/words/english-asides.ts";

const made: readonly Warning[] = [
  warmth.nothingToMix(allEnglish),
  warmth.mixOutOfReach(allEnglish, "68 °F", "70.2 °F", "91 °F"),
  warmth.oneTap(allEnglish, "20.4 °C"),
  warmth.noWater(allEnglish),
  warmth.marksTooCoarse(allEnglish, "5 ml", "1+41"),
  warmth.marksTooCoarse(allEnglish, "25 ml", null),
  warmth.isAtTarget(allEnglish, "68 °F"),
  ...(["too-few", "too-close", "still", "noisy", "contradictory"] as const).map((why) =>
    warmth.temperingUnfit(allEnglish, why),
  ),
  warmth.movesAway(allEnglish, "68 °F"),
  warmth.neverReaches(allEnglish, "68 °F", "70.5 °F", true),
  warmth.neverReaches(allEnglish, "68 °F", "70.5 °F", false),
  warmth.mayNotReach(allEnglish, "68 °F"),
  warmth.takesLong(allEnglish, "68 °F", "42:00"),
  warmth.waitFor(allEnglish, "68 °F", "4:30", "3:50 to 5:40"),
  ...(["too-few", "one-time", "contradictory", "straight"] as const).map((why) =>
    contrast.contrastUnfit(allEnglish, why),
  ),
  ...(["too-few", "falls", "starts-above", "never-reaches", "too-short"] as const).map((why) =>
    contrast.wedgeUnread(allEnglish, "Test 2, 7:00", why),
  ),
  contrast.beyondLimit(allEnglish, "1.2", "1.01"),
  contrast.outsideTests(allEnglish, "0.78", "12:33", ["5:00", "10:00"]),
  baths.fixerSpent(allEnglish, 2.2),
  baths.clearedQuicker(allEnglish),
  baths.fixerShort(allEnglish, 120, 150, 2),
  baths.fixerShort(allEnglish, 120, 225, 3),
  baths.washShort(allEnglish, "0.0312 g/m²", "0.014 g/m²", "It takes 4 changes of water."),
  baths.pastCapacity(allEnglish, "Fixer", { before: 18, now: 4, all: 20 }, false),
  baths.pastCapacity(allEnglish, "Kelp MQ 1+3", { before: 0, now: 2, all: 1 }, true),
  baths.replenishedTwice(allEnglish),
  baths.unevenHands(allEnglish, "Pouring out", 5, 12),
  baths.notAsMeasured(allEnglish, "Pouring in", 10, 12.4),
];

test("each says what is the matter, and most what would do", async () => {
  const text = made.map(({ id, severity, text }) => `${id}, ${severity}\n  ${text}\n`).join("\n");
  await expect(text).toMatchFileSnapshot("topic-messages.txt");
});

test("every message is among them", () => {
  const makers = [warmth, contrast, baths].flatMap((module) => Object.values(module));
  const several = { "tempering-": 5, "contrast-unfit": 4 };
  const ids = new Set(made.map(({ id }) => id));
  // Two makers have an id for each reason.
  expect(ids.size).toBe(makers.length + several["tempering-"] - 1 + several["contrast-unfit"] - 1);
});

test("only what would spoil the film stops a run: spent fixer, and developer past its capacity", () => {
  const stops = made.filter(({ severity }) => severity === "stop").map(({ id }) => id);
  expect(stops).toEqual(["fixer-spent", "past-capacity"]);
});
