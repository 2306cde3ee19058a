// A run: what the hands tell it and what the clocks show in, what is to be heard out. All that happens goes
// into the journal first; where the run stands, and what sounds, follows from it. It never pauses.
// It is past 200 lines because every change of a run is written down, planned with and heard, in this order.
import type { Section } from "../timeline/score.ts";
import type { Temperature } from "../units/temperature.ts";
import { openBook } from "./book.ts";
import { emptiedWordings, isAsItWas, movedWordings, pouredWordings } from "./change-wordings.ts";
import { followed } from "./follow.ts";
import type { Lost } from "./gap.ts";
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
import { begunBy, isAllTold, nothingOn, type Position, position, positionAt } from "./position.ts";
import { isDeveloping } from "./rest.ts";
import type { Run, RunParts } from "./run-shape.ts";
import { stayKnown } from "./stay-known.ts";
import { emptying, pouringLate, staysOf } from "./stays.ts";
import { withoutWords } from "./teller.ts";
import { openWatching } from "./watching.ts";
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
  const watch = openWatching(clocks, book.write);

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
    watch.first();
    // The next look tells what was missed, and then this.
    if (watch.owed() !== null && !watch.isSilent()) return;
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
    const isNew = watch.first();
    if (isNew && isCallUnheard()) return false;
    if (isNew) watch.owes(null);
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
    watch.first();
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
    watch.first();
    const late = rehearses ? null : pouringLate(sectionOn(), elapsed(at));
    if (late === null) return false;
    const { stay, bath, pourIn } = late;
    const of = { section: sectionOn().id, stay, bath, told: steady() - at };
    return learn({ kind: "poured", ...of, by: elapsed(at) - pourIn }, at, () =>
      pouredWordings(bath, script),
    );
  }

  function emptied(at: number): boolean {
    watch.first();
    const known = stayKnown(book.entries());
    const which = rehearses ? null : emptying(sectionOn(), elapsed(at), known);
    if (which === null) return false;
    const { stay, bath, empty } = which;
    const by = elapsed(at) - empty;
    const of = { section: sectionOn().id, stay, bath, told: steady() - at };
    return learn({ kind: "emptied", ...of, by }, at, () => emptiedWordings(by, script));
  }

  function read(temperature: Temperature, by: Reader = "person"): boolean {
    watch.first();
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
    watch.first();
    if (!canTakeBack(at)) return false;
    const change = lastChange(book.entries());
    book.write({ kind: "taken-back" }, at);
    if (change?.kind === "pressed") teller.forget();
    else if (change?.kind !== "marked") planAnew();
    sound();
    changed();
    return true;
  }

  /** Of a silence that is still to be told of: who presses after it cannot know what was called for in it. */
  function isCallUnheard(): boolean {
    return gravest(sectionOn(), elapsed() - (watch.owed()?.seconds ?? 0), elapsed()) !== null;
  }

  function look(sounding: boolean, off = 0): void {
    const wasSilent = watch.isSilent();
    const { lost, isNew } = watch.look(sounding);
    if (lost !== null) wake(lost);
    // Until sound goes on nothing can be told, and what lies ahead must not come late.
    else if (!sounding && !wasSilent) outlet.resettle("all");
    else if (sounding) {
      if (off !== 0 && !isNew) outlet.resettle("a little");
      outlet.look();
    }
    // Whoever closes the page from now on has left nothing undone.
    const isDone = isAllTold(clocks(), journal()) && !canTakeBack(steady()) && ended("done");
    if (isNew || lost !== null || isDone) changed();
  }

  /** Once: what was done to its end is not left afterwards. */
  function ended(how: "done" | "left"): boolean {
    if (lastOf(book.entries(), "ended") !== undefined) return false;
    book.write({ kind: "ended", how });
    return true;
  }

  /** Heard again after a silence: one sentence for all that was missed. */
  function wake({ seconds, unsure }: Lost): void {
    outlet.resettle("all");
    sound();
    const section = sectionOn();
    const from = elapsed() - seconds;
    // What comes a little late is heard all the same.
    const to = elapsed() - mayBeLate.now;
    const isMissed = gravest(section, from, to) !== null;
    if (!unsure && seconds < WORTH_TELLING && !isMissed) return;
    const told = say(missedWordings(section, from, to, unsure ? null : seconds, script));
    where((told?.until ?? 0) + ANSWER_AFTER);
  }

  const alive = book.entries().at(-1);
  if (alive !== undefined) {
    // The journal of a run that was left ends with when it was last seen alive: from now on that is part of it,
    // or a page that dies once more would count its time otherwise. Nothing sounds before the first look.
    if (alive.kind === "alive") parts.keep(alive);
    // Between two lives of a page there is only the wall clock; was that set back, none can tell.
    const { life, wall } = clocks();
    const unsure = life !== alive.life && wall < alive.wall;
    const since = timeOf(book.entries(), alive);
    book.write({ kind: "woke", from: "closed", lost: Math.max(0, wall - alive.wall) / 1000 });
    watch.owes({ seconds: book.time() - since, unsure });
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
    ended,
    close: () => outlet.close(),
  };
}
