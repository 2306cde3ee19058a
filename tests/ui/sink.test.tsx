// @vitest-environment happy-dom
import { act, cleanup, fireEvent, screen, within } from "@testing-library/preact";
import fc from "fast-check";
import { useState } from "preact/hooks";
import { afterEach, describe, expect, test } from "vitest";
import { Sink } from "../../src/ui/sink.tsx";
import { type SinkKey, sinkAt, touch } from "../../src/ui/sink-model.ts";
import { sink as words } from "../../src/ui/words/en/wet.ts";
import { type Temperature, toCelsius } from "../../src/units/temperature.ts";
import { openedOver } from "./opener.tsx";
import "./late-words.ts";

afterEach(cleanup);

/** What is shown after keys pressed a second apart. */
const shownAfter = (from: Temperature, ...keys: readonly SinkKey[]): Temperature =>
  keys.reduce((sink, key, at) => touch(sink, key, 1000 * at).sink, sinkAt(from)).shown;

describe("the temperature shown at the sink", () => {
  test("is at first what it was given, on the half degrees or not", () => {
    expect(sinkAt({ f: 74.3 }).shown).toEqual({ f: 74.3 });
  });

  test("goes by half degrees of its own unit", () => {
    expect(shownAfter({ f: 74 }, "more")).toEqual({ f: 74.5 });
    expect(shownAfter({ c: 20 }, "less", "less")).toEqual({ c: 19 });
  });

  test("goes from between two half degrees to the next one on that side", () => {
    expect(shownAfter({ f: 74.3 }, "more")).toEqual({ f: 74.5 });
    expect(shownAfter({ f: 74.3 }, "less")).toEqual({ f: 74 });
    expect(shownAfter({ c: 20.49 }, "more", "less")).toEqual({ c: 20 });
  });

  test("goes by five degrees as well, onto the half degrees", () => {
    expect(shownAfter({ f: 74.5 }, "much-more")).toEqual({ f: 79.5 });
    expect(shownAfter({ f: 74.3 }, "much-less")).toEqual({ f: 69.5 });
  });

  test("takes what a binary number makes of a half degree for that half degree", () => {
    expect(shownAfter({ f: (20.5 * 9) / 5 + 32 + 1e-12 }, "less", "more")).toEqual({ f: 69 });
    expect(shownAfter({ c: 20.5 - 1e-12 }, "more")).toEqual({ c: 21 });
    expect(shownAfter({ c: 20.5 + 1e-12 }, "less")).toEqual({ c: 20 });
  });

  test("lies on the half degrees after any step, as far from where it was as the step is, or less", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 90, noNaN: true }),
        fc.constantFrom(["less", -0.5], ["more", 0.5], ["much-less", -5], [
          "much-more",
          5,
        ] as const),
        (c, [key, by]) => {
          const shown = toCelsius(shownAfter({ c }, key as SinkKey));
          expect(Number.isInteger(2 * shown)).toBe(true);
          const moved = (shown - c) * Math.sign(by as number);
          expect(moved).toBeGreaterThan(Math.abs(by as number) - 0.5);
          expect(moved).toBeLessThanOrEqual(Math.abs(by as number) + 1e-6);
        },
      ),
    );
  });

  test("stays between freezing and boiling", () => {
    expect(shownAfter({ c: 1 }, "much-less")).toEqual({ c: 0 });
    expect(shownAfter({ f: 33 }, "much-less")).toEqual({ f: 32 });
    expect(shownAfter({ c: 99.5 }, "more", "more")).toEqual({ c: 100 });
    expect(shownAfter({ f: 211 }, "much-more")).toEqual({ f: 212 });
  });

  test("is read as it is shown, and a reading leaves it so", () => {
    const { sink, read } = touch(sinkAt({ f: 74.3 }), "read", 0);
    expect(read).toEqual({ f: 74.3 });
    expect(sink.shown).toEqual({ f: 74.3 });
    expect(touch(sinkAt({ f: 74.3 }), "more", 0).read).toBeNull();
  });

  test("does not take a key's bounce: 0.3 s for a reading, 0.08 s for a step", () => {
    const once = touch(sinkAt({ c: 20 }), "read", 1000).sink;
    expect(touch(once, "read", 1299).read).toBeNull();
    expect(touch(once, "read", 1300).read).toEqual({ c: 20 });
    const more = touch(sinkAt({ c: 20 }), "more", 1000).sink;
    expect(touch(more, "more", 1079).sink.shown).toEqual({ c: 20.5 });
    expect(touch(more, "more", 1080).sink.shown).toEqual({ c: 21 });
    // Another key is another finger.
    expect(touch(more, "read", 1001).read).toEqual({ c: 20.5 });
  });
});

interface Reading {
  readonly at: number;
  readonly temperature: Temperature;
}

/** The sheet with a caller that stamps a minute apart. */
function opened(like: Temperature = { f: 74 }, first: readonly Reading[] = []) {
  const done: string[] = [];
  function Held({ close }: { readonly close: () => void }) {
    const [readings, setReadings] = useState(first);
    return (
      <Sink
        title="Developer"
        like={like}
        readings={readings}
        says={`${readings.length} taken`}
        stamp={(temperature) => {
          done.push(JSON.stringify(temperature));
          setReadings((before) => [...before, { at: 60 * before.length, temperature }]);
        }}
        takeBack={() => {
          done.push("back");
          setReadings((before) => before.slice(0, -1));
        }}
        leave={() => {
          done.push("left");
          close();
        }}
      />
    );
  }
  const opener = openedOver((close) => <Held close={close} />);
  return { done, opener };
}

let stamp = 0;
/** Fired a second after the one before, so that none is a bounce unless it is meant to be. */
function fire(on: Element, event: Event, after = 1000) {
  stamp += after;
  Object.defineProperty(event, "timeStamp", { value: stamp });
  return act(() => {
    on.dispatchEvent(event);
  });
}
/** A unit may be tied to its number by a space that does not break. */
const button = (name: string) =>
  screen.getByRole("button", { name: (it) => it.replaceAll("\u00a0", " ") === name });
async function finger(name: string, after?: number) {
  const init = { bubbles: true, cancelable: true, isPrimary: true, button: 0 };
  const it = button(name);
  await fire(it, new PointerEvent("pointerdown", init), after);
  await fire(it, new MouseEvent("click", { bubbles: true, detail: 1 }), 0);
}
async function key(name: string, init: KeyboardEventInit = {}) {
  const event = new KeyboardEvent("keydown", {
    key: name,
    bubbles: true,
    cancelable: true,
    ...init,
  });
  await fire(document.activeElement ?? document.body, event);
  return event;
}
const shown = () => document.querySelector("output")?.textContent;
const readings = () =>
  within(screen.getByRole("list", { name: words.readings }))
    .getAllByRole("listitem")
    .map((it) => it.textContent);

describe("at the sink", () => {
  test("the reading key has the focus, and names what it will stamp", () => {
    opened({ f: 74.5 });
    expect(screen.getByRole("dialog", { name: "Developer" })).toBeTruthy();
    expect(document.activeElement).toBe(button("Read 74.5 °F now"));
    expect(shown()).toBe("74.5 °F");
    expect(screen.getByText(words.noReadings)).toBeTruthy();
  });

  test("fingers step and stamp as they come down, each press once", async () => {
    const { done } = opened();
    await finger(words.more);
    await finger(words.more);
    await finger(words.less);
    expect(shown()).toBe("74.5 °F");
    await finger("Read 74.5 °F now");
    expect(done).toEqual(['{"f":74.5}']);
    expect(readings()).toEqual(["0:00 74.5 °F"]);
  });

  test("two steps before the screen is drawn anew are two steps", async () => {
    opened();
    const more = button(words.more);
    await act(() => {
      for (const at of [100, 200]) {
        const event = new PointerEvent("pointerdown", { bubbles: true, isPrimary: true });
        Object.defineProperty(event, "timeStamp", { value: at });
        more.dispatchEvent(event);
      }
    });
    expect(shown()).toBe("75 °F");
  });

  test("a bounce on the reading key stamps nothing", async () => {
    const { done } = opened();
    await finger("Read 74 °F now");
    await finger("Read 74 °F now", 150);
    expect(done).toHaveLength(1);
  });

  test("a second finger and another button of the mouse press nothing", async () => {
    const { done } = opened();
    const it = button("Read 74 °F now");
    await fire(it, new PointerEvent("pointerdown", { bubbles: true, isPrimary: false }));
    await fire(it, new PointerEvent("pointerdown", { bubbles: true, isPrimary: true, button: 2 }));
    expect(done).toEqual([]);
  });

  test("a click from neither finger nor key presses as well", async () => {
    const { done } = opened();
    await fire(button("Read 74 °F now"), new MouseEvent("click", { bubbles: true, detail: 0 }));
    expect(done).toEqual(['{"f":74}']);
  });

  test("the keyboard does all of it", async () => {
    const { done, opener } = opened({ c: 20 });
    for (const name of ["ArrowUp", "PageUp", "ArrowDown", "ArrowDown", "PageDown", "ArrowUp"])
      await key(name);
    expect(shown()).toBe("20 °C");
    await key("Enter");
    await key(" ");
    await key("Backspace");
    await key("Escape");
    expect(done).toEqual(['{"c":20}', '{"c":20}', "back", "left"]);
    expect(document.activeElement).toBe(opener);
  });

  test("a key held down steps on, but stamps and takes back once", async () => {
    const { done } = opened({ c: 20 }, [{ at: 0, temperature: { c: 21 } }]);
    await key("ArrowUp", { repeat: true });
    expect(shown()).toBe("20.5 °C");
    for (const name of ["Enter", " ", "Backspace"]) {
      expect((await key(name, { repeat: true })).defaultPrevented, name).toBe(true);
    }
    expect(done).toEqual([]);
  });

  test("Enter on another button is that button's", async () => {
    const { done } = opened();
    button(words.done).focus();
    expect((await key("Enter")).defaultPrevented).toBe(false);
    expect(done).toEqual([]);
  });

  test("the readings stand in a line, each with its time", () => {
    opened({ f: 74 }, [
      { at: 0, temperature: { f: 75 } },
      { at: 180, temperature: { f: 73 } },
    ]);
    expect(readings()).toEqual(["0:00 75 °F", "3:00 73 °F"]);
  });

  test("the last one can be taken back, and the focus is left on the reading key", async () => {
    const { done } = opened({ f: 74 }, [{ at: 0, temperature: { f: 75 } }]);
    const back = button(words.takeBack);
    back.focus();
    await act(() => {
      fireEvent.click(back, { detail: 1 });
    });
    expect(done).toEqual(["back"]);
    expect(document.activeElement).toBe(button("Read 74 °F now"));
    expect(button(words.takeBack).getAttribute("aria-disabled")).toBe("true");
    await act(() => {
      fireEvent.click(back, { detail: 1 });
    });
    expect(done).toEqual(["back"]);
  });

  test("the live answer is told to those who listen, whenever it changes", async () => {
    opened();
    const says = screen.getByText("0 taken");
    expect(says.getAttribute("aria-live")).toBe("polite");
    await finger("Read 74 °F now");
    expect(says.textContent).toBe("1 taken");
  });
});
