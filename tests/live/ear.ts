// What reached the ear of a run by hand, put beside what its sections say: for every test of a run that goes wrong.
import type { Cue, Section } from "../../src/timeline/score.ts";

export interface Ear {
  readonly cue: Cue;
  readonly at: number;
  readonly until: number;
}

const isPlanned = (section: Section, cue: Cue): boolean => section.cues.includes(cue);

/** Planned cues that came more than a millisecond late, seconds. */
export function lateIn(
  ears: readonly Ear[],
  section: Section,
  pressedAt: number,
): readonly number[] {
  return ears
    .filter(({ cue }) => isPlanned(section, cue))
    .map(({ cue, at }) => at - pressedAt - cue.at)
    .filter((late) => late > 1e-3);
}

/** Planned cues that were heard more than once. */
export function twiceIn(ears: readonly Ear[], section: Section): readonly Cue[] {
  const cues = ears.map(({ cue }) => cue).filter((cue) => isPlanned(section, cue));
  return cues.filter((cue, i) => cues.indexOf(cue) < i);
}

/** Moments' tones of a section, seconds into it, in `[from, to)`, that were not heard at their time (1e-6 s). */
export function lostIn(
  ears: readonly Ear[],
  section: Section,
  pressedAt: number,
  from: number,
  to: number,
): readonly number[] {
  return section.cues
    .filter(({ kind, at }) => kind === "now" && at >= from && at < to)
    .filter(
      (now) =>
        !ears.some(
          ({ cue, at }) =>
            cue.kind === "now" &&
            cue.sounds[0] === now.sounds[0] &&
            Math.abs(at - pressedAt - now.at) < 1e-6,
        ),
    )
    .map(({ at }) => at);
}

/** Pairs of words of which the one began before the other was over. */
export function acrossIn(ears: readonly Ear[]): readonly string[] {
  const said = ears.filter(({ cue }) => cue.channel === "voice").toSorted((a, b) => a.at - b.at);
  return said.flatMap(({ cue, at }, i) => {
    const before = said[i - 1];
    return before === undefined || at - before.until > -1e-6
      ? []
      : [`“${before.cue.says}” until ${before.until}, “${cue.says}” at ${at}`];
  });
}

export const isSummary = (says: string): boolean => /gone|missed|cannot tell/i.test(says);
/** Words that were still being said in the last second before a moment's tone. */
export function coveredIn(ears: readonly Ear[], from: number): readonly string[] {
  const nows = ears.filter(({ cue, at }) => cue.kind === "now" && at >= from);
  return nows.flatMap((now) =>
    ears
      .filter(({ cue }) => cue.channel === "voice")
      .filter(({ at, until }) => at < now.at - 1e-6 && until > now.at - 1 + 1e-6)
      .map(({ cue, until }) => `“${cue.says}” until ${until}, before ${now.at}`),
  );
}
