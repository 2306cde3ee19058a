// A talk (rest.ts) that is on: which option or line is told, what a press makes of it, what comes next. The run
// says it; what is taken in the end is done by whoever opened it. Apart from the guide, which has other states.

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
      /** When the option's words begin; until then the one before is what was told last. */
      readonly from: number;
      /** When the next one comes. */
      readonly until: number;
    }
  | AtLine;

const none: State = { kind: "none" };

export function openTalks({ run, script, steady, act }: TalkParts): Talks {
  let state: State = none;
  /** The line that the press before confirmed. */
  let confirmed: AtLine | null = null;

  function say(key: string): { readonly from: number; readonly until: number } {
    run.fallSilent();
    return run.say(wordingsOf(key, script)) ?? { from: 0, until: 0 };
  }

  /** One sentence after another, each where there is room. @returns when the last is over, seconds from now. */
  function tell(keys: readonly string[]): number {
    run.fallSilent();
    let over = 0;
    for (const key of keys) over = run.say(wordingsOf(key, script), over + PAUSE)?.until ?? over;
    return over;
  }

  function offer(list: List, asked: number, place = 0): void {
    const option = list.of[place];
    if (option === undefined) {
      state = none;
      say("rest.end");
      return;
    }
    const { from, until } = say(option.says);
    const isLast = place === list.of.length - 1;
    const pause = isLast && list.lasts === true ? LASTING : CHOOSING;
    const now = steady();
    state = { kind: "list", list, place, asked, from: now + from, until: now + until + pause };
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
        const { list, place, from, asked } = state;
        const option = list.of[at < from ? place - 1 : place];
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
      if (state.kind !== "list" || steady() < state.until) return;
      const { list, place, asked } = state;
      const next = place + 1;
      offer(list, asked, list.lasts === true && next === list.of.length ? 0 : next);
    },
  };
}
