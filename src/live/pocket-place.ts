// Where in a track a run is, and whether it may be moved there now. Pure: what is to be heard and the time in.
import type { Cue, Section } from "../timeline/score.ts";
import { alive, WAITING_CONFIRM, waitsFrom } from "../timeline/waiting.ts";
import type { OwnSound } from "./knocks.ts";
import type { Heard } from "./outlet.ts";
import type { Laid, LaidSection, Rendering } from "./pocket-shape.ts";

/** A track, and which of the run's sections is its first. */
export interface Lying {
  readonly laid: Laid;
  readonly first: number;
}

/** One that is being made. */
export interface Wanted {
  readonly lying: Lying;
  readonly rendering: Rendering;
  /** Since when, seconds on the steady clock. */
  readonly since: number;
}

/** Nothing moves so shortly before a moment, seconds. */
const BEFORE_MOMENT = 0.6;

/** @param elapsed seconds since the press, as they are to be heard. Null where the track lacks the section. */
export function placeIn(
  { laid, first }: Lying,
  { index }: Heard,
  elapsed: number,
): { readonly section: LaidSection; readonly at: number } | null {
  const section = laid.sections[index - first];
  if (section === undefined) return null;
  const { at, back } = laid.turn;
  const over = elapsed - section.waits - at;
  return {
    section,
    at: section.start + (over < 0 ? elapsed : section.waits + at - back + (over % back)),
  };
}

/** Seconds by which the track is behind; while it waits, one turn is like the next. */
export function behind(
  { laid }: Lying,
  { section, at }: { readonly section: LaidSection; readonly at: number },
  position: number,
): number {
  const waiting = section.start + section.waits;
  const off = at - position;
  if (at < waiting || position < waiting) return off;
  const { back } = laid.turn;
  return off - Math.round(off / back) * back;
}

/** Whether its script came so late that the track has to turn back now. */
export function turns(
  { laid }: Lying,
  { section }: { readonly section: LaidSection },
  position: number,
): boolean {
  return position >= section.start + section.waits + laid.turn.at;
}

/** Whether nothing sounds in a stretch of a section, and no moment comes upon it. */
export function isFree(section: Section | undefined, from: number, to: number): boolean {
  return (section?.cues ?? []).every(
    (cue) => cue.until <= from || cue.at >= to + (cue.kind === "now" ? BEFORE_MOMENT : 0),
  );
}

/**
 * What sounds around a time of a section, all in seconds from its press: its cues, and while it waits the signs
 * of life.
 */
export function soundingAt(
  section: Section,
  elapsed: number,
  { before, ahead }: { readonly before: number; readonly ahead: number },
): readonly OwnSound[] {
  const waiting = Math.floor((elapsed + ahead - waitsFrom(section)) / WAITING_CONFIRM);
  const sign = waitsFrom(section) + waiting * WAITING_CONFIRM;
  const signs = waiting < 1 ? [] : [{ from: sign, to: sign + alive.until, kind: "tone" } as const];
  const cues = section.cues
    .filter(({ channel }) => channel !== "buzz")
    .map(({ at, until, channel }) => ({
      from: at,
      to: until,
      kind: channel === "voice" ? ("voice" as const) : ("tone" as const),
    }));
  return [...cues, ...signs].filter(
    ({ from, to }) => to > elapsed - before && from < elapsed + ahead,
  );
}

/** Words of a section that begin in [from, to), seconds from its press, and are not in a track. */
export function lacking(
  { laid, first }: Lying,
  index: number,
  { cues }: Section,
  from: number,
  to: number,
): readonly Cue[] {
  const held = (laid.sections[index - first]?.pieces ?? []).flatMap(({ sounds }) => sounds);
  const isHeld = (words: Cue) =>
    held.some(({ cue }) => cue.at === words.at && cue.sounds.join() === words.sounds.join());
  return cues.filter(
    (cue) => cue.channel === "voice" && cue.at >= from && cue.at < to && !isHeld(cue),
  );
}

/** Whether two layouts sound the same from a section's so many seconds on. */
export function alike(loaded: Lying, other: Lying, index: number, elapsed: number): boolean {
  return other.laid.sections.every((section, i) => {
    const place = other.first + i;
    if (place < index) return true;
    const known = loaded.laid.sections[place - loaded.first];
    if (known === undefined || Math.abs(known.waits - section.waits) > 1e-6) return false;
    const from = place > index ? 0 : Math.floor(elapsed / other.laid.pieceSeconds);
    return section.pieces.every((piece, k) => k < from || piece.key === known.pieces[k]?.key);
  });
}
