// Contacts in (a finger, a key, a knock: down, up, called off), what they mean out. One grammar for every way
// to press: once, twice, three times, or held. Pure, with time as an argument, so that every order of contacts
// can be tried; what the meanings do is the run's affair.

export type Contact =
  | { readonly kind: "down" | "up" | "void"; readonly id: string; readonly at: number }
  /** Nothing but the time, seconds. */
  | { readonly kind: "time"; readonly at: number };

export type Gesture =
  /** It was felt, and is to be answered at once. */
  | { readonly kind: "felt" }
  /** Pressed for the first, second or third time in a row; `at`: when it went down. */
  | { readonly kind: "press"; readonly nth: 1 | 2 | 3; readonly at: number }
  | { readonly kind: "hold"; readonly at: number };

export interface Hand {
  readonly down: { readonly id: string; readonly at: number; readonly felt: boolean } | null;
  /** Held already, or one of several at once: until they are all up they mean nothing. */
  readonly ignored: readonly Ignored[];
  readonly lastUp: number;
  readonly last: { readonly at: number; readonly nth: number } | null;
}

interface Ignored {
  readonly id: string;
  /** When it went down, seconds. */
  readonly at: number;
}

export const restingHand: Hand = {
  down: null,
  ignored: [],
  lastUp: Number.NEGATIVE_INFINITY,
  last: null,
};

/** A contact that is not joined by another within this, seconds, is one finger, and is answered. */
const FELT = 0.05;
/** Wet fingers bounce: a contact so soon after another, seconds, is the same one. */
export const BOUNCE = 0.08;
/** From press to press in a row, seconds. */
export const IN_A_ROW = 0.45;
const HOLD = 0.75;
/** Whatever was never let go of is forgotten, seconds: a window may miss a finger's leaving. */
const FORGOTTEN = 10;

/** A finger is heard on what it touches: a knock so soon before or after a contact, seconds, is that contact. */
const HEARD_AS_KNOCK = 0.1;

/** Sums of seconds may miss a bound by this much and still keep it. */
const FUZZ = 1e-9;

interface Contacted {
  readonly hand: Hand;
  readonly gestures: readonly Gesture[];
}

export function contacted(hand: Hand, contact: Contact): Contacted {
  switch (contact.kind) {
    case "down":
      return wentDown(hand, contact.id, contact.at);
    case "up":
      return wentUp(hand, contact.id, contact.at);
    case "void":
      return { hand: without(hand, contact.id, contact.at), gestures: [] };
    case "time":
      return passed(hand, contact.at);
  }
}

/** When the hand is to be looked at again, seconds; null where nothing is down. */
export function nextLook({ down }: Hand): number | null {
  if (down === null) return null;
  return down.at + (down.felt ? HOLD : FELT);
}

/** Whether a knock at a time was a contact that was met, or is being made. */
export function isContactsOwn(hand: Hand, at: number): boolean {
  const near = (time: number) => Math.abs(at - time) < HEARD_AS_KNOCK;
  const isOn = (each: Ignored) => at - each.at <= FORGOTTEN;
  if (hand.ignored.some(isOn) || (hand.down !== null && isOn(hand.down))) return true;
  return near(hand.lastUp) || (hand.last !== null && near(hand.last.at));
}

function wentDown(hand: Hand, id: string, at: number): Contacted {
  const fresh = (each: Ignored) => at - each.at <= FORGOTTEN;
  const down = { id, at };
  const other = hand.down !== null && fresh(hand.down) ? hand.down : null;
  const ignored = hand.ignored.filter((each) => each.id !== id && fresh(each));
  if ((other !== null && other.id !== id) || ignored.length > 0) {
    const all = [...ignored, ...(other === null || other.id === id ? [] : [other]), down];
    return { hand: { ...hand, down: null, ignored: all }, gestures: [] };
  }
  if (at - hand.lastUp < BOUNCE) {
    return { hand: { ...hand, down: null, ignored: [down] }, gestures: [] };
  }
  return { hand: { ...hand, ignored: [], down: { ...down, felt: false } }, gestures: [] };
}

function wentUp(hand: Hand, id: string, at: number): Contacted {
  const { hand: before, gestures } = passed(hand, at);
  const { down, last } = before;
  if (down === null || down.id !== id) return { hand: without(before, id, at), gestures };
  const felt: readonly Gesture[] = down.felt ? gestures : [{ kind: "felt" }];
  const nth = last !== null && down.at - last.at < IN_A_ROW ? last.nth + 1 : 1;
  const up: Hand = { ...before, down: null, lastUp: at, last: { at: down.at, nth } };
  if (nth !== 1 && nth !== 2 && nth !== 3) return { hand: up, gestures: felt };
  return { hand: up, gestures: [...felt, { kind: "press", nth, at: down.at }] };
}

function passed(hand: Hand, at: number): Contacted {
  const { down } = hand;
  if (down === null || at - down.at < FELT - FUZZ) return { hand, gestures: [] };
  const felt: readonly Gesture[] = down.felt ? [] : [{ kind: "felt" }];
  if (at - down.at < HOLD - FUZZ)
    return { hand: { ...hand, down: { ...down, felt: true } }, gestures: felt };
  return {
    hand: { ...hand, down: null, ignored: [down], last: null },
    gestures: [...felt, { kind: "hold", at: down.at }],
  };
}

function without(hand: Hand, id: string, at: number): Hand {
  const was = hand.down?.id === id || hand.ignored.some((each) => each.id === id);
  return {
    ...hand,
    down: hand.down?.id === id ? null : hand.down,
    ignored: hand.ignored.filter((each) => each.id !== id),
    lastUp: was ? at : hand.lastUp,
  };
}
