// Worksheet in, plan out: the numbers, the arithmetic shown, the warnings.
import type { Agitation } from "./worksheet.ts";

export interface PlannedBath {
  readonly id: string;
  readonly label: string;
  /** Seconds on the bath's own clock. */
  readonly seconds: number;
  /** °C; null where nobody said. */
  readonly temperature: number | null;
  /** null: the bath is left alone (running water, or a bath that must not foam). */
  readonly agitation: Agitation | null;
}

/** One step of the arithmetic, fit to read aloud to a class. */
export interface WorkingLine {
  readonly label: string;
  readonly expression: string;
  readonly result: string;
}

export interface Warning {
  readonly id: string;
  readonly severity: "stop" | "caution" | "note";
  readonly text: string;
}

export interface Plan {
  /** Whole seconds, half up. */
  readonly developmentSeconds: number;
  /** ml, unrounded. */
  readonly mix: { readonly stock: number; readonly water: number; readonly total: number };
  readonly baths: readonly PlannedBath[];
  readonly working: readonly WorkingLine[];
  readonly warnings: readonly Warning[];
}
