// A track in, its captions out: what is said, and the moments' tones by name; as WebVTT, as SubRip, and as
// lines for what else wants them.
import type { Script } from "../script/script.ts";
import type { Track, TrackCue } from "./track.ts";

export interface Caption {
  /** Whole milliseconds from the start of the track. */
  readonly at: number;
  readonly until: number;
  readonly text: string;
}

/** @param script of the timeline's language. */
export function captionsOf(track: Track, script: Script): readonly Caption[] {
  return track.cues.flatMap((cue) => {
    const text = captionOf(cue, script);
    return text === null ? [] : [{ at: ms(cue.at), until: ms(cue.until), text }];
  });
}

export function webVttOf(captions: readonly Caption[]): string {
  const cues = captions.map(
    ({ at, until, text }) => `${stamp(at, ".")} --> ${stamp(until, ".")}\n${escaped(text)}\n`,
  );
  return `WEBVTT\n\n${cues.join("\n")}`;
}

/** SubRip, as players read it: numbered, with a comma in the times. */
export function subRipOf(captions: readonly Caption[]): string {
  return captions
    .map(
      ({ at, until, text }, i) =>
        `${i + 1}\r\n${stamp(at, ",")} --> ${stamp(until, ",")}\r\n${text}\r\n`,
    )
    .join("\r\n");
}

function captionOf({ cue, section }: TrackCue, script: Script): string | null {
  if (cue.says !== undefined) return cue.says;
  const deed = cue.kind === "now" ? section?.moments[cue.moment ?? -1]?.do : undefined;
  return deed === undefined ? null : `[${script.write(deed)}]`;
}

const ms = (seconds: number): number => Math.round(seconds * 1000);

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

function stamp(at: number, point: "." | ","): string {
  const two = (n: number) => String(Math.floor(n)).padStart(2, "0");
  const rest = String(at % 1000).padStart(3, "0");
  return `${two(at / 3_600_000)}:${two((at / 60_000) % 60)}:${two((at / 1000) % 60)}${point}${rest}`;
}
