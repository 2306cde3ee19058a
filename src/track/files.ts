// A session and the kind of file wanted in, the file's bytes out, piece by piece: the one function by which the
// page and the command line make every file that a person takes along, so that both make the same bytes.
import type { Worksheet } from "../plan/worksheet.ts";
import type { Sources } from "../timeline/sound.ts";
import type { Mp3Encoder } from "../tones/mp3.ts";
import { mostSamples } from "../tones/wav.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { spokenIn } from "../units/language.ts";
import { utf8 } from "./bytes.ts";
import { calendarOf } from "./calendar.ts";
import { captionsOf, subRipOf, webVttOf } from "./captions.ts";
import { id3Of, type Named } from "./id3.ts";
import { mix, trackSamples } from "./mix.ts";
import { mp3Bytes, mp3Pieces } from "./mp3-file.ts";
import { sheetOf } from "./sheet.ts";
import { ssmlOf } from "./ssml.ts";
import { type Spoken, type Track, type TrackWish, trackOf } from "./track.ts";
import { wavBytes, wavPieces } from "./wav-file.ts";
import { wavMarks } from "./wav-marks.ts";

/** Of what leaves as sound, and of what leaves as text, by how the file's name ends. */
export const soundKinds = ["mp3", "wav"] as const;
export const textKinds = ["vtt", "srt", "ssml", "ics", "txt"] as const;
export type FileKind = (typeof soundKinds)[number] | (typeof textKinds)[number];

export interface FileWish extends TrackWish {
  readonly kind: FileKind;
  /** `"2026-12-05T18:30"`: for an entry in a calendar. */
  readonly at?: string | undefined;
}

export interface Session extends Spoken {
  readonly worksheet: Worksheet;
  readonly sources: () => Promise<Sources>;
  readonly encoder: () => Promise<Mp3Encoder>;
}

export interface SessionFile {
  readonly track: Track;
  /** Of all pieces together: to tell how far it is. */
  readonly bytes: number;
  readonly pieces: Iterable<Uint8Array>;
}

/** Null where it is longer than a file of sound can say: about a day. */
export async function fileOf(session: Session, wish: FileWish): Promise<SessionFile | null> {
  const track = trackOf(session, wish);
  const samples = trackSamples(track);
  switch (wish.kind) {
    case "mp3": {
      if (samples > mostSamples) return null;
      const tag = id3Of(namedOf(track, session));
      const sound = mix(track, await session.sources());
      const pieces = mp3Pieces(tag, samples, sound, await session.encoder());
      return { track, bytes: mp3Bytes(tag, samples), pieces };
    }
    case "wav": {
      if (samples > mostSamples) return null;
      const marks = wavMarks(namedOf(track, session));
      const pieces = wavPieces(samples, mix(track, await session.sources()), marks);
      return { track, bytes: wavBytes(samples, marks), pieces };
    }
    default: {
      const text = utf8(textOf(session, wish, wish.kind, track));
      return { track, bytes: text.length, pieces: [text] };
    }
  }
}

function textOf(
  session: Session,
  wish: FileWish,
  kind: (typeof textKinds)[number],
  track: Track,
): string {
  const { timeline, script, worksheet } = session;
  switch (kind) {
    case "vtt":
      return webVttOf(captionsOf(track, script));
    case "srt":
      return subRipOf(captionsOf(track, script));
    case "ssml":
      return ssmlOf(track, spokenIn(worksheet.language));
    case "ics":
      if (wish.at === undefined) throw new Error("An entry in a calendar wants its time.");
      return calendarOf({
        title: titleOf(worksheet),
        at: wish.at,
        seconds: track.seconds,
        steps: timeline.sections.map(({ title, seconds }) =>
          seconds > 0 ? `${title}, ${writeClockTime(Math.ceil(seconds))}` : title,
        ),
      });
    case "txt":
      return sheetOf(timeline, script);
  }
}

const namedOf = (track: Track, { worksheet, script }: Session): Named => ({
  title: titleOf(worksheet),
  language: spokenIn(worksheet.language),
  seconds: track.seconds,
  chapters: track.chapters,
  captions: captionsOf(track, script),
});

/** What a session is called where it has no name of its own. */
const titleOf = (worksheet: Worksheet): string =>
  worksheet.title?.trim() ? worksheet.title.trim() : `Tankside: ${worksheet.developer.label}`;
