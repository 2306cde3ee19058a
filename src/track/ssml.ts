// A track in, the script of what is spoken out, as SSML 1.1 (W3C): for whoever has it spoken by another voice.
// A paragraph a section, a sentence a cue, a mark at every moment, and breaks as long as the silence is.
import type { Language } from "../units/language.ts";
import type { Track, TrackCue } from "./track.ts";

interface Point {
  readonly at: number;
  /** Where it ends; a mark takes no time. */
  readonly until: number;
  readonly text: string;
}

export function ssmlOf(track: Track, language: Language): string {
  let at = 0;
  const paragraphs = sectionsOf(track).map((points) => {
    const lines = points.flatMap((point) => {
      const silence = Math.round((point.at - at) * 1000);
      at = Math.max(at, point.until);
      return [...(silence > 0 ? [`<break time="${silence}ms"/>`] : []), point.text];
    });
    return `  <p>\n${lines.map((line) => `    ${line}\n`).join("")}  </p>\n`;
  });
  return (
    '<?xml version="1.0" encoding="UTF-8"?>\n' +
    `<speak version="1.1" xmlns="http://www.w3.org/2001/10/synthesis" xml:lang="${language}">\n` +
    `${paragraphs.join("")}</speak>\n`
  );
}

/** What is spoken and marked, section by section, with the wait behind each. */
function sectionsOf({ starts, cues, moments }: Track): readonly (readonly Point[])[] {
  const points = [
    ...cues.flatMap(spoken),
    ...moments.map(({ at, name }) => ({ at, until: at, text: `<mark name="${escaped(name)}"/>` })),
  ].toSorted((a, b) => a.at - b.at);
  return starts.map(({ at }, i) => {
    const next = starts[i + 1]?.at ?? Number.POSITIVE_INFINITY;
    return points.filter((point) => point.at >= at && point.at < next);
  });
}

const spoken = ({ cue, at, until }: TrackCue): readonly Point[] =>
  cue.says === undefined ? [] : [{ at, until, text: `<s>${escaped(cue.says)}</s>` }];

const escaped = (text: string): string =>
  text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
