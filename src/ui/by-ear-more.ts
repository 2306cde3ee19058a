// What few ever fill in about a bath, in the order in which it is asked by ear: told behind a gate for each bath, so
// that an ordinary worksheet is not asked for it. Data that follows from the bath and the draft.

import type { BathFacts } from "../trade/baths.ts";
import { readings } from "./by-ear-beside.ts";
import {
  choice,
  type EarField,
  inRows,
  measured,
  number,
  optional,
  rows,
  text,
  upToAnHour,
  warm,
} from "./by-ear-field.ts";
import { type Draft, isFilled } from "./draft.ts";

export function moreOfBath(draft: Draft, { id, seconds, water }: BathFacts): readonly EarField[] {
  const own = seconds === null ? ofDeveloper(draft) : ofAnother(draft, id, water);
  return own.map((field) => ({ ...field, bath: id }));
}

function ofDeveloper(draft: Draft): readonly EarField[] {
  const [served, before, kept] = capacity("developer");
  return [
    number("developer.perStop.pull", "pull", "time", { perCent: [0, 90] }, {}),
    number("developer.perStop.push", "push", "time", { perCent: [0, 500] }, {}),
    number("developer.perDegree", "per-degree", "time", { k: [0.001, 1] }, {}),
    served,
    // Films before lengthen the time only by what is written for each of them.
    isFilled(draft, "developer.perFilmBefore") ? { ...before, sets: ["time", "warning"] } : before,
    optional("developer.perFilmBefore", "per-film-before", "time", { perCent: [0, 1000] }),
    kept,
    optional("developer.replenishPerFilm", "replenish", "mix", measured),
    text("developer.bottle", "bottle", "optional"),
    ...inRows(draft, "developer.leaflet", (row) => [
      optional(`${row}.exposureIndex`, "row-rating", "time"),
    ]),
    optional("developer.soughtTime", "sought", "answer"),
  ];
}

/** The tank's own part in the time, what it drifts toward, and what the thermometer says in it. */
export const moreOfTank = (draft: Draft): readonly EarField[] => [
  number("tank.timeFactor", "time-factor", "time", { factor: [0.1, 5] }, {}),
  number("tank.handover", "handover", "hands", { seconds: [0, 600] }, { seconds: 0 }),
  optional("tank.room", "room", "time", { c: [0, 60], f: [0, 140] }),
  optional("tank.halfway", "halfway", "time", { minutes: [1, 1000] }),
  rows("developer.readings", "readings", "time", [0, 100]),
  ...readings(draft, "developer.readings", "time"),
];

function ofAnother(draft: Draft, id: string, water: boolean): readonly EarField[] {
  const start = `baths.${id}`;
  const agitation = `${start}.agitation`;
  return [
    number(`${start}.temperature`, "own-temperature", "warning", warm, {}),
    // By the names that they have for the developer, behind the bath's own.
    number(`${agitation}.first`, "first", "hands", upToAnHour, {}),
    number(`${agitation}.every`, "every", "hands", upToAnHour, {}),
    number(`${agitation}.for`, "for", "hands", upToAnHour, {}),
    number(`${agitation}.perInversion`, "per-inversion", "hands", { seconds: [0.5, 60] }, {}),
    number(`${agitation}.taps`, "taps", "hands", { taps: [0, 20] }, {}),
    // Water that runs is not changed fill by fill.
    ...(id === "wash" && !isFilled(draft, `${start}.flow`) ? [fills(`${start}.fills`)] : []),
    ...(id === "wash" ? exchange(start) : []),
    ...(id === "fixer" ? clearing(`${start}.clearing`) : []),
    ...(water ? [] : [...capacity(start), text(`${start}.bottle`, "bottle", "optional")]),
  ];
}

/** What was carried into the wash, and how the water runs. */
const exchange = (start: string): readonly EarField[] => [
  optional(`${start}.carryOver`, "carry-over", "warning", { ml: [1, 10_000], flOz: [0.1, 300] }),
  optional(`${start}.flow`, "flow", "warning", measured),
  number(`${start}.thiosulfate`, "thiosulfate", "warning", { gramsPerLitre: [1, 1000] }, {}),
];

const clearing = (start: string): readonly EarField[] => [
  optional(`${start}.time`, "clearing", "hands"),
  optional(`${start}.fresh`, "fresh", "warning"),
  choice(`${start}.times`, "times", ["hands"], { "": "usual", "2": "twice", "3": "thrice" }),
];

const fills = (path: string): EarField => ({
  path,
  name: "fills",
  sets: ["hands"],
  takes: { kind: "counts", range: { turns: [1, 200] } },
});

/** How many films it serves in all, how many it has served, how much of it there is. */
const capacity = (start: string): readonly [EarField, EarField, EarField] => [
  optional(`${start}.filmsPerLitre`, "films-per-litre", "warning"),
  optional(`${start}.filmsBefore`, "films-before", "warning", { films: [0, 1000] }),
  number(`${start}.kept`, "kept", "warning", measured, {}),
];
