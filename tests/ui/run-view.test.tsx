// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test, vi } from "vitest";
import { pressesOf } from "../../src/live/journal.ts";
import type { Session } from "../../src/live/runs.ts";
import { isRunRecord } from "../../src/logbook/run-record.ts";
import { demos } from "../../src/ui/demo.ts";
import { recordOf } from "../../src/ui/record-of.ts";
import { RunView } from "../../src/ui/run-view.tsx";
import { midRun, otherwise } from "../../src/ui/words/en/mid-run.ts";
import { otherwiseLines } from "../../src/ui/write-up-model.ts";
import { runByHand } from "../live/by-hand.ts";
import { emptyHands, sessionOf, silentRuns } from "./run-stand-ins.ts";
import "./late-words.ts";

afterEach(cleanup);

/** A run whose steady clock is the page's. */
function shown(more: Partial<Session> = {}) {
  const steady = performance.now() / 1000;
  const hand = runByHand(demos.gullrock, { clocks: { steady, audio: steady } });
  let woken = 0;
  const { runs } = silentRuns({
    wake: async () => {
      woken += 1;
    },
  });
  let show = () => {};
  render(
    <RunView
      session={sessionOf(hand, demos.gullrock, more)}
      ports={{
        runs,
        ...emptyHands,
        toWriteUp() {},
        keepAwake() {},
        after(_ms, again) {
          show = again;
          return () => {};
        },
      }}
    />,
  );
  return {
    hand,
    woken: () => woken,
    presses: () => pressesOf(hand.run.journal().entries).length,
    /** Lets so many seconds go by, and the screen see it. */
    async pass(seconds: number) {
      hand.wait(seconds);
      await act(async () => show());
    },
  };
}

const target = () => document.querySelector(".guided-press") as Element;
const down = (pointerId: number) => fireEvent.pointerDown(target(), { pointerId, button: 0 });
const up = (pointerId: number) => fireEvent.pointerUp(target(), { pointerId });

describe("The screen of a run", () => {
  test.each([
    [
      "a finger anywhere",
      () => {
        down(1);
        up(1);
      },
    ],
    [
      "any key",
      () => {
        fireEvent.keyDown(target(), { key: "a", code: "KeyA" });
        fireEvent.keyUp(target(), { key: "a", code: "KeyA" });
      },
    ],
    ["what acts by click alone", () => fireEvent.click(target(), { detail: 0 })],
  ])("is pressed by %s", (_, press) => {
    const here = shown();
    press();
    expect(here.presses()).toBe(1);
    expect(here.hand.answered()).toBe(1);
  });

  test("takes two fingers at once, a cancelled one and a held key's repeats for nothing", async () => {
    const here = shown();
    down(1);
    down(2);
    up(1);
    up(2);
    expect(here.presses()).toBe(0);
    await here.pass(5);
    down(3);
    fireEvent.pointerCancel(target(), { pointerId: 3 });
    up(3);
    expect(here.presses()).toBe(0);
    await here.pass(5);
    fireEvent.keyDown(target(), { key: "a", code: "KeyA", repeat: true });
    fireEvent.keyUp(target(), { key: "a", code: "KeyA" });
    expect(here.presses()).toBe(0);
  });

  test("is one button that wakes the sound where nothing is heard, and no press goes through it", () => {
    const here = shown({ sounding: false });
    expect(screen.getByText(midRun.silent)).toBeTruthy();
    down(1);
    up(1);
    fireEvent.keyDown(target(), { key: "a", code: "KeyA" });
    expect(here.woken()).toBe(2);
    expect(here.presses()).toBe(0);
  });

  test("offers to take a press back for three seconds, by button and by Backspace", async () => {
    const here = shown();
    down(1);
    up(1);
    await here.pass(1);
    await act(async () => {
      fireEvent.click(screen.getByRole("button", { name: midRun.takeBack }));
    });
    expect(here.presses()).toBe(0);
    await here.pass(60);
    down(1);
    up(1);
    await here.pass(1);
    fireEvent.keyDown(target(), { key: "Backspace", code: "Backspace" });
    expect(here.presses()).toBe(0);
    await here.pass(60);
    down(1);
    up(1);
    await here.pass(4);
    expect(screen.queryByRole("button", { name: midRun.takeBack })).toBeNull();
  });

  test("tells by ear what may be wrong, asked by a button, and the record has a line of what was taken", async () => {
    const here = shown();
    await act(async () => {
      fireEvent.click(screen.getByRole("button", { name: midRun.wrong }));
    });
    await here.pass(2);
    expect(here.hand.said()).toContain("If it splashed in an eye, press.");
    here.hand.press();
    expect(here.presses()).toBe(0);
    const record = recordOf(sessionOf(here.hand, demos.gullrock), "left");
    expect(isRunRecord(JSON.parse(JSON.stringify(record)))).toBe(true);
    expect(otherwiseLines(record)).toEqual([otherwise.wrong.eye]);
    const unknown = { ...record, otherwise: [{ kind: "wrong", at: 0, wrong: "tea" }] };
    expect(isRunRecord(unknown)).toBe(false);
  });

  test("writes once that the tank is empty, however often it is touched in a row, and though a key is held on it", async () => {
    const here = shown();
    const { sections } = here.hand.planned;
    here.hand.pressThrough(sections.findIndex(({ id }) => id === "developer") + 1);
    const emptyAt = sections
      .find(({ id }) => id === "developer")
      ?.moments.find((moment) => moment.do === "empty");
    await here.pass((emptyAt?.at ?? 0) + 4);
    const button = () => screen.getByRole("button", { name: midRun.emptied });
    const emptied = () => here.hand.kept.filter(({ kind }) => kind === "emptied").length;
    const touch = async () => {
      fireEvent.pointerDown(button(), { pointerId: 1, button: 0 });
      fireEvent.pointerUp(button(), { pointerId: 1 });
      await act(async () => void fireEvent.click(button(), { detail: 1 }));
    };
    const clock = vi.spyOn(performance, "now");
    clock.mockImplementation(() => here.hand.clocks().steady * 1000);
    await touch();
    here.hand.wait(0.2);
    await touch();
    expect(emptied()).toBe(1);
    clock.mockRestore();
    expect(fireEvent.keyDown(button(), { key: "Enter", code: "Enter" })).toBe(true);
    expect(fireEvent.keyDown(button(), { key: "Enter", code: "Enter", repeat: true })).toBe(false);
  });

  test("lights no button of it in the dark", async () => {
    const here = shown();
    const dark = here.hand.planned.sections.findIndex((section) => section.dark);
    here.hand.pressThrough(dark + 1);
    await here.pass(1);
    expect(screen.queryByRole("button", { name: midRun.wrong })).toBeNull();
  });

  test("says that nothing of the run is kept where the browser keeps nothing", () => {
    shown({ kept: false });
    expect(screen.getByText(midRun.notKept)).toBeTruthy();
  });
});
