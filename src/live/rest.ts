// What can be asked of a run beside its one press, told by ear: lists whose options follow one another, a press
// while one is told, or in the pause behind it, taking it; and talks of several lines, each confirmed by a press.
// Pure; the guide says the sentences and does what is taken.

import type { Wrong } from "../process/wrongs.ts";
import { forms, type Script } from "../script/script.ts";
import type { Detail } from "./detail.ts";
import type { Way } from "./journal.ts";
import type { Position } from "./position.ts";
import { emptying, isLong, pouringLate } from "./stays.ts";
import type { Wordings } from "./where.ts";
import { wrongsAt } from "./wrong.ts";

/** `again`: back to where the run stands, told anew. */
export type Act =
  | "poured"
  | "emptied"
  | "reading"
  | "less"
  | "more"
  | "pocket"
  | "room"
  | "leave"
  | "again";

export type Talk =
  | { readonly kind: "act"; readonly act: Act }
  /** Told one after another; `lasts`: over and over, until one is taken. */
  | { readonly kind: "list"; readonly of: readonly Option[]; readonly lasts?: boolean }
  /** Line by line, each confirmed by a press; after the last, what comes behind them. */
  | { readonly kind: "lines"; readonly keys: readonly string[]; readonly behind: Talk }
  /** Said in a row, and that is all. */
  | { readonly kind: "told"; readonly keys: readonly string[] }
  | { readonly kind: "wrong"; readonly wrong: Wrong };

interface Option {
  /** Key of the sentence that offers it. */
  readonly says: string;
  readonly takes: Talk;
}

/** From the end of an option's words to the next, seconds: time to press. */
export const CHOOSING = 1.8;
/** The same behind the last option of a list that lasts, seconds: hands are at work meanwhile. */
export const LASTING = 15;

const again: Talk = { kind: "act", act: "again" };
const act = (name: Act): Option => ({ says: `rest.${name}`, takes: { kind: "act", act: name } });

/** Out of a jam: nothing is forced; and where that does not help, the film is safe before hands are dried. */
const stuck: Talk = {
  kind: "lines",
  keys: ["stuck.force", "stuck.back", "stuck.flex", "stuck.feed"],
  behind: {
    kind: "list",
    lasts: true,
    of: [
      { says: "stuck.runs", takes: again },
      {
        says: "stuck.still",
        takes: {
          kind: "lines",
          keys: ["stuck.tank", "close.lid", "stuck.hands", "stuck.again"],
          behind: again,
        },
      },
    ],
  },
};

const leave: Talk = {
  kind: "list",
  of: [{ says: "rest.leave.sure", takes: { kind: "act", act: "leave" } }],
};

/** What may be wrong where the run stands, the worst harm first. */
export function wrongList(position: Position): Talk & { readonly kind: "list" } {
  return {
    kind: "list",
    of: [
      ...wrongsAt(position).map(
        (wrong): Option => ({ says: `wrong.${wrong}`, takes: { kind: "wrong", wrong } }),
      ),
      { says: "wrong.back", takes: again },
    ],
  };
}

/** What is on offer where the run stands, the most pressing first. */
export function restAt(
  position: Position,
  detail: Detail,
  way: Way,
  ways: readonly Way[],
  rehearses = false,
): Talk & { readonly kind: "list" } {
  const { more = [], jams = false } = position.section ?? {};
  const other: Way = way === "room" ? "pocket" : "room";
  // In a rehearsal nothing moves a moment, and nothing is kept that would be asked about before it is left.
  const { emptied, poured, pouredLong } = lateHandsAt(position, rehearses);
  return {
    kind: "list",
    of: [
      ...(more.length > 0
        ? [{ says: "rest.told", takes: { kind: "told", keys: more } } as const]
        : []),
      ...(jams ? [{ says: "rest.stuck", takes: stuck }] : []),
      ...(emptied ? [act("emptied")] : []),
      ...(poured && !pouredLong ? [act("poured")] : []),
      ...(rehearses ? [] : [{ says: "rest.wrong", takes: wrongList(position) }]),
      ...(!rehearses && isDeveloping(position) ? [act("reading")] : []),
      ...(poured && pouredLong ? [act("poured")] : []),
      ...(ways.includes(other) ? [act(other)] : []),
      act(detail === "tones" ? "more" : "less"),
      rehearses ? act("leave") : { says: "rest.leave", takes: leave },
    ],
  };
}

/** Whether hands can be late where the run stands: with an empty tank, with a pour, and that for long. */
export function lateHandsAt(
  position: Position,
  rehearses = false,
): { readonly emptied: boolean; readonly poured: boolean; readonly pouredLong: boolean } {
  const { section } = position;
  if (section === null || rehearses) return { emptied: false, poured: false, pouredLong: false };
  const elapsed = position.kind === "timed" ? position.elapsed : Number.POSITIVE_INFINITY;
  const late = pouringLate(section, elapsed);
  return {
    emptied: emptying(section, elapsed) !== null,
    poured: late !== null,
    pouredLong: late !== null && isLong(late, elapsed),
  };
}

/** Whether a thermometer in the tank would move the end. */
export function isDeveloping(position: Position): boolean {
  return (
    position.kind === "timed" &&
    position.bath === "developer" &&
    position.doing !== null &&
    position.doing !== "pour-out"
  );
}

export function wordingsOf(key: string, script: Script): Wordings {
  return forms.map((form) => script.say(key, form));
}
