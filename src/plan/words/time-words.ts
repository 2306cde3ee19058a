// What a language says on the lines of the development time and the mix, key by key. Types alone.
// Each says in English what its slots hold; the sums in them are signs and figures, without words.
import type { Method } from "../../trade/method.ts";
import type { Count, Say } from "./say.ts";

/** How the development time came about. */
export interface TimeWords {
  readonly leaflet: {
    readonly label: string;
    /** A row: `"10:00 at 68 °F"`. */
    readonly row: Say<"time" | "temperature">;
    /** `rows`: one or more of these, listed. */
    readonly forRating: Say<"rating" | "rows">;
    readonly count: Say<never, Count>;
  };
  readonly temperature: {
    readonly label: string;
    readonly asRow: Say<"bath">;
    /** `from` and `to` are rows' temperatures, `apart` and `away` differences, `change` as below. */
    readonly between: Say<"from" | "to" | "apart" | "change" | "bath" | "away" | "sum">;
    /** A row alone; `given`: the slope stands in the worksheet, else the usual one is taken. */
    readonly slope: Say<"bath" | "away" | "row" | "change" | "sum", { readonly given: boolean }>;
    readonly otherRows: Say<"bath" | "away" | "row" | "ratio" | "sum">;
    /** How much of the time a degree takes off, or adds. */
    readonly change: Say<"percent", { readonly less: boolean }>;
  };
  readonly rating: {
    readonly label: string;
    readonly ownRows: Say<"rating">;
    /** `log`: the logarithm to be taken; `stops` what it comes to, and `count` the same as a number. */
    readonly stops: Say<"box" | "rating" | "log" | "stops" | "sum", Count & { over: boolean }>;
  };
  readonly drift: {
    readonly label: string;
    /** Three times with their temperatures, and the sum of them. */
    readonly sum: Say<"room" | "halfway" | "start" | "middle" | "end" | "sum">;
  };
  readonly reuse: {
    readonly label: string;
    readonly sum: Say<"perFilm" | "films" | "factor" | "sum", Count>;
  };
  readonly method: {
    readonly label: string;
    readonly names: { readonly [method in Method]: string };
    readonly sum: Say<"method" | "sum">;
  };
  readonly measured: {
    /** Label of a stretch between two readings. */
    readonly from: Say<"from">;
    /** `to`: its end; `before`, `after`: temperatures; the times that all of it would take. */
    readonly stretch: Say<"to" | "before" | "after" | "start" | "middle" | "end" | "sum">;
    readonly done: Say<"percent">;
    readonly label: string;
    readonly before: string;
    /** `part`: of the whole development, below 1. */
    readonly steady: Say<"part" | "at" | "sum">;
    readonly drifting: Say<"part" | "at" | "room" | "start" | "middle" | "end" | "sum">;
  };
  readonly development: { readonly label: string; readonly rounded: Say<"seconds"> };
  /** The leaflet asked backwards: at which temperature does a time come right? */
  readonly sought: {
    readonly label: Say<"time">;
    readonly least: Say<"time">;
    readonly notFalling: string;
    readonly noAnswer: string;
    /** `time`: of this film; `base`: what that is on the leaflet. */
    readonly onLeaflet: Say<"factor" | "time" | "base" | "sum">;
    readonly beyond: Say<"by">;
    readonly guess: Say<"at">;
  };
}

export interface MixWords {
  readonly label: string;
  readonly asStock: string;
  /** What stands for a dilution where there is none, as in "500 ml of stock". */
  readonly undiluted: string;
  readonly sum: Say<"sum" | "stock">;
  readonly result: Say<"stock" | "water">;
  readonly film: {
    readonly label: string;
    /** `films`: as in "2 × 120 + 1 × 135-36"; `area`: in cm². */
    readonly area: Say<"films" | "area">;
    /** `films`: the figure, `count` the same as a number: "1 film", "2.5 films". */
    readonly count: Say<"films", Count>;
  };
  readonly stock: {
    readonly label: string;
    /** One volume in two units. */
    readonly perFilm: Say<"typed" | "same">;
    readonly needed: Say<"sum" | "total" | "dilution" | "holds">;
  };
}
