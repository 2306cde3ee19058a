// A timeline in, plain text out, 40 columns: to read, to pin to the wall, to emboss.
// Moments stand with their times; words stand beneath, in quotation marks; inversions are counted.
import type { Moment } from "../process/moments.ts";
import type { Section, Timeline } from "../timeline/score.ts";

const WIDTH = 40;
/** Columns kept for the time. */
const TIME = 8;

const deeds: { readonly [deed: string]: string } = {
  "pour-in": "POUR IN",
  full: "full",
  agitate: "agitate",
  rest: "rest",
  tap: "tap",
  "pour-out": "POUR OUT",
  empty: "empty",
};

export function sheetOf(timeline: Timeline): string {
  const { plan } = timeline;
  const lines = [
    ...plan.working.flatMap(({ label, result }) => wrapped(`${label}: ${result}`, 0, 2)),
    ...plan.warnings.flatMap(({ severity, text }) =>
      wrapped(`${severity.toUpperCase()}: ${text}`, 0, 2),
    ),
    ...timeline.sections.flatMap(sectionLines),
  ];
  return `${lines.join("\n")}\n`;
}

function sectionLines(section: Section, i: number): readonly string[] {
  const marks = [
    ...section.moments.flatMap((moment, at) => momentLine(moment, at, section.moments)),
    ...section.cues.flatMap((cue) =>
      cue.says === undefined ? [] : [{ at: Math.floor(cue.at), order: 1, text: `“${cue.says}”` }],
    ),
  ].toSorted((a, b) => a.at - b.at || a.order - b.order);
  return [
    "",
    ...wrapped(`${i + 1}. ${section.title}${section.dark ? " (dark)" : ""}`, 0, 3),
    "-".repeat(WIDTH),
    ...marks.flatMap(({ at, order, text }) =>
      order === 0 || section.seconds > 0
        ? wrapped(`${clock(at).padStart(TIME - 2)}  ${text}`, 0, TIME)
        : wrapped(text, TIME, TIME),
    ),
    ...section.left.flatMap(({ wanted, why }) => wrapped(`left out: “${wanted}” ${why}`, 2, 4)),
  ];
}

/** Inversions are told with the bout they belong to. */
function momentLine(moment: Moment, i: number, moments: readonly Moment[]) {
  if (moment.do === "invert") return [];
  const deed = deeds[moment.do] ?? moment.do;
  const text =
    moment.do === "agitate"
      ? `${deed}, ${inversionsFrom(moments, i + 1)} times`
      : moment.do === "tap"
        ? `${deed} ${moment.count ?? 1}`
        : moment.do === "pour-in"
          ? `${deed} ${moment.bath ?? ""}`
          : deed;
  return [{ at: moment.at, order: 0, text }];
}

function inversionsFrom(moments: readonly Moment[], from: number): number {
  let to = from;
  while (moments[to]?.do === "invert") to += 1;
  return to - from;
}

/** m:ss, with tenths where the moment does not fall on a second. */
function clock(seconds: number): string {
  const tenths = Math.round(seconds * 10);
  const whole = Math.floor(tenths / 10);
  const time = `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
  return tenths % 10 === 0 ? time : `${time}.${tenths % 10}`;
}

function wrapped(text: string, indent: number, hanging: number): readonly string[] {
  const lines: string[] = [];
  let line = " ".repeat(indent);
  // Runs of spaces align the times, so a break is sought only between words.
  for (const word of text.split(/(?<=\S) (?=\S)/)) {
    const joined = line.trim() === "" ? `${line}${word}` : `${line} ${word}`;
    if (joined.length > WIDTH && line.trim() !== "") {
      lines.push(line);
      line = " ".repeat(hanging) + word;
    } else line = joined;
  }
  lines.push(line);
  return lines;
}
