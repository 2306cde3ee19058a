import { setImmediate } from "node:timers/promises";
import { describe, expect, test } from "vitest";
import type { KnockParts, Listening } from "../../src/live/knock-microphone.ts";
import { openKnockPort } from "../../src/live/knock-port.ts";

/** A port whose microphone and contexts a test takes away. */
function portByHand() {
  const opened: KnockParts[] = [];
  let stopped = 0;
  let context = { name: "first" };
  let another = () => {};
  let refuses: Listening | null = null;
  const port = openKnockPort({
    audio: {
      awake: async () => context as unknown as AudioContext,
      onAnother(act) {
        another = act;
      },
    },
    heard() {},
    ownSounds: () => [],
    async listens(parts) {
      opened.push(parts);
      if (refuses !== null) return refuses;
      return {
        kind: "listening",
        stop() {
          stopped += 1;
        },
      };
    },
  });
  return {
    port,
    opened,
    stopped: () => stopped,
    refuse() {
      refuses = { kind: "refused", why: "none" };
    },
    async replace(name: string) {
      context = { name };
      another();
      await setImmediate();
    },
    async turn(on: boolean) {
      port.turn(on);
      await setImmediate();
    },
    contexts: () => opened.map((parts) => (parts.context as unknown as { name: string }).name),
  };
}

describe("Knocks that are listened for", () => {
  test("are heard by the context that sounds, where another takes the place of a dead one", async () => {
    const here = portByHand();
    await here.turn(true);
    await here.replace("second");
    expect([here.contexts(), here.stopped(), here.port.on.value]).toEqual([
      ["first", "second"],
      1,
      "on",
    ]);
    await here.turn(false);
    expect([here.stopped(), here.port.on.value]).toEqual([2, "off"]);
  });

  test("are not said to be heard where the microphone cannot be had again", async () => {
    const here = portByHand();
    await here.turn(true);
    here.refuse();
    await here.replace("second");
    expect(here.port.on.value).toBe("none");
  });

  test("are off, and said to be, where the microphone is taken away", async () => {
    const here = portByHand();
    await here.turn(true);
    here.opened[0]?.ended();
    expect([here.stopped(), here.port.on.value]).toEqual([1, "busy"]);
    await here.turn(true);
    expect(here.port.on.value).toBe("on");
    here.opened[0]?.ended();
    expect(here.port.on.value).toBe("on");
  });

  test("stay off with another context where nobody had turned them on", async () => {
    const here = portByHand();
    await here.replace("second");
    await here.turn(true);
    await here.turn(false);
    await here.replace("third");
    expect(here.contexts()).toEqual(["second"]);
  });
});
