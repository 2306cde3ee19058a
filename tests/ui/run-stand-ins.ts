// Runs that sound nothing, and a run by hand as the session that a screen is given.
import { signal } from "@preact/signals";
import type { Runs, Session } from "../../src/live/runs.ts";
import { planOf } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { openSenses } from "../../src/ui/senses.ts";
import { usualSenses } from "../../src/voice/senses.ts";
import type { runByHand } from "../live/by-hand.ts";
import { compiled, english } from "../timeline/scene.ts";

export function silentRuns(more: Partial<Runs> = {}) {
  const current = signal<Session | null>(null);
  const runs: Runs = {
    current,
    prepare() {},
    compile: async (worksheet) => compiled(worksheet),
    begin: async () => "begun",
    unfinished: async () => null,
    goOnWithUnfinished: async () => "gone",
    dropUnfinished: async () => "gone",
    wake: async () => {},
    go: async () => {},
    leave() {},
    hear: async () => {
      throw new Error("no sound to be had");
    },
    ...more,
  };
  return { runs, current };
}

export function sessionOf(
  { run, guide, presser }: ReturnType<typeof runByHand>,
  worksheet: Worksheet,
  more: Partial<Session> = {},
): Session {
  return {
    id: "a",
    worksheet,
    plan: planOf(worksheet),
    timeline: run.journal().timeline,
    begunAt: Date.UTC(2026, 2, 12, 19, 42),
    detail: "full",
    hushed: false,
    way: "room",
    ways: ["room", "pocket"],
    sounding: true,
    kept: true,
    tookOver: false,
    speaks: "program",
    saying: signal(null),
    turn: signal(null),
    run,
    guide,
    presser,
    ...more,
  };
}

/** Walk through's, in a world in which nothing is seen to happen. */
export const walkThroughPorts = (runs: Runs, print: () => void = () => {}) => ({
  ...emptyHands,
  runs,
  print,
  toWriteUp() {},
  keepAwake() {},
  after: () => () => {},
});

/** Pedals, a thermometer and knocks, none of them there. */
export const emptyHands = {
  pedals: { all: signal([]), learn: () => true, forget: () => true },
  probe: null,
  knocks: { on: signal("off" as const), turn() {} },
  senses: openSenses({ load: () => ({ ...usualSenses, speaks: "program" }), keep: () => true }),
  vibrate: null,
  sounds: {
    script: async () => english,
    say: async () => {},
    play: async () => {},
    hush() {},
  },
};
