// @vitest-environment happy-dom
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import webvtt from "webvtt-parser";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { calendarOf, readPlannedTime } from "../../src/track/calendar.ts";
import { type Caption, captionsOf, subRipOf, webVttOf } from "../../src/track/captions.ts";
import { ssmlOf } from "../../src/track/ssml.ts";
import { trackOf } from "../../src/track/track.ts";
import { gullrock } from "../plan/worksheets.ts";
import { anyWorksheet } from "../timeline/any-worksheet.ts";
import { compiled, english, estimatedLengths } from "../timeline/scene.ts";

const trackFor = (worksheet: Worksheet, gap = 60) =>
  trackOf(
    {
      timeline: compiled(worksheet),
      script: english,
      lengths: estimatedLengths(1),
      speaks: worksheet.voice?.detail !== "tones",
    },
    { gap, waits: "pass" },
  );

/** What another program makes of WebVTT. */
function parsed(text: string) {
  const { cues, errors } = new webvtt.WebVTTParser().parse(text, "captions");
  return {
    errors,
    captions: cues.map(({ startTime, endTime, text }) => ({
      at: Math.round(startTime * 1000),
      until: Math.round(endTime * 1000),
      text,
    })),
  };
}

/** Of SubRip, by its custom. */
function parsedSubRip(text: string): readonly Caption[] {
  const ms = (stamp: string) => {
    const [h = 0, m = 0, s = 0, rest = 0] = stamp.split(/[:,]/).map(Number);
    return ((h * 60 + m) * 60 + s) * 1000 + rest;
  };
  return text.split("\r\n\r\n").map((block, i) => {
    const [number, times = "", ...lines] = block.replace(/\r\n$/, "").split("\r\n");
    expect(number).toBe(String(i + 1));
    const [at = "", until = ""] = times.split(" --> ");
    return { at: ms(at), until: ms(until), text: lines.join("\n") };
  });
}

describe("Captions", () => {
  test("are WebVTT to another program's mind, within 10 ms of the timeline, for any worksheet", () => {
    let seen = 0;
    fc.assert(
      fc.property(anyWorksheet, fc.integer({ min: 0, max: 200 }), (worksheet, gap) => {
        const track = trackFor(worksheet, gap);
        const { captions, errors } = parsed(webVttOf(captionsOf(track, english)));
        expect(errors).toEqual([]);
        // The parser puts what begins together in order of its end, the longest first.
        const spoken = track.cues
          .filter(({ cue }) => cue.says !== undefined || cue.kind === "now")
          .toSorted((a, b) => a.at - b.at || b.until - a.until);
        expect(captions).toHaveLength(spoken.length);
        for (const [i, { at, until, cue }] of spoken.entries()) {
          const caption = captions[i];
          expect(Math.abs((caption?.at ?? -1) / 1000 - at)).toBeLessThan(0.01);
          expect(Math.abs((caption?.until ?? -1) / 1000 - until)).toBeLessThan(0.01);
          if (cue.says !== undefined) expect(caption?.text).toBe(cue.says);
        }
        seen += spoken.length;
      }),
      { numRuns: 12 },
    );
    expect(seen).toBeGreaterThan(300);
  });

  test("are the same in SubRip", () => {
    const captions = captionsOf(trackFor(gullrock), english);
    expect(captions.length).toBeGreaterThan(100);
    expect(parsedSubRip(subRipOf(captions))).toEqual(captions);
  });

  test("stand on screen as they were, whatever is in them", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ minLength: 1 })), (texts) => {
        const captions = texts
          .map((text) => text.replace(/[\r\n\0]|-->/g, " ").trim())
          .filter((text) => text !== "")
          .map((text, i) => ({ at: 2000 * i, until: 2000 * i + 1500, text }));
        const holder = document.createElement("p");
        const shown = parsed(webVttOf(captions)).captions.map((caption) => {
          holder.innerHTML = caption.text;
          return { ...caption, text: holder.textContent };
        });
        expect(shown).toEqual(captions);
      }),
      { numRuns: 100 },
    );
  });

  test("name the tone of a moment, since a caption is for who does not hear it", () => {
    const texts = captionsOf(trackFor(gullrock), english).map(({ text }) => text);
    expect(texts).toContain("[pour out]");
  });
});

describe("The spoken script as SSML", () => {
  const track = trackFor(gullrock);
  const text = ssmlOf(track, "en");
  const document = new DOMParser().parseFromString(text, "application/xml");
  const speak = document.documentElement;

  test("is one speak element of version 1.1, in the worksheet's language", () => {
    expect(speak.localName).toBe("speak");
    expect(speak.getAttribute("version")).toBe("1.1");
    expect(speak.getAttribute("xmlns")).toBe("http://www.w3.org/2001/10/synthesis");
    expect(speak.getAttribute("xml:lang")).toBe("en");
  });

  test("has a paragraph a section, a sentence a cue, and a mark of its own at every moment", () => {
    expect(speak.querySelectorAll("p")).toHaveLength(track.starts.length);
    const said = [...speak.querySelectorAll("s")].map((s) => s.textContent);
    expect(said).toEqual(track.cues.flatMap(({ cue }) => cue.says ?? []));
    const marks = [...speak.querySelectorAll("mark")].map((mark) => mark.getAttribute("name"));
    expect(marks).toHaveLength(track.moments.length);
    expect(new Set(marks).size).toBe(marks.length);
  });

  test("is silent between them for as long as the track is", () => {
    const silence = [...text.matchAll(/<break time="(\d+)ms"\/>/g)].reduce(
      (sum, [, ms]) => sum + Number(ms) / 1000,
      0,
    );
    const spoken = track.cues.reduce(
      (sum, { cue, at, until }) => sum + (cue.says === undefined ? 0 : until - at),
      0,
    );
    const last = Math.max(
      ...track.cues.flatMap(({ cue, until }) => (cue.says === undefined ? [] : [until])),
      ...track.moments.map(({ at }) => at),
    );
    expect(silence + spoken).toBeGreaterThan(last - 1);
    expect(silence + spoken).toBeLessThan(last + 1);
  });
});

/** Lines unfolded, by RFC 5545. */
const unfolded = (text: string) => text.replaceAll("\r\n ", "").split("\r\n");
const unescaped = (text: string) =>
  text.replace(/\\([nN\\;,])/g, (_, letter) => (/n/i.test(letter) ? "\n" : letter));

describe("An entry in a calendar", () => {
  const planned = {
    title: "Gullrock Light, Thursday",
    at: "2026-12-05T18:30",
    seconds: 3599,
    steps: ["Lay out", "Developer; and stop bath, 9:30"],
  };

  test("begins at the time on the wall, lasts as long as the session, and names its steps", () => {
    const lines = unfolded(calendarOf(planned));
    expect(lines).toContain("DTSTART:20261205T183000");
    expect(lines).toContain("DURATION:PT60M");
    expect(lines).toContain("SUMMARY:Gullrock Light\\, Thursday");
    expect(lines).toContain("DESCRIPTION:1. Lay out\\n2. Developer\\; and stop bath\\, 9:30");
  });

  test("is the same entry for the same session at the same time, and another at another", () => {
    const uid = (text: string) => /UID:(.*)/.exec(text)?.[1];
    expect(calendarOf(planned)).toBe(calendarOf({ ...planned }));
    expect(uid(calendarOf(planned))).not.toBe(
      uid(calendarOf({ ...planned, at: "2026-12-05T18:31" })),
    );
    expect(uid(calendarOf(planned))).not.toBe(uid(calendarOf({ ...planned, title: "Foghorn" })));
  });

  test("keeps to lines of 75 octets that end as they must, whatever it is called", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: "grapheme", maxLength: 200 }),
        fc.array(fc.string()),
        (title, steps) => {
          const text = calendarOf({ ...planned, title, steps });
          expect(text.endsWith("END:VCALENDAR\r\n")).toBe(true);
          for (const line of text.split("\r\n")) {
            expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
            expect(line).not.toMatch(/[\r\n]/);
          }
          const summary = unfolded(text).find((line) => line.startsWith("SUMMARY:")) ?? "";
          expect(unescaped(summary.slice("SUMMARY:".length))).toBe(
            title.replace(/\r\n|\r/g, "\n").replace(/(?!\n)\p{Cc}/gu, " "),
          );
        },
      ),
      { numRuns: 200 },
    );
  });

  test.each(["2026-12-05T18:30", "2024-02-29T00:00", "2026-12-05T18:30:00"])(
    "may be at %s",
    (at) => {
      expect(readPlannedTime(at)).toBe(at.slice(0, 16));
    },
  );

  test.each(["", "tomorrow", "2026-02-29T18:30", "2026-12-05 18:30", "2026-12-05T24:30"])(
    "is refused at “%s”",
    (at) => {
      expect(readPlannedTime(at)).toBeNull();
    },
  );
});
