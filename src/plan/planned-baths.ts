// Worksheet in, its baths in order out: how long, how warm, how agitated.
// Alone, because what the trade does where nobody said otherwise is decided here and only here.
import { type BathFacts, processBaths } from "../trade/baths.ts";
import { type Dilution, readDilution, stockItself } from "../units/parts.ts";
import { toCelsius } from "../units/temperature.ts";
import { secondsOf } from "./clock-readings.ts";
import { fillSeconds, washInversion } from "./fills.ts";
import { clearedSeconds } from "./fixing.ts";
import type { PlannedBath } from "./plan.ts";
import type { PlanWords } from "./words/words.ts";
import type { Agitation, BathWish, Developer, Worksheet } from "./worksheet.ts";

/** The baths that will be poured, in the process's order. */
export function plannedBaths(
  words: PlanWords,
  worksheet: Worksheet,
  developmentSeconds: number,
): readonly PlannedBath[] {
  const facts = processBaths[worksheet.process];
  if (!facts) throw new Error(`no such process: ${worksheet.process}`);
  return facts.flatMap((bath) => {
    const wish = worksheet.baths?.[bath.id];
    if (wish?.skip === true || (bath.onlyIfNamed && wish === undefined)) return [];
    const seconds = bath.seconds === null ? developmentSeconds : bathSeconds(worksheet, bath, wish);
    return {
      id: bath.id,
      label: labelOf(words, worksheet, bath),
      seconds,
      temperature: temperatureOf(worksheet, bath, wish),
      agitation: agitationOf(worksheet, bath, wish, seconds),
    };
  });
}

/** Parts of stock and water of a validated developer; `"stock"` where nothing is said. */
export function dilutionOf(developer: Developer): Dilution {
  const reading = readDilution(developer.dilution ?? "stock");
  return reading.kind === "read" ? reading.dilution : stockItself;
}

/** A bath's name; the developer's own with its dilution, `"Kelp MQ 1+3"`, unless it is used as stock. */
function labelOf(
  { baths, mix, writes }: PlanWords,
  { developer }: Worksheet,
  { id, seconds }: BathFacts,
): string {
  const names: { readonly [id: string]: string } = baths.names;
  if (seconds !== null) return names[id] ?? id;
  const dilution = dilutionOf(developer);
  return dilution.water === 0
    ? developer.label
    : `${developer.label} ${writes.dilution(dilution, mix.undiluted)}`;
}

function bathSeconds(worksheet: Worksheet, bath: BathFacts, wish: BathWish | undefined): number {
  if (wish?.fills) {
    return wish.fills.reduce((sum, inversions) => sum + fillSeconds(worksheet, inversions), 0);
  }
  if (wish?.time !== undefined) return secondsOf(wish.time);
  return clearedSeconds(wish) ?? bath.seconds ?? 0;
}

function temperatureOf(
  { developer }: Worksheet,
  bath: BathFacts,
  wish: BathWish | undefined,
): number | null {
  if (bath.seconds === null) return toCelsius(developer.temperature);
  return wish?.temperature === undefined ? null : toCelsius(wish.temperature);
}

function agitationOf(
  worksheet: Worksheet,
  bath: BathFacts,
  wish: BathWish | undefined,
  seconds: number,
): Agitation | null {
  const unbroken = (perInversion: number): Agitation => ({
    first: seconds,
    every: seconds,
    for: seconds,
    perInversion,
    taps: 0,
  });
  // Filling and dumping washes by its inversions, so there is no rest between them.
  if (wish?.fills) return unbroken(washInversion(worksheet));
  if (wish?.agitation) return wish.agitation;
  switch (bath.agitation) {
    case "continuous":
      return unbroken(worksheet.agitation.perInversion);
    case "as-developer":
      return worksheet.agitation;
    case "none":
      return null;
  }
}
