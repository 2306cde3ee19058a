// A run's journal: what happened, in order, each entry with its time by the clocks. It is only ever added
// to, and it is all there is: where a run stands follows from it (position.ts), by whoever reads it.
// Past 200 lines because all that can happen, and how its time is counted, stands in one place.
import { type Happened, type HappenedIn, nothingHappened } from "../process/happened.ts";
import type { Wrong } from "../process/wrongs.ts";
import type { Timeline } from "../timeline/score.ts";
import type { Temperature } from "../units/temperature.ts";
import { type Stamp, stampOf } from "./clocks.ts";
import type { Detail } from "./detail.ts";

export type Reader = "person" | "probe";
export type Way = "room" | "pocket";

/** How the time was lost in which a run was not heard. */
type Lost = "closed" | "frozen" | "asleep" | "silent";

export type Happening =
  /** A press began a section. */
  | { readonly kind: "pressed"; readonly section: string }
  /** A stay's pour-in began now, its tank was empty now: so many seconds later than planned, or sooner. */
  | {
      readonly kind: "poured" | "emptied";
      readonly section: string;
      readonly stay: number;
      readonly bath: string;
      readonly by: number;
      /** It was told of so many seconds later than it came about. */
      readonly told: number;
    }
  /** A thermometer in the tank, read by a person or by itself. */
  | {
      readonly kind: "read";
      readonly section: string;
      readonly temperature: Temperature;
      readonly by: Reader;
      /** When its bath was to end before that, seconds from the press; not kept by older versions. */
      readonly stood?: number;
    }
  /** In a rehearsal: the hands begin to pour, or to move the tank (judged.ts). */
  | { readonly kind: "marked"; readonly section: string }
  /** Something was told of as wrong, and answered. */
  | { readonly kind: "wrong"; readonly wrong: Wrong }
  /** The last change that could be taken back never was. */
  | { readonly kind: "taken-back" }
  /** The page was seen alive here, before it was not. */
  | { readonly kind: "alive" }
  /** It is heard again; `lost`: seconds in which it was not. */
  | { readonly kind: "woke"; readonly from: Lost; readonly lost: number }
  /** The device's wall clock was set, by so many seconds. */
  | { readonly kind: "clock-set"; readonly by: number }
  | { readonly kind: "hushed"; readonly on: boolean }
  | { readonly kind: "detail"; readonly detail: Detail }
  | { readonly kind: "way"; readonly way: Way }
  | { readonly kind: "ended"; readonly how: "done" | "left" };

export type Entry = Stamp & Happening;

export interface Journal {
  /** As compiled for what happened so far. */
  readonly timeline: Timeline;
  readonly entries: readonly Entry[];
}

/** An entry that was taken back keeps its place and its time: the clocks go by it all the same. */
type Standing = Entry | (Stamp & { readonly kind: "void" });

/** What can be taken back: a change of where the run stands that a person made. */
const changes = ["pressed", "marked", "poured", "emptied", "read"] as const;

const isChange = (entry: Standing): boolean =>
  changes.some((kind) => kind === entry.kind) && !(entry.kind === "read" && entry.by === "probe");

/** The entries as they stand, what was taken back made void. */
export function standing(entries: readonly Entry[]): readonly Standing[] {
  const all: Standing[] = [];
  for (const entry of entries) {
    all.push(entry);
    if (entry.kind !== "taken-back") continue;
    const last = all.findLastIndex(isChange);
    const voided = all[last];
    if (voided !== undefined) all[last] = { ...stampOf(voided), kind: "void" };
  }
  return all;
}

/** The last change that stands, if any: what taking back would undo. */
export function lastChange(entries: readonly Entry[]): Entry | null {
  const last = standing(entries).findLast(isChange);
  return last === undefined || last.kind === "void" ? null : last;
}

/** A change can be taken back so long, seconds. */
const TAKEN_BACK_WITHIN = 3;

/** Whether, at a time, there is a change that can still be taken back. */
export function canBeTakenBack(entries: readonly Entry[], at: Stamp): boolean {
  const change = lastChange(entries);
  if (change === null || change.life !== at.life) return false;
  // Heard by ear, a change is told of some seconds after it came about.
  const told = change.kind === "poured" || change.kind === "emptied" ? change.told : 0;
  return at.steady - change.steady - told <= TAKEN_BACK_WITHIN;
}

/**
 * Seconds of the run at a time, counted from its first entry. Within a page's life by the steady clock, and
 * by what it lost in sleep; from one life to the next by the wall clock, which is all that they share.
 * Where that was set back meanwhile, no time is counted.
 */
export function timeOf(entries: readonly Entry[], at: Stamp): number {
  let time = 0;
  let last: Entry | undefined;
  for (const entry of entries) {
    if (last !== undefined) time += between(last, entry);
    time += lostAsleep(entry);
    last = entry;
  }
  return last === undefined ? 0 : time + between(last, at);
}

const lostAsleep = (entry: Entry): number =>
  entry.kind === "woke" && entry.from === "asleep" ? entry.lost : 0;

function between(from: Stamp, to: Stamp): number {
  if (from.life === to.life) return to.steady - from.steady;
  return Math.max(0, (to.wall - from.wall) / 1000);
}

/** The entries as they stand, each with its time in the run, seconds. */
export function timed(
  entries: readonly Entry[],
): readonly { readonly entry: Standing; readonly at: number }[] {
  let time = 0;
  return standing(entries).map((entry, i) => {
    const before = entries[i - 1];
    if (before !== undefined) time += lostAsleep(before) + between(before, entry);
    return { entry, at: time };
  });
}

interface PressedFor {
  readonly section: string;
  /** Seconds of the run. */
  readonly at: number;
}

/** The section that was pressed for last, of those that stand; null before the first. */
export function pressedLast(entries: readonly Entry[]): PressedFor | null {
  return pressesOf(entries).at(-1) ?? null;
}

/** Every press that stands. */
export function pressesOf(entries: readonly Entry[]): readonly PressedFor[] {
  return timed(entries).flatMap(({ entry, at }) =>
    entry.kind === "pressed" ? [{ section: entry.section, at }] : [],
  );
}

/** A thermometer reading that stands, with its time, seconds from its section's press. */
export interface Read {
  readonly section: string;
  readonly at: number;
  readonly temperature: Temperature;
}

export function readingsIn(entries: readonly Entry[]): readonly Read[] {
  let pressedAt = 0;
  return timed(entries).flatMap(({ entry, at }) => {
    if (entry.kind === "pressed") pressedAt = at;
    if (entry.kind !== "read") return [];
    return [{ section: entry.section, at: exact(at - pressedAt), temperature: entry.temperature }];
  });
}

/** What went otherwise than planned, by section; a reading is of the stay that the thermometer was in. */
export function happenedIn(entries: readonly Entry[]): HappenedIn {
  const all: Record<string, Happened> = {};
  let pressedAt = 0;
  for (const { entry, at } of timed(entries)) {
    if (entry.kind === "pressed") pressedAt = at;
    if (entry.kind !== "poured" && entry.kind !== "emptied" && entry.kind !== "read") continue;
    const so = all[entry.section] ?? nothingHappened;
    all[entry.section] = changed(so, entry, exact(at - pressedAt));
  }
  return all;
}

function changed(so: Happened, entry: Entry, at: number): Happened {
  switch (entry.kind) {
    case "poured":
      return { ...toldOf(so, entry, at), pouredIn: { ...so.pouredIn, [entry.stay]: at } };
    case "emptied":
      return { ...toldOf(so, entry, at), emptied: { ...so.emptied, [entry.stay]: at } };
    case "read":
      return {
        ...so,
        learnt: { ...so.learnt, 0: at },
        stood: entry.stood === undefined ? {} : { 0: entry.stood },
      };
    default:
      return so;
  }
}

function toldOf(
  so: Happened,
  { stay, told }: { readonly stay: number; readonly told: number },
  at: number,
): Happened {
  return { ...so, told: { ...so.told, [stay]: exact(at + told) } };
}

/** Times are kept to the microsecond, as the moments are. */
const exact = (seconds: number): number => Math.round(seconds * 1e6) / 1e6;

/** What was said last of one kind, if anything was. */
export function lastOf<Kind extends Entry["kind"]>(
  entries: readonly Entry[],
  kind: Kind,
): Extract<Entry, { readonly kind: Kind }> | undefined {
  return entries.findLast(
    (entry): entry is Extract<Entry, { readonly kind: Kind }> => entry.kind === kind,
  );
}
