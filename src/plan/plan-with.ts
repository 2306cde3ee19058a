// Worksheet in, its plan out with the questions beside the development that are at hand.
// Apart from plan.ts, so that a page can show the development before it has fetched the others.
import { mixOf } from "../trade/dilution.ts";
import { toMillilitres } from "../units/volume.ts";
import type { Aside } from "./asides.ts";
import { developmentOf } from "./development.ts";
import { about } from "./line.ts";
import type { Plan } from "./plan.ts";
import { dilutionOf, plannedBaths } from "./planned-baths.ts";
import { warningsFor } from "./warnings.ts";
import { english } from "./words/english.ts";
import type { PlanWords } from "./words/words.ts";
import { workingFor } from "./working.ts";
import type { Worksheet } from "./worksheet.ts";

/** As `planOf`, with the lines and warnings of no other asides than these, which have words of their own. */
export function planWith(
  asides: readonly Aside[],
  worksheet: Worksheet,
  words: PlanWords = english,
): Plan {
  const development = developmentOf(worksheet);
  const planned = {
    developmentSeconds: development.seconds,
    mix: mixOf(toMillilitres(worksheet.tank.volume), dilutionOf(worksheet.developer)),
    baths: plannedBaths(words, worksheet, development.seconds),
  };
  const beside = asides.map(({ topic, told }) => ({ topic, ...told(worksheet, development) }));
  const told = {
    lines: beside.flatMap(({ topic, lines }) => about(topic, lines)),
    warnings: beside.flatMap(({ topic, warnings }) => about(topic, warnings)),
  };
  return {
    ...planned,
    working: workingFor(words, worksheet, development, planned, told.lines),
    warnings: warningsFor(words, worksheet, development, planned, told.warnings),
  };
}
