// Every warning about fixer, wash, capacity and the person's hands: its name, how grave it is, its figures.
// Apart from the code that finds them, so that each can be read and tested in any language's words.
import { writeClockTime } from "../units/clock-time.ts";
import { filmCount } from "./film-count.ts";
import type { Warning } from "./line.ts";
import type { PlanWords } from "./words/words.ts";

/** Source: NAVEDTRA 14209. `times`: how many times as long as fresh it takes to clear. */
export function fixerSpent({ warnings, writes }: PlanWords, times: number): Warning {
  return {
    id: "fixer-spent",
    severity: "stop",
    text: warnings.fixerSpent({ times: writes.number(times) }),
  };
}

export function clearedQuicker({ warnings }: PlanWords): Warning {
  return { id: "cleared-quicker", severity: "caution", text: warnings.clearedQuicker };
}

/** Seconds: what the fixer is given, and what the clearing time asks. */
export function fixerShort(
  { warnings }: PlanWords,
  seconds: number,
  asked: number,
  times: number,
): Warning {
  return {
    id: "fixer-short",
    severity: "caution",
    text: warnings.fixerShort({
      given: writeClockTime(seconds),
      asked: writeClockTime(asked),
      twice: times === 2,
    }),
  };
}

/** g/m² left, and what would do. */
export function washShort(
  { warnings }: PlanWords,
  left: string,
  limit: string,
  cure: string,
): Warning {
  return {
    id: "wash-short",
    severity: "caution",
    text: warnings.washShort({ left, limit, cure }),
  };
}

/** Films of 80 sq in: before, now, and what the bath serves in all. */
export function pastCapacity(
  words: PlanWords,
  bath: string,
  films: { readonly before: number; readonly now: number; readonly all: number },
  developer: boolean,
): Warning {
  return {
    id: "past-capacity",
    severity: developer ? "stop" : "caution",
    text: words.warnings.pastCapacity({
      bath,
      before: filmCount(words, films.before),
      now: filmCount(words, films.now),
      all: filmCount(words, films.all),
      developer,
    }),
  };
}

export function replenishedTwice({ warnings }: PlanWords): Warning {
  return { id: "replenished-twice", severity: "caution", text: warnings.replenishedTwice };
}

/** What was timed, its spread and its median, seconds. */
export function unevenHands(
  { warnings, writes }: PlanWords,
  what: string,
  spread: number,
  median: number,
): Warning {
  return {
    id: "uneven-hands",
    severity: "note",
    text: warnings.unevenHands({
      what,
      spread: `${writes.number(spread, 1)} s`,
      median: `${writes.number(median, 1)} s`,
    }),
  };
}

/** What was measured is not what the worksheet reckons with; seconds. */
export function notAsMeasured(
  { warnings, writes }: PlanWords,
  what: string,
  used: number,
  median: number,
): Warning {
  return {
    id: "not-as-measured",
    severity: "note",
    text: warnings.notAsMeasured({
      what,
      used: `${writes.number(used, 1)} s`,
      median: `${writes.number(median, 1)} s`,
    }),
  };
}
