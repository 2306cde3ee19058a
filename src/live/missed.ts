// A stretch of a section in which nothing was heard in, the sentence that says what was missed out: the
// gravest of it alone, with what to do. Told once, in place of all that was to be told in that time.
import { type Form, forms, nearestMark, type Script, sayable } from "../script/script.ts";
import type { Section } from "../timeline/score.ts";
import { isIn, staysOf } from "./stays.ts";
import type { Wordings } from "./where.ts";

const grave = ["pour-out", "pour-in", "agitate", "rest"] as const;

/** What was to be done in `[from, to)`, seconds into the section, the gravest of it; null where nothing was. */
export function gravest(section: Section, from: number, to: number): (typeof grave)[number] | null {
  const missed = section.moments.filter(({ at }) => at >= from && at < to);
  return grave.find((deed) => missed.some((moment) => moment.do === deed)) ?? null;
}

/**
 * @param lost seconds in which nothing was heard; null where no clock can tell.
 * @param from and `to`: the same, in seconds into the section.
 */
export function missedWordings(
  section: Section,
  from: number,
  to: number,
  lost: number | null,
  script: Script,
): Wordings {
  const deed = gravest(section, from, to);
  const bath = deed === "pour-out" ? stillIn(section, from, to) : null;
  return forms.map((form) => [
    ...gonePhrases(lost, form, script),
    ...script.say(`missed.${deed ?? "nothing"}`, form),
    ...(bath === null ? [] : script.say("over.still-in", form, { bath })),
  ]);
}

function gonePhrases(lost: number | null, form: Form, script: Script): readonly string[] {
  if (lost === null) return script.say("gone.unsure", form);
  const told = Math.round(lost / 5) * 5;
  if (told >= 60) return script.say("gone.minutes", form, { mark: nearestMark(lost / 60) });
  const seconds = sayable("seconds", told);
  return seconds === null ? [] : script.say("gone.seconds", form, { seconds });
}

/** The bath that may still be in: with its call missed, the hands may have waited for it through all that followed. */
function stillIn(section: Section, from: number, to: number): string | null {
  return staysOf(section).find(({ pourOut }) => isIn(pourOut, { from, to }))?.bath ?? null;
}
