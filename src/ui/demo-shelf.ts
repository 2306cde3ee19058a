// What stands on the shelf and in the lists of the old fog-signal house at Gullrock Light: invented, and put there
// only when it is asked for. Its fixer's tally and its tests disagree, so that it is seen what is said then.
import type { Act, Bottle, Contents, Entry } from "../logbook/bottle.ts";
import type { RoomLists } from "../logbook/room-store.ts";
import { type Day, dayAfter } from "../trade/keeping.ts";
import { lateWords } from "./language.ts";

const film = "Gullrock 125";

/** @param at when it is put there: UTC, ms since 1970. */
export function gullrockBottles(today: Day, at: number, newId: () => string): readonly Bottle[] {
  const { bottles } = lateWords.value.gullrockRoom;
  const ago = (days: number): Day => dayAfter(today, { count: -days, unit: "days" });

  // One after another, so that they stand in this order.
  let written = 0;
  function bottle(contents: Contents, acts: readonly (readonly [number, Act])[]): Bottle {
    const entry = (act: Act, on: Day): Entry => {
      written += 1;
      return { ...act, id: newId(), at: at + written, on, by: "E. M." };
    };
    return {
      tankside: 1,
      id: newId(),
      entries: [
        entry({ kind: "mixed", contents }, contents.mixedOn),
        ...acts.map(([days, act]) => entry(act, ago(days))),
      ],
    };
  }
  const films = (count: number): Act => ({ kind: "films", films: [{ size: "135-36", count }] });
  const tested = (seconds: number): Act => ({ kind: "tested", seconds, film });

  return [
    bottle(
      {
        name: bottles.stock,
        kind: "developer",
        state: "stock",
        mixedOn: ago(24),
        by: "E. M.",
        from: bottles.powder,
        volume: { ml: 1000 },
        keeps: {
          full: { count: 6, unit: "months" },
          half: { count: 2, unit: "months" },
        },
      },
      [
        [20, { kind: "opened" }],
        [20, { kind: "taken", volume: { ml: 320 } }],
      ],
    ),
    bottle(
      {
        name: bottles.stop,
        kind: "stop",
        state: "working",
        strength: "1+19",
        mixedOn: ago(16),
        by: "E. M.",
        from: bottles.concentrate,
        volume: { ml: 1000 },
        keeps: { opened: { count: 1, unit: "months" } },
        filmsPerLitre: 15,
      },
      [
        [16, { kind: "opened" }],
        [9, films(6)],
      ],
    ),
    bottle(
      {
        name: bottles.fixer,
        kind: "fixer",
        state: "working",
        strength: "1+4",
        mixedOn: ago(40),
        by: "E. M.",
        from: bottles.concentrate,
        volume: { ml: 1000 },
        keeps: { opened: { count: 2, unit: "months" } },
        filmsPerLitre: 20,
      },
      [
        [40, { kind: "opened" }],
        [40, tested(25)],
        [30, films(5)],
        [30, tested(31)],
        [16, films(5)],
        [16, tested(40)],
        [3, films(4)],
        [2, tested(52)],
      ],
    ),
  ];
}

export function gullrockLists(): RoomLists {
  const { opening, closing, waste } = lateWords.value.gullrockRoom;
  const open = (lines: readonly string[]) => lines.map((text) => ({ text, done: false }));
  return { opening: open(opening), closing: open(closing), waste: open(waste) };
}
