import fc from "fast-check";
import { expect, test } from "vitest";
import { demos } from "../../src/ui/demo.ts";
import { runScreenOf, turnsIn } from "../../src/ui/run-model.ts";
import { runByHand } from "../live/by-hand.ts";
import { changed } from "../plan/worksheets.ts";
import "./late-words.ts";

/** In which the hands' moments lie on no whole seconds. */
const worksheet = changed(demos.gullrock, { tank: { ...demos.gullrock.tank, pourIn: 7.3 } });

test("the screen is drawn as its numbers turn: between two drawings nothing on it changes, and one is no later than a second", () => {
  const it = runByHand(worksheet);
  const developer = it.planned.sections.findIndex(({ id }) => id === "developer");
  it.pressThrough(developer + 1);
  const drawn = () => JSON.stringify(runScreenOf(it.run.position(), worksheet.tank.method));
  let turned = 0;
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 3, noNaN: true }), (seconds) => {
      it.wait(seconds);
      const before = drawn();
      const turns = turnsIn(it.run.position());
      expect(turns).toBeLessThanOrEqual(1.02);
      const still = turns - 0.021;
      if (still > 0) it.wait(still);
      expect(drawn()).toBe(before);
      it.wait(turns - Math.max(0, still));
      if (drawn() !== before) turned += 1;
    }),
    { numRuns: 120 },
  );
  expect(turned).toBeGreaterThan(100);
});
