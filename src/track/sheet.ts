// A timeline in, plain text out, 40 columns: to read, to pin to the wall, to emboss.
// Moments stand with their times; words stand beneath, in quotation marks; inversions are counted.
import type { Moment } from "../process/moments.ts";
import type { Script } from "../script/script.ts";
import type { Section, Timeline } from "../timeline/score.ts";

const WIDTH = 40;
/** Columns kept for the time. */
const TIME = 8;

/** @param script of the timeline's language. */
export function sheetOf(timeline: Timeline, script: Script): string {
  const { plan } = timeline;
  const lines = [
    ...plan.working.flatMap(({ label, result }) => wrapped(`${label}: ${result}`, 0, 2)),
    ...plan.warnings.flatMap(({ severity, text }) =>
      wrapped(`${loud(script.write(severity), script)}: ${text}`, 0, 2),
    ),
    ...timeline.sections.flatMap((section, i) => sectionLines(section, i, script)),
  ];
  return `${lines.join("\n")}\n`;
}

const loud = (text: string, { source }: Script) => text.toLocaleUpperCase(source.language);

function sectionLines(section: Section, i: number, script: Script): readonly string[] {
  const marks = [
    ...section.moments.flatMap((moment, at) => momentLine(moment, at, section.moments, script)),
    ...section.cues.flatMap((cue) =>
      cue.says === undefined
        ? []
        : [{ at: Math.floor(cue.at), order: 1, text: script.write("said", { words: cue.says }) }],
    ),
  ].toSorted((a, b) => a.at - b.at || a.order - b.order);
  const dark = section.dark ? ` (${script.write("dark")})` : "";
  return [
    "",
    ...wrapped(`${i + 1}. ${section.title}${dark}`, 0, 3),
    "-".repeat(WIDTH),
    ...marks.flatMap(({ at, order, text }) =>
      order === 0 || section.seconds > 0
        ? wrapped(`${clock(at).padStart(TIME - 2)}  ${text}`, 0, TIME)
        : wrapped(text, TIME, TIME),
    ),
    ...section.left.flatMap(({ wanted, why }) =>
      wrapped(`${script.write("left")}: ${script.write("said", { words: wanted })} ${why}`, 2, 4),
    ),
  ];
}

/** Inversions are told with the bout they belong to; the pours stand out. */
function momentLine(moment: Moment, i: number, moments: readonly Moment[], script: Script) {
  if (moment.do === "invert") return [];
  return [{ at: moment.at, order: 0, text: deedText() }];

  function deedText(): string {
    const deed = script.write(moment.do, { n: moment.count ?? 1 });
    switch (moment.do) {
      case "agitate":
        return `${deed}, ${script.write("bouts", { n: inversionsFrom(moments, i + 1) })}`;
      case "pour-in":
        return `${loud(deed, script)} ${script.source.slots.bath?.[moment.bath ?? ""] ?? ""}`;
      case "pour-out":
        return loud(deed, script);
      default:
        return deed;
    }
  }
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
