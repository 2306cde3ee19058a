// What was measured at the bench and counted on the shelf in, the faults between its fields out.
// Apart from cross-faults.ts, which asks these rules with its own: here nothing bears on the leaflet.
import { toCelsius, writeTemperature } from "../units/temperature.ts";
import { secondsOf } from "./clock-readings.ts";
import { type Fault, faultOf } from "./faults.ts";
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
              `nothing beside baths.${id}.fills: one or the other`,
            ),
          ]
        : []),
      ...(alone
        ? [
            faultOf(
              ["baths", id, "carryOver"],
              undefined,
              `a volume such as { "ml": 20 }, since baths.${id}.${by} is given`,
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
      `films of 80 sq in that a litre serves, such as 20, since ${because} is given`,
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
            `${writeTemperature(twin.temperature)}, as another reading at ${at} says: one moment has one temperature`,
          ),
        ];
  });
}

export function tapFaults({ mixing }: Worksheet): readonly Fault[] {
  if (mixing === undefined || toCelsius(mixing.cold) <= toCelsius(mixing.hot)) return [];
  const may = `${writeTemperature(mixing.hot)} or less, since mixing.hot is no warmer`;
  return [faultOf(["mixing", "cold"], mixing.cold, may)];
}

export function waterBathFaults({ tempering }: Worksheet): readonly Fault[] {
  return tempering?.bathVolume === undefined || tempering.bath !== undefined
    ? []
    : [
        faultOf(
          ["tempering", "bath"],
          undefined,
          'a temperature such as { "c": 20 }, since tempering.bathVolume is given',
        ),
      ];
}

/** A test film has a gradient, or a wedge with all that it is read by. */
export function testFilmFaults({ contrast }: Worksheet): readonly Fault[] {
  if (contrast === undefined) return [];
  const wedges = contrast.tests.some(({ densities }) => densities !== undefined);
  const step =
    wedges && contrast.stepLog === undefined
      ? [
          faultOf(
            ["contrast", "stepLog"],
            undefined,
            "log10 of the exposure from one step to the next, such as 0.15, since densities are given",
          ),
        ]
      : [];
  const tests = contrast.tests.flatMap(({ gradient, densities, baseFog }, index) => {
    const path = (field: string) => ["contrast", "tests", index, field] as const;
    if (densities === undefined) {
      return gradient === undefined
        ? [faultOf(path("gradient"), undefined, "its mean gradient such as 0.6, or densities")]
        : [];
    }
    if (gradient !== undefined) {
      return [faultOf(path("gradient"), gradient, "nothing beside densities, which give it")];
    }
    const may =
      "the density of the unexposed, developed film, such as 0.3, since densities are given";
    return baseFog === undefined ? [faultOf(path("baseFog"), undefined, may)] : [];
  });
  return [...step, ...tests];
}
