// Stand-ins for the world of Work out: a store in memory, files caught as they are saved, a clock
// that moves when the test says so.
import type { Keeping, Kept } from "../../src/logbook/keeping.ts";
import type { KeptTank } from "../../src/logbook/tank-store.ts";
import type { Found, KeptTexts } from "../../src/logbook/worksheet-store.ts";
import { asidesIn } from "../../src/plan/asides.ts";
import type { Ports } from "../../src/ui/work-out-state.ts";
import { shelfByHand } from "./shelf-by-hand.ts";
import "./late-words.ts";

interface World {
  readonly ports: Ports;
  readonly kept: KeptTexts[];
  readonly saved: { readonly name: string; readonly text: string }[];
  /** Lets so many ms go by. */
  pass(ms: number): void;
}

export function world(found: Found = { kind: "nothing" }, willKeep = true): World {
  const kept: KeptTexts[] = [];
  const saved: { name: string; text: string }[] = [];
  let now = 0;
  let tanks: readonly KeptTank[] = [];
  let waiting: { readonly at: number; readonly act: () => void }[] = [];
  return {
    kept,
    saved,
    ports: {
      store: {
        load: async () => found,
        keep: async (texts) => {
          if (willKeep) kept.push(texts);
          return willKeep;
        },
      },
      tanks: {
        load: async () => ({ kind: "found", tanks }),
        keep: async (tank) => {
          if (willKeep) tanks = [...tanks.filter((it) => it.label !== tank.label), tank];
          return willKeep;
        },
        remove: async (label) => {
          tanks = tanks.filter((it) => it.label !== label);
          return true;
        },
      },
      bottles: async () => shelfByHand().shelf,
      asides: async () => asidesIn,
      // Noon of a day like any other, by whatever clock the machine keeps.
      now: () => new Date(2026, 4, 14, 12).getTime() + now,
      saveFile: (name, text) => saved.push({ name, text }),
      after(ms, act) {
        const entry = { at: now + ms, act };
        waiting.push(entry);
        return () => {
          waiting = waiting.filter((it) => it !== entry);
        };
      },
    },
    pass(ms) {
      now += ms;
      const due = waiting.filter(({ at }) => at <= now);
      waiting = waiting.filter(({ at }) => at > now);
      for (const { act } of due) act();
    },
  };
}

/** A browser that keeps what it is given to keep so, whatever it is asked. */
export const keepingThat = (kept: Kept): Keeping => ({
  now: async () => kept,
  ask: async () => kept,
  room: async () => null,
});
