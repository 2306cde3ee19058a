// An ID3 tag and a WAV file's chunks, read back by the formats' own descriptions: what the writers are held to.
export interface Frame {
  readonly id: string;
  readonly content: Uint8Array;
}

const latin = (bytes: Uint8Array) => String.fromCharCode(...bytes);
const number = (bytes: Uint8Array) => bytes.reduce((sum, byte) => sum * 256 + byte, 0);
const utf16 = new TextDecoder("utf-16le");

/** Frames of ID3v2.3, and how many bytes the tag takes. */
export function readId3(file: Uint8Array): { frames: readonly Frame[]; bytes: number } {
  if (latin(file.subarray(0, 3)) !== "ID3" || file[3] !== 3) throw new Error("no tag");
  const length = [6, 7, 8, 9].reduce((sum, at) => sum * 128 + (file[at] ?? 0), 0);
  const bytes = 10 + length;
  return { frames: framesIn(file.subarray(10, bytes)), bytes };
}

function framesIn(bytes: Uint8Array): readonly Frame[] {
  const frames: Frame[] = [];
  for (let at = 0; at < bytes.length; ) {
    const length = number(bytes.subarray(at + 4, at + 8));
    const content = bytes.subarray(at + 10, at + 10 + length);
    if (content.length !== length) throw new Error("a frame is cut off");
    frames.push({ id: latin(bytes.subarray(at, at + 4)), content });
    at += 10 + length;
  }
  return frames;
}

/** Of a text frame: UTF-16 with its mark. */
export function textOf({ content }: Frame): string {
  if (content[0] !== 1 || content[1] !== 0xff || content[2] !== 0xfe) throw new Error("no text");
  return utf16.decode(content.subarray(3));
}

export function chapterOf({ content }: Frame) {
  const end = content.indexOf(0);
  const [title] = framesIn(content.subarray(end + 17));
  if (title === undefined) throw new Error("a chapter without a title");
  return {
    id: latin(content.subarray(0, end)),
    at: number(content.subarray(end + 1, end + 5)),
    until: number(content.subarray(end + 5, end + 9)),
    title: textOf(title),
  };
}

/** The children of a table of contents. */
export function contentsOf({ content }: Frame): readonly string[] {
  const end = content.indexOf(0);
  const ids = latin(content.subarray(end + 3))
    .split("\0")
    .slice(0, -1);
  if (content[end + 2] !== ids.length) throw new Error("another number of chapters");
  return ids;
}

/** Texts with their times, ms, of a SYLT frame. */
export function inStepOf({ content }: Frame): readonly { text: string; at: number }[] {
  const lines: { text: string; at: number }[] = [];
  // Encoding, language, unit, kind; then an empty description.
  for (let at = 1 + 3 + 2 + 4; at < content.length; ) {
    let end = at + 2;
    while (content[end] !== 0 || content[end + 1] !== 0) end += 2;
    const text = utf16.decode(content.subarray(at + 2, end));
    lines.push({ text, at: number(content.subarray(end + 2, end + 6)) });
    at = end + 6;
  }
  return lines;
}

/** The chunks of a WAV file, by their names. */
export function chunksOf(file: Uint8Array): readonly Frame[] {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  if (view.getUint32(4, true) !== file.length - 8) throw new Error("another length");
  const chunks: Frame[] = [];
  for (let at = 12; at < file.length; ) {
    const length = view.getUint32(at + 4, true);
    chunks.push({
      id: latin(file.subarray(at, at + 4)),
      content: file.subarray(at + 8, at + 8 + length),
    });
    at += 8 + length + (length % 2);
  }
  return chunks;
}
