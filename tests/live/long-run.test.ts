// A run of ninety minutes led by clocks that go at two paces, whole: from its press to what the ear hears at its end.
import { describe, expect, test } from "vitest";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { demos } from "../../src/ui/demo.ts";
import { runByHand } from "./by-hand.ts";

const { gullrock } = demos;
const [row] = gullrock.developer.leaflet;
/** As long as the longest development. */
const long: Worksheet = {
  ...gullrock,
  agitation: { first: 30, every: 30, for: 5, perInversion: 2.5, taps: 2 },
  developer: {
    ...gullrock.developer,
    leaflet:
      row === undefined
        ? []
        : [{ ...row, temperature: gullrock.developer.temperature, time: "90:00" }],
  },
};

/** Uniform in [−2 ms, 2 ms), the same every time: a card is read by blocks that it has mixed. */
function scatter(): () => number {
  let state = 7;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return 0.002 * ((2 * state) / 2_147_483_647 - 1);
  };
}

describe("Over ninety minutes by a sound card that is off by 100 parts in a million", () => {
  test.each([-100, 100])(
    "every tone of a moment is heard within 5 ms, the last ones too (%s)",
    (ppm) => {
      const here = runByHand(long, { card: { pace: 1 + ppm / 1e6, scatter: scatter() } });
      const developer = here.planned.sections.findIndex(({ id }) => id === "developer");
      here.pressThrough(developer + 1);
      const pressed = here.run.begunAt();
      here.wait(90 * 60 + 60, 1);
      const section = here.run.journal().timeline.sections[developer];
      const due = section?.cues.filter(({ kind }) => kind === "now") ?? [];
      expect(due.length).toBeGreaterThan(300);
      const errors = due.map((cue) => {
        const ear = here.ears().find((each) => each.cue === cue);
        return ear === undefined ? Number.POSITIVE_INFINITY : Math.abs(ear.at - pressed - cue.at);
      });
      expect(due.at(-1)?.at).toBeGreaterThan(90 * 60);
      expect(Math.max(...errors)).toBeLessThan(0.005);
      // By one reading of the clocks, at the press, the end would be heard half a second off.
      expect((Math.abs(ppm) / 1e6) * (due.at(-1)?.at ?? 0)).toBeGreaterThan(0.5);
    },
    60_000,
  );
});
