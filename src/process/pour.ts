// One bath in the tank, from pour-in to empty: its times, and what the hands do meanwhile.
// Seconds from the press throughout; the rules are the trade's, so no words and no sounds here.
import type { Agitation, Worksheet } from "../plan/worksheet.ts";
import type { Deed, Moment } from "./moments.ts";

/** The times of one bath's stay in the tank, seconds from the press. */
export interface Pour {
  readonly bath: string;
  readonly pourIn: number;
  readonly full: number;
  /** Where the bath's own clock reads 0:00. */
  readonly clock: number;
  readonly pourOut: number;
  readonly empty: number;
}

/** Bouts keep this far, in seconds, from one another and from the pour-out. */
const ROOM = 5;
/** Times are kept to the microsecond, so that sums read as they were meant. */
const exact = (seconds: number): number => Math.round(seconds * 1e6) / 1e6;
/** Sums of decimal fractions may miss a bound by this much and still keep it. */
const FUZZ = 1e-9;

/** The times of a bath of `seconds` on its clock, poured in at `at`. */
export function pourOf(bath: string, at: number, seconds: number, worksheet: Worksheet): Pour {
  const { tank, clock } = worksheet;
  const full = at + tank.pourIn;
  const zero = clock.starts === "full" ? full : at;
  const end = zero + seconds;
  // A bath shorter than its own pouring is a stop warning of the plan; accepted, it still runs forward.
  const pourOut = Math.max(at, clock.ends === "empty" ? end - tank.pourOut : end);
  return {
    bath,
    pourIn: exact(at),
    full: exact(full),
    clock: exact(zero),
    pourOut: exact(pourOut),
    empty: exact(pourOut + tank.pourOut),
  };
}

/** What the hands do for one bath, in order of time. `agitation` null: nothing between full and pour-out. */
export function momentsOf(pour: Pour, agitation: Agitation | null): readonly Moment[] {
  const moment = (at: number, deed: Deed, count?: number): Moment => ({
    at: exact(at),
    do: deed,
    bath: pour.bath,
    ...(count === undefined ? {} : { count }),
  });
  const within = agitation === null ? [] : boutsOf(pour, agitation);
  const moments = [
    moment(pour.pourIn, "pour-in"),
    moment(pour.full, "full"),
    ...within.flatMap((bout) => [
      moment(bout.from, "agitate"),
      ...inversions(bout).map((at, i) => moment(at, "invert", i + 1)),
      ...(bout.rests ? [moment(bout.to, "rest")] : []),
      ...(bout.rests && bout.taps > 0 ? [moment(bout.to, "tap", bout.taps)] : []),
    ]),
    moment(pour.pourOut, "pour-out"),
    moment(pour.empty, "empty"),
  ];
  return moments.toSorted((a, b) => a.at - b.at);
}

/** A stretch of agitation, `[from, to)`; the last of a bath may run into the pour-out without a rest. */
interface Bout {
  readonly from: number;
  readonly to: number;
  readonly rests: boolean;
  readonly perInversion: number;
  readonly taps: number;
}

function boutsOf(pour: Pour, agitation: Agitation): readonly Bout[] {
  const { first, every, perInversion, taps } = agitation;
  const { full, clock, pourOut } = pour;
  if (pourOut - full <= FUZZ) return [];
  const bout = (from: number, to: number): Bout => {
    const rests = to < pourOut - FUZZ;
    return { from, to: rests ? to : pourOut, rests, perInversion, taps };
  };
  const stands = agitation.for === 0;
  if (!stands && agitation.for >= every) return [bout(full, pourOut)];

  const bouts = first > 0 ? [bout(full, full + first)] : [];
  if (stands) return bouts;
  let k = 1;
  for (let ended = full + first; ; ended = clock + k * every + agitation.for, k += 1) {
    k = Math.max(k, Math.ceil((ended + ROOM - clock - FUZZ) / every));
    const from = clock + k * every;
    if (from + agitation.for > pourOut - ROOM + FUZZ) return bouts;
    bouts.push(bout(from, from + agitation.for));
  }
}

function inversions(bout: Bout): readonly number[] {
  const count = Math.ceil((bout.to - bout.from) / bout.perInversion - FUZZ);
  return Array.from({ length: Math.max(count, 1) }, (_, i) => bout.from + i * bout.perInversion);
}
