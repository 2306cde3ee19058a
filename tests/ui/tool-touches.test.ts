import { describe, expect, test } from "vitest";
import { openToolTouches } from "../../src/ui/tool-touches.ts";

/** Touches of so long, ms, each so long after the one before: which of them count. */
function counted(touches: readonly (readonly [after: number, control: string])[], steps: boolean) {
  const here = openToolTouches();
  let now = 100;
  return touches.map(([after, control]) => {
    now += after / 1000;
    here.down(control, now);
    now += 0.06;
    here.up(control, now);
    return here.counts(now, steps);
  });
}

describe("A small control of a run", () => {
  test("takes a finger that bounces on it within 80 ms for one, and steps as fast as fingers go behind that", () => {
    expect(
      counted(
        [
          [0, "up"],
          [70, "up"],
          [90, "up"],
          [90, "up"],
        ],
        true,
      ),
    ).toEqual([true, false, true, true]);
  });

  test("is no bounce of another one", () => {
    expect(
      counted(
        [
          [0, "up"],
          [30, "down"],
        ],
        true,
      ),
    ).toEqual([true, true]);
  });

  test("that changes the run is touched once by two touches in a row, whatever the second one meets", () => {
    expect(
      counted(
        [
          [0, "Leave"],
          [200, "Leave the run"],
          [500, "Leave the run"],
        ],
        false,
      ),
    ).toEqual([true, false, true]);
  });
});
