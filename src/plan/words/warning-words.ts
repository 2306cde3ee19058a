// What a language says in the warnings about time, mix, hands, baths and voice, by topic. Types alone.
// Each warning says what is the matter, why it matters and what would do, in this order.
import type { Count, Say } from "./say.ts";

/** A bath that lies outside the leaflet's rows: `by` so many degrees, `row` the nearest one. */
interface Warmer {
  readonly warmer: boolean;
}

export interface WarningWords {
  readonly extrapolated: Say<"by" | "row" | "bath", Warmer & { readonly tooFar: boolean }>;
  /** `end`: what the tank has drifted to. */
  readonly driftExtrapolated: Say<"end" | "by" | "row" | "bath", Warmer>;
  readonly readingExtrapolated: Say<"reading" | "by" | "row", Warmer>;
  readonly tooCold: Say<"bath">;
  readonly tooWarm: Say<"bath">;
  /** `least`: what it should take at least. */
  readonly shortDevelopment: Say<"time" | "least">;
  /** Stands behind it where the leaflet has an answer. */
  readonly leastAt: Say<"least" | "temperature">;
  readonly rowOutOfLine: Say<"time" | "temperature" | "expected">;
  readonly soughtNowhere: Say<"time">;
  readonly soughtBeyond: Say<"time" | "temperature" | "by">;
  /** Clock times: when it was done, and when it was still being read. */
  readonly readingsPastEnd: Say<"done" | "read">;
  /** `hours`: one of the next two. */
  readonly longerThanADay: Say<"hours">;
  readonly hours: Say<never, Count>;
  readonly moreHours: Say<never, Count>;
  /** `films`: some of the next three, listed; `first`: a label. */
  readonly mixedRatings: Say<"films" | "first">;
  readonly ratedFilm: Say<"film" | "rating">;
  readonly ratedFilmOfSpeed: Say<"film" | "rating" | "box">;
  readonly unratedFilm: Say<"film">;
  /** Two rows, as in "10:00 at 68 °F". */
  readonly leafletBackwards: Say<"warmer" | "colder">;
  /** `tank`, `stock`, `needed`, `wanted`: volumes; `films`, `served`: counted, as in "2 films". */
  readonly stockShort: Say<
    "tank" | "dilution" | "stock" | "needed" | "films" | "wanted" | "served"
  >;
  /** `time`: what the bath has; `pouring`: what pouring takes of it; `least`: what would do. */
  readonly bathTooShort: Say<"bath" | "time" | "pouring" | "least">;
  readonly temperatureStep: Say<"bath" | "temperature" | "by" | "most", Warmer>;
  /** `language`: a tag such as "ja", which no voice speaks. */
  readonly languageUnavailable: Say<"language">;
  /** `times`: as long as when it was fresh. */
  readonly fixerSpent: Say<"times">;
  readonly clearedQuicker: string;
  /** Clock times; `twice`: else three times. */
  readonly fixerShort: Say<"given" | "asked", { readonly twice: boolean }>;
  /** `cure`: one of the next two. */
  readonly washShort: Say<"left" | "limit" | "cure">;
  readonly moreChanges: Say<never, Count>;
  readonly moreRunning: Say<"time">;
  /** `before`, `now`, `all`: counted, as in "2 films". */
  readonly pastCapacity: Say<"bath" | "before" | "now" | "all", { readonly developer: boolean }>;
  readonly replenishedTwice: string;
  /** `what`: one of the hands' labels; `spread`, `median`: seconds. */
  readonly unevenHands: Say<"what" | "spread" | "median">;
  readonly notAsMeasured: Say<"what" | "used" | "median">;
}
