// What the hands mean in, what the run does out: the one grammar of presses over all that can be asked of it.
// Once goes on, or says where we are; twice says where we are; three times, hush or speak; held, the rest by ear.
import { forms } from "../script/script.ts";
import { type Temperature, toCelsius } from "../units/temperature.ts";
import { lessThan } from "./detail.ts";
import type { Gesture } from "./grammar.ts";
import type { Way } from "./journal.ts";
import { nearestStep, stepped, temperatureWordings } from "./reading.ts";
import { CHOOSING, isDeveloping, type Option, optionsAt, optionWordings } from "./rest.ts";
import type { Run } from "./run-shape.ts";
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
  /** Comes about every second: options follow one another. */
  look(): void;
}

type State =
  | { readonly kind: "pressing" }
  | {
      readonly kind: "choosing";
      readonly options: readonly Option[];
      /** When the hold began that asked for them. */
      readonly asked: number;
      /** When its words begin; until then the one before is what was told last. */
      readonly from: number;
      readonly before: Option | null;
      /** When the next one comes. */
      readonly until: number;
    }
  | { readonly kind: "reading"; readonly temperature: Temperature };

export function openGuide({ run, script, steady, ...parts }: GuideParts): Guide {
  let state: State = { kind: "pressing" };
  /** Whether the press before began a section. */
  let started = false;
  const sentence = (key: string): Wordings => forms.map((form) => script.say(key, form));

  function say(wordings: Wordings): { readonly from: number; readonly until: number } {
    run.fallSilent();
    return run.say(wordings) ?? { from: 0, until: 0 };
  }

  function offer(options: readonly Option[], asked: number, before: Option | null = null): void {
    const [option] = options;
    if (option === undefined) {
      state = { kind: "pressing" };
      say(sentence("rest.end"));
      return;
    }
    const { from, until } = say(optionWordings(option, script));
    const now = steady();
    state = {
      kind: "choosing",
      options,
      asked,
      from: now + from,
      before,
      until: now + until + CHOOSING,
    };
  }

  function choose(option: Option, asked: number): void {
    state = { kind: "pressing" };
    started = false;
    switch (option) {
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
        parts.go(option);
        return;
      case "leave":
        offer(["leave.sure"], asked);
        return;
      case "leave.sure":
        parts.leave();
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
    if (state.kind !== "pressing" && nth > 1) {
      state = { kind: "pressing" };
      run.fallSilent();
    } else if (state.kind === "choosing") {
      const option = at < state.from ? state.before : state.options[0];
      if (option != null) choose(option, state.asked);
    } else if (state.kind === "reading") {
      const { temperature } = state;
      state = { kind: "pressing" };
      run.fallSilent();
      run.read(temperature);
    } else if (nth === 1) {
      started = run.goOn(at);
      if (!started) run.where();
    } else if (nth === 2) {
      // The start that its first press made never was.
      if (started) run.takeBack(at);
      started = false;
      run.fallSilent();
      run.where();
    } else hushOrSpeak();
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
    if (state.kind !== "pressing") {
      state = { kind: "pressing" };
      run.fallSilent();
    } else if (!isTakenBack(at))
      offer(optionsAt(run.position(), run.detail(), parts.way(), parts.ways), at);
  }

  return {
    does(gesture) {
      if (gesture.kind === "hold") hold(gesture.at);
      else press(gesture.nth, gesture.at);
    },
    step(steps) {
      settle();
      if (state.kind === "reading") readAt(stepped(state.temperature, steps));
      else if (isDeveloping(run.position())) {
        readAt(stepped(parts.temperature(), steps));
      } else return false;
      return true;
    },
    takeBack,
    hushOrSpeak,
    look() {
      if (state.kind !== "choosing" || steady() < state.until) return;
      const [told = null, ...options] = state.options;
      offer(options, state.asked, told);
    },
  };
}
