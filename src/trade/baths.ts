// The baths of each process, in order, with what the trade does where a worksheet is silent.
// Data alone: the plan takes times and agitation from here, the moments take the order and the fate.

/** How a bath is agitated unless the worksheet says otherwise. */
type AgitationHabit = "continuous" | "as-developer" | "none";

/** What becomes of a bath once poured out, unless the worksheet says otherwise. */
export type Fate = "drain" | "waste" | "return" | "by-dilution";

export interface BathFacts {
  readonly id: string;
  /** Only where the worksheet names it. */
  readonly onlyIfNamed: boolean;
  /** Seconds; null: worked out from the leaflet. */
  readonly seconds: number | null;
  readonly agitation: AgitationHabit;
  /** `by-dilution`: a diluted developer is used once and goes to waste; used as stock it returns. */
  readonly fate: Fate;
  /** Plain water, so that leaving it out or in harms no chemistry. */
  readonly water: boolean;
}

/**
 * Black-and-white negative. Times are seconds.
 *
 * Sources: stop bath 30–60 s, continuous; rinse 30 s, wash aid 2 min (US Army course SS0509, p. 24).
 * Common practice, no source: pre-wet 1 min, fixer 5 min where no clearing time was taken and
 * agitated as the developer is, wash 10 min in running water, wetting agent 1 min and left alone.
 */
const bwNegative: readonly BathFacts[] = [
  {
    id: "prewet",
    onlyIfNamed: true,
    seconds: 60,
    agitation: "continuous",
    fate: "drain",
    water: true,
  },
  {
    id: "developer",
    onlyIfNamed: false,
    seconds: null,
    agitation: "as-developer",
    fate: "by-dilution",
    water: false,
  },
  {
    id: "stop",
    onlyIfNamed: false,
    seconds: 60,
    agitation: "continuous",
    fate: "return",
    water: false,
  },
  {
    id: "fixer",
    onlyIfNamed: false,
    seconds: 300,
    agitation: "as-developer",
    fate: "return",
    water: false,
  },
  {
    id: "rinse",
    onlyIfNamed: true,
    seconds: 30,
    agitation: "continuous",
    fate: "drain",
    water: true,
  },
  {
    id: "wash-aid",
    onlyIfNamed: true,
    seconds: 120,
    agitation: "as-developer",
    fate: "return",
    water: false,
  },
  {
    id: "wash",
    onlyIfNamed: false,
    seconds: 600,
    agitation: "none",
    fate: "drain",
    water: true,
  },
  {
    id: "wetting-agent",
    onlyIfNamed: false,
    seconds: 60,
    agitation: "none",
    fate: "drain",
    water: false,
  },
];

/** By process id. */
export const processBaths: { readonly [process: string]: readonly BathFacts[] } = {
  "bw-negative": bwNegative,
};
