// The schedule compiler.
//
//   worksheet ─ plan ─▶ steps ─┬─▶ signals   tones, fixed to the moments ────────┐
//                              └─▶ wishes ─▶ choose   words, where there is room ─┴─▶ cues ─▶ fill silence
//
// 1. Every moment gets its tone, at the moment and nowhere else.
// 2. What ought to be said becomes wishes, each with a window and a weight.
// 3. The best set of wishes that fits between the tones is chosen; the rest is left with its reason.
// 4. Where a timed bath would be silent too long, a soft tone says that all is well.
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import type { HappenedIn } from "../process/happened.ts";
import { LEAD, type Step, stepsOf } from "../process/process.ts";
import type { Script } from "../script/script.ts";
import { choose } from "./choose.ts";
import { whyLeft } from "./left.ts";
import type { Lengths } from "./lengths.ts";
import { quietOf } from "./quiet.ts";
import type { Cue, Left, Section, Timeline } from "./score.ts";
import { confirmCue, signalsOf } from "./signals.ts";
import { titleOf } from "./titles.ts";
import type { Wish } from "./wish.ts";
import { windowOf, wordedWishes } from "./wording.ts";

/** A silence longer than this in a timed bath is broken, seconds; the promise is 60. */
const SILENCE = 45;

/**
 * The same worksheet, script and lengths give the same timeline, to the byte.
 * @param lead seconds from a press to the first pour-in.
 * @param happened in a run, what went otherwise than planned so far.
 */
export function compile(
  worksheet: Worksheet,
  plan: Plan,
  script: Script,
  lengths: Lengths,
  lead = LEAD,
  happened: HappenedIn = {},
): Timeline {
  return compileSteps(stepsOf(worksheet, plan, lead, happened), worksheet, plan, script, lengths);
}

/** Of steps that are the worksheet's own, or those of its rehearsal. */
export function compileSteps(
  steps: readonly Step[],
  worksheet: Worksheet,
  plan: Plan,
  script: Script,
  lengths: Lengths,
): Timeline {
  const spoken = new Map<string, number>();
  return {
    tankside: 1,
    plan,
    voice: { language: script.source.language, rate: worksheet.voice?.rate ?? 1 },
    sections: steps.map((step, i) =>
      sectionOf(step, steps[i + 1], worksheet, script, lengths, spoken),
    ),
  };
}

function sectionOf(
  step: Step,
  next: Step | undefined,
  worksheet: Worksheet,
  script: Script,
  lengths: Lengths,
  spoken: Map<string, number>,
): Section {
  const signals = signalsOf(step.moments);
  const wishes = wordedWishes(step, next, worksheet, script, lengths, spoken);
  const quiet = quietOf(signals.quiet);
  const placed = choose(wishes.map(windowOf), quiet);

  const said: Cue[] = [];
  const left: Left[] = [];
  for (const [i, wish] of wishes.entries()) {
    const place = placed[i];
    const wording = place == null ? undefined : wish.said[place.wording];
    if (place == null || wording === undefined) {
      left.push({ wanted: wish.wanted, why: whyLeft(windowOf(wish), quiet, script) });
    } else {
      said.push(voiceCue(wish, wording.phrases, place.at, wording.wording.seconds));
    }
  }
  const cues = [...signals.cues, ...said].toSorted(byTime);
  return {
    id: step.id,
    title: titleOf(step, script),
    dark: step.dark,
    film: step.film,
    ...(step.more.length === 0 ? {} : { more: step.more }),
    ...(step.jams ? { jams: true } : {}),
    seconds: step.seconds,
    moments: step.moments,
    cues: unbroken(cues.length === 0 ? [confirmCue(0.4)] : cues, step),
    left,
  };
}

function voiceCue(wish: Wish, phrases: readonly string[], at: number, seconds: number): Cue {
  return {
    at: exact(at),
    until: exact(at + seconds),
    channel: "voice",
    kind: wish.kind,
    moment: wish.moment,
    says: phrases.join(" "),
    sounds: phrases,
  };
}

/** Lengths are whole milliseconds or finer steps of them; the microsecond keeps sums readable. */
const exact = (seconds: number): number => Math.round(seconds * 1e6) / 1e6;

const order = { tone: 0, voice: 1, buzz: 2 } as const;
const byTime = (a: Cue, b: Cue): number => a.at - b.at || order[a.channel] - order[b.channel];

/** Breaks every long silence evenly: between the first moment and the last, and of a wait from its press on. */
function unbroken(cues: readonly Cue[], step: Step): readonly Cue[] {
  const from = step.moments[0]?.at ?? 0;
  const to = step.moments.at(-1)?.at ?? step.seconds;
  const added: Cue[] = [];
  let silentFrom = from;
  for (const next of [...cues.filter((cue) => cue.until > from), { at: to, until: to }]) {
    const silence = Math.min(next.at, to) - silentFrom;
    const parts = Math.ceil(silence / SILENCE);
    for (let part = 1; part < parts; part += 1) {
      added.push(confirmCue(exact(silentFrom + (silence * part) / parts)));
    }
    silentFrom = Math.max(silentFrom, next.until);
  }
  return [...cues, ...added].toSorted(byTime);
}
