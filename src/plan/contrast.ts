// Test films in, how contrast grows with time and what a wanted gradient takes out.
// Alone, because wedges and gradients come together here, and the drawing and the lines both start from it.
import {
  type ContrastFit,
  type ContrastTime,
  fitContrast,
  gradientForStops,
  timeForGradient,
} from "../trade/contrast.ts";
import { contrastSpan, readWedge, type WedgeReading } from "../trade/sensitometry.ts";
import { secondsOf } from "./clock-readings.ts";
import type { ContrastWish, TestFilm } from "./worksheet.ts";

export interface TestReading {
  readonly film: TestFilm;
  readonly seconds: number;
  /** Null where a gradient was given. */
  readonly wedge: WedgeReading | null;
  /** Null where the wedge could not be read. */
  readonly gradient: number | null;
}

/** A gradient, and the time that gives it; null where nothing could be fitted. */
export interface ForGradient {
  /** Stops of contrast more than wanted; 0 for the one wanted. */
  readonly stops: number;
  readonly gradient: number;
  readonly time: ContrastTime | null;
}

export interface ContrastPlan {
  readonly wish: ContrastWish;
  readonly tests: readonly TestReading[];
  readonly fit: ContrastFit;
  readonly wanted: ForGradient;
  /** One stop less, and one more. */
  readonly stops: readonly ForGradient[];
}

/** ISO 6 develops to a density range of 0.80 over its span: a mean gradient of 0.615. */
const isoGradient = 0.8 / contrastSpan;

export function contrastOf(wish: ContrastWish): ContrastPlan {
  const tests = wish.tests.map((film) => readingOf(wish, film));
  const known = tests.flatMap(({ seconds, gradient }) =>
    gradient === null ? [] : [{ seconds, gradient }],
  );
  const fit = fitContrast(known);
  const gradient = wish.wanted ?? isoGradient;
  const forGradient = (stops: number, wanted: number): ForGradient => ({
    stops,
    gradient: wanted,
    time: fit.kind === "fitted" ? timeForGradient(fit, wanted) : null,
  });
  return {
    wish,
    tests,
    fit,
    wanted: forGradient(0, gradient),
    stops: [-1, 1].flatMap((stops) => {
      const other = gradientForStops(gradient, stops);
      return other === null ? [] : [forGradient(stops, other)];
    }),
  };
}

function readingOf(wish: ContrastWish, film: TestFilm): TestReading {
  const seconds = secondsOf(film.time);
  if (film.densities === undefined || film.baseFog === undefined || wish.stepLog === undefined) {
    return { film, seconds, wedge: null, gradient: film.gradient ?? null };
  }
  const wedge = readWedge({
    baseFog: film.baseFog,
    stepLog: wish.stepLog,
    firstLog: wish.firstLog ?? null,
    densities: film.densities,
  });
  return { film, seconds, wedge, gradient: wedge.kind === "read" ? wedge.gradient : null };
}
