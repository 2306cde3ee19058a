// What a track is called, its chapters and its words in, an ID3 tag out (ID3v2.3.0, and its addendum for chapters,
// id3.org): what most players read, texts as UTF-16.
import type { Language } from "../units/language.ts";
import { bigEndian, joined, latin, utf16 } from "./bytes.ts";
import type { Caption } from "./captions.ts";
import type { Chapter } from "./track.ts";

export interface Named {
  readonly title: string;
  readonly language: Language;
  readonly seconds: number;
  readonly chapters: readonly Chapter[];
  readonly captions: readonly Caption[];
}

/** ISO 639-2, as the tag wants it. */
const threeLetters: { readonly [language in Language]: string } = {
  en: "eng",
  de: "deu",
  es: "spa",
  fr: "fra",
  it: "ita",
  pt: "por",
  nl: "nld",
};

const UTF16 = Uint8Array.of(1);
const END = Uint8Array.of(0);
const END16 = Uint8Array.of(0, 0);
/** "Not by bytes": a chapter's times count. */
const NO_OFFSET = 0xffffffff;
/** The table of contents is the only one, and its chapters are in order. */
const TOP_AND_ORDERED = 3;
/** The most chapters that the table can name. */
const MOST_CHAPTERS = 255;

export function id3Of({ title, language, seconds, chapters, captions }: Named): Uint8Array {
  const spoken = latin(threeLetters[language]);
  const named = chapters.slice(0, MOST_CHAPTERS);
  const frames = joined([
    textFrame("TIT2", title),
    textFrame("TLAN", threeLetters[language]),
    textFrame("TLEN", String(Math.round(seconds * 1000))),
    textFrame("TSSE", "Tankside"),
    frame("CTOC", [
      latin("toc\0"),
      Uint8Array.of(TOP_AND_ORDERED, named.length),
      ...named.map((_, i) => latin(`${chapterId(i)}\0`)),
    ]),
    ...named.map(chapterFrame),
    frame("USLT", [UTF16, spoken, utf16(""), END16, utf16(linesOf(captions))]),
    // Times in ms; what is in step with them is the words of what is heard.
    frame("SYLT", [UTF16, spoken, Uint8Array.of(2, 1), utf16(""), END16, ...captions.map(inStep)]),
  ]);
  return joined([latin("ID3"), Uint8Array.of(3, 0, 0), synchSafe(frames.length), frames]);
}

const linesOf = (captions: readonly Caption[]): string =>
  captions.map(({ text }) => text).join("\n");

const inStep = ({ at, text }: Caption): Uint8Array =>
  joined([utf16(text), END16, bigEndian(at, 4)]);

const chapterId = (i: number): string => `chp${i}`;

function chapterFrame({ title, at, until }: Chapter, i: number): Uint8Array {
  return frame("CHAP", [
    latin(chapterId(i)),
    END,
    ...[at, until].map((time) => bigEndian(Math.round(time * 1000), 4)),
    bigEndian(NO_OFFSET, 4),
    bigEndian(NO_OFFSET, 4),
    textFrame("TIT2", title),
  ]);
}

const textFrame = (id: string, text: string): Uint8Array => frame(id, [UTF16, utf16(text)]);

function frame(id: string, parts: readonly Uint8Array[]): Uint8Array {
  const content = joined(parts);
  return joined([latin(id), bigEndian(content.length, 4), bigEndian(0, 2), content]);
}

/** Seven bits a byte, so that no player takes it for sound. */
const synchSafe = (length: number): Uint8Array =>
  Uint8Array.from([21, 14, 7, 0], (shift) => (length >> shift) & 127);
