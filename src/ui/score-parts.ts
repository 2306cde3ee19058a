// A section in, its parts out: one for each bath, cut into passages that each have a scale of their
// own, with what wants to be drawn in them.
import type { Moment } from "../process/moments.ts";
import type { Cue, Section } from "../timeline/score.ts";
import type { Method } from "../trade/method.ts";
import { type Named, named, nameWidth, strokeInks, strokesOf } from "./score-hands.ts";
import type { Span } from "./score-ink.ts";
import { handScale, type Numbered, type Stroke, wordScale } from "./score-shape.ts";
import { wordsUntil } from "./score-words.ts";

/** Units of a tone's sign, by kind. A beat of the count-in reaches to the next, and so to its moment. */
const tickWidths: { readonly [kind in Cue["kind"]]?: number } = {
  now: 34,
  "count-in": handScale + 1,
};

/** One bath of a section, with what belongs to it. */
export interface Part {
  readonly bath: string | null;
  readonly moments: readonly Numbered<Moment>[];
  readonly cues: readonly Numbered<Cue>[];
}

/**
 * A cue goes with its moment's bath; one without a moment, with the bath that was poured in last, or is to be next
 * where that was spoken of already.
 */
export function partsOf({ moments, cues }: Section): readonly Part[] {
  const parts: (Part & { moments: Numbered<Moment>[]; cues: Numbered<Cue>[] })[] = [];
  for (const [i, moment] of moments.entries()) {
    const last = parts.at(-1);
    if (last && (moment.bath === null || moment.bath === last.bath)) last.moments.push([i, moment]);
    else parts.push({ bath: moment.bath, moments: [[i, moment]], cues: [] });
  }
  if (parts.length === 0) parts.push({ bath: null, moments: [], cues: [] });
  const partOf = new Map(parts.flatMap(({ moments }, part) => moments.map(([i]) => [i, part])));
  const pouredBy = (at: number) =>
    parts.findLastIndex(({ moments: [first] }) => first === undefined || first[1].at <= at);
  let latest = 0;
  for (const [i, cue] of cues.entries()) {
    const own = cue.moment === null ? undefined : partOf.get(cue.moment);
    const part = own ?? Math.max(latest, pouredBy(cue.at));
    latest = Math.max(latest, part);
    parts[part]?.cues.push([i, cue]);
  }
  return parts;
}

/** A part of a system with one scale. */
export interface Passage extends Part, Span {
  readonly scale: number;
  readonly strokes: readonly Stroke[];
  readonly names: readonly (Named & { readonly moment: number })[];
}

/** Once the hands are free, only words are left: they are given the room that words want. */
export function passagesOf(
  { bath, moments, cues }: Part,
  last: boolean,
  method: Method,
): readonly Passage[] {
  const strokes = strokesOf(moments);
  const names = moments.flatMap(([moment], i) => {
    const name = named(moments, i, method);
    return name === null ? [] : [{ ...name, moment }];
  });
  const begins = moments[0]?.[0] ?? 0;
  const starts = [...moments, ...cues].map(([, { at }]) => at);
  const from = begins === 0 ? 0 : starts.reduce((a, b) => Math.min(a, b));
  // What is left of the section after the last of these only waits for a press.
  const ends = [...starts, ...cues.map(([, cue]) => cue.until)];
  const to = ends.reduce((a, b) => Math.max(a, b), from);
  const free = moments.at(-1)?.[1].at;
  if (free === undefined) {
    return [{ bath, moments, cues, from, to, scale: wordScale, strokes, names }];
  }
  const hands = { bath, moments, from, scale: handScale, strokes, names };
  if (!last || to <= free) return [{ ...hands, cues, to }];
  const after = (cue: Cue) => cue.at > free;
  return [
    { ...hands, cues: cues.filter(([, cue]) => !after(cue)), to: free },
    {
      bath,
      moments: [],
      cues: cues.filter(([, cue]) => after(cue)),
      from: free,
      to,
      scale: wordScale,
      strokes: [],
      names: [],
    },
  ];
}

/** Where a passage has something to show, in seconds; its beats go with their bout. */
export function inksOf({ cues, names, strokes, from, scale, moments }: Passage): readonly Span[] {
  const drawnCues = cues.filter(([, cue]) => cue.kind !== "beat");
  return [
    ...strokeInks(strokes),
    ...drawnCues.map(([, cue]) =>
      cue.channel === "voice"
        ? { from: cue.at, to: wordsUntil(cue, scale) }
        : { from: cue.at, to: cue.at + (tickWidths[cue.kind] ?? 16) / scale },
    ),
    ...names
      .filter(({ name, clock }) => name !== null || clock !== null)
      .map((name) => ({ from: name.at, to: name.at + nameWidth(name) / scale })),
    // The press that starts it all.
    ...(from === 0 && moments.length > 0 ? [{ from: 0, to: 3 }] : []),
  ];
}
