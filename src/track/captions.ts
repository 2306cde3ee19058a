// A timeline in, WebVTT captions of its track out: what is said, and the moments' tones by name.
import type { Script } from "../script/script.ts";
import type { Cue, Section, Timeline } from "../timeline/score.ts";
import { layOut } from "./layout.ts";

/** @param script of the timeline's language. */
export function captionsOf(timeline: Timeline, gap: number, script: Script): string {
  const { starts } = layOut(timeline, gap);
  const cues = timeline.sections.flatMap((section, i) => {
    const start = starts[i]?.at ?? 0;
    return section.cues.flatMap((cue) => {
      const text = captionOf(cue, section, script);
      return text === null
        ? []
        : [`${stamp(start + cue.at)} --> ${stamp(start + cue.until)}\n${text}\n`];
    });
  });
  return `WEBVTT\n\n${cues.join("\n")}`;
}

function captionOf(cue: Cue, section: Section, script: Script): string | null {
  if (cue.says !== undefined) return escaped(cue.says);
  const deed = cue.kind === "now" ? section.moments[cue.moment ?? -1]?.do : undefined;
  return deed === undefined ? null : `[${script.write(deed)}]`;
}

const escaped = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");

function stamp(seconds: number): string {
  const ms = Math.round(seconds * 1000);
  const two = (n: number) => String(Math.floor(n)).padStart(2, "0");
  const rest = String(ms % 1000).padStart(3, "0");
  return `${two(ms / 3_600_000)}:${two((ms / 60_000) % 60)}:${two((ms / 1000) % 60)}.${rest}`;
}
