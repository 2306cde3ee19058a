// A run: what the hands tell it and what the clocks show in, what is to be heard out. All that happens goes
// into the journal first; where the run stands, and what sounds, follows from it. It never pauses.
// It is past 200 lines because every change of a run is written down, planned with and heard, in this order.
import type { Cue, Section } from "../timeline/score.ts";
import type { Temperature } from "../units/temperature.ts";
import { ANSWER_AFTER, openAnswers, type Telling } from "./answers.ts";
import { openBook } from "./book.ts";
import { emptiedWordings, isAsItWas, movedWordings, pouredWordings } from "./change-wordings.ts";
import { goneOnWith } from "./follow.ts";
import { type Gap, gapBetween } from "./gap.ts";
import {
  canBeTakenBack,
  type Happening,
  happenedIn,
  type Journal,
  lastChange,
  lastOf,
  type Reader,
  readingsIn,
  timeOf,
} from "./journal.ts";
import { judgedOf } from "./judged.ts";
import { mayBeLate } from "./lateness.ts";
import { gravest, missedWordings } from "./missed.ts";
import { begunBy, nothingOn, type Position, position, positionAt } from "./position.ts";
import { isDeveloping } from "./rest.ts";
import type { Run, RunParts } from "./run-shape.ts";
import { emptying, pouringLate, staysOf } from "./stays.ts";
import { withoutWords } from "./teller.ts";
import { PAUSE, type Wordings } from "./where.ts";

/** No probe's reading moves an end that is as near as this, seconds. */
const STANDS = 10;
/** Time lost is worth telling from this on, seconds. */
const WORTH_TELLING = 2;

export function openRun(parts: RunParts): Run {
  const { clocks, teller, compiled, changed, rehearses = false } = parts;
  let { timeline, detail, outlet } = parts;
  const book = openBook(clocks, parts.keep, parts.entries);
  let hushed = lastOf(book.entries(), "hushed")?.on ?? false;
  let seen = clocks();
  /** Of a run that was left: what is to be told once it can be heard again. */
  let owed: { readonly since: number; readonly unsure: boolean } | null = null;
  /** Whether sound stands still, and nothing lies ahead of it. */
  let still = false;

  const begun = () => begunBy(timeline, book.entries());
  const sectionOn = (): Section => timeline.sections[begun().index] ?? nothingOn;
  /** Seconds into the section that is on, now or at a time on the steady clock. */
  const elapsed = (at?: number): number => book.time(at) - begun().pressedAt;
  const journal = (): Journal => ({ timeline, entries: book.entries() });
  const positionNow = (): Position => position(clocks(), journal());
  const steady = () => clocks().steady;
  const { script } = teller;
  /** From one reading of the clocks: whoever sees another time takes it for a press that was moved. */
  const begunAt = (): number => {
    const now = steady();
    return now - elapsed(now);
  };
  const answers = openAnswers({
    teller,
    section: sectionOn,
    begunAt,
    elapsed,
    position: (into) => positionAt(timeline, begun(), begun().pressedAt + into),
    ahead: () => outlet.ahead(),
  });

  function sound(): void {
    const on = begun().index < 0 ? [nothingOn] : timeline.sections;
    const place = Math.max(0, begun().index);
    const heardIn = (section: Section, i: number): Section => {
      if (i === place) return teller.heardIn(section, hushed);
      return hushed ? withoutWords(section) : section;
    };
    outlet.update({ sections: on.map(heardIn), index: place, pressedAt: begunAt(), late });

    function late(cues: readonly Cue[]): void {
      if (answers.late(cues)) sound();
    }
  }

  /**
   * Plans what is left anew; sections that are over stay as they were heard.
   * @param talking whether what is to be answered still is.
   */
  function planAnew(talking = false): void {
    const entries = book.entries();
    const judged = rehearses ? judgedOf(journal()) : [];
    const [happened, readings] = [happenedIn(entries), readingsIn(entries)];
    const other = compiled({ happened, readings, detail, judged });
    const on = positionNow().kind === "timed" ? teller.heardIn(sectionOn(), false) : sectionOn();
    timeline = goneOnWith(timeline, other, begun().index, on, elapsed());
    if (talking) answers.renew();
    else answers.forget();
  }

  function say(wordings: Wordings, after?: number): Telling | null {
    const telling = answers.say(wordings, after);
    if (telling !== null) sound();
    return telling;
  }

  function where(after?: number): void {
    answers.where(after);
    sound();
  }

  function goOn(at: number): boolean {
    const here = positionAt(timeline, begun(), book.time(at));
    if (here.kind !== "waiting") return false;
    // What to practise is found as it is asked for: all is over by then.
    if (rehearses && here.next === timeline.sections.at(-1)) planAnew();
    answers.forget();
    book.write({ kind: "pressed", section: here.next.id }, at);
    sound();
    changed();
    return true;
  }

  function mark(at: number): boolean {
    if (!rehearses || positionAt(timeline, begun(), book.time(at)).kind !== "timed") return false;
    book.write({ kind: "marked", section: sectionOn().id }, at);
    changed();
    return true;
  }

  /** A change in the section that is on: written down, planned with, and told of. */
  function learn(happening: Happening, at: number, told: () => Wordings | null): true {
    book.write(happening, at);
    // What nobody told of cuts nobody short: the news comes behind what is being answered.
    planAnew(happening.kind === "read" && happening.by === "probe");
    sound();
    const wordings = told();
    const free = answers.over() + PAUSE - elapsed();
    if (wordings !== null) say(wordings, Math.max(ANSWER_AFTER, free));
    changed();
    return true;
  }

  function poured(at: number): boolean {
    const section = sectionOn();
    const stay = pouringLate(section, elapsed(at));
    const planned = stay === null ? undefined : staysOf(section)[stay];
    if (rehearses || stay === null || planned === undefined) return false;
    const { bath, pourIn } = planned;
    const of = { section: section.id, stay, bath, told: steady() - at };
    return learn({ kind: "poured", ...of, by: elapsed(at) - pourIn }, at, () =>
      pouredWordings(bath, script),
    );
  }

  function emptied(at: number): boolean {
    const section = sectionOn();
    const stay = emptying(section, elapsed(at));
    const planned = stay === null ? undefined : staysOf(section)[stay];
    if (rehearses || stay === null || planned === undefined) return false;
    const by = elapsed(at) - planned.empty;
    const of = { section: section.id, stay, bath: planned.bath, told: steady() - at };
    return learn({ kind: "emptied", ...of, by }, at, () => emptiedWordings(by, script));
  }

  function read(temperature: Temperature, by: Reader = "person"): boolean {
    if (rehearses || !isDeveloping(positionNow())) return false;
    const end = () => staysOf(sectionOn())[0]?.pourOut ?? 0;
    const stood = end();
    // The hands are at the tank: what nobody asked for moves nothing under them any more.
    if (by === "probe" && stood - elapsed() < STANDS) return false;
    const happening: Happening = { kind: "read", section: sectionOn().id, temperature, by, stood };
    return learn(happening, steady(), () => {
      const moved = end() - stood;
      // Nobody asked a thermometer that tells by itself.
      return by === "probe" && isAsItWas(moved) ? null : movedWordings(moved, script);
    });
  }

  const canTakeBack = (at: number): boolean =>
    canBeTakenBack(book.entries(), { ...clocks(), steady: at });

  function takeBack(at: number): boolean {
    if (!canTakeBack(at)) return false;
    const change = lastChange(book.entries());
    book.write({ kind: "taken-back" }, at);
    if (change?.kind === "pressed") answers.forget();
    else if (change?.kind !== "marked") planAnew();
    sound();
    changed();
    return true;
  }

  function look(sounding: boolean, off = 0): void {
    // Sound that stands still is dealt with when it goes on: until then nothing can be told, and what lies
    // ahead must not come late.
    if (!sounding) {
      if (!still) outlet.resettle("all");
      still = true;
      return;
    }
    still = false;
    const here = clocks();
    const gap: Gap = owed === null ? gapBetween(seen, here) : { kind: "none" };
    seen = here;
    if (owed !== null) {
      const lost = book.time() - owed.since;
      wake(elapsed() - lost, owed.unsure ? null : lost);
      owed = null;
      changed();
      return;
    }
    switch (gap.kind) {
      case "none":
        if (off !== 0) outlet.resettle("a little");
        outlet.look();
        return;
      case "clock-set":
        book.write(gap);
        outlet.look();
        break;
      default:
        book.write({ kind: "woke", from: gap.kind, lost: gap.lost });
        wake(elapsed() - gap.lost, gap.lost);
    }
    changed();
  }

  /** Heard again, after so many seconds of silence from `from` on: one sentence for all that was missed. */
  function wake(from: number, lost: number | null): void {
    outlet.resettle("all");
    sound();
    const section = begun().index < 0 ? null : sectionOn();
    // What comes a little late is heard all the same.
    const to = elapsed() - mayBeLate.now;
    const missed = section !== null && gravest(section, from, to) !== null;
    if (lost !== null && lost < WORTH_TELLING && !missed) return;
    const told = say(missedWordings(section, from, to, lost, script));
    where((told === null ? 0 : told.until() - steady()) + ANSWER_AFTER);
  }

  const alive = book.entries().at(-1);
  if (alive !== undefined) {
    // The journal of a run that was left ends with when it was last seen alive: from now on that is part of it,
    // or a page that dies once more would count its time otherwise. Nothing sounds before the first look.
    if (alive.kind === "alive") parts.keep(alive);
    // Between two lives of a page there is only the wall clock; was that set back, none can tell.
    const unsure = seen.life !== alive.life && seen.wall < alive.wall;
    owed = { since: timeOf(book.entries(), alive), unsure };
    book.write({ kind: "woke", from: "closed", lost: Math.max(0, seen.wall - alive.wall) / 1000 });
    planAnew();
  }

  return {
    rehearses,
    mark,
    goOn,
    poured,
    emptied,
    read,
    takeBack,
    canTakeBack: () => canTakeBack(steady()),
    wrong: (wrong) => book.write({ kind: "wrong", wrong }),
    hush(on) {
      hushed = on;
      book.write({ kind: "hushed", on });
      sound();
      changed();
    },
    isHushed: () => hushed,
    sayAt(next) {
      detail = next;
      book.write({ kind: "detail", detail });
      planAnew(true);
      sound();
      changed();
    },
    detail: () => detail,
    through(other, way) {
      outlet = other;
      book.write({ kind: "way", way });
      sound();
      changed();
    },
    say,
    answeredAt: () => begunAt() + answers.over(),
    fallSilent() {
      answers.fallSilent();
      sound();
    },
    where,
    position: positionNow,
    journal,
    begunAt,
    look,
    ended: (how) => book.write({ kind: "ended", how }),
    close: () => outlet.close(),
  };
}
