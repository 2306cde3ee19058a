// The worksheet as it comes in: what a person fills in before a development.
// Types alone; reading and refusing live in read-worksheet.ts.
// Units where a field does not say: seconds, °C, ml, cm².

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
}

export interface Tank {
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
  /** By bath id; naming one brings it in. */
  readonly baths?: { readonly [id: string]: BathWish };
  readonly voice?: {
    readonly detail?: "full" | "brief" | "tones";
    /** 0.8 to 1.6, default 1. */
    readonly rate?: number;
  };
}
