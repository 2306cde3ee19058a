// Every warning about fixer, wash, capacity and the person's hands: what is the matter, what would do.
// Apart from the code that finds them, so that they are read, translated and tested as words.
import { writeClockTime } from "../units/clock-time.ts";
import { writeNumber } from "../units/written-number.ts";
import type { Warning } from "./line.ts";
import { filmCount } from "./messages.ts";

/** Source: NAVEDTRA 14209. `times`: how many times as long as fresh it takes to clear. */
export function fixerSpent(times: number): Warning {
  return {
    id: "fixer-spent",
    severity: "stop",
    text: `The fixer takes ${writeNumber(times)} times as long to clear as when it was fresh; at twice it is spent, and film fixed in it does not last. Hand it in for its silver and mix fresh.`,
  };
}

export function clearedQuicker(): Warning {
  return {
    id: "cleared-quicker",
    severity: "caution",
    text: "The snip cleared quicker than in the fresh fixer, which cannot be. Was it warmer, another film, or one of the two times misread?",
  };
}

/** Seconds: what the fixer is given, and what the clearing time asks. */
export function fixerShort(seconds: number, asked: number, times: number): Warning {
  return {
    id: "fixer-short",
    severity: "caution",
    text: `The fixer is given ${writeClockTime(seconds)}, but ${times === 2 ? "twice" : "three times"} the clearing time is ${writeClockTime(asked)}. Give it at least that, or leave its time empty.`,
  };
}

/** g/m² left, and what would do. */
export function washShort(left: string, limit: string, cure: string): Warning {
  return {
    id: "wash-short",
    severity: "caution",
    text: `By plain dilution this wash leaves ${left} of thiosulfate on the film, more than the ${limit} that may stay. ${cure}`,
  };
}

/** Films of 80 sq in: before, now, and what the bath serves in all. */
export function pastCapacity(
  bath: string,
  films: { readonly before: number; readonly now: number; readonly all: number },
  developer: boolean,
): Warning {
  const what = developer
    ? "It would be used up before the film is done. Take fresh, or fewer films."
    : "A count is no proof: test it on a snip of film, and mix fresh if it fails.";
  return {
    id: "past-capacity",
    severity: developer ? "stop" : "caution",
    text: `${bath}: ${filmCount(films.before)} before and ${filmCount(films.now)} now are more than the ${filmCount(films.all)} of 80 sq in that it serves. ${what}`,
  };
}

export function replenishedTwice(): Warning {
  return {
    id: "replenished-twice",
    severity: "caution",
    text: "More time for each film before is asked for, and replenisher too. Replenished solution keeps its time: one of the two is enough.",
  };
}

/** What was timed, its spread and its median, seconds. */
export function unevenHands(what: string, spread: number, median: number): Warning {
  return {
    id: "uneven-hands",
    severity: "note",
    text: `${what} took times that are ${writeNumber(spread, 1)} s apart about ${writeNumber(median, 1)} s. Practise it with water: sameness matters more than speed.`,
  };
}

/** What was measured is not what the worksheet reckons with; seconds. */
export function notAsMeasured(what: string, used: number, median: number): Warning {
  return {
    id: "not-as-measured",
    severity: "note",
    text: `${what} is reckoned at ${writeNumber(used, 1)} s, though your own hands took ${writeNumber(median, 1)} s.`,
  };
}
