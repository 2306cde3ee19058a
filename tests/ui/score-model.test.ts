import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Section } from "../../src/timeline/score.ts";
import { demos } from "../../src/ui/demo.ts";
import { scoreOf } from "../../src/ui/score-model.ts";
import type { FoldedStretch, OpenStretch, ScoreSystem } from "../../src/ui/score-shape.ts";
import { textWidth, widestOf, wrapped } from "../../src/ui/score-type.ts";
import { changed, foghorn } from "../plan/worksheets.ts";
import { anyWorksheet } from "../timeline/any-worksheet.ts";
import { compiled } from "../timeline/scene.ts";
import "./late-words.ts";

const demo = compiled(demos.gullrock);
const drum = compiled(
  changed(demos.gullrock, {
    tank: { method: "rotary" },
    agitation: { first: 60, every: 60, for: 60 },
  }),
);
const examples = [
  demo,
  drum,
  compiled(foghorn),
  compiled(changed(foghorn, { voice: { detail: "tones" } })),
];

const sectionOf = (id: string, timeline = demo): Section => {
  const found = timeline.sections.find((section) => section.id === id);
  if (found === undefined) throw new Error(`no section is called ${id}`);
  return found;
};
const open = (system: ScoreSystem): readonly OpenStretch[] =>
  system.stretches.filter((stretch) => stretch.kind === "open");
const folded = (system: ScoreSystem): readonly FoldedStretch[] =>
  system.stretches.filter((stretch) => stretch.kind === "folded");
/** Seconds that a place on a stretch stands for. */
const secondsAt = (stretch: OpenStretch, x: number) => stretch.from + x / stretch.scale;
/** Seconds; a millionth of one is what sums of decimal fractions may miss. */
const FUZZ = 1e-6;
const increasing = (values: readonly number[]) =>
  values.every((value, i) => i === 0 || value >= (values[i - 1] ?? 0) - FUZZ);

function holdsLaws(section: Section): void {
  const systems = scoreOf(section);

  const drawnMoments = systems.flatMap((system) =>
    system.stretches.flatMap((it) =>
      it.kind === "open" ? it.notes.map((n) => n.moment) : it.moments,
    ),
  );
  expect(drawnMoments).toEqual(section.moments.map((_, i) => i));

  const words = systems.flatMap((system) => open(system).flatMap((it) => it.words));
  const voices = section.cues.flatMap((cue, i) => (cue.channel === "voice" ? [i] : []));
  expect(words.map((word) => word.cue)).toEqual(voices);
  for (const word of words) expect(word.lines.join(" ")).toBe(section.cues[word.cue]?.says);

  const ticks = systems.flatMap((system) =>
    system.stretches.flatMap((it) => (it.kind === "open" ? it.ticks.map((t) => t.cue) : it.cues)),
  );
  const tones = section.cues.flatMap((cue, i) => (cue.channel === "voice" ? [] : [i]));
  expect(ticks.toSorted((a, b) => a - b)).toEqual(tones);

  for (const system of systems) {
    for (const [i, stretch] of system.stretches.entries()) {
      const next = system.stretches[i + 1];
      if (next !== undefined) expect(next.from).toBeCloseTo(stretch.to, 6);
      expect(stretch.to).toBeGreaterThanOrEqual(stretch.from);
      if (stretch.kind === "folded") foldIsEmpty(section, stretch);
      else stretchIsTrue(section, system, stretch);
    }
  }
}

/** A fold holds nothing but the middle of a bout that goes on and on. */
function foldIsEmpty(section: Section, fold: FoldedStretch): void {
  for (const i of fold.moments) expect(section.moments[i]?.do).toBe("invert");
  for (const i of fold.cues) expect(section.cues[i]?.kind).toBe("beat");
  expect(fold.length).toMatch(/^(×\d+, )?(\d+ s|\d+:\d\d(:\d\d)?)$/);
}

function stretchIsTrue(section: Section, { lanes }: ScoreSystem, stretch: OpenStretch): void {
  const { words, ticks, notes, width } = stretch;
  for (const word of words) {
    const cue = section.cues[word.cue];
    expect(secondsAt(stretch, word.x)).toBeCloseTo(cue?.at ?? -1, 6);
    expect(word.spoken / stretch.scale).toBeCloseTo((cue?.until ?? 0) - (cue?.at ?? 0), 6);
    expect(word.y).toBeGreaterThanOrEqual(lanes.words.top);
    expect(word.y + word.lines.length * 19).toBeLessThan(lanes.words.bottom);
    expect(word.x + widestOf(word.lines)).toBeLessThanOrEqual(width);
  }
  for (const tick of ticks) {
    expect(secondsAt(stretch, tick.x)).toBeCloseTo(section.cues[tick.cue]?.at ?? -1, 6);
  }
  for (const note of notes) {
    expect(secondsAt(stretch, note.x)).toBeCloseTo(section.moments[note.moment]?.at ?? -1, 6);
    const top = lanes.names.top + note.row * 19;
    if (note.name !== null) expect(top + 19).toBeLessThanOrEqual(lanes.names.bottom);
  }
  for (const lane of [words, ticks, notes]) expect(increasing(lane.map(({ x }) => x))).toBe(true);
  flagsAreClear(stretch);
  namesAreClear(stretch);
}

/** No words lie on others, and no mast goes through any. */
function flagsAreClear({ words }: OpenStretch): void {
  for (const [i, word] of words.entries()) {
    for (const later of words.slice(i + 1)) {
      const reaches = word.x + widestOf(word.lines) > later.x;
      if (reaches) expect(word.y + word.lines.length * 19).toBeLessThanOrEqual(later.y);
    }
  }
}

function namesAreClear({ notes }: OpenStretch): void {
  const named = notes.flatMap((note) => (note.name === null ? [] : [{ ...note, name: note.name }]));
  for (const [i, note] of named.entries()) {
    const inRow = named.slice(i + 1).find((later) => later.row === note.row);
    if (inRow) expect(note.x + textWidth(note.name)).toBeLessThanOrEqual(inRow.x);
  }
}

describe("a score", () => {
  test("places every moment, every word and every tone once, in order, in its lane, at its time", () => {
    for (const timeline of examples) for (const section of timeline.sections) holdsLaws(section);
  });

  test("does so for any worksheet", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        for (const section of compiled(worksheet).sections) holdsLaws(section);
      }),
      { numRuns: 40 },
    );
  }, 120_000);

  test("has one system for each bath, in their order", () => {
    const baths = (id: string) => scoreOf(sectionOf(id)).map((system) => system.bath);
    expect(baths("developer")).toEqual(["developer", "stop"]);
    expect(baths("fixer")).toEqual(["fixer"]);
    const fills = sectionOf("wash", compiled(foghorn));
    expect(fills.moments.filter((moment) => moment.do === "pour-in")).toHaveLength(3);
    expect(scoreOf(fills).map((system) => system.bath)).toEqual(["wash"]);
  });

  test("keeps what belongs to no moment behind the words of the bath that were said before it", () => {
    const section = sectionOf("developer");
    const ready = section.cues.findIndex(({ says }) => says?.includes("second vessel"));
    const before = section.cues[ready];
    if (before === undefined) throw new Error("the second vessel is not spoken of");
    expect(section.moments[before.moment ?? 0]?.bath).toBe("stop");
    const [at, until] = [before.until + 0.3, before.until + 1.3];
    const after = { ...before, kind: "tell", at, until, moment: null, says: "A cap." } as const;
    holdsLaws({ ...section, cues: section.cues.toSpliced(ready + 1, 0, after) });
  });

  test("of a section that only tells has one system, without a bath", () => {
    const [system, ...others] = scoreOf(sectionOf("lay-out"));
    expect(others).toEqual([]);
    expect(system?.bath).toBeNull();
    expect(system?.lanes.hands).toEqual({ top: 0, bottom: 0 });
  });

  test("starts a bath's system where its first word or tone does, and the section's at its press", () => {
    const [developer, stop] = scoreOf(sectionOf("developer"));
    expect(developer?.stretches[0]?.from).toBe(0);
    const words = sectionOf("developer").cues.find((cue) => cue.says?.includes("second vessel"));
    expect(words?.at).toBeGreaterThan(500);
    expect(stop?.stretches[0]?.from).toBe(words?.at);
  });
});

describe("a fold", () => {
  test("stands for a rest of some length, which is written in it", () => {
    const [developer] = scoreOf(sectionOf("developer"));
    const folds = developer ? folded(developer) : [];
    expect(folds.length).toBeGreaterThan(10);
    for (const fold of folds) {
      expect(fold.to - fold.from).toBeGreaterThanOrEqual(7);
      expect(fold.length).toBe(`${Math.round(fold.to - fold.from)} s`);
      expect(fold.begins.map((stroke) => stroke.kind)).toEqual(["level"]);
    }
  });

  test("of a bout that never rests counts the inversions within it", () => {
    const section = sectionOf("developer", drum);
    const [developer] = scoreOf(section);
    const folds = developer ? folded(developer) : [];
    expect(folds.length).toBeGreaterThan(3);
    for (const fold of folds) {
      const turns = section.moments.filter(
        ({ at, do: deed }) => deed === "invert" && at >= fold.from && at < fold.to,
      );
      expect(fold.length.startsWith(`×${turns.length}, `)).toBe(true);
      expect(fold.begins.every((stroke) => stroke.kind === "swing")).toBe(true);
    }
  });
});

describe("the bath in the score", () => {
  test("opens with the pour-in, closes with the pour-out, and swings once for each inversion", () => {
    const [, stop] = scoreOf(sectionOf("developer"));
    const stretches = stop ? open(stop) : [];
    const strokes = stretches.flatMap((stretch) => stretch.strokes);
    expect(strokes[0]?.kind).toBe("rise");
    expect(strokes.at(-1)?.kind).toBe("fall");
    // A swing may hang over the end of a stretch, and is then drawn in both; it begins in one of them.
    const begun = stretches.flatMap(({ strokes, width }) =>
      strokes.filter(({ kind, from }) => kind === "swing" && from > -0.01 && from < width - 0.01),
    );
    expect(begun).toHaveLength(8);
  });

  test("of a day of turning is folded, whole, into as few stretches as a page can hold", () => {
    const day = compiled(
      changed(demos.gullrock, {
        developer: { leaflet: [{ temperature: { f: 69 }, time: "24:00:00" }] },
        agitation: { first: 60, every: 60, for: 60 },
      }),
    );
    const section = sectionOf("developer", day);
    expect(section.moments.length).toBeGreaterThan(30_000);
    const [developer] = scoreOf(section);
    const stretches = developer?.stretches ?? [];
    expect(stretches.length).toBeLessThan(100);
    const inFolds = developer ? folded(developer).flatMap(({ moments }) => moments) : [];
    expect(inFolds.length).toBeGreaterThan(20_000);
  });
});

describe("the score's text", () => {
  test("is cut into even lines without losing a word", () => {
    const says = "A quarter turn of the tank between inversions.";
    const lines = wrapped(says, 124);
    expect(lines.join(" ")).toBe(says);
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) expect(textWidth(line)).toBeLessThanOrEqual(124);
  });

  test("of one long word stays one line", () => {
    expect(wrapped("Entwicklungsdosendeckel", 60)).toEqual(["Entwicklungsdosendeckel"]);
  });
});
