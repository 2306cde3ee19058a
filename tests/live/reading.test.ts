// A thermometer in the tank while the film develops: the end moves by what was measured, and is told of. Held to the
// formula itself and to a sum in small steps that shares nothing with it.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stepped, temperatureWordings } from "../../src/live/reading.ts";
import { staysOf } from "../../src/live/stays.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import type { Section } from "../../src/timeline/score.ts";
import { measuredDevelopment } from "../../src/trade/measured-development.ts";
import { curveThrough } from "../../src/trade/time-temperature.ts";
import { type Temperature, toCelsius } from "../../src/units/temperature.ts";
import { english } from "../timeline/scene.ts";
import { runByHand } from "./by-hand.ts";
import {
  inCelsius,
  inFahrenheit,
  inWarmRoom,
  pointsOf,
  summedUp,
  type Taken,
  warm,
} from "./measured-by-hand.ts";

const sheets = fc.constantFrom(inFahrenheit, inCelsius, inWarmRoom);

type Here = ReturnType<typeof runByHand>;
const index = (here: Here) => here.planned.sections.findIndex(({ id }) => id === "developer");
const stay = (here: Here) => {
  const [first] = staysOf(here.run.journal().timeline.sections[index(here)] as Section);
  if (first === undefined) throw new Error("a developer");
  return first;
};
const temperatureNear = (worksheet: Worksheet, steps: number): Temperature =>
  stepped(worksheet.developer.temperature, steps);

function developing(worksheet: Worksheet, seconds: number): Here {
  const here = runByHand(worksheet);
  here.pressThrough(index(here) + 1);
  here.wait(seconds);
  return here;
}
const clock = (here: Here) => here.clocks().steady - here.run.begunAt() - stay(here).full;
const heardSince = (here: Here, from: number) =>
  here.ears().flatMap(({ cue, at }) => (cue.says && at >= from ? [cue.says] : []));

describe("A reading", () => {
  const reading = fc.tuple(
    fc.double({ min: 30, max: 300, noNaN: true }),
    fc.integer({ min: -3, max: 3 }),
  );

  test("moves the end to where the integral over what was measured is reached, after one and after two", () => {
    fc.assert(
      fc.property(sheets, reading, reading, (worksheet, [wait, steps], [more, other]) => {
        const here = developing(worksheet, 20 + wait);
        const taken: Taken[] = [{ at: 0, celsius: toCelsius(worksheet.developer.temperature) }];
        for (const each of [steps, other]) {
          const temperature = temperatureNear(worksheet, each);
          const at = Math.round(clock(here));
          const now = here.clocks().steady - here.run.begunAt();
          if (stay(here).pourOut - now < 60) return;
          expect(here.run.read(temperature)).toBe(true);
          taken.push({ at, celsius: toCelsius(temperature) });
          const { pourOut, full } = stay(here);
          const known = measuredDevelopment(
            curveThrough(pointsOf(worksheet)),
            taken.map(({ at: seconds, celsius }) => ({ seconds, celsius })),
            worksheet === inWarmRoom ? warm : null,
          ).seconds;
          const developed = pourOut - full;
          if (pourOut - now > 7.001) {
            // Planned in whole seconds; the small steps miss by one of them at most.
            expect(Math.abs(developed - known)).toBeLessThanOrEqual(0.5 + 1e-6);
            expect(Math.abs(developed - summedUp(worksheet, taken))).toBeLessThanOrEqual(0.56);
            const { plan } = here.run.journal().timeline;
            expect(plan.developmentSeconds).toBe(developed);
          } else expect(known).toBeLessThan(at + 7.5);
          here.wait(more);
        }
      }),
      { numRuns: 25 },
    );
  });

  test("is told of by how much the end moves, to five seconds, in °C as in °F", () => {
    const spoken = fc.tuple(sheets, reading);
    fc.assert(
      fc.property(spoken, ([worksheet, [wait, steps]]) => {
        const here = developing(worksheet, 20 + wait);
        const before = stay(here).pourOut;
        const from = here.clocks().steady;
        expect(here.run.read(temperatureNear(worksheet, steps))).toBe(true);
        const by = stay(here).pourOut - before;
        here.wait(30);
        const said = heardSince(here, from).filter((says) => /later|sooner|end stays/i.test(says));
        expect(said).toHaveLength(1);
        expect(said[0]).toMatch(Math.abs(by) < 2.5 ? /end stays/i : by > 0 ? /later/i : /sooner/i);
        if (Math.abs(by) < 2.5) return;
        const told = Math.max(5, Math.round(Math.abs(by) / 5) * 5);
        const minutes = Math.floor(told / 60);
        if (minutes > 5) return;
        const mark =
          minutes === 0 ? [] : english.say("moved.later.minutes", "brief", { mark: minutes });
        const rest = told % 60;
        const key = minutes === 0 ? "moved.later.seconds" : "moved.and";
        const seconds = rest === 0 ? [] : english.say(key, "brief", { seconds: rest });
        for (const phrase of [mark.at(-1), seconds.at(-1)]) {
          if (phrase !== undefined) expect(said[0]).toContain(phrase);
        }
      }),
      { numRuns: 25 },
    );
  });

  test("that would end it in the past ends it 7 s later: time to be told, and for the count-in", () => {
    for (const worksheet of [inFahrenheit, inCelsius]) {
      const here = developing(worksheet, 480);
      const now = here.clocks().steady;
      expect(here.run.read(temperatureNear(worksheet, 12))).toBe(true);
      expect(here.run.begunAt() + stay(here).pourOut - now).toBeCloseTo(7, 5);
      here.wait(12);
      const heard = here.ears().filter(({ at }) => at > now);
      const out = heard.find(({ cue }) => cue.kind === "now" && cue.sounds[0] === "pour-out");
      expect((out?.at ?? 0) - now).toBeCloseTo(7, 5);
      const beats = heard.filter(({ cue, at }) => cue.kind === "count-in" && at < now + 7);
      expect(beats).toHaveLength(3);
    }
  });

  test("near the end never puts it off, unless the bath is colder than was thought", () => {
    const steps = fc.integer({ min: -3, max: 4 });
    fc.assert(
      fc.property(
        sheets,
        fc.double({ min: 0.5, max: 12, noNaN: true }),
        fc.array(fc.tuple(fc.double({ min: 0.2, max: 4, noNaN: true }), steps), { maxLength: 4 }),
        (worksheet, left, more) => {
          const here = developing(worksheet, 20);
          here.wait(stay(here).pourOut - 20 - left, 1);
          for (const [wait, step] of [[0, 0], ...more] as const) {
            here.wait(wait, 0.5);
            const before = stay(here).pourOut;
            if (!here.run.read(temperatureNear(worksheet, step))) return;
            const { pourOut, full } = stay(here);
            const { plan } = here.run.journal().timeline;
            expect(pourOut).toBeLessThanOrEqual(
              Math.max(before, full + plan.developmentSeconds) + 1e-6,
            );
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  test("that says what was known leaves the end where it is, to the last second", () => {
    for (const left of [6.5, 3, 1]) {
      const here = developing(inFahrenheit, 20);
      const before = stay(here).pourOut;
      here.wait(before - 20 - left);
      expect(here.run.read({ f: 69 })).toBe(true);
      expect(stay(here).pourOut).toBe(before);
      here.wait(20, 0.5);
      const beats = here.ears().filter(({ cue }) => cue.kind === "count-in");
      const into = beats.map(({ at }) => Math.round(before - (at - here.run.begunAt())));
      expect(into.filter((seconds) => seconds > 0 && seconds < 5)).toEqual([3, 2, 1]);
    }
  });

  test("of a probe is not taken in the last 10 s: no end runs away from hands that wait for it", () => {
    const here = developing(inFahrenheit, 20);
    const before = stay(here).pourOut;
    here.wait(before - 20 - 12);
    expect(here.run.read({ f: 69.2 }, "probe")).toBe(true);
    here.wait(2.5, 0.5);
    const kept = here.kept.length;
    for (let i = 0; i < 5; i += 1) {
      expect(here.run.read({ f: 69 + i * 0.4 }, "probe")).toBe(false);
      here.wait(2, 0.5);
    }
    expect(here.kept).toHaveLength(kept);
    expect(stay(here).pourOut).toBeLessThanOrEqual(before);
  });

  test("of an older version, which did not keep when the end stood before, is read as it was then", () => {
    const here = developing(inFahrenheit, 480);
    expect(here.run.read(temperatureNear(inFahrenheit, 12))).toBe(true);
    const older = here.kept.map((entry) => {
      if (entry.kind !== "read") return entry;
      const { stood: _, ...rest } = entry;
      return rest;
    });
    const { pourOut } = stay(here);
    const again = runByHand(inFahrenheit, { entries: older, clocks: here.clocks() });
    expect(stay(again).pourOut).toBeCloseTo(pourOut, 6);
  });

  test("is entered by arrows, each step spoken, and nothing is planned before it is pressed for", () => {
    for (const [worksheet, says] of [
      [inFahrenheit, ["Seventy degrees", "Seventy-one degrees", "Seventy degrees"]],
      [inCelsius, ["Twenty-one degrees", "Twenty-one and a half", "Twenty-one degrees"]],
    ] as const) {
      const here = developing(worksheet, 100);
      const entries = here.kept.length;
      [1, 1, -1].forEach((step, i) => {
        const from = here.clocks().steady;
        expect(here.guide.step(step)).toBe(true);
        here.wait(10);
        expect(heardSince(here, from).some((each) => each.startsWith(says[i] ?? "?"))).toBe(true);
      });
      expect(here.kept).toHaveLength(entries);
      here.press();
      const read = here.kept.at(-1);
      expect(read?.kind === "read" && read.temperature).toEqual(
        worksheet === inFahrenheit ? { f: 70 } : { c: 21 },
      );
    }
  });

  test("that nobody finished is over with its bath: the next press is a press", () => {
    const here = developing(inFahrenheit, 500);
    here.guide.step(1);
    here.wait((here.planned.sections[index(here)]?.seconds ?? 0) - 500 + 60);
    here.press();
    const next = here.planned.sections[index(here) + 1]?.id;
    expect(here.kept.at(-1)).toMatchObject({ kind: "pressed", section: next });
  });

  test("has words for every step that can be entered", () => {
    for (const start of [{ c: 15 }, { f: 59 }] as const) {
      const all = Array.from({ length: 40 }, (_, i) => stepped(start, i));
      for (const temperature of all) {
        for (const phrases of temperatureWordings(temperature, english)) {
          expect(phrases.length).toBeGreaterThan(0);
        }
      }
    }
  });
});
