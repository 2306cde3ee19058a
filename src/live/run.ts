// A timeline being run: presses in, sounds placed on the audio clock ahead of their time.
// Nothing sounds on a timer; the timer only looks ahead, and a late look costs nothing. Past 200 lines
// because all that can change what is placed must see what is placed.
import type { Script } from "../script/script.ts";
import type { Lengths } from "../timeline/lengths.ts";
import type { Cue, Timeline } from "../timeline/score.ts";
import { comingCues } from "./coming.ts";
import { followed } from "./follow.ts";
import { mayBeLate } from "./lateness.ts";
import { notBegun, type Position, positionOf } from "./position.ts";
import { type Pressing, pressed } from "./presses.ts";
import { answerOf, PAUSE, saidBefore } from "./where.ts";

/** The audio clock, and a way to place a cue's sound on it. */
export interface Player {
  /** Seconds on the audio clock. */
  now(): number;
  play(cue: Cue, at: number): { stop(): void };
  /** Sounds at once: the answer to a press. */
  answerPress(): void;
}

interface Pressed {
  readonly section: string;
  /** UTC, milliseconds since 1970. */
  readonly at: number;
}

export interface LiveRun {
  /** @param ago seconds since the finger came down: a busy page hears of a press late. */
  press(ago?: number): void;
  /** Says where we are and what comes next, whatever the run is at. */
  where(): void;
  /**
   * Goes on by the same worksheet compiled at another detail: the section that is on from here, the
   * others whole. What is being said is said to its end, and no moment moves.
   */
  follow(other: Timeline): void;
  position(): Position;
  /** When the section that is on was pressed for, seconds on the audio clock. */
  begunAt(): number;
  /** What was begun and when, for the record. */
  presses(): readonly Pressed[];
  close(): void;
}

export interface RunParts {
  readonly timeline: Timeline;
  readonly script: Script;
  readonly lengths: Lengths;
  readonly player: Player;
  /** Calls back about every second until the returned function is called. */
  readonly everySecond: (look: () => void) => () => void;
  readonly utc: () => number;
}

/** Sounds are placed this far ahead, seconds: far enough for any stall, and never thousands at once. */
const HORIZON = 40;
/** An answer begins no sooner than this after its press, seconds. */
const ANSWER_AFTER = 0.25;

interface Placed {
  readonly cue: Cue;
  readonly at: number;
  readonly until: number;
  readonly sound: { stop(): void };
}

export function openRun(parts: RunParts): LiveRun {
  const { script, lengths, player, everySecond, utc } = parts;
  let { timeline } = parts;
  let pressing: Pressing = { begun: notBegun, last: null };
  let placed: readonly Placed[] = [];
  /** Cues up to here, in seconds on the audio clock, have been placed: `[…, placedTo)`. */
  let placedTo = 0;
  let log: readonly Pressed[] = [];

  const position = (): Position => positionOf(timeline, pressing.begun, player.now());
  const sectionNow = () => timeline.sections[pressing.begun.index];

  function place(cue: Cue, at: number): void {
    const until = at + cue.until - cue.at;
    placed = [...placed, { cue, at, until, sound: player.play(cue, at) }];
  }

  function silence(which: (placed: Placed) => boolean): void {
    for (const each of placed) if (which(each)) each.sound.stop();
    placed = placed.filter((each) => !which(each));
  }

  /** Places every cue that starts in `[placedTo, now + HORIZON)`. */
  function look(): void {
    const now = player.now();
    const to = now + HORIZON;
    const section = sectionNow();
    const coming =
      section === undefined ? [] : comingCues(section, pressing.begun.pressedAt, placedTo, to);
    for (const { cue, at } of coming) {
      if (at >= now - mayBeLate[cue.kind]) place(cue, Math.max(at, now));
    }
    placedTo = to;
    placed = placed.filter((each) => each.until > now);
  }

  function press(ago = 0): void {
    const at = player.now() - ago;
    const now = position();
    if (now.kind === "over") {
      where();
      return;
    }
    const result = pressed(pressing, at, now.kind === "waiting");
    if (result.meaning === "nothing") return;
    player.answerPress();
    const takenBack = result.pressing.begun.index < pressing.begun.index;
    pressing = result.pressing;
    if (takenBack) takeBack(at);
    if (result.meaning === "where") {
      where();
      return;
    }
    silence(() => true);
    placedTo = at;
    log = [...log, { section: sectionNow()?.id ?? "", at: utc() - ago * 1000 }];
    look();
  }

  /** The start that a pair's first press made never was: what it placed falls silent again. */
  function takeBack(at: number): void {
    log = log.slice(0, -1);
    silence(() => true);
    const ended = pressing.begun.pressedAt + (sectionNow()?.cues.at(-1)?.until ?? 0);
    placedTo = Math.max(at, ended);
  }

  function where(): void {
    const now = player.now();
    const here = position();
    const { pressedAt } = pressing.begun;
    const from = now - pressedAt + ANSWER_AFTER;
    const cues = placed.map(({ cue, at, until }) => ({
      ...cue,
      at: at - pressedAt,
      until: until - pressedAt,
    }));
    const repeated = here.kind === "timed" || here.section === null ? [] : saidBefore(here.section);
    if (repeated.length > 0) {
      repeat(repeated, now + ANSWER_AFTER);
      return;
    }
    const answer = answerOf(here, from, here.kind === "timed" ? cues : [], script, lengths);
    if (answer === null) return;
    const at = pressedAt + answer.at;
    const until = pressedAt + answer.until;
    silence(
      (each) => each.cue.channel === "voice" && each.at < until + PAUSE && each.until > at - PAUSE,
    );
    place(spoken(answer.phrases, answer.until - answer.at), at);
  }

  function follow(other: Timeline): void {
    const now = player.now();
    const { index, pressedAt } = pressing.begun;
    timeline = {
      ...other,
      sections: other.sections.map((section, place) => {
        const on = timeline.sections[place];
        if (place > index || on === undefined) return section;
        return place === index ? followed(on, section, now - pressedAt) : on;
      }),
    };
    silence((each) => each.at >= now);
    placedTo = now;
    look();
  }

  /** Says again what was said last, from `at` on, in place of whatever was still to be said. */
  function repeat(cues: readonly Cue[], at: number): void {
    silence((each) => each.cue.channel === "voice");
    const first = cues[0]?.at ?? 0;
    for (const cue of cues) place(cue, at + cue.at - first);
  }

  const stopLooking = everySecond(look);
  return {
    press,
    where,
    follow,
    position,
    begunAt: () => pressing.begun.pressedAt,
    presses: () => log,
    close() {
      stopLooking();
      silence(() => true);
    },
  };
}

function spoken(phrases: readonly string[], seconds: number): Cue {
  return {
    at: 0,
    until: seconds,
    channel: "voice",
    kind: "tell",
    moment: null,
    says: phrases.join(" "),
    sounds: phrases,
  };
}
