// A worksheet whose fields are sound by themselves in, the faults between fields out.
// Alone, because each of these rules needs two places of the worksheet at once.
import { processBaths } from "../trade/baths.ts";
import { sameTemperature } from "../trade/time-temperature.ts";
import { filled } from "../units/may.ts";
import { toCelsius, writeTemperature } from "../units/temperature.ts";
import { baseTimeFor, leafletPoints } from "./base-time.ts";
import { type Fault, faultOf } from "./faults.ts";
import { crossMay } from "./mays.ts";
import {
  capacityFaults,
  readingFaults,
  tapFaults,
  testFilmFaults,
  washFaults,
  waterBathFaults,
} from "./measured-faults.ts";
import type { Worksheet } from "./worksheet.ts";

interface Rule {
  /** The parts that the rule reads. Only these need be sound for it to be asked. */
  readonly reads: readonly (keyof Worksheet)[];
  readonly faults: (worksheet: Worksheet) => readonly Fault[];
}

const rules: readonly Rule[] = [
  { reads: ["films", "developer"], faults: ratingFaults },
  { reads: ["films", "developer"], faults: leafletFaults },
  { reads: ["tank"], faults: driftFaults },
  { reads: ["process", "baths"], faults: foreignBathFaults },
  { reads: ["baths"], faults: fillFaults },
  { reads: ["baths"], faults: washFaults },
  { reads: ["developer", "baths"], faults: capacityFaults },
  { reads: ["developer"], faults: readingFaults },
  { reads: ["mixing"], faults: tapFaults },
  { reads: ["tempering"], faults: waterBathFaults },
  { reads: ["contrast"], faults: testFilmFaults },
  { reads: ["developer", "baths"], faults: twoTemperatureFaults },
];

/** The faults of every rule whose parts are sound. `isSound` says it of a part by name. */
export function crossFaults(
  worksheet: Worksheet,
  isSound: (part: keyof Worksheet) => boolean,
): readonly Fault[] {
  return rules
    .filter((rule) => rule.reads.every(isSound))
    .flatMap((rule) => rule.faults(worksheet));
}

/** A film metered at its own speed needs the box speed, unless the leaflet has rows for its rating. */
function ratingFaults({ films, developer }: Worksheet): readonly Fault[] {
  return films.flatMap((film, index) => {
    const rating = film.exposureIndex;
    const own = developer.leaflet.some((row) => row.exposureIndex === rating);
    return rating === undefined || film.boxSpeed !== undefined || own
      ? []
      : [faultOf(["films", index, "boxSpeed"], undefined, filled(crossMay.boxSpeed, { rating }))];
  });
}

/** The first film needs rows, and two of them at one temperature must agree. */
function leafletFaults({ films, developer }: Worksheet): readonly Fault[] {
  const film = films[0];
  if (!film) return [];
  const { rows } = baseTimeFor(film, leafletPoints(developer.leaflet));
  if (rows.length === 0) {
    const may =
      film.boxSpeed === undefined
        ? filled(crossMay.servingRow, { film: film.label })
        : filled(crossMay.servingRowOrFor, { film: film.label, box: film.boxSpeed });
    return [faultOf(["developer", "leaflet"], developer.leaflet, may)];
  }
  const inOrder = [...rows].sort((a, b) => a.index - b.index);
  return inOrder.flatMap((row, place) => {
    const twin = inOrder
      .slice(0, place)
      .find((it) => Math.abs(it.celsius - row.celsius) <= sameTemperature);
    return twin === undefined || twin.seconds === row.seconds
      ? []
      : [
          faultOf(
            ["developer", "leaflet", row.index, "time"],
            row.row.time,
            filled(crossMay.oneTime, {
              time: twin.row.time,
              path: `developer.leaflet[${twin.index}]`,
              temperature: writeTemperature(row.row.temperature),
            }),
          ),
        ];
  });
}

function driftFaults({ tank }: Worksheet): readonly Fault[] {
  const [room, halfway] = [tank.room !== undefined, tank.halfway !== undefined];
  if (room === halfway) return [];
  return room
    ? [faultOf(["tank", "halfway"], undefined, crossMay.halfway)]
    : [faultOf(["tank", "room"], undefined, crossMay.room)];
}

function foreignBathFaults({ process, baths = {} }: Worksheet): readonly Fault[] {
  const ids = processBaths[process]?.map((bath) => bath.id) ?? [];
  return Object.entries(baths)
    .filter(([id]) => !ids.includes(id))
    .map(([id, wish]) =>
      faultOf(
        ["baths", id],
        wish,
        filled(crossMay.foreignBath, { process, baths: ids.join(", ") }),
      ),
    );
}

function fillFaults({ baths = {} }: Worksheet): readonly Fault[] {
  return Object.entries(baths)
    .filter(([, wish]) => wish.fills !== undefined && wish.time !== undefined)
    .map(([id, wish]) =>
      faultOf(
        ["baths", id, "time"],
        wish.time,
        filled(crossMay.fillsTime, { path: `baths.${id}.fills` }),
      ),
    );
}

function twoTemperatureFaults({ developer, baths }: Worksheet): readonly Fault[] {
  const other = baths?.developer?.temperature;
  if (other === undefined) return [];
  const apart = Math.abs(toCelsius(other) - toCelsius(developer.temperature));
  return apart <= sameTemperature
    ? []
    : [
        faultOf(
          ["baths", "developer", "temperature"],
          other,
          filled(crossMay.twoTemperatures, {
            temperature: writeTemperature(developer.temperature),
          }),
        ),
      ];
}
