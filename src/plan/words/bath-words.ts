// What a language says on the lines of the hands and the baths, key by key. Types alone.
// Each says in English what its slots hold; the sums in them are signs and figures, without words.
import type { Count, Say } from "./say.ts";

export interface HandsWords {
  /** What was timed; the warnings begin with it too. */
  readonly labels: {
    readonly pourIn: string;
    readonly pourOut: string;
    readonly perInversion: string;
  };
  /** `times`: from shortest to longest; `only`: it is one. */
  readonly times: Say<"times" | "spread", { readonly only: boolean }>;
}

export interface BathWords {
  /** What each bath is called, as a heading. */
  readonly names: {
    readonly prewet: string;
    readonly developer: string;
    readonly stop: string;
    readonly fixer: string;
    readonly rinse: string;
    readonly "wash-aid": string;
    readonly wash: string;
    readonly "wetting-agent": string;
  };
  readonly unsaid: string;
  readonly given: string;
  /** How long a snip of film took to clear, and the fixer's time from it. */
  readonly clears: Say<"time" | "sum">;
  /** The same where a time was given, and this is what it would have been. */
  readonly clearsButGiven: Say<"time" | "sum" | "result">;
  /** Inversions in each fill, `inversion` the time of one. */
  readonly fills: Say<"fills" | "inversion" | "sum">;
  readonly fillsPoured: Say<"fills" | "inversion" | "pouring" | "sum">;
}

export interface FixerWords {
  readonly label: string;
  /** `fresh`: a clock time; `spent`: so many times as long. */
  readonly cleared: Say<"fresh" | "sum" | "spent">;
  readonly times: Say<"times">;
}

export interface WashWords {
  readonly carriedLabel: string;
  /** `strength`: g of thiosulfate in a litre. */
  readonly carried: Say<"volume" | "strength" | "sum">;
  readonly leftLabel: string;
  /** `way`: one of the next two. */
  readonly left: Say<"way" | "sum" | "limit">;
  readonly running: Say<"fill" | "flow" | "time">;
  readonly fills: Say<"fill", Count>;
  readonly lessThan: Say<"residue">;
  readonly minutesLabel: string;
  readonly minutes: Say<"first" | "sum">;
  readonly noMinutes: string;
  readonly changesLabel: string;
  readonly changes: Say<"sum" | "fill">;
  readonly changeCount: Say<never, Count>;
}

export interface CapacityWords {
  readonly label: Say<"bath">;
  /** `films`: counted, as in "20 films"; `before` and `now` are bare figures. */
  readonly sum: Say<"volume" | "litres" | "perLitre" | "films" | "before" | "now">;
  /** `films`: counted, as in "2.5 films". */
  readonly more: Say<"films">;
  readonly replenisherLabel: string;
  readonly replenishedBefore: Say<"films" | "each" | "due">;
  readonly replenishNow: Say<"films" | "each">;
}
