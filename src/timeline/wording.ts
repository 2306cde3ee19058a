// What a step ought to say in, its wishes with the wordings they may have out: how long each lasts and
// what it is worth. Apart from the compiler, so that what it has to decide can be handed to another solver.
import type { Worksheet } from "../plan/worksheet.ts";
import type { Step } from "../process/process.ts";
import type { Form, Script } from "../script/script.ts";
import type { Window, Wording } from "./choose.ts";
import type { Lengths } from "./lengths.ts";
import type { Wish } from "./wish.ts";
import { wishesOf } from "./wishes.ts";

interface WordedWish extends Wish {
  readonly said: readonly { readonly phrases: readonly string[]; readonly wording: Wording }[];
  readonly wanted: string;
}

/** Of a wish's weight, in tenths: fewer words for more wishes beat more words for fewer. */
const worth: { readonly [form in Form]: number } = { full: 10, brief: 9, shortest: 8 };

/**
 * None where tones alone are wanted; niceties at full detail only.
 * @param spoken how often each fact has been wished for so far: counted on.
 */
export function wordedWishes(
  step: Step,
  next: Step | undefined,
  worksheet: Worksheet,
  script: Script,
  lengths: Lengths,
  spoken: Map<string, number>,
): readonly WordedWish[] {
  const detail = worksheet.voice?.detail ?? "full";
  if (detail === "tones") return [];
  return wishesOf(step, next, worksheet)
    .filter((wish) => detail === "full" || !wish.nicety)
    .map((wish) => ({ ...wish, earliest: Math.max(wish.earliest, step.past) }))
    .map((wish) => worded(wish, detail, script, lengths, spoken));
}

/** A fact is told in full once and in short after; how much is left counts as one fact, not as many. */
function worded(
  wish: Wish,
  detail: "full" | "brief",
  script: Script,
  lengths: Lengths,
  spoken: Map<string, number>,
): WordedWish {
  const fact = wish.kind === "remaining" ? wish.key : `${wish.key} ${JSON.stringify(wish.slots)}`;
  const told = spoken.get(fact) ?? 0;
  spoken.set(fact, told + 1);
  const allowed: readonly Form[] =
    detail === "full" && told === 0 ? ["full", "brief", "shortest"] : ["brief", "shortest"];
  const said = allowed.flatMap((form) => {
    const phrases = script.say(wish.key, form, wish.slots);
    const seconds = lengths.spoken(phrases);
    return seconds === null
      ? []
      : [{ phrases, wording: { seconds, value: wish.weight * worth[form] } }];
  });
  const wanted = script.say(wish.key, allowed[0] ?? "full", wish.slots).join(" ");
  return { ...wish, said, wanted };
}

export function windowOf(wish: WordedWish): Window {
  const { earliest, latestEnd, liked, said } = wish;
  return {
    earliest,
    latestEnd,
    prefer: (seconds) => (liked.by === "start" ? liked.at : liked.at - seconds),
    wordings: said.map(({ wording }) => wording),
  };
}
