// A rehearsal's timeline and journal in, how each moment was met out: well, late, early or not at all; and what of
// that is worth practising, the most harmful first. Pure, and asked only afterwards: during a bath nobody is judged.
import type { Deed } from "../process/moments.ts";
import type { Tell } from "../process/outline.ts";
import type { Section } from "../timeline/score.ts";
import { type Journal, timed } from "./journal.ts";
import { type Due, metBy } from "./met.ts";

/** What a mark can stand for. */
type Marked = Extract<Deed, "pour-in" | "agitate" | "pour-out">;
type How = "well" | "late" | "early" | "missed";

export interface Judged {
  readonly bath: string;
  readonly deed: Marked;
  /** Seconds from its section's press, as planned. */
  readonly at: number;
  readonly how: How;
  /** Seconds later than planned; less than nought: earlier. 0 where it was missed. */
  readonly by: number;
}

/**
 * Up to here, seconds, a mark is as good as its moment. A tone that is counted in is met within a third of a
 * second, by a hand that also takes up a vessel within about one; and of the shortest usual development, five
 * minutes, it is half a per cent: a tenth of what a thermometer read to half a degree leaves open.
 */
export const WELL = 1.5;
/** A moment that was never marked harms as one so far off, seconds: who forgets to press has mostly poured. */
const MISSED_AS = 5;

const marks: readonly Deed[] = ["pour-in", "agitate", "pour-out"] satisfies readonly Marked[];

/** Every moment that a mark was due for, and every bout that was marked; empty where nothing was marked at all. */
export function judgedOf({ timeline, entries }: Journal): readonly Judged[] {
  const all = timed(entries);
  if (!all.some(({ entry }) => entry.kind === "marked")) return [];
  const end = all.at(-1)?.at ?? 0;
  return all.flatMap(({ entry, at: pressedAt }) => {
    if (entry.kind !== "pressed") return [];
    const section = timeline.sections.find(({ id }) => id === entry.section);
    if (section === undefined) return [];
    const pressed = all.flatMap(({ entry: mark, at }) =>
      mark.kind === "marked" && mark.section === section.id ? [at - pressedAt] : [],
    );
    return judgedIn(section, pressed, end - pressedAt);
  });
}

/** @param end seconds into the section up to which it was followed. */
function judgedIn(section: Section, pressed: readonly number[], end: number): readonly Judged[] {
  const moments = section.moments.filter((moment) => marks.includes(moment.do));
  /** A pour that was not yet due as it was left may have been marked early. */
  const isDue = (moment: Section["moments"][number]): boolean =>
    moment.do !== "agitate" && moment.at + WELL <= end;
  const due = moments.map(
    (moment): Due => ({ at: moment.at, is: isDue(moment) ? "to-be-marked" : "may-be-marked" }),
  );
  const met = metBy(due, pressed);
  return moments.flatMap((moment, place): readonly Judged[] => {
    const of = { bath: moment.bath ?? "", deed: moment.do as Marked, at: moment.at };
    const mark = pressed[met.get(place) ?? -1];
    if (mark !== undefined) {
      const by = mark - moment.at;
      return [{ ...of, how: howFar(by), by }];
    }
    return isDue(moment) ? [{ ...of, how: "missed", by: 0 }] : [];
  });
}

function howFar(by: number): How {
  if (Math.abs(by) <= WELL) return "well";
  return by > 0 ? "late" : "early";
}

/** What went the same way in the same bath is one thing to practise. */
export type Practice = Pick<Judged, "bath" | "deed"> & { readonly how: Exclude<How, "well"> };

/** So many at most are told: more than that nobody takes along. */
const TOLD = 3;

export function practiseOf(judged: readonly Judged[]): readonly Practice[] {
  const kinds = new Map<string, { readonly practice: Practice; harm: number }>();
  for (const [place, each] of judged.entries()) {
    const { bath, deed, how } = each;
    if (how === "well") continue;
    const key = `${bath} ${deed} ${how}`;
    const kind = kinds.get(key) ?? { practice: { bath, deed, how }, harm: 0 };
    kind.harm +=
      weightOf(each, judged[place - 1]) * (how === "missed" ? MISSED_AS : Math.abs(each.by));
    kinds.set(key, kind);
  }
  return [...kinds.values()]
    .toSorted((a, b) => b.harm - a.harm)
    .slice(0, TOLD)
    .map(({ practice }) => practice);
}

/**
 * What a second off does. It is developing time where the developer goes in and out, and where the bath that ends
 * it goes in; bouts make the contrast by their sameness; another bath that ends early is short. What comes late
 * elsewhere harms least.
 */
function weightOf({ bath, deed, how }: Judged, before: Judged | undefined): number {
  const endsIt = deed === "pour-in" && before?.bath === "developer";
  if (endsIt || bath === "developer") return deed === "agitate" ? 1 : 4;
  return deed === "pour-out" && how === "early" ? 1 : 0.5;
}

/** The same as the voice tells it. */
export function practiseTells(judged: readonly Judged[]): readonly Tell[] {
  if (judged.length === 0) return ["practise.unmarked"];
  const practices = practiseOf(judged);
  if (practices.length === 0) return ["practise.well"];
  return [
    "practise.these",
    ...practices.map(({ bath, deed, how }) => ({
      key: `practise.${deed}.${how}`,
      slots: { bath },
    })),
  ];
}
