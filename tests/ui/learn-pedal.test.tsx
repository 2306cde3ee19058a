// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Pedal } from "../../src/live/pedal.ts";
import type { KeptPedal } from "../../src/logbook/pedal-store.ts";
import { LearnPedal } from "../../src/ui/learn-pedal.tsx";
import { openPedals } from "../../src/ui/pedals.ts";
import { pedal as words } from "../../src/ui/words/en/hands.ts";
import { handClock } from "../live/device-by-hand.ts";
import "./late-words.ts";

const heard: string[] = [];
const listen = (event: KeyboardEvent) => heard.push(event.key);
beforeEach(() => {
  heard.length = 0;
  window.addEventListener("keydown", listen);
  window.addEventListener("keyup", listen);
});
afterEach(() => {
  window.removeEventListener("keydown", listen);
  window.removeEventListener("keyup", listen);
  cleanup();
});

const pageDown: Pedal = { code: "PageDown", key: "PageDown", holds: true };

function shown(held: readonly KeptPedal[] = [], willKeep = true) {
  const { clock, pass } = handClock();
  let kept = held;
  const pedals = openPedals({
    load: () => held,
    keep(next) {
      if (willKeep) kept = next;
      return willKeep;
    },
  });
  render(<LearnPedal pedals={pedals} clock={clock} />);
  (document.querySelector("details") as HTMLDetailsElement).open = true;
  /** As the browser sends it, at the hand's own time. */
  const key = (type: "keydown" | "keyup", name: string, how: KeyboardEventInit = {}) =>
    act(() => {
      const event = new KeyboardEvent(type, {
        key: name,
        code: name,
        bubbles: true,
        cancelable: true,
        ...how,
      });
      Object.defineProperty(event, "timeStamp", { value: clock.now() * 1000 });
      (document.activeElement ?? document.body).dispatchEvent(event);
    });
  const wait = (seconds: number) => act(() => pass(seconds));
  return {
    kept: () => kept,
    pedals,
    key,
    wait,
    async press(name: string, seconds: number) {
      await key("keydown", name);
      await wait(seconds);
      await key("keyup", name);
    },
  };
}

const click = (name: string) =>
  act(async () => {
    const button = screen.getByRole("button", { name });
    button.focus();
    fireEvent.click(button);
  });
const status = () => screen.getByRole("status").textContent;
const isTaking = () => screen.queryByRole("application") !== null;

describe("A pedal is learnt before a run", () => {
  test("by one press and one held, and is kept, and the focus goes back where it was", async () => {
    const { press, wait, kept } = shown();
    await click(words.learn);
    expect(screen.getByRole("application", { name: words.capture })).toBe(document.activeElement);
    await press("PageDown", 0.1);
    expect(status()).toBe(words.again);
    await wait(0.5);
    await press("PageDown", 1);
    await wait(1.1);
    expect([isTaking(), status()]).toEqual([false, words.learnt]);
    expect(kept()).toEqual([pageDown]);
    expect(screen.getByText("Page down: can be pressed and held")).toBeTruthy();
    expect(document.activeElement).toBe(screen.getByRole("button", { name: words.learn }));
    // Nothing else on the page has heard of it.
    expect(heard).toEqual([]);
  });

  test("that lets go by itself is said to be for pressing alone", async () => {
    const { press, wait, kept } = shown();
    await click(words.learn);
    await press("Enter", 0);
    await wait(1);
    await press("Enter", 0.02);
    await wait(1.1);
    expect(kept()).toEqual([{ code: "Enter", key: "Enter", holds: false }]);
    expect(screen.getByText("Enter: can be pressed, not held")).toBeTruthy();
  });

  test("beside those that are known, and anew where it is known", async () => {
    const space: Pedal = { code: "Space", key: " ", holds: false };
    const { press, wait, kept } = shown([space, { ...pageDown, holds: false }]);
    await click(words.learn);
    await press("PageDown", 0.1);
    await press("PageDown", 1);
    await wait(1.1);
    expect(kept()).toEqual([space, pageDown]);
  });

  test("but not from Tab, Escape or a modifier, and browsers' own keys go by", async () => {
    const { key, wait, press, kept } = shown();
    await click(words.learn);
    await key("keydown", "Tab");
    expect([isTaking(), status()]).toEqual([true, words.refused.moves]);
    await key("keydown", "Shift");
    expect(status()).toBe(words.refused.modifier);
    await key("keydown", "r", { ctrlKey: true });
    expect(heard).toEqual(["Tab", "Shift", "r"]);
    await key("keydown", "Unidentified", { code: "" });
    expect(status()).toBe(words.refused.nameless);
    await press("PageDown", 0.1);
    await key("keydown", "Escape");
    await wait(20);
    expect([isTaking(), status(), kept()]).toEqual([false, words.calledOff, []]);
    expect(heard).not.toContain("Escape");
  });

  test("or ends by itself 15 s after the last key, with what came until then", async () => {
    const { key, wait, press, kept } = shown();
    await click(words.learn);
    await wait(14.9);
    expect(isTaking()).toBe(true);
    await wait(0.4);
    expect([isTaking(), status()]).toEqual([false, words.nothing]);
    await click(words.learn);
    await wait(10);
    await press("PageDown", 1);
    await wait(14);
    expect(isTaking()).toBe(true);
    await wait(1.5);
    expect([isTaking(), kept()]).toEqual([false, [pageDown]]);
    // From here on keys are the page's again.
    await key("keydown", "PageDown");
    expect(heard).toEqual(["PageDown"]);
  });

  test("or is called off when the focus goes elsewhere", async () => {
    shown();
    await click(words.learn);
    await act(() => screen.getByText(words.name).focus());
    expect([isTaking(), status()]).toEqual([false, words.calledOff]);
  });

  test("says why not where its key is the one that moves the focus away", async () => {
    const { key } = shown();
    await click(words.learn);
    await key("keydown", "Tab");
    await act(() => screen.getByText(words.name).focus());
    expect([isTaking(), status()]).toEqual([false, words.refused.moves]);
  });

  test("holds until the page goes away where the browser keeps nothing, and that is said", async () => {
    const { press, wait, pedals } = shown([], false);
    await click(words.learn);
    await press("PageDown", 0.1);
    await press("PageDown", 1);
    await wait(1.1);
    expect([status(), pedals.all.value]).toEqual([words.notKept, [pageDown]]);
  });

  test("is forgotten by a press of its button", async () => {
    const { kept } = shown([pageDown]);
    await click("Forget Page down");
    expect([kept(), status()]).toEqual([[], words.forgotten]);
    expect(screen.queryByRole("button", { name: words.try })).toBeNull();
  });

  test("comes back by the button that then has the focus, and nothing is told of it any more", async () => {
    const { kept } = shown([pageDown]);
    await click("Forget Page down");
    expect(document.activeElement?.textContent).toBe("Undo Page down");
    await click("Undo Page down");
    expect([kept(), status()]).toEqual([[pageDown], ""]);
    expect(screen.queryByRole("button", { name: /^Undo/ })).toBeNull();
  });
});

describe("A learnt pedal is tried", () => {
  test("and says what each press would mean in a run", async () => {
    const { press, wait } = shown([pageDown]);
    await click(words.try);
    expect(screen.getByRole("application", { name: words.trying })).toBe(document.activeElement);
    const told: (string | null)[] = [];
    for (let i = 0; i < 3; i += 1) {
      await press("PageDown", 0.1);
      told.push(status());
      await wait(0.15);
    }
    await wait(1);
    await press("PageDown", 1);
    told.push(status());
    const { once, twice, thrice, held } = words.meanings;
    expect(told).toEqual([once, twice, thrice, held]);
    expect(heard).toEqual([]);
  });

  test("and is tapped, however long it is down, where it cannot be held", async () => {
    const { press } = shown([{ ...pageDown, holds: false }]);
    await click(words.try);
    await press("PageDown", 2);
    expect(status()).toBe(words.meanings.once);
  });

  test("until Escape is pressed, or 15 s after the last press; other keys go by", async () => {
    const { key, wait, press } = shown([pageDown]);
    await click(words.try);
    await key("keydown", "Tab");
    await key("keydown", "a");
    expect([heard, isTaking()]).toEqual([["Tab", "a"], true]);
    await key("keydown", "Escape");
    expect([status(), isTaking()]).toEqual([words.tried, false]);
    await click(words.try);
    await wait(14);
    await press("PageDown", 0.1);
    await wait(14);
    expect(isTaking()).toBe(true);
    await wait(1.5);
    expect(isTaking()).toBe(false);
  });
});
