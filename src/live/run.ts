// A run: what the hands tell it and what the clocks show in, what is to be heard out. All that happens goes
// into the journal first; where the run stands, and what sounds, follows from it. It never pauses.
// It is past 200 lines because every change of a run is written down, planned with and heard, in this order.
import type { Section } from "../timeline/score.ts";
import type { Temperature } from "../units/temperature.ts";
import { openBook } from "./book.ts";
import { emptiedWordings, isAsItWas, movedWordings, pouredWordings } from "./change-wordings.ts";
import { followed } from "./follow.ts";
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
import { stayKnown } from "./stay-known.ts";
import { emptying, pouringLate, staysOf } from "./stays.ts";
import { withoutWords } from "./teller.ts";
import { saidBefore, type Wordings, whereWordings } from "./where.ts";

/** An answer begins no sooner than this after it is asked for, seconds: a press may be one of several. */
const ANSWER_AFTER = 0.5;
/** What is said of the time left is true for so long, seconds. */
const TRUE_FOR = 2;
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

  function sound(): void {
    const on = begun().index < 0 ? [nothingOn] : timeline.sections;
    const place = Math.max(0, begun().index);
    const heardIn = (section: Section, i: number): Section => {
      if (i === place) return teller.heardIn(section, hushed);
      return hushed ? withoutWords(section) : section;
    };
    outlet.update({ sections: on.map(heardIn), index: place, pressedAt: steady() - elapsed() });
  }

  /** Plans what is left anew; sections that are over stay as they were heard. */
  function planAnew(): void {
    const entries = book.entries();
    const judged = rehearses ? judgedOf(journal()) : [];
    const [happened, readings] = [happenedIn(entries), readingsIn(entries)];
    const other = compiled({ happened, readings, detail, judged });
    const { index } = begun();
    const on = positionNow().kind === "timed" ? teller.heardIn(sectionOn(), false) : sectionOn();
    const before = timeline.sections;
    teller.forget();
    timeline = {
      ...other,
      sections: other.sections.map((section, place) => {
        if (place > index) return section;
        return place === index ? followed(on, section, elapsed()) : (before[place] ?? section);
      }),
    };
  }

  function say(wordings: Wordings, after = 0.1) {
    const place = teller.say(sectionOn(), wordings, elapsed() + after);
    if (place === null) return null;
    sound();
    return { from: place.at - elapsed(), until: place.until - elapsed() };
  }

  function where(after = ANSWER_AFTER): void {
    const here = positionNow();
    const before = here.kind === "timed" || here.section === null ? [] : saidBefore(here.section);
    if (before.length > 0) {
      teller.repeat(sectionOn(), before, elapsed() + after);
      sound();
      return;
    }
    // It has to be true when it is heard: of the time for which there is room, if that is not now.
    const at = elapsed() + after;
    const first = teller.say(sectionOn(), whereIn(after), at);
    if (first !== null && first.at - at > TRUE_FOR) {
      teller.unsay(first);
      teller.say(sectionOn(), whereIn(first.at - elapsed()), first.at);
    }
    sound();
  }

  const whereIn = (seconds: number): Wordings =>
    whereWordings(positionAt(timeline, begun(), book.time() + seconds), script);

  function goOn(at: number): boolean {
    const here = positionAt(timeline, begun(), book.time(at));
    if (here.kind !== "waiting") return false;
    // What to practise is found as it is asked for: all is over by then.
    if (rehearses && here.next === timeline.sections.at(-1)) planAnew();
    teller.forget();
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
    planAnew();
    sound();
    const wordings = told();
    if (wordings !== null) say(wordings, ANSWER_AFTER);
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
    const stay = emptying(section, elapsed(at), stayKnown(book.entries()));
    const planned = stay === null ? undefined : staysOf(section)[stay];
    if (rehearses || stay === null || planned === undefined) return false;
    const by = elapsed(at) - planned.empty;
    const of = { section: section.id, stay, bath: planned.bath, told: steady() - at };
    return learn({ kind: "emptied", ...of, by }, at, () => emptiedWordings(by, script));
  }

  function read(temperature: Temperature, by: Reader = "person"): boolean {
    if (rehearses || !isDeveloping(positionNow())) return false;
    const end = () => staysOf(sectionOn())[0]?.pourOut ?? 0;
    const before = end();
    const happening: Happening = { kind: "read", section: sectionOn().id, temperature, by };
    return learn(happening, steady(), () => {
      const moved = end() - before;
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
    if (change?.kind === "pressed") teller.forget();
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
    where((told?.until ?? 0) + ANSWER_AFTER);
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
      planAnew();
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
    fallSilent() {
      teller.fallSilent(elapsed());
      sound();
    },
    where,
    position: positionNow,
    journal,
    begunAt: () => steady() - elapsed(),
    look,
    ended: (how) => book.write({ kind: "ended", how }),
    close: () => outlet.close(),
  };
}
