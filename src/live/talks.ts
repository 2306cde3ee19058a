// A talk (rest.ts) that is on: which option or line is told, what a press makes of it, what comes next. The run
// says it; what is taken in the end is done by whoever opened it. Apart from the guide, which has other states.

import type { Telling } from "./answers.ts";
import { type Act, CHOOSING, LASTING, type Talk, wordingsOf } from "./rest.ts";
import type { Run } from "./run-shape.ts";
import type { Teller } from "./teller.ts";
import { PAUSE } from "./where.ts";
import { answerTo } from "./wrong.ts";

interface TalkParts {
  readonly run: Run;
  readonly script: Teller["script"];
  /** Seconds on the steady clock. */
  readonly steady: () => number;
  /** @param asked when the hold began that asked for it. */
  readonly act: (act: Act, asked: number) => void;
}

export interface Talks {
  readonly isOn: () => boolean;
  open(talk: Talk, asked: number): void;
  /** A press while one is on. */
  press(at: number): void;
  /** The press before was one of two. @returns whether it confirmed a line, which is then told again. */
  tellAgain(): boolean;
  leave(): void;
  /** Comes about every second: options follow one another. */
  look(): void;
}

type List = Talk & { readonly kind: "list" };
type Lines = Talk & { readonly kind: "lines" };

interface AtLine {
  readonly kind: "lines";
  readonly lines: Lines;
  readonly place: number;
  readonly asked: number;
}

type State =
  | { readonly kind: "none" }
  | {
      readonly kind: "list";
      readonly list: List;
      readonly place: number;
      readonly asked: number;
      /** Until the option's words begin, the one before is what was told last. */
      readonly told: Telling | null;
      /** From the end of its words to the next option, seconds. */
      readonly pause: number;
    }
  | AtLine;

const none: State = { kind: "none" };

export function openTalks({ run, script, steady, act }: TalkParts): Talks {
  let state: State = none;
  /** The line that the press before confirmed. */
  let confirmed: AtLine | null = null;

  function say(key: string): Telling | null {
    run.fallSilent();
    return run.say(wordingsOf(key, script));
  }

  /** One sentence after another, each where there is room. @returns when the last is over, seconds from now. */
  function tell(keys: readonly string[]): number {
    run.fallSilent();
    let over = 0;
    for (const key of keys) {
      const told = run.say(wordingsOf(key, script), over + PAUSE);
      if (told !== null) over = told.until() - steady();
    }
    return over;
  }

  function offer(list: List, asked: number, place = 0): void {
    const option = list.of[place];
    if (option === undefined) {
      state = none;
      say("rest.end");
      return;
    }
    const told = say(option.says);
    const isLast = place === list.of.length - 1;
    const pause = isLast && list.lasts === true ? LASTING : CHOOSING;
    state = { kind: "list", list, place, asked, told, pause };
  }

  function follow(at: AtLine): void {
    const key = at.lines.keys[at.place];
    if (key === undefined) {
      open(at.lines.behind, at.asked);
      return;
    }
    state = at;
    say(key);
  }

  function open(talk: Talk, asked: number): void {
    state = none;
    switch (talk.kind) {
      case "act":
        run.fallSilent();
        act(talk.act, asked);
        return;
      case "list":
        offer(talk, asked);
        return;
      case "lines":
        follow({ kind: "lines", lines: talk, place: 0, asked });
        return;
      case "told":
        tell(talk.keys);
        return;
      case "wrong": {
        const here = run.position();
        run.wrong(talk.wrong);
        const over = tell(answerTo(talk.wrong, here));
        if (talk.wrong === "clock" && here.kind === "timed") run.where(over + PAUSE);
      }
    }
  }

  function leave(): void {
    state = none;
    confirmed = null;
    run.fallSilent();
  }

  return {
    isOn: () => state.kind !== "none",
    open,
    press(at) {
      confirmed = null;
      if (state.kind === "list") {
        const { list, place, told, asked } = state;
        const option = list.of[told !== null && at < told.at() ? place - 1 : place];
        if (option !== undefined) open(option.takes, asked);
      } else if (state.kind === "lines") {
        confirmed = state;
        follow({ ...state, place: state.place + 1 });
      }
    },
    tellAgain() {
      if (confirmed === null) return false;
      follow(confirmed);
      confirmed = null;
      return true;
    },
    leave,
    look() {
      if (state.kind !== "list") return;
      const { list, place, asked, told, pause } = state;
      // News may have found room behind the option's words: they are heard out too.
      if (steady() < Math.max(told?.until() ?? 0, run.answeredAt()) + pause) return;
      const next = place + 1;
      offer(list, asked, list.lasts === true && next === list.of.length ? 0 : next);
    },
  };
}
