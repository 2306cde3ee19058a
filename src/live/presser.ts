// Contacts from wherever they come, as they happen, in; gestures out, each as soon as it is certain. The one
// timer here decides nothing late: it stands for the time it was set for, and a contact's own time is what counts.
import {
  type Contact,
  contacted,
  type Gesture,
  isContactsOwn,
  nextLook,
  restingHand,
} from "./grammar.ts";

/** Times are seconds on the steady clock. */
export interface Presser {
  down(id: string, at: number): void;
  up(id: string, at: number): void;
  /** Called off by the browser, or by another finger: it never was. */
  cancel(id: string, at: number): void;
  /** From what knows no letting go: a headset's button, assistive technology. */
  tap(at: number): void;
  /** A tap that was heard; of a finger on the screen, of which the page knows already, nothing comes. */
  knock(at: number): void;
}

interface PresserParts {
  /** At once, so that the hand knows. */
  readonly felt: () => void;
  readonly does: (gesture: Exclude<Gesture, { readonly kind: "felt" }>) => void;
  readonly steady: () => number;
  readonly after: (seconds: number, act: () => void) => () => void;
}

export function openPresser({ felt, does, steady, after }: PresserParts): Presser {
  let hand = restingHand;
  let callOff = () => {};

  function met(contact: Contact): void {
    const result = contacted(hand, contact);
    hand = result.hand;
    for (const gesture of result.gestures) {
      if (gesture.kind === "felt") felt();
      else does(gesture);
    }
    callOff();
    const next = nextLook(hand);
    if (next === null) return;
    const wait = Math.max(0.005, next - steady());
    callOff = after(wait, () => met({ kind: "time", at: next }));
  }

  function tap(at: number): void {
    met({ kind: "down", id: "tap", at });
    met({ kind: "up", id: "tap", at });
  }

  return {
    down: (id, at) => met({ kind: "down", id, at }),
    up: (id, at) => met({ kind: "up", id, at }),
    cancel: (id, at) => met({ kind: "void", id, at }),
    tap,
    knock(at) {
      if (!isContactsOwn(hand, at)) tap(at);
    },
  };
}

/** The same for a run: what comes from no screen is no command where nothing is heard. It asks for sound, as a finger does. */
export function onlyWhileHeard(
  presser: Presser,
  isHeard: () => boolean,
  wake: () => void,
): Presser {
  const heard = (act: (at: number) => void) => (at: number) => (isHeard() ? act(at) : wake());
  return { ...presser, tap: heard(presser.tap), knock: heard(presser.knock) };
}
