// The questions beside the development as they are asked by ear: mixing, tempering, contrast, each behind a gate of its
// own, so that an ordinary worksheet is not asked for them. Data that follows from the draft's rows.

import {
  type EarField,
  type Gate,
  gated,
  inRows,
  measured,
  number,
  optional,
  rows,
  warm,
} from "./by-ear-field.ts";
import type { Draft } from "./draft.ts";
import type { RowList } from "./fields.ts";

const tap = { c: [0, 100], f: [32, 212] } as const;
const density = [0, 6] as const;

const gate = (aside: string): Gate => ({ gate: aside, says: { key: `ear.gate.${aside}` } });

export function besideFields(draft: Draft): readonly (EarField | Gate)[] {
  return [
    ...gated(gate("mixing"), [
      optional("mixing.target", "target", "mix", warm),
      optional("mixing.stock", "stock", "mix", warm),
      optional("mixing.cold", "cold", "mix", tap),
      optional("mixing.hot", "hot", "mix", tap),
      number("mixing.mark", "mark", "mix", { ml: [1, 1000], flOz: [0.1, 30] }, {}),
    ]),
    ...gated(gate("tempering"), [
      optional("tempering.target", "target", "answer", warm),
      rows("tempering.readings", "bath-readings", "answer", [0, 200]),
      ...readings(draft, "tempering.readings", "answer"),
      optional("tempering.bath", "bath-temperature", "answer", warm),
      optional("tempering.bathVolume", "bath-volume", "answer", {
        ml: [10, measured.ml[1]],
        flOz: measured.flOz,
      }),
      { path: "tempering.began", name: "began", sets: ["answer"], takes: { kind: "clock" } },
    ]),
    ...gated(gate("contrast"), [
      rows("contrast.tests", "tests", "answer", [0, 30]),
      ...inRows(draft, "contrast.tests", (test) => [
        optional(`${test}.time`, "test-time", "answer"),
        optional(`${test}.gradient`, "gradient", "answer", { gradient: [0.01, 5] }),
        {
          path: `${test}.densities`,
          name: "densities",
          sets: ["answer"],
          takes: { kind: "counts", range: { density }, decimals: true },
        },
        optional(`${test}.baseFog`, "base-fog", "answer", { density }),
      ]),
      number("contrast.wanted", "wanted", "answer", { gradient: [0.05, 5] }, {}),
      optional("contrast.stepLog", "step-log", "answer", { log: [0.01, 2] }),
      optional("contrast.firstLog", "first-log", "answer", { log: [-8, 4] }),
    ]),
  ];
}

/** A thermometer's, each with its time on a clock that ran from 0:00. */
export const readings = (
  draft: Draft,
  list: RowList,
  sets: EarField["sets"][number],
): readonly EarField[] =>
  inRows(draft, list, (row) => [
    optional(`${row}.at`, "reading-at", sets, { minutes: [0, 1440] }),
    optional(`${row}.temperature`, "reading", sets, warm),
  ]);
