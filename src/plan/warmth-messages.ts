// Every warning about mixing to a temperature and tempering: its name, how grave it is, its figures.
// Apart from the code that finds them, so that each can be read and tested in any language's words.
import type { Warning } from "./line.ts";
import type { TemperingWords } from "./words/warmth-words.ts";
import type { AsideWords } from "./words/words.ts";

export function nothingToMix({ mixing }: AsideWords): Warning {
  return note("nothing-to-mix", mixing.warnings.nothingToMix);
}

export function mixOutOfReach(
  { mixing }: AsideWords,
  target: string,
  coldest: string,
  warmest: string,
): Warning {
  return caution("mix-out-of-reach", mixing.warnings.outOfReach({ target, coldest, warmest }));
}

export function oneTap({ mixing }: AsideWords, temperature: string): Warning {
  return note("one-tap", mixing.warnings.oneTap({ temperature }));
}

export function noWater({ mixing }: AsideWords): Warning {
  return caution("no-water", mixing.warnings.noWater);
}

/** `dilution`: what the marks make of it; null where not even the stock comes to a mark. */
export function marksTooCoarse(
  { mixing: { warnings } }: AsideWords,
  mark: string,
  dilution: string | null,
): Warning {
  const text =
    dilution === null
      ? warnings.lessThanAMark({ mark })
      : warnings.marksTooCoarse({ mark, dilution });
  return caution("marks-too-coarse", text);
}

export function isAtTarget({ tempering }: AsideWords, target: string): Warning {
  return note("at-target", tempering.warnings.atTarget({ target }));
}

export function temperingUnfit(
  { tempering }: AsideWords,
  why: keyof TemperingWords["warnings"]["unfit"],
): Warning {
  return caution(`tempering-${why}`, tempering.warnings.unfit[why]);
}

export function movesAway({ tempering }: AsideWords, target: string): Warning {
  return caution("moves-away", tempering.warnings.movesAway({ target }));
}

/** `askIce`: the bath is too warm, and not enough is known of it to reckon the ice. */
export function neverReaches(
  { tempering: { warnings } }: AsideWords,
  target: string,
  settles: string,
  askIce: boolean,
): Warning {
  const never = warnings.neverReaches({ target, settles });
  return caution("never-reaches", askIce ? `${never} ${warnings.askIce}` : never);
}

export function mayNotReach({ tempering }: AsideWords, target: string): Warning {
  return caution("may-not-reach", tempering.warnings.mayNotReach({ target }));
}

export function takesLong({ tempering }: AsideWords, target: string, wait: string): Warning {
  return caution("takes-long", tempering.warnings.takesLong({ target, wait }));
}

/** `range`: as far as the readings leave it open, `"6:50 to 12:00"`. */
export function waitFor(
  { tempering }: AsideWords,
  target: string,
  wait: string,
  range: string,
): Warning {
  return note("wait", tempering.warnings.wait({ target, wait, range }));
}

function caution(id: string, text: string): Warning {
  return { id, severity: "caution", text };
}

function note(id: string, text: string): Warning {
  return { id, severity: "note", text };
}
