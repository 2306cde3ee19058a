// What is told of a change in the middle of a bath: poured late, emptied late or early, an end that moved.
import { forms, nearestMark, type Script, sayable } from "../script/script.ts";
import type { Wordings } from "./where.ts";

/** An end that is moved by less than this, or a bath over by less, seconds, is as it was. */
const AS_IT_WAS = 2.5;

export const isAsItWas = (seconds: number): boolean => Math.abs(seconds) < AS_IT_WAS;

export function pouredWordings(bath: string, script: Script): Wordings {
  return forms.map((form) => script.say("poured.now", form, { bath }));
}

/** @param by seconds that the bath stayed too long; less than nought: it was short by them. */
export function emptiedWordings(by: number, script: Script): Wordings | null {
  if (isAsItWas(by)) return null;
  const told = byWordings(by > 0 ? "over" : "early", Math.abs(by), script);
  return forms.map((form, i) => [...(told[i] ?? []), ...script.say("over.note", form)]);
}

/** @param by seconds that the end comes later; less than nought: sooner. */
export function movedWordings(by: number, script: Script): Wordings {
  if (isAsItWas(by)) return forms.map((form) => script.say("moved.not", form));
  return byWordings(by > 0 ? "moved.later" : "moved.sooner", Math.abs(by), script);
}

/** By how much, in seconds to the nearest five. */
function byWordings(
  key: "over" | "early" | "moved.later" | "moved.sooner",
  by: number,
  script: Script,
): Wordings {
  const rounded = Math.max(5, Math.round(by / 5) * 5);
  const minutes = Math.floor(rounded / 60);
  const isExact = sayable("mark", minutes) === minutes;
  const mark = minutes === 0 ? null : isExact ? minutes : nearestMark(rounded / 60);
  // Past the minutes that the voice can say one by one, what is left over would mislead.
  const seconds = minutes === 0 || isExact ? sayable("seconds", rounded % 60) : null;
  return forms.map((form) => {
    if (mark === null) {
      return seconds === null ? [] : script.say(`${key}.seconds`, form, { seconds });
    }
    return [
      ...script.say(`${key}.minutes`, form, { mark }),
      ...(seconds === null ? [] : script.say("moved.and", form, { seconds })),
    ];
  });
}
