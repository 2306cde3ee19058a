// Keys pressed on a pedal, a page turner or any other button in, what is learnt of it out: which keys it
// sends, and whether it can be held. Pure, with time as an argument, so that odd makes can be tried.

import type { Presser } from "./presser.ts";

export interface Pedal {
  /** The key's place, as browsers name it; empty where the pedal sends none. */
  readonly code: string;
  /** What the key means; it is what counts where there is no code. */
  readonly key: string;
  /** False of one that lets go by itself, however long it is kept down: it can only be tapped. */
  readonly holds: boolean;
}

/** What of a keyboard event a pedal is known by. */
export interface PedalKey {
  readonly code: string;
  readonly key: string;
}

export interface KeyMoment extends PedalKey {
  readonly kind: "down" | "up";
  /** Sent by itself while it is kept down. */
  readonly repeat: boolean;
  /** Seconds. */
  readonly at: number;
}

export type WhyNotPedal =
  /** By them one moves about the page and out of it; whoever does so by keys could not any more. */
  | "moves"
  /** They mean nothing but with another key. */
  | "modifier"
  /** It has no name by which it could be told from others. */
  | "nameless";

interface Pressed extends PedalKey {
  readonly downAt: number;
  /** Null while it is down, or where it never tells. */
  readonly upAt: number | null;
}

export interface Learning {
  readonly presses: readonly Pressed[];
  /** Why the last key that was pressed cannot be learnt. */
  readonly refused: WhyNotPedal | null;
  /** When anything was last pressed or let go of, seconds. */
  readonly last: number;
}

/** It was asked to be kept down for a second. */
const HELD = 0.5;
/** So long after the last press has ended, seconds, nothing more is to be expected of it. */
const QUIET = 0.8;
/** As long as that down without a word, seconds: it never tells of its letting go. */
const NEVER_UP = 3;
const PRESSES = 2;

const moves: readonly string[] = ["Tab", "Escape"];
const modifiers: readonly string[] = [
  "Shift",
  "Control",
  "Alt",
  "AltGraph",
  "Meta",
  "Fn",
  "CapsLock",
  "NumLock",
];

export const learningFrom = (at: number): Learning => ({ presses: [], refused: null, last: at });

export function whyNot(key: PedalKey): WhyNotPedal | null {
  if (moves.includes(key.key)) return "moves";
  if (modifiers.includes(key.key)) return "modifier";
  return isNamed(key.code) || isNamed(key.key) ? null : "nameless";
}

export function learnt(learning: Learning, moment: KeyMoment): Learning {
  const { at } = moment;
  if (moment.kind === "up") {
    const presses = learning.presses.map((press) =>
      press.upAt === null && isSame(press, moment) ? { ...press, upAt: at } : press,
    );
    return { ...learning, presses, last: at };
  }
  if (moment.repeat) return { ...learning, last: at };
  const refused = whyNot(moment);
  if (refused !== null) return { ...learning, refused, last: at };
  const press = { code: named(moment.code), key: moment.key, downAt: at, upAt: null };
  return { presses: [...learning.presses, press], refused: null, last: at };
}

/** Whether enough has been pressed, and all of it is over. */
export function isLearnt({ presses, last }: Learning, at: number): boolean {
  if (presses.length < PRESSES) return false;
  const isDown = presses.at(-1)?.upAt === null;
  return at - last >= (isDown ? NEVER_UP : QUIET);
}

/** One for each key that was pressed, in the order of their first presses. */
export function pedalsIn({ presses }: Learning): readonly Pedal[] {
  const firsts = presses.filter(
    (press, i) => presses.findIndex((each) => isSame(each, press)) === i,
  );
  return firsts.map((first) => ({
    code: first.code,
    key: first.key,
    holds: presses.some(
      (press) => isSame(first, press) && press.upAt !== null && press.upAt - press.downAt >= HELD,
    ),
  }));
}

/** The pedal that a key comes from, if it was learnt. */
export const pedalOf = (pedals: readonly Pedal[], key: PedalKey): Pedal | null =>
  pedals.find((pedal) => isSame(pedal, key)) ?? null;

/** Whether a key is a press whatever else it would be, wherever the focus is. */
export const isLearned = (pedals: readonly Pedal[], key: PedalKey): boolean =>
  pedalOf(pedals, key) !== null;

/**
 * Has a learnt key press. One that lets go by itself counts as it goes down: its coming up says nothing.
 * @returns whether the key was a learnt one, and means nothing else.
 */
export function pressedByPedal(
  pedals: readonly Pedal[],
  presser: Pick<Presser, "down" | "up" | "tap">,
  moment: KeyMoment,
): boolean {
  const pedal = pedalOf(pedals, moment);
  if (pedal === null) return false;
  if (moment.repeat) return true;
  const id = `pedal ${pedal.code} ${pedal.key}`;
  if (moment.kind === "up") {
    if (pedal.holds) presser.up(id, moment.at);
  } else if (pedal.holds) presser.down(id, moment.at);
  else presser.tap(moment.at);
  return true;
}

function isSame(a: PedalKey, b: PedalKey): boolean {
  const code = named(a.code);
  return code === named(b.code) && (code !== "" || a.key === b.key);
}

const isNamed = (name: string): boolean => name !== "" && name !== "Unidentified";
const named = (code: string): string => (isNamed(code) ? code : "");
