// What a run says beside what was planned: answers, and what was missed. A section and its answers in, the
// section as it is to be heard out, so that whatever makes it heard needs to know of one kind of thing only.
import type { Script } from "../script/script.ts";
import type { Lengths } from "../timeline/lengths.ts";
import type { Cue, Section } from "../timeline/score.ts";
import { PAUSE, placeFor, type Wordings } from "./where.ts";

/** Sums of seconds may miss a bound by this much and still keep it. */
const FUZZ = 1e-6;

/** Something that is told, and where, seconds into the section. */
export interface Told {
  readonly cues: readonly Cue[];
  readonly at: number;
  readonly until: number;
}

export interface Teller {
  readonly script: Script;
  /** The section with what is said in it, and without what gave way; hushed, with nothing that was planned. */
  heardIn(section: Section, hushed: boolean): Section;
  /**
   * Says something as soon as there is room for it from `from` on, seconds into the section.
   * @returns where it is said, seconds into the section; null where there are no words for it.
   */
  say(section: Section, wordings: Wordings, from: number): Told | null;
  /** What was to be said there is not; what gave way to it stays away. */
  unsay(told: Told): void;
  /** Whether it is told, or was: nothing else took its place. */
  holds(told: Told): boolean;
  /** Says planned words once more, from `from` on, in place of all that was still to be told. */
  repeat(section: Section, cues: readonly Cue[], from: number): Told;
  /** What was to be answered from `from` on is not any more; what is being said is cut off. */
  fallSilent(from: number): void;
  /** Another section is on, or this one as it was compiled anew. */
  forget(): void;
}

export function openTeller(script: Script, lengths: Lengths): Teller {
  let answers: readonly Cue[] = [];
  let gaveWay = new Set<Cue>();

  function heardIn(section: Section, hushed: boolean): Section {
    if (answers.length === 0 && !hushed) return section;
    const planned = section.cues.filter((cue) => !gaveWay.has(cue) && !(hushed && isVoice(cue)));
    return { ...section, cues: [...planned, ...answers].toSorted((a, b) => a.at - b.at) };
  }

  /** @param tellsTo up to where what was to be told gives way as well. */
  function giveWay(section: Section, from: number, to: number, tellsTo = to): void {
    const way = section.cues.filter(
      (cue) =>
        isVoice(cue) &&
        cue.at < (cue.kind === "tell" ? tellsTo : to) + PAUSE &&
        cue.until > from - PAUSE + FUZZ,
    );
    gaveWay = new Set([...gaveWay, ...way]);
    answers = answers.filter(
      (cue) => cue.at >= tellsTo + PAUSE || cue.until <= from - PAUSE + FUZZ,
    );
  }

  return {
    script,
    heardIn,
    say(section, wordings, from) {
      const place = placeFor(wordings, from, heardIn(section, false).cues, lengths);
      if (place === null) return null;
      giveWay(section, place.at, place.until);
      const { at, until } = place;
      const cue = spoken(place.phrases, at, until);
      answers = [...answers, cue];
      return { cues: [cue], at, until };
    },
    unsay({ cues }) {
      answers = answers.filter((cue) => !cues.includes(cue));
    },
    holds: ({ cues }) => cues.every((cue) => answers.includes(cue)),
    repeat(section, cues, from) {
      const first = cues[0]?.at ?? 0;
      const moved = (at: number) => at - first + from;
      const until = moved(cues.at(-1)?.until ?? first);
      giveWay(section, from, until, Number.POSITIVE_INFINITY);
      const again = cues.map((cue) => ({ ...cue, at: moved(cue.at), until: moved(cue.until) }));
      answers = [...answers, ...again];
      return { cues: again, at: from, until };
    },
    fallSilent(from) {
      answers = answers.filter((cue) => cue.until <= from);
    },
    forget() {
      answers = [];
      gaveWay = new Set();
    },
  };
}

const isVoice = (cue: Cue): boolean => cue.channel === "voice";

function spoken(phrases: readonly string[], at: number, until: number): Cue {
  return {
    at,
    until,
    channel: "voice",
    kind: "tell",
    moment: null,
    says: phrases.join(" "),
    sounds: phrases,
  };
}

/** The same section with its tones alone. */
export const withoutWords = (section: Section): Section => ({
  ...section,
  cues: section.cues.filter((cue) => !isVoice(cue)),
});
