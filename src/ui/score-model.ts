// A section in, its score out: one system for each bath, as stretches of time that are drawn or
// folded, with everything on them placed. Pure, so that what the picture holds can be proved.
//
//   section ─ parts ─▶ bath, moments, cues ─ inks ─▶ spans ─▶ stretches ─┬─ words  above
//                                                                       ├─ ticks  on their line
//                                                                       └─ notes  beneath the bath
import { bisector } from "d3-array";
import type { Section } from "../timeline/score.ts";
import type { Method } from "../trade/method.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { lateWords, writing } from "./language.ts";
import { placedNotes } from "./score-hands.ts";
import { type FoldedSpan, type OpenSpan, type Span, spansOf } from "./score-ink.ts";
import { inksOf, type Part, type Passage, partsOf, passagesOf } from "./score-parts.ts";
import type { FoldedStretch, OpenStretch, ScoreSystem, Stroke } from "./score-shape.ts";
import { lineHeight } from "./score-type.ts";
import { placedWords } from "./score-words.ts";

/** Seconds with nothing to draw, from which a fold is shorter than the time it stands for. */
const FOLD = 7;
/** Units of the bath drawn on either side of a fold's length, at most. */
const FOLD_SIDE = 120;
/** Units: the bath's depth, and how far above it its surface may swing. */
const DEPTH = 52;
const SWING = 16;
const TONES = 36;
const GAP = 8;
/** One system for each bath of the section, in order; one without a bath where it only tells. */
export function scoreOf(section: Section, method: Method = "inversion"): readonly ScoreSystem[] {
  const parts = partsOf(section);
  return parts.map((part, i) => systemOf(part, i === parts.length - 1, method));
}

function systemOf(part: Part, last: boolean, method: Method): ScoreSystem {
  const passages = passagesOf(part, last, method);
  const drawn = passages.map((passage) => ({
    passage,
    spans: spansOf(passage, inksOf(passage), FOLD),
  }));
  const hands = part.moments.length > 0;
  const toned = part.cues.some(([, cue]) => cue.channel !== "voice");
  const surface = hands ? -DEPTH - SWING : 0;
  const tones = { top: surface - GAP - (toned ? TONES : 0), bottom: surface - GAP };
  const stretches = drawn.flatMap(({ passage, spans }) => {
    const moments = sharedOut(passage.moments, ([, { at }]) => at, spans);
    const cues = sharedOut(passage.cues, ([, { at }]) => at, spans);
    const names = sharedOut(passage.names, ({ at }) => at, spans);
    return spans.map((span, i) => {
      const own = { ...passage, moments: moments(i), cues: cues(i), names: names(i) };
      return span.kind === "folded" ? foldOf(own, span) : openOf(own, span, tones.top - GAP);
    });
  });
  const open = stretches.filter((stretch) => stretch.kind === "open");
  const highest = Math.min(tones.top - GAP, ...open.flatMap(({ words }) => words.map((w) => w.y)));
  const rows = Math.max(0, ...open.flatMap(({ notes }) => notes.map((n) => n.row + 1)));
  const names = { top: GAP, bottom: GAP + rows * lineHeight };
  return {
    bath: part.bath,
    stretches,
    lanes: {
      words: { top: highest, bottom: tones.top - GAP },
      tones,
      hands: { top: surface, bottom: 0 },
      names,
      clock: { top: names.bottom + GAP, bottom: names.bottom + 2 * GAP + lineHeight },
    },
  };
}

const byStart = bisector(({ from }: Span) => from);
const byEnd = bisector(({ to }: Span) => to);

/** What begins in each of the spans, which follow one another; the last of them has no end. */
function sharedOut<Item>(
  items: readonly Item[],
  at: (item: Item) => number,
  spans: readonly Span[],
): (span: number) => readonly Item[] {
  const shares: Item[][] = spans.map(() => []);
  for (const item of items) shares[byStart.right(spans, at(item)) - 1]?.push(item);
  return (span) => shares[span] ?? [];
}

function openOf(
  { cues, names, scale, strokes }: Passage,
  { from, to, inked }: OpenSpan,
  bar: number,
): OpenStretch {
  const voices = cues.filter(([, cue]) => cue.channel === "voice");
  const tones = cues.filter(([, cue]) => cue.channel !== "voice");
  const x = (seconds: number) => (seconds - from) * scale;
  return {
    kind: "open",
    from,
    to,
    scale,
    width: x(Math.max(to, inked)),
    words: placedWords(voices, from, scale, bar),
    ticks: tones.map(([cue, { kind, at, sounds }]) => ({
      cue,
      kind,
      tone: sounds[0] ?? "",
      x: x(at),
    })),
    notes: placedNotes(names, from, scale),
    strokes: strokesWithin(strokes, from, to, x),
  };
}

/** What lies level can be cut anywhere; the rest is whole, and its frame cuts it off. */
function strokesWithin(
  strokes: readonly Stroke[],
  from: number,
  to: number,
  x: (seconds: number) => number,
): readonly Stroke[] {
  // One follows another, so that those that reach into it are neighbours.
  return strokes
    .slice(byEnd.right(strokes, from), byStart.left(strokes, to))
    .map(({ kind, ...stroke }) => {
      const ends = { from: Math.max(stroke.from, from), to: Math.min(stroke.to, to) };
      const shown = kind === "level" ? ends : stroke;
      return { kind, from: x(shown.from), to: x(shown.to) };
    });
}

function foldOf(
  { strokes, scale, moments, cues }: Passage,
  { from, to }: FoldedSpan,
): FoldedStretch {
  const shown = FOLD_SIDE / scale;
  const turns = moments.filter(([, moment]) => moment.do === "invert").length;
  const seconds = to - from;
  const time = seconds < 90 ? `${writing.value.number(seconds, 0)} s` : writeClockTime(seconds);
  return {
    kind: "folded",
    from,
    to,
    begins: strokesWithin(strokes, from, from + shown, (seconds) => (seconds - from) * scale),
    ends: strokesWithin(strokes, to - shown, to, (seconds) => (seconds - to) * scale),
    moments: moments.map(([index]) => index),
    cues: cues.map(([index]) => index),
    length:
      turns === 0 ? lateWords.value.score.still(time) : lateWords.value.score.moving(turns, time),
  };
}
