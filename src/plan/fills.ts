// Clock and tank in, the part of a bath's time that pouring takes out, and the time of a fill and dump.
// Alone, because the plan counts these seconds and the moments lay them out.
import type { Worksheet } from "./worksheet.ts";

/** Seconds of a bath's own clock that go by before the tank is full and after the pour-out begins. */
export function pouringSeconds({ clock, tank }: Pick<Worksheet, "clock" | "tank">): number {
  const filling = clock.starts === "pour-in" ? tank.pourIn : 0;
  const emptying = clock.ends === "empty" ? tank.pourOut : 0;
  return filling + emptying;
}

/** Seconds for one inversion and back while washing. */
export function washInversion(worksheet: Worksheet): number {
  return (worksheet.baths?.wash?.agitation ?? worksheet.agitation).perInversion;
}

/** Seconds on the bath's clock of one fill of the wash with so many inversions. */
export function fillSeconds(worksheet: Worksheet, inversions: number): number {
  return inversions * washInversion(worksheet) + pouringSeconds(worksheet);
}
