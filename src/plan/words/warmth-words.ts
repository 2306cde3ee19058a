// What a language says of mixing and tempering, lines and warnings, key by key. Types alone.
import type { CoolingFit } from "../../trade/tempering.ts";
import type { Count, Say } from "./say.ts";

export interface MixingWords {
  readonly water: string;
  /** Two volumes at their temperatures, and what they weigh. */
  readonly waterSum: Say<"total" | "target" | "weight" | "stock" | "at" | "stockWeight" | "sum">;
  readonly hot: string;
  readonly cold: string;
  /** `density`: of a ml at that temperature. */
  readonly pourSum: Say<"sum" | "at" | "density">;
  readonly marks: string;
  readonly marksSum: Say<"stock" | "cold" | "hot" | "whole" | "dilution">;
  readonly warnings: {
    readonly nothingToMix: string;
    /** Temperatures. */
    readonly outOfReach: Say<"target" | "coldest" | "warmest">;
    readonly oneTap: Say<"temperature">;
    readonly noWater: string;
    /** `mark`: a volume; `dilution`: what the marks make of it. */
    readonly marksTooCoarse: Say<"mark" | "dilution">;
    /** Not even the stock comes to a mark. */
    readonly lessThanAMark: Say<"mark">;
  };
}

export interface TemperingWords {
  readonly thermometer: string;
  readonly reading: Say<"at" | "temperature">;
  readonly readings: Say<never, Count>;
  readonly goes: string;
  /** The word that stands in a formula for the minutes gone by. */
  readonly minutes: string;
  readonly goesSum: Say<"sum" | "room" | "halfway" | "from" | "to" | "misfit">;
  readonly settles: Say<"temperature">;
  readonly reached: Say<"temperature">;
  /** `range`: one of the next two. */
  readonly reachedSum: Say<"sum" | "range">;
  readonly orNever: Say<"soonest">;
  readonly range: Say<"from" | "to">;
  /** Behind a semicolon, where the time of day is known. */
  readonly onTheWall: Say<"time">;
  /** `time`: a clock time, or the words for one that is more than a day off. */
  readonly about: Say<"time">;
  readonly muchLater: string;
  readonly bathFor: Say<never, Count>;
  readonly ice: string;
  readonly iceSum: Say<"water" | "from" | "to" | "sum">;
  readonly asItIs: string;
  readonly asItIsSum: Say<"temperature" | "time">;
  /** Behind a semicolon. */
  readonly beyond: Say<"by">;
  /** Behind a comma. */
  readonly readAgain: string;
  readonly guess: Say<"time">;
  readonly warnings: {
    readonly atTarget: Say<"target">;
    readonly unfit: {
      readonly [why in Extract<CoolingFit, { readonly kind: "unfit" }>["why"]]: string;
    };
    readonly movesAway: Say<"target">;
    readonly neverReaches: Say<"target" | "settles">;
    /** Stands behind it where the ice is not known yet. */
    readonly askIce: string;
    readonly mayNotReach: Say<"target">;
    readonly takesLong: Say<"target" | "wait">;
    /** `range`: as on the line. */
    readonly wait: Say<"target" | "wait" | "range">;
  };
}
