// What a run answers, each answer with how it is told: one that could not be heard in its time, or whose section
// was compiled anew, is told once more, in its order. Apart from the run, which only knows that it was asked.
import type { Cue, Section } from "../timeline/score.ts";
import { clockEnd, type Position } from "./position.ts";
import type { Teller, Told } from "./teller.ts";
import { PAUSE, saidBefore, type Wordings, whereWordings } from "./where.ts";

/** Places an answer from so many seconds into the section on; null where there are no words for it. */
type Tell = (from: number) => Told | null;

/** When an answer begins and is over, seconds on the steady clock: told anew, it comes later. */
export interface Telling {
  at(): number;
  until(): number;
}

interface Open {
  readonly tell: Tell;
  readonly told: Told;
  /** Whoever asked is to know of it. */
  readonly isMoved: (to: Told) => void;
}

export interface Answers {
  /** @param after seconds from now; later where it could not be heard so soon. */
  say(wordings: Wordings, after?: number): Telling | null;
  /** Where the run stands, and what comes next. */
  where(after?: number): void;
  /** These could not be heard: what belongs to them, and what was to follow, is told anew. False for none of ours. */
  late(cues: readonly Cue[]): boolean;
  /** The section was compiled anew: what is still to be heard is told in it. */
  renew(): void;
  /** When all of them are over, seconds into the section. */
  over(): number;
  fallSilent(): void;
  forget(): void;
}

interface AnswersParts {
  readonly teller: Teller;
  readonly section: () => Section;
  /** When its press was, seconds on the steady clock. */
  readonly begunAt: () => number;
  /** Seconds since then. */
  readonly elapsed: () => number;
  /** @param into seconds into the section. */
  readonly position: (into: number) => Position;
  /** Seconds by which an answer must be laid ahead to be heard. */
  readonly ahead: () => number;
}

/** An answer begins no sooner than this after it is asked for, seconds: a press may be one of several. */
export const ANSWER_AFTER = 0.5;
/** One that no other press can follow, seconds. */
const SOON = 0.1;
/** What is said of the time left is true for so long, seconds. */
const TRUE_FOR = 2;
/** An answer is known so long after it was over, seconds: a track is seldom made later than that. */
const KNOWN = 10;

export function openAnswers(parts: AnswersParts): Answers {
  const { teller, section, begunAt, elapsed, ahead } = parts;
  let open: readonly Open[] = [];

  function answer(tell: Tell, after: number): Telling | null {
    const first = tell(elapsed() + Math.max(after, ahead()));
    if (first === null) return null;
    let told = first;
    let zero = begunAt();
    const mine: Open = {
      tell,
      told,
      isMoved(to) {
        told = to;
        zero = begunAt();
      },
    };
    open = [...open.filter(isKnown), mine].toSorted((a, b) => a.told.at - b.told.at);
    return { at: () => zero + told.at, until: () => zero + told.until };
  }

  const isKnown = ({ told }: Open): boolean => teller.holds(told) && told.until > elapsed() - KNOWN;

  function anew(those: readonly Open[]): void {
    for (const { told } of those) teller.unsay(told);
    open = open.filter((each) => !those.includes(each));
    let free = elapsed() + ahead();
    for (const each of those) {
      const told = each.tell(Math.max(free, each.told.at));
      if (told === null) continue;
      each.isMoved(told);
      open = [...open, { ...each, told }];
      free = told.until + PAUSE;
    }
  }

  function whereFrom(from: number): Told | null {
    const here = parts.position(elapsed());
    const before = here.kind === "timed" || here.section === null ? [] : saidBefore(here.section);
    if (before.length > 0) return teller.repeat(section(), before, from);
    // It has to be true when it is heard: of the time for which there is room, if that is not now.
    const first = teller.say(section(), whereAt(from), from);
    if (first === null || first.at - from <= TRUE_FOR) return first;
    teller.unsay(first);
    return teller.say(section(), whereAt(first.at), first.at);
  }

  const whereAt = (into: number): Wordings => whereWordings(parts.position(into), teller.script);

  function forget(): void {
    teller.forget();
    open = [];
  }

  return {
    say: (wordings, after = SOON) => answer((from) => teller.say(section(), wordings, from), after),
    where: (after = ANSWER_AFTER) => void answer(whereFrom, after),
    late(cues) {
      open = open.filter(isKnown);
      const first = open.findIndex(({ told }) => told.cues.some((cue) => cues.includes(cue)));
      if (first < 0) return false;
      anew(open.slice(first));
      return true;
    },
    renew() {
      const now = elapsed();
      const { cues } = section();
      // One that only tells is told to its end as it was begun.
      const stays = clockEnd(section()) === 0;
      const those = open
        .filter(isKnown)
        .filter(({ told }) =>
          stays ? told.at >= now : told.until > now && !told.cues.some((cue) => cues.includes(cue)),
        );
      if (!stays) forget();
      anew(those);
    },
    over: () => Math.max(0, ...open.filter(isKnown).map(({ told }) => told.until)),
    fallSilent() {
      teller.fallSilent(elapsed());
      open = [];
    },
    forget,
  };
}
