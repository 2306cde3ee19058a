// What can be asked of a run beside its one press, told by ear one after another: a press while an option is
// told, or in the pause behind it, chooses it. Pure; the run says the sentences and does what is chosen.
import { forms, type Script } from "../script/script.ts";
import type { Detail } from "./detail.ts";
import type { Way } from "./journal.ts";
import type { Position } from "./position.ts";
import { emptying, pouringLate } from "./stays.ts";
import type { Wordings } from "./where.ts";

export type Option =
  | "poured"
  | "emptied"
  | "reading"
  | "less"
  | "more"
  | "pocket"
  | "room"
  | "leave"
  | "leave.sure";

/** From the end of an option's words to the next, seconds: time to press. */
export const CHOOSING = 1.8;

/** What is on offer where the run stands, the most pressing first. */
export function optionsAt(
  position: Position,
  detail: Detail,
  way: Way,
  ways: readonly Way[],
): readonly Option[] {
  const { section } = position;
  const timed = position.kind === "timed" ? position : null;
  const elapsed = timed?.elapsed ?? Number.POSITIVE_INFINITY;
  const other: Way = way === "room" ? "pocket" : "room";
  return [
    ...(section !== null && emptying(section, elapsed) !== null ? (["emptied"] as const) : []),
    ...(section !== null && pouringLate(section, elapsed) !== null ? (["poured"] as const) : []),
    ...(isDeveloping(position) ? (["reading"] as const) : []),
    ...(ways.includes(other) ? [other] : []),
    detail === "tones" ? "more" : "less",
    "leave",
  ];
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

export function optionWordings(option: Option, script: Script): Wordings {
  return forms.map((form) => script.say(`rest.${option}`, form));
}
