// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { demos } from "../../src/ui/demo.ts";
import type { Draft } from "../../src/ui/draft.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { More } from "../../src/ui/more.tsx";
import { WorkOutProvider } from "../../src/ui/work-out-context.ts";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { world } from "./ports.ts";

afterEach(cleanup);

const demo = draftOf(demos.gullrock);

function shown(draft: Draft = demo, holds: readonly string[] = ["mixing."]) {
  const workOut = makeWorkOut(draft, null, world().ports);
  const { container } = render(
    <WorkOutProvider value={workOut}>
      <More summary="From two taps" holds={holds}>
        <p>inside</p>
      </More>
    </WorkOutProvider>,
  );
  const details = container.querySelector("details");
  if (!details) throw new Error("no disclosure");
  return { workOut, isOpen: () => details.open };
}

const press = () => fireEvent.click(screen.getByText("From two taps"));
const filled = { ...demo, "mixing.target": "68 °F" };

describe("a disclosure", () => {
  test("is closed while its fields are empty, and has them inside all the same", () => {
    expect(shown().isOpen()).toBe(false);
    expect(screen.getByText("inside")).toBeTruthy();
  });

  test("is open where one of its fields holds something", () => {
    expect(shown(filled).isOpen()).toBe(true);
  });

  test("is closed where all that they hold is spaces", () => {
    expect(shown({ ...demo, "mixing.target": "  ", "mixing.hot": "" }).isOpen()).toBe(false);
  });

  test("is not opened by what other fields hold", () => {
    expect(shown({ ...demo, "tempering.target": "68 °F" }).isOpen()).toBe(false);
  });

  test("is open for any of several fields", () => {
    const holds = ["developer.kept", "developer.filmsPerLitre"];
    expect(shown(demo, holds).isOpen()).toBe(false);
    cleanup();
    expect(shown({ ...demo, "developer.filmsPerLitre": "20" }, holds).isOpen()).toBe(true);
  });

  test("opens and closes as a worksheet is opened and undone", async () => {
    const { workOut, isOpen } = shown();
    await act(() => workOut.startDemo("foghorn"));
    expect(isOpen()).toBe(true);
    await act(() => workOut.undo());
    expect(isOpen()).toBe(false);
  });

  test("that a person has opened stays open, empty or not", async () => {
    const { workOut, isOpen } = shown();
    await press();
    expect(isOpen()).toBe(true);
    await act(() => workOut.startDemo("foghorn"));
    await act(() => workOut.startEmpty());
    expect(isOpen()).toBe(true);
  });

  test("that a person has closed stays closed, whatever comes to be in it", async () => {
    const { workOut, isOpen } = shown(filled);
    await press();
    expect(isOpen()).toBe(false);
    await act(() => workOut.startDemo("foghorn"));
    expect(isOpen()).toBe(false);
  });

  test("takes every press", async () => {
    const { isOpen } = shown();
    const states = [];
    for (let presses = 0; presses < 3; presses++) {
      // Were it the browser's as well, it would be taken twice.
      expect(press()).toBe(false);
      await act(() => {});
      states.push(isOpen());
    }
    expect(states).toEqual([true, false, true]);
  });
});
