// What a track is called, its chapters and its words in, the chunks that follow a WAV file's samples out: its name
// (LIST INFO), a cue with a label a chapter, loops for the waits that are to be played over and over (smpl), and
// the same tag as an MP3 file's, which is what most players look for.
import { sampleRate } from "../tones/designs.ts";
import { joined, latin, littleEndian, utf8 } from "./bytes.ts";
import { id3Of, type Named } from "./id3.ts";
import type { Chapter } from "./track.ts";

export function wavMarks(named: Named): Uint8Array {
  const { title, chapters } = named;
  const looped = chapters.flatMap((chapter, i) => (chapter.loops ? [{ chapter, i }] : []));
  return joined([
    chunk("LIST", [latin("INFO"), text("INAM", title), text("ISFT", "Tankside")]),
    chunk("cue ", [number(chapters.length), ...chapters.map(cuePoint)]),
    chunk("LIST", [
      latin("adtl"),
      ...chapters.map((chapter, i) =>
        chunk("labl", [number(i + 1), utf8(chapter.title), Uint8Array.of(0)]),
      ),
    ]),
    ...(looped.length === 0 ? [] : [loops(looped)]),
    chunk("id3 ", [id3Of(named)]),
  ]);
}

const number = (value: number): Uint8Array => littleEndian(value, 4);
const sampleAt = (seconds: number): number => Math.round(seconds * sampleRate);

function cuePoint({ at }: Chapter, i: number): Uint8Array {
  const sample = number(sampleAt(at));
  return joined([number(i + 1), sample, latin("data"), number(0), number(0), sample]);
}

/** For a sampler: no maker, no product, the length of a sample in ns, middle C, and forward loops without end. */
function loops(looped: readonly { readonly chapter: Chapter; readonly i: number }[]): Uint8Array {
  return chunk("smpl", [
    ...[0, 0, Math.round(1e9 / sampleRate), 60, 0, 0, 0, looped.length, 0].map(number),
    ...looped.map(({ chapter: { at, until }, i }) =>
      joined([i + 1, 0, sampleAt(at), sampleAt(until) - 1, 0, 0].map(number)),
    ),
  ]);
}

const text = (id: string, content: string): Uint8Array =>
  chunk(id, [utf8(content), Uint8Array.of(0)]);

/** Filled up to an even number of bytes, as RIFF wants it. */
function chunk(id: string, parts: readonly Uint8Array[]): Uint8Array {
  const content = joined(parts);
  const pad = new Uint8Array(content.length % 2);
  return joined([latin(id), number(content.length), content, pad]);
}
