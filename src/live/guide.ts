// What the hands mean in, what the run does out: the one grammar of presses over all that can be asked of it.
// Once goes on, or says where we are; twice says where we are; three times, hush or speak; held, the rest by ear.
import { type Temperature, toCelsius } from "../units/temperature.ts";
import { lessThan } from "./detail.ts";
import type { Gesture } from "./grammar.ts";
import { lastChange, type Way } from "./journal.ts";
import { nearestStep, stepped, temperatureWordings } from "./reading.ts";
import { type Act, isDeveloping, restAt, wordingsOf, wrongList } from "./rest.ts";
import type { Run } from "./run-shape.ts";
import { openTalks } from "./talks.ts";
import type { Teller } from "./teller.ts";
import { type Wordings, whereWordings } from "./where.ts";

export interface GuideParts {
  readonly run: Run;
  readonly script: Teller["script"];
  /** Seconds on the steady clock. */
  readonly steady: () => number;
  /** The bath's temperature as far as anyone knows, in the unit that it is written in. */
  readonly temperature: () => Temperature;
  readonly way: () => Way;
  /** The ways that can be gone here. */
  readonly ways: readonly Way[];
  readonly go: (way: Way) => void;
  readonly leave: () => void;
}

export interface Guide {
  does(gesture: Exclude<Gesture, { readonly kind: "felt" }>): void;
  /** A reading goes up or down by steps; false where none is wanted, and an arrow is a press. */
  step(steps: number): boolean;
  takeBack(): void;
  hushOrSpeak(): void;
  /** Tells what may be wrong, one after another, to be chosen from. */
  wrong(): void;
  /** Comes about every second: options follow one another. */
  look(): void;
}

type State =
  | { readonly kind: "pressing" }
  | { readonly kind: "reading"; readonly temperature: Temperature };

export function openGuide({ run, script, steady, ...parts }: GuideParts): Guide {
  let state: State = { kind: "pressing" };
  /** Undoes what the first press of a row changed, and tells whether it said so. */
  let undo = (_at: number): boolean => false;
  const sentence = (key: string): Wordings => wordingsOf(key, script);
  const talks = openTalks({ run, script, steady, act });

  function say(wordings: Wordings): void {
    run.fallSilent();
    run.say(wordings);
  }

  function act(name: Act, asked: number): void {
    switch (name) {
      case "poured":
        run.poured(asked);
        return;
      case "emptied":
        run.emptied(asked);
        return;
      case "reading":
        readAt(nearestStep(parts.temperature(), toCelsius(parts.temperature())), true);
        return;
      case "less":
      case "more":
        run.sayAt(lessThan[run.detail()]);
        return;
      case "pocket":
      case "room":
        parts.go(name);
        return;
      case "leave":
        parts.leave();
        return;
      case "again":
        run.where();
    }
  }

  function readAt(temperature: Temperature, first = false): void {
    state = { kind: "reading", temperature };
    const told = temperatureWordings(temperature, script);
    const steps = sentence("read.steps");
    say(first ? told.map((phrases, i) => [...phrases, ...(steps[i] ?? [])]) : told);
  }

  /** A reading that nobody finished in its bath is over with it. */
  function settle(): void {
    if (state.kind === "reading" && !isDeveloping(run.position())) state = { kind: "pressing" };
  }

  function press(nth: 1 | 2 | 3, at: number): void {
    settle();
    if (nth === 2 && talks.tellAgain()) return;
    if (nth > 1 && (talks.isOn() || state.kind !== "pressing")) {
      stop();
    } else if (nth === 1) {
      undo = undoing(() => pressOnce(at));
    } else if (nth === 2) {
      // What its first press began, marked or chose never was.
      const isTold = undo(at);
      undo = () => false;
      if (isTold) return;
      run.fallSilent();
      run.where();
    } else hushOrSpeak();
  }

  function pressOnce(at: number): void {
    if (talks.isOn()) talks.press(at);
    else if (state.kind === "reading") {
      const { temperature } = state;
      stop();
      run.read(temperature);
    } else if (!run.goOn(at) && !run.mark(at)) run.where();
  }

  /** @returns what undoes it: a choice was told of, and that it is taken back is, too. */
  function undoing(press: () => void): typeof undo {
    const before = lastChange(run.journal().entries);
    const detail = run.detail();
    press();
    const change = lastChange(run.journal().entries);
    return (at) => {
      if (run.detail() !== detail) run.sayAt(detail);
      if (change === before) return false;
      if (change?.kind !== "pressed" && change?.kind !== "marked") return isTakenBack(at);
      run.takeBack(at);
      return false;
    };
  }

  /** Whatever was asked is asked no more. */
  function stop(): void {
    state = { kind: "pressing" };
    talks.leave();
  }

  function hushOrSpeak(): void {
    run.fallSilent();
    run.hush(!run.isHushed());
    say(sentence(run.isHushed() ? "hush.on" : "hush.off"));
  }

  function isTakenBack(at: number): boolean {
    if (!run.takeBack(at)) return false;
    const where = whereWordings(run.position(), script);
    say(sentence("taken-back").map((phrases, i) => [...phrases, ...(where[i] ?? [])]));
    return true;
  }

  function takeBack(): void {
    if (!isTakenBack(steady())) say(sentence("taken-back.not"));
  }

  function hold(at: number): void {
    settle();
    if (talks.isOn() || state.kind !== "pressing") stop();
    else if (!isTakenBack(at)) {
      talks.open(restAt(run.position(), run.detail(), parts.way(), parts.ways, run.rehearses), at);
    }
  }

  return {
    does(gesture) {
      if (gesture.kind === "hold") hold(gesture.at);
      else press(gesture.nth, gesture.at);
    },
    step(steps) {
      settle();
      if (state.kind === "reading") readAt(stepped(state.temperature, steps));
      else if (!run.rehearses && isDeveloping(run.position())) {
        readAt(stepped(parts.temperature(), steps));
      } else return false;
      return true;
    },
    takeBack,
    hushOrSpeak,
    wrong() {
      stop();
      talks.open(wrongList(run.position()), steady());
    },
    look: talks.look,
  };
}
