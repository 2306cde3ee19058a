// What a language says of test films and their contrast, lines and warnings, key by key. Types alone.
import type { ContrastFault } from "../../trade/contrast.ts";
import type { WedgeFault } from "../../trade/sensitometry.ts";
import type { Say } from "./say.ts";

export interface ContrastWords {
  /** A test film, by its number and time. */
  readonly test: Say<"number" | "time">;
  /** `fog`: base and fog; `log`: log H of the speed point, counted `fromFirst` step where nobody said. */
  readonly wedge: Say<"fog" | "log" | "rise" | "sum", { readonly fromFirst: boolean }>;
  /** The same with the film's speed: the sum of it, and in logarithmic `degrees`. */
  readonly wedgeWithSpeed: Say<
    "fog" | "log" | "rise" | "sum" | "speed" | "degrees",
    { readonly fromFirst: boolean }
  >;
  readonly wedgeNotIso: Say<"fog" | "log" | "rise" | "sum", { readonly fromFirst: boolean }>;
  readonly gradient: Say<"gradient">;
  readonly growth: string;
  /** The word that stands in a formula for the time. */
  readonly minutes: string;
  /** `points`: some of the next, listed. */
  readonly growthSum: Say<"sum" | "points" | "misfit">;
  readonly point: Say<"gradient" | "time">;
  readonly range: Say<"from" | "to">;
  readonly contrast: string;
  readonly stopLess: string;
  readonly stopMore: string;
  readonly timeSum: Say<"gradient" | "sum">;
  /** Behind a comma. */
  readonly change: Say<"percent", { readonly less: boolean }>;
  readonly warnings: {
    readonly unfit: { readonly [why in ContrastFault]: string };
    /** `test`: as above; `why`: one of the next. */
    readonly wedgeUnread: Say<"test" | "why">;
    readonly wedge: { readonly [why in WedgeFault]: string };
    readonly beyondLimit: Say<"gradient" | "limit">;
    readonly outsideTests: Say<"gradient" | "time" | "from" | "to">;
  };
}
