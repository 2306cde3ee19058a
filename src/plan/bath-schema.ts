// What a worksheet may hold for each bath, as valibot schemas, with the parts that the developer shares.
// Apart from the rest because each bath takes some wishes of its own.
import {
  boolean,
  description,
  type GenericSchema,
  never,
  exactOptional as optional,
  picklist,
  pipe,
} from "valibot";
import { type BathFacts, processBaths } from "../trade/baths.ts";
import {
  choice,
  clockTime,
  fields,
  label,
  list,
  number,
  temperature,
  volume,
  whole,
} from "./schema-parts.ts";
import type { BathWish, Worksheet } from "./worksheet.ts";

const day = 86_400;

export const bathTemperature = (of: string) => temperature(-10, 110, of);

export const agitation = fields("how the film is agitated", {
  first: number(0, day, "seconds without a break once the tank is full"),
  every: number(0, day, "seconds from one bout's beginning to the next one's"),
  for: number(
    0,
    day,
    'seconds a bout lasts; 0 to let it stand, as many as "every" to go on throughout',
  ),
  perInversion: number(0.5, 60, "seconds for one inversion and back"),
  taps: whole(0, 20, "taps after each bout"),
});

export const filmsPerLitre = optional(
  number(0.01, 10_000, "films of 80 sq in that a litre serves in all"),
);

export const kept = optional(
  volume(1, 1_000_000, "how much of it there is, if not the tank's volume"),
);

export const bottle = optional(label("the bottle on the shelf that it is poured from"));

const commonWishes = {
  temperature: optional(bathTemperature("the bath's temperature")),
  agitation: optional(agitation),
  afterwards: optional(choice(["drain", "waste", "return"], "where the bath goes afterwards")),
};

const timedWishes = {
  time: optional(clockTime("the bath's time")),
  skip: optional(pipe(boolean(), description("true or false: true leaves the bath out"))),
  ...commonWishes,
};

const waterWish = fields("what this bath shall be", timedWishes);

const chemicalWishes = {
  ...timedWishes,
  filmsPerLitre,
  filmsBefore: optional(number(0, 10_000, "films of 80 sq in that it has served before this one")),
  kept,
  bottle,
};

const chemicalWish = fields("what this bath shall be", chemicalWishes);

const fixerWish = fields("what the fixer shall be", {
  ...chemicalWishes,
  clearing: optional(
    fields("the clearing time of a snip of film", {
      time: clockTime("how long it took to clear"),
      fresh: optional(clockTime("how long it took when the bath was fresh")),
      times: optional(
        pipe(picklist([2, 3]), description("2 or 3: fix for so many times the clearing time")),
      ),
    }),
  ),
});

const washWish = fields("what the wash shall be", {
  ...timedWishes,
  fills: optional(
    list(
      1,
      20,
      whole(1, 200, "inversions in this fill"),
      "the inversions in each fill of fresh water",
    ),
  ),
  carryOver: optional(volume(0.1, 10_000, "what stays behind at each emptying")),
  flow: optional(volume(1, 100_000, "running water, the volume a minute")),
  thiosulfate: optional(number(1, 1000, "g/l of thiosulfate in the fixer before the wash")),
});

const developerWish = fields("what the developer shall be, besides developer itself", {
  time: optional(
    pipe(never(), description("nothing: the developer's time comes from the leaflet")),
  ),
  skip: optional(pipe(never(), description("nothing: nothing develops without a developer"))),
  ...commonWishes,
});

/** The wishes that only one bath takes. */
const ownWishes: { readonly [id: string]: GenericSchema<BathWish> } = {
  fixer: fixerWish,
  wash: washWish,
};

function wishFor({ id, seconds, water }: BathFacts) {
  const usual = water ? waterWish : chemicalWish;
  const wish = seconds === null ? developerWish : (ownWishes[id] ?? usual);
  return [id, optional(wish)] as const;
}

// Valibot makes an optional entry under an unnamed key "or undefined", which an exact one never is.
export const baths = fields(
  "baths by id, each with what it shall be",
  Object.fromEntries(Object.values(processBaths).flatMap((of) => of.map(wishFor))),
) as GenericSchema as GenericSchema<NonNullable<Worksheet["baths"]>>;
