// @vitest-environment happy-dom
import { signal } from "@preact/signals";
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import type { Saying } from "../../src/live/beside.ts";
import type { Session } from "../../src/live/runs.ts";
import { demos } from "../../src/ui/demo.ts";
import { RunView } from "../../src/ui/run-view.tsx";
import { openSenses } from "../../src/ui/senses.ts";
import { midRun } from "../../src/ui/words/en/mid-run.ts";
import { senses as words } from "../../src/ui/words/en/senses.ts";
import { usualSenses } from "../../src/voice/senses.ts";
import { runByHand } from "../live/by-hand.ts";
import { emptyHands, sessionOf, silentRuns } from "./run-stand-ins.ts";
import "./late-words.ts";

afterEach(cleanup);

function shown(more: Partial<Session>, captions = false) {
  const steady = performance.now() / 1000;
  const hand = runByHand(demos.gullrock, { clocks: { steady, audio: steady } });
  const saying = signal<Saying | null>(null);
  const shows = new Set<() => void>();
  const { runs } = silentRuns();
  render(
    <RunView
      session={sessionOf(hand, demos.gullrock, { saying, ...more })}
      ports={{
        runs,
        ...emptyHands,
        senses: openSenses({ load: () => ({ ...usualSenses, captions }), keep: () => true }),
        toWriteUp() {},
        keepAwake() {},
        after(_ms, again) {
          shows.add(again);
          return () => void shows.delete(again);
        },
      }}
    />,
  );
  return {
    async say(says: string, urgent = false) {
      await act(async () => {
        saying.value = { says, urgent, at: performance.now() };
      });
    },
    /** Goes on to a section and lets it be told to its end. */
    async pressTo(id: string) {
      const at = hand.run.journal().timeline.sections.findIndex((each) => each.id === id);
      await act(async () => {
        hand.pressThrough(at + 1);
        hand.wait(30);
      });
      // What one look brings onto the screen looks by itself from then on.
      for (let look = 0; look < 2; look += 1)
        await act(async () => {
          for (const show of shows) show();
        });
    },
  };
}

/** Whatever a screen reader would read out unasked. */
const live = () => [
  ...document.querySelectorAll(
    '[aria-live]:not([aria-live="off"]), [role="status"], [role="alert"], output',
  ),
];
const unfold = () =>
  act(async () => {
    for (const fold of document.querySelectorAll("details")) fold.open = true;
  });

describe("The words of a run beside its sound", () => {
  test.each(["program", "tones"] as const)(
    "are in no live region where %s is chosen: nothing of the run is read out unasked",
    async (speaks) => {
      const it = shown({ speaks });
      await it.pressTo("developer");
      await unfold();
      await it.say("Soon it is time to invert.");
      expect(document.querySelector(".reading")).not.toBeNull();
      expect(live()).toEqual([]);
      expect(screen.queryByText("Soon it is time to invert.")).toBeNull();
    },
  );

  test("come politely, one region for all, where the screen reader speaks; only a caution breaks in", async () => {
    const it = shown({ speaks: "reader" });
    const [polite, atOnce, ...others] = live();
    expect(others).toEqual([]);
    expect([polite, atOnce].map((each) => each?.getAttribute("aria-live"))).toEqual([
      "polite",
      "assertive",
    ]);
    await it.say("Ready to invert.");
    expect([polite?.textContent, atOnce?.textContent]).toEqual(["Ready to invert.", ""]);
    const node = polite?.firstElementChild;
    await it.say("Ready to invert.");
    expect(polite?.firstElementChild).not.toBe(node);
    await it.say("Put your gloves on.", true);
    expect([polite?.textContent, atOnce?.textContent]).toEqual(["", "Put your gloves on."]);
    expect(polite?.querySelector("[lang]")?.getAttribute("lang") ?? "en").toBe("en");
  });

  test("say there that nothing is heard, where sound stands still", () => {
    shown({ speaks: "reader", sounding: false });
    expect(document.querySelector(".told-politely")?.textContent).toBe(midRun.silent);
  });

  test("stand in the region in the dark too, and on no screen", async () => {
    const it = shown({ speaks: "reader" }, true);
    await it.pressTo("open");
    await it.say("Wind on slowly.");
    expect(document.querySelector(".told-politely")?.textContent).toBe("Wind on slowly.");
    expect(document.querySelector(".guided-caption")).toBeNull();
  });

  test("are written out large where captions are wanted, with over and back of each turn", async () => {
    const turn = signal<"over" | "back" | null>("over");
    const it = shown({ turn }, true);
    await it.say("At the next tone, invert.");
    const caption = document.querySelector(".guided-caption");
    expect(caption?.textContent).toBe(`${words.turns.over} At the next tone, invert.`);
    await act(async () => {
      turn.value = "back";
    });
    expect(caption?.textContent).toMatch(words.turns.back);
  });

  test("of the dark are all written out before it, for those who can read them only there", async () => {
    const it = shown({}, true);
    await it.pressTo("screen");
    const text = document.querySelector(".guided-shown")?.textContent ?? "";
    expect(text).toContain(words.darkAhead);
    const sections = runByHand(demos.gullrock).planned.sections.filter(({ dark }) => dark);
    const lines = sections.flatMap(({ cues }) => cues.flatMap(({ says }) => says ?? []));
    expect(lines.length).toBeGreaterThan(15);
    for (const line of lines) expect(text).toContain(line);
  });

  test("leave the one control a name that never counts", async () => {
    const it = shown({});
    const name = () => document.querySelector(".guided-press")?.getAttribute("aria-label");
    const before = name();
    expect(before).toMatch(/\S/);
    fireEvent.keyDown(document.body, { key: "a", code: "KeyA" });
    fireEvent.keyUp(document.body, { key: "a", code: "KeyA" });
    await it.pressTo("developer");
    expect(name()).toBe(before);
    expect(document.querySelector(".guided-press")?.textContent).toBe("");
  });
});
