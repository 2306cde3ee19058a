import { describe, expect, test } from "vitest";
import { soundingAt } from "../../src/live/pocket-place.ts";
import { waitsFrom } from "../../src/timeline/waiting.ts";
import { lay } from "../../src/track/pocket-track.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled } from "../timeline/scene.ts";

const around = { before: 1, ahead: 0.2 };
const { sections } = compiled(gullrock);

describe("What a track sounds about now", () => {
  test("is every sound that is laid in it, the press's own answer apart, and no other", () => {
    const { sections: laid, pieceSeconds } = lay(sections);
    let seen = 0;
    for (const [i, { pieces }] of laid.entries()) {
      const section = sections[i];
      if (section === undefined) throw new Error("as many are laid as there are");
      const begins = pieces.flatMap(({ sounds }, piece) =>
        sounds
          .filter(({ at, cue }) => at >= 0 && cue.sounds[0] !== "press")
          .map(({ at }) => piece * pieceSeconds + at / 24_000),
      );
      for (const at of begins) {
        const told = soundingAt(section, at + 0.01, around).map(({ from }) => from);
        expect(Math.min(...told.map((from) => Math.abs(from - at)))).toBeLessThan(1e-4);
        for (const from of told)
          expect(Math.min(...begins.map((one) => Math.abs(from - one)))).toBeLessThan(1e-4);
        seen += 1;
      }
    }
    expect(seen).toBeGreaterThan(300);
  });

  test("has the signs of life for as long as it waits, however often the track turns back", () => {
    const [section] = sections;
    if (section === undefined) throw new Error("there is a first");
    for (const turns of [1, 2, 7, 40]) {
      const at = waitsFrom(section) + 30 * turns;
      expect(soundingAt(section, at + 0.05, around)).toEqual([
        expect.objectContaining({ kind: "tone", from: at }),
      ]);
      expect(soundingAt(section, at + 15, around)).toEqual([]);
    }
  });
});
