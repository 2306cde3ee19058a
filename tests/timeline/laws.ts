// The laws of a timeline, each as a function that returns what breaks it. They are written from
// the promise alone and share nothing with the compiler but the timeline's shape.
import type { Cue, Section, Timeline } from "../../src/timeline/score.ts";

const FUZZ = 1e-6;

const voices = (section: Section): readonly Cue[] =>
  section.cues.filter((cue) => cue.channel === "voice");

const nows = (section: Section): readonly Cue[] => section.cues.filter((cue) => cue.kind === "now");

function overlappingWords(section: Section): readonly string[] {
  const said = voices(section);
  return said.flatMap((cue, i) => {
    const next = said[i + 1];
    return next === undefined || next.at - cue.until >= 0.5 - FUZZ
      ? []
      : [`“${cue.says}” until ${cue.until}, “${next.says}” at ${next.at}`];
  });
}

function momentsWithoutTone(section: Section): readonly string[] {
  return section.moments.flatMap((moment, i) => {
    if (!["pour-in", "agitate", "rest", "pour-out"].includes(moment.do)) return [];
    const heard = nows(section).some(
      (cue) =>
        cue.moment === i && cue.at === moment.at && cue.channel !== "voice" && cue.until > cue.at,
    );
    return heard ? [] : [`${moment.do} at ${moment.at}`];
  });
}

function wordsBeforeNow(section: Section): readonly string[] {
  return nows(section).flatMap((now) =>
    voices(section)
      .filter((cue) => cue.at < now.at - FUZZ && cue.until > now.at - 1 + FUZZ)
      .map((cue) => `“${cue.says}” until ${cue.until}, before ${now.at}`),
  );
}

function latePreparations(section: Section): readonly string[] {
  return voices(section)
    .filter((cue) => cue.kind === "prepare")
    .filter((cue) => cue.until > (section.moments[cue.moment ?? -1]?.at ?? 0) - 3 + FUZZ)
    .map((cue) => `“${cue.says}” until ${cue.until}`);
}

/** @param exempt baths whose own clock is not longer than 40 s. */
function unannouncedPourOuts(timeline: Timeline): readonly string[] {
  const speaks = timeline.sections.some((section) => voices(section).length > 0);
  if (!speaks) return [];
  return timeline.sections.flatMap((section) =>
    section.moments.flatMap((moment, i) => {
      if (moment.do !== "pour-out" || stayOf(section, i) <= 40) return [];
      const announced = voices(section).some(
        (cue) =>
          cue.kind === "prepare" &&
          cue.moment === i &&
          cue.until >= moment.at - 30 - FUZZ &&
          cue.until <= moment.at - 3 + FUZZ,
      );
      return announced ? [] : [`pour-out at ${moment.at} in ${section.id}`];
    }),
  );
}

/** From this bath's pour-in to its tank empty: no clock convention makes the bath longer than that. */
function stayOf(section: Section, pourOut: number): number {
  const pourIn = section.moments.slice(0, pourOut).findLast((m) => m.do === "pour-in");
  const empty = section.moments.slice(pourOut).find((m) => m.do === "empty");
  return (empty?.at ?? 0) - (pourIn?.at ?? 0);
}

function longSilences(section: Section): readonly string[] {
  const from = section.moments[0]?.at;
  const to = section.moments.at(-1)?.at;
  if (from === undefined || to === undefined) return [];
  let heard = from;
  const silences: string[] = [];
  for (const cue of section.cues) {
    if (Math.min(cue.at, to) - heard > 60) silences.push(`${heard} to ${cue.at}`);
    heard = Math.max(heard, cue.until);
  }
  if (to - heard > 60) silences.push(`${heard} to the end`);
  return silences;
}

function disorder(section: Section): readonly string[] {
  return section.cues.flatMap((cue, i) => {
    const before = section.cues[i - 1];
    const faults: string[] = [];
    if (before !== undefined && before.at > cue.at) faults.push(`${before.at} before ${cue.at}`);
    if (!(cue.until > cue.at) || cue.at < 0) faults.push(`${cue.at} to ${cue.until}`);
    if (section.seconds > 0 && cue.until > section.seconds)
      faults.push(`${cue.until} past the end`);
    return faults;
  });
}

export function brokenLaws(timeline: Timeline): readonly string[] {
  return [
    ...timeline.sections.flatMap((section) =>
      [
        overlappingWords,
        momentsWithoutTone,
        wordsBeforeNow,
        latePreparations,
        longSilences,
        disorder,
      ].flatMap((law) => law(section).map((fault) => `${section.id}: ${law.name}: ${fault}`)),
    ),
    ...unannouncedPourOuts(timeline),
  ];
}
