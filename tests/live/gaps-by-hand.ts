// A developer by hand whose clocks go wrong: what the run noted, where it then stands, and whether it is heard well.
import fc from "fast-check";
import { expect } from "vitest";
import { gullrock } from "../plan/worksheets.ts";
import { compiled } from "../timeline/scene.ts";
import { runByHand } from "./by-hand.ts";
import { acrossIn, isSummary, lateIn, lostIn, twiceIn } from "./ear.ts";

export const { sections } = compiled(gullrock);
export const developer = sections.findIndex(({ id }) => id === "developer");
export const anySecond = fc.double({ min: 1, max: 600, noNaN: true });

/** Some seconds into the developer, looked at a second ago at most. */
export function developing(seconds: number) {
  const here = runByHand(gullrock);
  here.pressThrough(developer + 1);
  here.wait(seconds);
  return here;
}
export type Here = ReturnType<typeof developing>;

export const elapsed = ({ run }: Here): number => {
  const now = run.position();
  return now.kind === "timed" ? now.elapsed : Number.POSITIVE_INFINITY;
};
export const notes = ({ run }: Here) =>
  run
    .journal()
    .entries.flatMap((entry) =>
      entry.kind === "woke" ? [entry.from] : entry.kind === "clock-set" ? [entry.kind] : [],
    );

export const saidSince = (here: Here, from: number) =>
  here.ears().flatMap(({ cue, at }) => (at >= from && cue.says !== undefined ? [cue.says] : []));

/** Two minutes on: every moment in its time, one late cue at most, one summary at most, never two voices. */
export function heardWell(here: Here, woke: number, summaries: number): void {
  const [section] = here.run.journal().timeline.sections.slice(developer);
  if (section === undefined) throw new Error("a development has a developer");
  const before = here.ears().length;
  const into = elapsed(here);
  here.look();
  const pressedAt = here.run.begunAt();
  here.wait(120);
  const ears = here.ears();
  const since = ears.slice(before);
  expect(lostIn(ears, section, pressedAt, into + 0.01, into + 119)).toEqual([]);
  expect(twiceIn(ears, section)).toEqual([]);
  const late = lateIn(since, section, pressedAt).filter((by) => by < 1000);
  expect(late.length).toBeLessThanOrEqual(1);
  for (const by of late) expect(by).toBeLessThanOrEqual(0.5);
  const said = since.flatMap(({ cue }) => (cue.says && isSummary(cue.says) ? [cue.says] : []));
  expect(said).toHaveLength(summaries);
  expect(acrossIn(since)).toEqual([]);
  expect(since.filter((each) => each.at < woke - 1e-6)).toEqual([]);
}
