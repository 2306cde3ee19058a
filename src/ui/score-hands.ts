// What the hands do, for the score: the bath itself as strokes, from pour to pour, and the notes
// beneath it with their names.
import type { Moment } from "../process/moments.ts";
import type { Method } from "../trade/method.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { lateWords } from "./language.ts";
import type { Span } from "./score-ink.ts";
import type { Note, Numbered, Stroke } from "./score-shape.ts";
import { textWidth } from "./score-type.ts";

/** Of a bout longer than this, only the beginning and the end are drawn, in inversions. */
const LONG_BOUT = 26;
const BOUT_HEAD = 6;
const BOUT_TAIL = 3;
/** A line may end after so many inversions of a bout, where no words hang across. */
const SEAM = 6;
/** Seconds: enough to part two inks, too little to see. */
const HAIR = 1e-4;
/** Units between neighbours in a row. */
const CLEAR = 6;

/** The bath over a whole system, in seconds. */
export function strokesOf(moments: readonly Numbered<Moment>[]): readonly Stroke[] {
  const strokes: Stroke[] = [];
  let filledFrom: number | null = null;
  for (const [i, [, { at, do: deed }]] of moments.entries()) {
    const level = strokes.at(-1)?.to ?? at;
    switch (deed) {
      case "pour-in": {
        const full = next(moments, i, ["full", "pour-out"]) ?? at;
        strokes.push({ kind: "rise", from: at, to: full });
        filledFrom = full;
        break;
      }
      case "invert": {
        const to = next(moments, i, ["invert", "rest", "pour-out"]) ?? at;
        if (at > level) strokes.push({ kind: "level", from: level, to: at });
        strokes.push({ kind: "swing", from: at, to });
        break;
      }
      case "pour-out": {
        if (filledFrom === null) break;
        if (at > level) strokes.push({ kind: "level", from: level, to: at });
        strokes.push({ kind: "fall", from: at, to: next(moments, i, ["empty"]) ?? at });
        filledFrom = null;
        break;
      }
      case "full":
      case "agitate":
      case "rest":
      case "tap":
      case "empty":
        break;
    }
  }
  return strokes;
}

function next(
  moments: readonly Numbered<Moment>[],
  after: number,
  deeds: readonly Moment["do"][],
): number | undefined {
  for (let i = after + 1; i < moments.length; i += 1) {
    const moment = moments[i]?.[1];
    if (moment !== undefined && deeds.includes(moment.do)) return moment.at;
  }
  return undefined;
}

/** Where the hands need ink: pours whole, bouts whole unless they go on and on. */
export function strokeInks(strokes: readonly Stroke[]): readonly Span[] {
  return boutsIn(strokes)
    .flatMap((bout) =>
      bout.length > LONG_BOUT ? [bout.slice(0, BOUT_HEAD), bout.slice(-BOUT_TAIL)] : [bout],
    )
    .flatMap((bout) =>
      bout.map(({ from, to }, i) => {
        const parts = i % SEAM === SEAM - 1 && i < bout.length - 1;
        return { from, to: parts ? to - HAIR : to };
      }),
    );
}

/** Swings that follow one another, together; every pour by itself; what lies level needs no ink. */
function boutsIn(strokes: readonly Stroke[]): readonly (readonly Stroke[])[] {
  const bouts: Stroke[][] = [];
  for (const [i, stroke] of strokes.entries()) {
    if (stroke.kind === "level") continue;
    const goesOn = stroke.kind === "swing" && strokes[i - 1]?.kind === "swing";
    if (goesOn) bouts.at(-1)?.push(stroke);
    else bouts.push([stroke]);
  }
  return bouts;
}

/** A note before it has its place in a row. */
export interface Named {
  readonly at: number;
  readonly name: string | null;
  readonly clock: string | null;
}

/** What stands beneath a moment. Of moments at one time, one speaks. */
export function named(
  moments: readonly Numbered<Moment>[],
  i: number,
  method: Method,
): Named | null {
  const moment = moments[i]?.[1];
  if (moment === undefined) return null;
  const { at } = moment;
  // In order of time, so that those of one time are neighbours.
  const beside = (step: 1 | -1, deed: Moment["do"]) => {
    const other = moments[i + step]?.[1];
    return other?.at === at && other.do === deed;
  };
  const clock = writeClockTime(at);
  switch (moment.do) {
    case "pour-in":
    case "pour-out":
    case "empty":
      return { at, name: lateWords.value.score[moment.do], clock };
    case "agitate": {
      let end = i + 1;
      while (moments[end]?.[1].do === "invert") end += 1;
      return { at, name: lateWords.value.turnsInScore[method](end - i - 1), clock };
    }
    case "full":
      return { at, name: beside(1, "agitate") ? null : lateWords.value.score.full, clock };
    case "rest":
      return { at, name: beside(1, "tap") ? null : lateWords.value.score.rest, clock };
    case "tap":
      return { at, name: lateWords.value.score.tap(moment.count ?? 1), clock: null };
    case "invert":
      return { at, name: null, clock: null };
  }
}

/** Units that a note's name and clock take. */
export function nameWidth({ name, clock }: Named): number {
  return Math.max(textWidth(name ?? ""), textWidth(clock ?? "")) + CLEAR;
}

/** Each name in the first row with room for it; a clock only where the one before leaves it room. */
export function placedNotes(
  notes: readonly (Named & { readonly moment: number })[],
  from: number,
  scale: number,
): readonly Note[] {
  const rows: number[] = [];
  let clockFrom = Number.NEGATIVE_INFINITY;
  return notes.map(({ moment, at, name, clock }) => {
    const x = (at - from) * scale;
    let row = 0;
    if (name !== null) {
      while ((rows[row] ?? Number.NEGATIVE_INFINITY) > x) row += 1;
      rows[row] = x + textWidth(name) + CLEAR;
    }
    const shown = clock !== null && x >= clockFrom;
    if (shown) clockFrom = x + textWidth(clock) + CLEAR;
    return { moment, x, name, row, clock: shown ? clock : null };
  });
}
