// The fields of a worksheet that are asked by ear, in the order in which they are. Data that follows from the
// draft alone: its rows and its baths are what they are.

import { darkWaitSeconds } from "../plan/dark-wait.ts";
import { type BathFacts, processBaths } from "../trade/baths.ts";
import { methods } from "../trade/method.ts";
import { readFilmSize } from "../units/film-size.ts";
import { languages } from "../units/language.ts";
import { besideFields } from "./by-ear-beside.ts";
import {
  choice,
  type EarField,
  type Gate,
  gated,
  inRows,
  measured,
  number,
  optional,
  rows,
  same,
  text,
  upToAnHour,
  warm,
} from "./by-ear-field.ts";
import { moreOfBath, moreOfTank } from "./by-ear-more.ts";
import { bathInUse } from "./candidate.ts";
import { type Draft, isFilled } from "./draft.ts";
import { commonSizes } from "./fields.ts";
import { languageText } from "./sheet-language.ts";

const pour = { seconds: [1, 600] } as const;

const spokenOffers = Object.fromEntries(
  languages.map((language) => [languageText(language), language]),
);

/** The sizes that are offered for every film, and its own where that is another. */
function sizesFor(draft: Draft, path: string): readonly string[] {
  const own = readFilmSize(draft[path] ?? "");
  const isOther = own.kind === "read" && !commonSizes.includes(own.size);
  return isOther ? [...commonSizes, own.size] : commonSizes;
}

/** What any session is worked out from, in the order of the page. */
export function firstFields(draft: Draft): readonly EarField[] {
  return [
    ...inRows(draft, "films", (film) => [
      text(`${film}.label`, "film"),
      {
        path: `${film}.size`,
        name: "size",
        sets: ["mix"],
        takes: { kind: "sizes", values: sizesFor(draft, `${film}.size`) },
      },
      number(`${film}.count`, "count", "mix", { films: [1, 100] }),
      number(`${film}.boxSpeed`, "box-speed", "time"),
      number(`${film}.exposureIndex`, "rating", "time", null, {}),
    ]),
    text("developer.label", "developer"),
    {
      path: "developer.dilution",
      name: "dilution",
      sets: ["mix"],
      takes: { kind: "parts", range: { parts: [0, 10_000] } },
    },
    ...inRows(draft, "developer.leaflet", (row) => [
      number(`${row}.temperature`, "row-temperature", "time", warm),
      number(`${row}.time`, "row-time", "time"),
    ]),
    number("developer.temperature", "temperature", "time", warm),
    choice("tank.method", "method", ["time", "hands"], same(methods)),
    number("tank.volume", "volume", "mix", measured),
    number("tank.pourIn", "pour-in", "hands", pour),
    number("tank.pourOut", "pour-out", "hands", pour),
    number("agitation.first", "first", "hands", upToAnHour),
    number("agitation.every", "every", "hands", upToAnHour),
    number("agitation.for", "for", "hands", upToAnHour),
  ];
}

/** What most leave as it stands: told for those who ask for it. */
export function restOfFields(draft: Draft): readonly (EarField | Gate)[] {
  const baths = processBaths[draft.process ?? ""] ?? [];
  return [
    choice("process", "process", ["hands"], same(Object.keys(processBaths))),
    text("title", "title", "optional"),
    text("tank.label", "tank", "optional"),
    optional("developer.stockPerFilm", "stock-per-film", "warning", measured),
    rows("films", "films", "mix", [1, 50]),
    rows("developer.leaflet", "leaflet", "time", [1, 200]),
    number("agitation.perInversion", "per-inversion", "hands", { seconds: [0.5, 60] }),
    number("agitation.taps", "taps", "hands", { taps: [0, 20] }),
    choice("clock.starts", "starts", ["hands"], same(["pour-in", "full"])),
    choice("clock.ends", "ends", ["hands"], same(["pour-out", "empty"])),
    ...gated({ gate: "tank", says: { key: "ear.gate.tank" } }, moreOfTank(draft)),
    ...baths.flatMap((bath) => ofBath(draft, bath)),
    number("darkWait", "wait", "run", { minutes: [0, 30] }, { seconds: darkWaitSeconds({}) }),
    choice("loading", "loading", ["run"], { "": "to-load", done: "loaded" }),
    choice("language", "language", ["run"], spokenOffers),
    choice("voice.detail", "detail", ["run"], {
      "": "usual",
      full: "sentences",
      brief: "words",
      tones: "tones",
    }),
    number("voice.rate", "rate", "run", { rate: [0.8, 1.6] }, {}),
    ...besideFields(draft),
  ];
}

/** As the process has it; where a snip of film gave the time, that goes by the snip. */
const usualOf = (draft: Draft, { id, seconds }: BathFacts) =>
  seconds === null || isFilled(draft, `baths.${id}.clearing.time`) ? {} : { seconds };

function ofBath(draft: Draft, bath: BathFacts): readonly (EarField | Gate)[] {
  const { id, seconds } = bath;
  const start = `baths.${id}`;
  const afterwards = choice(`${start}.afterwards`, "afterwards", ["run"], {
    "": "usual",
    ...same(["drain", "waste", "return"]),
  });
  const own = [
    // The developer is always there, and how long is worked out.
    ...(seconds === null
      ? []
      : [
          choice(`${start}.use`, null, ["hands"], { yes: "used", no: "unused" }),
          // A wash by its fills lasts as long as they take.
          ...(isFilled(draft, `${start}.fills`) && !isFilled(draft, `${start}.time`)
            ? []
            : [number(`${start}.time`, "bath-time", "hands", null, usualOf(draft, bath))]),
        ]),
    afterwards,
  ].map((field) => ({ ...field, bath: id }));
  const gate = { gate: id, says: { key: "ear.bath", slots: { bath: id } } };
  return seconds === null || bathInUse(draft, id)
    ? [...own, ...gated(gate, moreOfBath(draft, bath))]
    : own.slice(0, 1);
}
