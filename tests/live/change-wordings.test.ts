// How much is told of a change, or of a gap: to five seconds up to six minutes, then to the nearest that the voice
// can say.
import fc from "fast-check";
import { expect, test } from "vitest";
import { emptiedWordings, movedWordings } from "../../src/live/change-wordings.ts";
import { missedWordings } from "../../src/live/missed.ts";
import { nothingOn } from "../../src/live/position.ts";
import { english } from "../timeline/scene.ts";

/** Minutes that the voice has words for beside a change. */
const minutesSaid = [1, 2, 3, 4, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 75, 90, 105, 120];

/** What a sentence says, in seconds, read back from its words. */
function secondsIn(said: string): number {
  const minutes = minutesSaid.findLast((mark) =>
    said.includes(english.say("over.minutes", "brief", { mark }).at(-1) ?? "?"),
  );
  const fives = Array.from({ length: 11 }, (_, i) => 5 * (i + 1)).toReversed();
  const seconds = fives.find((each) =>
    [
      english.say("over.seconds", "brief", { seconds: each }),
      english.say("moved.and", "brief", { seconds: each }),
    ].some((phrases) => said.toLowerCase().includes((phrases.at(-1) ?? "?").toLowerCase())),
  );
  return 60 * (minutes ?? 0) + (seconds ?? 0);
}

const whole = (said: readonly string[] | undefined) => (said ?? []).join(" ");

test("An end that moved and a bath that ran over are told of to five seconds, up to six minutes", () => {
  fc.assert(
    fc.property(fc.double({ min: 2.6, max: 357, noNaN: true }), (by) => {
      const expected = Math.max(5, Math.round(by / 5) * 5);
      expect(secondsIn(whole(movedWordings(by, english)[0]))).toBe(expected);
      expect(whole(movedWordings(-by, english)[0])).toMatch(/sooner/);
      expect(secondsIn(whole(emptiedWordings(by, english)?.[0]))).toBe(expected);
      expect(whole(emptiedWordings(-by, english)?.[0])).toMatch(/short/);
    }),
  );
});

test("Longer times, and those that were lost, are told of by the nearest count that the voice can say", () => {
  const nearest = (minutes: number) =>
    Math.min(...minutesSaid.map((each) => Math.abs(each - minutes)));
  fc.assert(
    fc.property(fc.double({ min: 6, max: 130, noNaN: true }), (minutes) => {
      const by = minutes * 60;
      const gone = whole(missedWordings(nothingOn, 0, 0, by, english)[0]);
      for (const said of [whole(movedWordings(by, english)[0]), gone]) {
        const off = Math.abs(secondsIn(said) / 60 - minutes);
        // It goes by the nearest five seconds, which may tip what lies half way between two counts.
        expect(off).toBeLessThanOrEqual(nearest(minutes) + 5 / 60 + 1e-9);
      }
    }),
  );
  expect(whole(missedWordings(nothingOn, 0, 0, 20, english)[0])).toMatch(/twenty seconds/);
  expect(whole(missedWordings(nothingOn, 0, 0, 58, english)[0])).toMatch(/one minute/);
  expect(whole(missedWordings(nothingOn, 0, 0, null, english)[0])).toMatch(/cannot tell/);
});
