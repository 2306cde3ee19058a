import { describe, expect, test } from "vitest";
import {
  isLearned,
  isLearnt,
  type KeyMoment,
  learningFrom,
  learnt,
  type Pedal,
  pedalOf,
  pedalsIn,
  pressedByPedal,
} from "../../src/live/pedal.ts";

const pageDown = { code: "PageDown", key: "PageDown" };
const pageUp = { code: "PageUp", key: "PageUp" };
const moment = (
  kind: KeyMoment["kind"],
  at: number,
  key = pageDown,
  repeat = false,
): KeyMoment => ({
  ...key,
  kind,
  repeat,
  at,
});
const learning = (...moments: readonly KeyMoment[]) => moments.reduce(learnt, learningFrom(0));

describe("A pedal is learnt by pressing it", () => {
  test("and can be held where it stays down as long as the foot does", () => {
    const it = learning(
      moment("down", 1),
      moment("up", 1.15),
      moment("down", 2),
      moment("down", 2.5, pageDown, true),
      moment("up", 3),
    );
    expect(pedalsIn(it)).toEqual([{ ...pageDown, holds: true }]);
  });

  test("and can only be tapped where it lets go by itself, sends itself again and again, or never lets go", () => {
    const atOnce = [moment("down", 1), moment("up", 1), moment("down", 2), moment("up", 2.01)];
    const again = [1, 2, 2.1, 2.2, 2.3, 2.9].flatMap((at) => [
      moment("down", at),
      moment("up", at + 0.02),
    ]);
    const never = [moment("down", 1), moment("down", 2), moment("down", 2.6, pageDown, true)];
    for (const moments of [atOnce, again, never]) {
      expect(pedalsIn(learning(...moments))).toEqual([{ ...pageDown, holds: false }]);
    }
  });

  test("with all of its keys, each for itself", () => {
    const it = learning(
      moment("down", 1, pageUp),
      moment("up", 1.1, pageUp),
      moment("down", 2),
      moment("up", 3),
    );
    expect(pedalsIn(it)).toEqual([
      { ...pageUp, holds: false },
      { ...pageDown, holds: true },
    ]);
  });

  test("by what its key means where it names no place of it", () => {
    for (const code of ["", "Unidentified"]) {
      const key = { code, key: "PageDown" };
      const it = learning(moment("down", 1, key), moment("up", 2, key));
      expect(pedalsIn(it)).toEqual([{ code: "", key: "PageDown", holds: true }]);
    }
    const nameless = { code: "", key: "Unidentified" };
    expect(learning(moment("down", 1, nameless))).toMatchObject({
      presses: [],
      refused: "nameless",
    });
  });

  test("but not where it sends what moves about the page, or means nothing by itself", () => {
    for (const key of ["Tab", "Escape"]) {
      const it = learning(
        moment("down", 1, { code: key, key }),
        moment("up", 2, { code: key, key }),
      );
      expect([it.refused, pedalsIn(it)]).toEqual(["moves", []]);
    }
    const shift = { code: "ShiftLeft", key: "Shift" };
    expect(learning(moment("down", 1, shift)).refused).toBe("modifier");
    // Whatever comes next is taken.
    expect(learning(moment("down", 1, shift), moment("down", 2)).refused).toBeNull();
  });

  test("until two presses are over, and nothing has followed them", () => {
    const once = [moment("down", 1), moment("up", 1.1)];
    expect(isLearnt(learning(...once), 100)).toBe(false);
    const twice = learning(...once, moment("down", 2), moment("up", 3));
    expect([3.7, 3.9].map((at) => isLearnt(twice, at))).toEqual([false, true]);
    const stillDown = learning(...once, moment("down", 2));
    expect([4.9, 5].map((at) => isLearnt(stillDown, at))).toEqual([false, true]);
    const repeating = learning(...once, moment("down", 2), moment("down", 4, pageDown, true));
    expect(isLearnt(repeating, 5)).toBe(false);
  });

  test("the coming up of the key that asked for it is no press", () => {
    const enter = { code: "Enter", key: "Enter" };
    const it = learning(moment("down", 0.1, enter, true), moment("up", 0.2, enter));
    expect(pedalsIn(it)).toEqual([]);
  });
});

describe("A key is known for a learnt one", () => {
  const pedals: readonly Pedal[] = [
    { ...pageDown, holds: true },
    { code: "", key: "AudioVolumeUp", holds: false },
  ];

  test("by its place, whatever it means there, or else by what it means", () => {
    expect(pedalOf(pedals, { code: "PageDown", key: "3" })).toBe(pedals[0]);
    expect(pedalOf(pedals, { code: "Unidentified", key: "AudioVolumeUp" })).toBe(pedals[1]);
    expect(isLearned(pedals, pageDown)).toBe(true);
    for (const key of [
      { code: "Numpad3", key: "PageDown" },
      { code: "AudioVolumeUp", key: "AudioVolumeUp" },
      { code: "", key: "AudioVolumeDown" },
    ]) {
      expect(isLearned(pedals, key)).toBe(false);
    }
    expect(isLearned([], pageDown)).toBe(false);
  });
});

describe("A learnt key presses", () => {
  const done: string[] = [];
  const presser = {
    down: (id: string, at: number) => done.push(`down ${id} ${at}`),
    up: (id: string, at: number) => done.push(`up ${id} ${at}`),
    tap: (at: number) => done.push(`tap ${at}`),
  };
  const doneBy = (holds: boolean) => {
    done.length = 0;
    const pedals = [{ ...pageDown, holds }];
    const taken = [
      moment("down", 1),
      moment("down", 1.5, pageDown, true),
      moment("up", 2),
      moment("down", 3, pageUp),
    ].map((each) => pressedByPedal(pedals, presser, each));
    expect(taken).toEqual([true, true, true, false]);
    return [...done];
  };

  test("from its going down to its coming up, where it can be held", () => {
    expect(doneBy(true)).toEqual([
      "down pedal PageDown PageDown 1",
      "up pedal PageDown PageDown 2",
    ]);
  });

  test("as it goes down, where it cannot", () => {
    expect(doneBy(false)).toEqual(["tap 1"]);
  });
});
