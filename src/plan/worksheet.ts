// The worksheet as it comes in: what a person fills in before a development.
// Types alone; reading and refusing live in read-worksheet.ts.
// Units where a field does not say: seconds, °C, ml, cm². Past 200 lines because every field says what it is.

import type { Method } from "../trade/method.ts";
import type { Temperature } from "../units/temperature.ts";
import type { Volume } from "../units/volume.ts";

/** `"m:ss"` or `"h:mm:ss"`. */
type ClockTime = string;

export interface Agitation {
  /** Continuous seconds once the tank is full. */
  readonly first: number;
  /** Then a bout begins every … seconds on the bath's clock. */
  readonly every: number;
  /** And lasts … seconds; 0: the bath stands; at least `every`: continuous. */
  readonly for: number;
  /** Seconds for one inversion and back. */
  readonly perInversion: number;
  /** Taps to free air bells after each bout. */
  readonly taps: number;
}

export interface Film {
  readonly label: string;
  /** `"135-36"`, `"120"`, `"4x5in"` … */
  readonly size: string;
  readonly count: number;
  /** ISO arithmetic speed printed on the box. */
  readonly boxSpeed?: number;
  /** What it was metered at; the box speed where absent. */
  readonly exposureIndex?: number;
}

export interface LeafletRow {
  readonly temperature: Temperature;
  readonly time: ClockTime;
  /** A row the leaflet gives for that rating. */
  readonly exposureIndex?: number;
}

/** A thermometer read at a time on a clock that ran from 0:00. */
export interface ThermometerRow {
  readonly at: ClockTime;
  readonly temperature: Temperature;
}

export interface Developer {
  readonly label: string;
  /** `"stock"` (default) or `"1+3"`: parts stock + parts water. */
  readonly dilution?: string;
  readonly leaflet: readonly LeafletRow[];
  /** Measured in the mixed bath, now. */
  readonly temperature: Temperature;
  /** k per °C, for a row that stands alone. */
  readonly perDegree?: number;
  /** Fraction of the time per stop; default 0.10 and 0.40. */
  readonly perStop?: { readonly pull: number; readonly push: number };
  /** Least stock that 80 sq in of film needs. */
  readonly stockPerFilm?: Volume;
  /** 80 sq in films this same solution has developed already. */
  readonly filmsBefore?: number;
  /** Fraction of the time added for each of them; default 0. */
  readonly perFilmBefore?: number;
  /** A development time for which the leaflet is asked backwards: at which temperature is it right? */
  readonly soughtTime?: ClockTime;
  /** Taken in the tank while it develops, on the developer's own clock; they move the end. */
  readonly readings?: readonly ThermometerRow[];
  /** Films of 80 sq in that a litre of this solution serves in all. */
  readonly filmsPerLitre?: number;
  /** How much of the solution there is; default the tank's volume. */
  readonly kept?: Volume;
  /** Replenisher due for each film of 80 sq in. */
  readonly replenishPerFilm?: Volume;
  /** The name of the bottle on the shelf that it is poured from. */
  readonly bottle?: string;
}

/** The tank's own times as measured by pressing along, seconds, one entry a try. */
interface MeasuredHands {
  readonly pourIn?: readonly number[];
  readonly pourOut?: readonly number[];
  readonly perInversion?: readonly number[];
}

export interface Tank {
  /** What the person calls it: its times are kept under this name. */
  readonly label?: string;
  readonly method: Method;
  /** What it takes to cover the film. */
  readonly volume: Volume;
  /** Seconds this person takes to fill it. */
  readonly pourIn: number;
  /** Seconds to empty it. */
  readonly pourOut: number;
  /** Seconds from empty to the next pour-in; default 0. */
  readonly handover?: number;
  /** On the development time for this method; default 1, rotary 0.85. */
  readonly timeFactor?: number;
  /** What the tank drifts toward. */
  readonly room?: Temperature;
  /** Minutes in which it goes half-way there. */
  readonly halfway?: number;
  readonly measured?: MeasuredHands;
}

/** What becomes of a bath once it is poured out. */
export type Afterwards = "drain" | "waste" | "return";

export interface BathWish {
  readonly time?: ClockTime;
  readonly temperature?: Temperature;
  readonly agitation?: Agitation;
  readonly skip?: boolean;
  /** Where the bath goes once poured out; default by bath. */
  readonly afterwards?: Afterwards;
  /** Wash only: fills and dumps, each with so many inversions, in place of a time. */
  readonly fills?: readonly number[];
  /** Wash only: liquid that stays behind at each emptying. */
  readonly carryOver?: Volume;
  /** Wash only: running water, the volume a minute. */
  readonly flow?: Volume;
  /** Wash only: g/l of thiosulfate in the fixer before it; default 108. */
  readonly thiosulfate?: number;
  /** Fixer only: how long a snip of film took to clear; gives the time where none is given. */
  readonly clearing?: Clearing;
  /** Chemical baths: films of 80 sq in that a litre serves in all. */
  readonly filmsPerLitre?: number;
  /** Of those, before this one. */
  readonly filmsBefore?: number;
  /** How much of the bath there is; default the tank's volume. */
  readonly kept?: Volume;
  /** The name of the bottle on the shelf that it is poured from. */
  readonly bottle?: string;
}

export interface Clearing {
  readonly time: ClockTime;
  /** What it took in the fresh bath. */
  readonly fresh?: ClockTime;
  /** Fix for so many times the clearing time; default 2. */
  readonly times?: 2 | 3;
}

/** Stock, and water from two taps, to be brought to one temperature by mixing. */
export interface MixingWish {
  readonly target: Temperature;
  readonly stock: Temperature;
  readonly cold: Temperature;
  readonly hot: Temperature;
  /** From one mark of the graduate to the next; default 5 ml, or a quarter of a fluid ounce. */
  readonly mark?: Volume;
}

/** A developer standing in a water bath, read now and then. */
export interface TemperingWish {
  readonly target: Temperature;
  readonly readings: readonly ThermometerRow[];
  /** The water bath, where it is known. */
  readonly bath?: Temperature;
  readonly bathVolume?: Volume;
  /** Time of day, 24 hours, at which the readings' clock stood at 0:00. */
  readonly began?: string;
}

/** A film developed for a time, with the mean gradient it had, or a step wedge's densities. */
export interface TestFilm {
  readonly time: ClockTime;
  readonly gradient?: number;
  /** Base and fog included, the least exposed step first. */
  readonly densities?: readonly number[];
  /** Of the unexposed, developed film. */
  readonly baseFog?: number;
}

export interface ContrastWish {
  readonly tests: readonly TestFilm[];
  /** The mean gradient to develop to; default 0.80 over 1.30, as ISO 6 has it. */
  readonly wanted?: number;
  /** log10 of the exposure from one step of the wedge to the next. */
  readonly stepLog?: number;
  /** log10 of the first step's exposure, lux seconds. */
  readonly firstLog?: number;
}

export interface Worksheet {
  readonly tankside: 1;
  readonly title?: string;
  /** BCP 47; default `"en"`. */
  readonly language?: string;
  /** Id of a process outline. */
  readonly process: string;
  readonly films: readonly Film[];
  readonly developer: Developer;
  readonly tank: Tank;
  readonly agitation: Agitation;
  readonly clock: {
    /** A bath's time runs from the first drop in, or from a full tank … */
    readonly starts: "pour-in" | "full";
    /** … and ends as the pour-out begins, or with an empty tank. */
    readonly ends: "pour-out" | "empty";
  };
  /** Waited in the dark before the film is taken out, to find light leaks; `"0:00"`: not at all; default 3:00. */
  readonly darkWait?: ClockTime;
  /** `"done"`: the film is in the closed tank already, and no step in the dark is told. Trays and hangers have no lid. */
  readonly loading?: "done";
  /** By bath id; naming one brings it in. */
  readonly baths?: { readonly [id: string]: BathWish };
  readonly mixing?: MixingWish;
  readonly tempering?: TemperingWish;
  readonly contrast?: ContrastWish;
  readonly voice?: {
    readonly detail?: "full" | "brief" | "tones";
    /** 0.8 to 1.6, default 1. */
    readonly rate?: number;
  };
}
