// What was measured at the bench and counted on the shelf in, the faults between its fields out.
// Apart from cross-faults.ts, which asks these rules with its own: here nothing bears on the leaflet.
import { filled } from "../units/may.ts";
import { toCelsius, writeTemperature } from "../units/temperature.ts";
import { secondsOf } from "./clock-readings.ts";
import { type Fault, faultOf } from "./faults.ts";
import { crossMay } from "./mays.ts";
import type { Worksheet } from "./worksheet.ts";

/** Running water is a wash of its own; and what it leaves can be told only from what was carried into it. */
export function washFaults({ baths = {} }: Worksheet): readonly Fault[] {
  return Object.entries(baths).flatMap(([id, { carryOver, fills, flow, thiosulfate }]) => {
    const both = fills !== undefined && flow !== undefined;
    const alone = carryOver === undefined && (flow !== undefined || thiosulfate !== undefined);
    const by = flow === undefined ? "thiosulfate" : "flow";
    return [
      ...(both
        ? [
            faultOf(
              ["baths", id, "flow"],
              flow,
              filled(crossMay.fillsOrFlow, { path: `baths.${id}.fills` }),
            ),
          ]
        : []),
      ...(alone
        ? [
            faultOf(
              ["baths", id, "carryOver"],
              undefined,
              filled(crossMay.carryOver, { path: `baths.${id}.${by}` }),
            ),
          ]
        : []),
    ];
  });
}

/** A count of films says something only beside what a litre serves. */
export function capacityFaults({ developer, baths = {} }: Worksheet): readonly Fault[] {
  const needed = (path: readonly string[], because: string) =>
    faultOf(
      [...path, "filmsPerLitre"],
      undefined,
      filled(crossMay.filmsPerLitre, { path: because }),
    );
  const own =
    developer.kept !== undefined && developer.filmsPerLitre === undefined
      ? [needed(["developer"], "developer.kept")]
      : [];
  const others = Object.entries(baths).flatMap(([id, { filmsPerLitre, filmsBefore, kept }]) => {
    if (filmsPerLitre !== undefined || (filmsBefore === undefined && kept === undefined)) return [];
    const by = filmsBefore === undefined ? "kept" : "filmsBefore";
    return [needed(["baths", id], `baths.${id}.${by}`)];
  });
  return [...own, ...others];
}

/** Two readings of one moment must agree. */
export function readingFaults({ developer: { readings = [] } }: Worksheet): readonly Fault[] {
  return readings.flatMap(({ at, temperature }, index) => {
    const twin = readings.slice(0, index).find((it) => secondsOf(it.at) === secondsOf(at));
    return twin === undefined || toCelsius(twin.temperature) === toCelsius(temperature)
      ? []
      : [
          faultOf(
            ["developer", "readings", index, "temperature"],
            temperature,
            filled(crossMay.oneTemperature, {
              temperature: writeTemperature(twin.temperature),
              at,
            }),
          ),
        ];
  });
}

export function tapFaults({ mixing }: Worksheet): readonly Fault[] {
  if (mixing === undefined || toCelsius(mixing.cold) <= toCelsius(mixing.hot)) return [];
  const may = filled(crossMay.coldTap, { temperature: writeTemperature(mixing.hot) });
  return [faultOf(["mixing", "cold"], mixing.cold, may)];
}

export function waterBathFaults({ tempering }: Worksheet): readonly Fault[] {
  return tempering?.bathVolume === undefined || tempering.bath !== undefined
    ? []
    : [faultOf(["tempering", "bath"], undefined, crossMay.waterBath)];
}

/** A test film has a gradient, or a wedge with all that it is read by. */
export function testFilmFaults({ contrast }: Worksheet): readonly Fault[] {
  if (contrast === undefined) return [];
  const wedges = contrast.tests.some(({ densities }) => densities !== undefined);
  const step =
    wedges && contrast.stepLog === undefined
      ? [faultOf(["contrast", "stepLog"], undefined, crossMay.stepLog)]
      : [];
  const tests = contrast.tests.flatMap(({ gradient, densities, baseFog }, index) => {
    const path = (field: string) => ["contrast", "tests", index, field] as const;
    if (densities === undefined) {
      return gradient === undefined
        ? [faultOf(path("gradient"), undefined, crossMay.gradient)]
        : [];
    }
    if (gradient !== undefined) {
      return [faultOf(path("gradient"), gradient, crossMay.densities)];
    }
    return baseFog === undefined ? [faultOf(path("baseFog"), undefined, crossMay.baseFog)] : [];
  });
  return [...step, ...tests];
}
