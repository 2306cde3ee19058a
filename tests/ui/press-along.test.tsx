// @vitest-environment happy-dom
import { act, cleanup, fireEvent, screen, within } from "@testing-library/preact";
import fc from "fast-check";
import { afterEach, describe, expect, test, vi } from "vitest";
import { PressAlong } from "../../src/ui/press-along.tsx";
import {
  again,
  isFresh,
  type Measured,
  type PressAlong as Pressed,
  press,
  stageOf,
  startOf,
  takeBack,
  timesOf,
} from "../../src/ui/press-along-model.ts";
import { pressAlong as words } from "../../src/ui/words/en/wet.ts";
import { openedOver } from "./opener.tsx";
import "./late-words.ts";

afterEach(cleanup);

const pressedAt = (what: Measured, ...presses: readonly number[]): Pressed =>
  presses.reduce(press, startOf(what));

describe("presses", () => {
  test("begin and end a time in turn, three times over, and then no more", () => {
    const kinds = [0, 1, 2, 3, 4, 5, 6, 7].map((count) =>
      stageOf(pressedAt("pour-in", ...Array.from({ length: count }, (_, at) => 1000 * at))),
    );
    expect(kinds).toEqual([
      { kind: "ready", turn: 1 },
      { kind: "running", turn: 1, since: 0 },
      { kind: "ready", turn: 2 },
      { kind: "running", turn: 2, since: 2000 },
      { kind: "ready", turn: 3 },
      { kind: "running", turn: 3, since: 4000 },
      { kind: "done" },
      { kind: "done" },
    ]);
  });

  test("give times in seconds, to a tenth", () => {
    expect(timesOf(pressedAt("pour-in", 0, 10_440, 20_000, 29_960))).toEqual([10.4, 10]);
    expect(timesOf(pressedAt("pour-out", 500, 8550, 9000))).toEqual([8.1]);
  });

  test("give the pace of inversions: the time of four, divided by four", () => {
    expect(timesOf(pressedAt("inversion", 0, 8000, 9000, 15_400))).toEqual([2, 1.6]);
  });

  test("within 0.3 s of the last are a bounce, and those after count", () => {
    expect(pressedAt("pour-in", 1000, 1299).presses).toEqual([1000]);
    expect(pressedAt("pour-in", 1000, 1300).presses).toEqual([1000, 1300]);
    // A bounce does not put off the next press.
    expect(pressedAt("pour-in", 1000, 1200, 1400).presses).toEqual([1000, 1400]);
    expect(pressedAt("pour-in", 1000, 900).presses).toEqual([1000]);
  });

  test("taken back one by one leave things as they were before them", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 300, max: 30_000 }), { maxLength: 6 }),
        fc.constantFrom<Measured>("pour-in", "pour-out", "inversion"),
        (gaps, what) => {
          let at = 0;
          let along = startOf(what);
          const before: Pressed[] = [];
          for (const gap of gaps) {
            before.push(along);
            at += gap;
            along = press(along, at);
          }
          for (const was of before.toReversed()) {
            at += 300;
            along = takeBack(along, at);
            expect(stageOf(along)).toEqual(stageOf(was));
            expect(timesOf(along)).toEqual(timesOf(was));
          }
          expect(takeBack(along, at + 300)).toBe(along);
        },
      ),
    );
  });

  test("an end taken back lets its time go on from where it began", () => {
    const early = pressedAt("pour-in", 0, 5000);
    expect(timesOf(press(takeBack(early, 6000), 9000))).toEqual([9]);
  });

  test("are all gone when begun again", () => {
    const done = pressedAt("pour-in", 0, 1000, 2000, 3000, 4000, 5000);
    expect(stageOf(again(done, 6000))).toEqual({ kind: "ready", turn: 1 });
  });

  test("that bounce onto the next button do nothing there either", () => {
    const done = pressedAt("pour-in", 0, 1000, 2000, 3000, 4000, 5000);
    expect([5299, 5300].map((at) => isFresh(done, at))).toEqual([false, true]);
    expect(again(done, 5299)).toBe(done);
    expect(takeBack(done, 5299)).toBe(done);
    const back = takeBack(done, 5400);
    expect(takeBack(back, 5500)).toBe(back);
  });

  test("never give a time below nought, nor more than three", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 60_000 }), { maxLength: 20 }), (presses) => {
        const times = timesOf(pressedAt("pour-in", ...presses));
        expect(times.length).toBeLessThanOrEqual(3);
        for (const time of times) expect(time).toBeGreaterThanOrEqual(0.3);
      }),
    );
  });
});

/** A sheet opened from a button on a page, with a clock that the test sets. */
function opened(what: Measured = "pour-in") {
  const clock = { now: 60_000 };
  const kept: (readonly number[])[] = [];
  const shows = new Set<() => void>();
  const leave = vi.fn();
  const opener = openedOver((close) => (
    <PressAlong
      what={what}
      now={() => clock.now}
      keep={(times) => kept.push(times)}
      leave={() => {
        leave();
        close();
      }}
      often={(show) => {
        shows.add(show);
        return () => shows.delete(show);
      }}
    />
  ));
  return { clock, kept, shows, leave, opener };
}

const target = () => document.querySelector(".wet-press") as HTMLElement;
const button = (name: string) => screen.getByRole("button", { name });
const click = (name: string) =>
  act(() => {
    fireEvent.click(button(name), { detail: 1 });
  });
const finger = (how: PointerEventInit = {}) =>
  act(() => {
    const it = target();
    fireEvent.pointerDown(it, { isPrimary: true, button: 0, ...how });
    fireEvent.pointerUp(it, { isPrimary: true, button: 0, ...how });
    fireEvent.click(it, { detail: 1 });
  });
const key = (name: string, how: KeyboardEventInit = {}) =>
  act(() => {
    const on = document.activeElement ?? document.body;
    fireEvent.keyDown(on, { key: name, ...how });
    fireEvent.keyUp(document.activeElement ?? document.body, { key: name });
  });
const times = () =>
  within(screen.getByRole("list", { name: words.times }))
    .getAllByRole("listitem")
    .map((it) => it.textContent);

/** Three times with the finger, in seconds, a second apart. */
async function measured(clock: { now: number }, ...seconds: readonly number[]) {
  for (const it of seconds) {
    clock.now += 1000;
    await finger();
    clock.now += 1000 * it;
    await finger();
  }
}

describe("pressing along", () => {
  test("is one target over all of the screen, which has the focus and says what to press for", () => {
    opened();
    expect(screen.getByRole("dialog", { name: words.name["pour-in"] })).toBeTruthy();
    expect(document.activeElement).toBe(button(words.begin["pour-in"]));
    expect(times()).toEqual([words.none, words.none, words.none]);
  });

  test.each(["pour-in", "pour-out", "inversion"] as const)(
    "of %s asks for the beginning and for the end, in words of its own",
    async (what) => {
      const { clock } = opened(what);
      expect(screen.getByText(words.advice[what])).toBeTruthy();
      await finger();
      expect(document.activeElement).toBe(button(words.end[what]));
      expect(screen.getByRole("status").textContent).toContain(words.end[what]);
      clock.now += 8000;
      await finger();
      expect(button(words.begin[what])).toBeTruthy();
      const taken = what === "inversion" ? "2.0 s" : "8.0 s";
      expect(times()).toEqual([taken, words.none, words.none]);
    },
  );

  test("counts a press once, as the finger comes down, and only that of the first finger", async () => {
    opened();
    act(() => {
      fireEvent.pointerDown(target(), { isPrimary: false, button: 0 });
      fireEvent.pointerDown(target(), { isPrimary: true, button: 2 });
      fireEvent.click(target(), { detail: 1 });
    });
    expect(button(words.begin["pour-in"])).toBeTruthy();
    act(() => {
      fireEvent.pointerDown(target(), { isPrimary: true, button: 0 });
    });
    expect(button(words.end["pour-in"])).toBeTruthy();
  });

  test("does not count the click that ends a long press", async () => {
    const { clock } = opened();
    await act(() => {
      fireEvent.pointerDown(target(), { isPrimary: true, button: 0 });
    });
    clock.now += 900;
    await act(() => {
      fireEvent.click(target(), { detail: 1 });
    });
    expect(button(words.end["pour-in"])).toBeTruthy();
  });

  test("takes a click that came from neither finger nor key", async () => {
    opened();
    await act(() => {
      fireEvent.click(target(), { detail: 0 });
    });
    expect(button(words.end["pour-in"])).toBeTruthy();
  });

  test("goes by Space and by Enter as well, and a key held down is one press", async () => {
    const { clock } = opened();
    await key(" ");
    clock.now += 4000;
    await key("Enter", { repeat: true });
    expect(button(words.end["pour-in"])).toBeTruthy();
    await key("Enter");
    expect(times()[0]).toBe("4.0 s");
  });

  test("shows the running time, large and for the eye alone, only while it runs", async () => {
    const { clock, shows } = opened();
    const shown = () => document.querySelector(".wet-clock")?.textContent;
    expect([shown(), shows.size]).toEqual(["0.0 s", 0]);
    await finger();
    clock.now += 2340;
    act(() => {
      for (const show of shows) show();
    });
    expect(shown()).toBe("2.3 s");
    expect(document.querySelector(".wet-clock")?.getAttribute("aria-hidden")).toBe("true");
    await finger();
    expect([shown(), shows.size]).toEqual(["0.0 s", 0]);
  });

  test("after three says the median and the spread, and keeps the three times", async () => {
    const { clock, kept } = opened();
    await measured(clock, 10.4, 11, 9.8);
    expect(screen.getByText("Median 10.4 s")).toBeTruthy();
    expect(screen.getByText(/1\.2 s apart/).textContent).toContain("even enough");
    expect(document.activeElement).toBe(button("Keep 10.4 s"));
    clock.now += 1000;
    await click("Keep 10.4 s");
    expect(kept).toEqual([[10.4, 11, 9.8]]);
  });

  test("says so where the three differ much, and where they do not differ", async () => {
    const { clock } = opened();
    await measured(clock, 10, 16, 11);
    expect(screen.getByText(/6\.0 s apart/).textContent).toContain("three more");
    clock.now += 1000;
    await click(words.again);
    expect(document.activeElement).toBe(button(words.begin["pour-in"]));
    await measured(clock, 10, 10, 10);
    expect(screen.getByText("All three are alike.")).toBeTruthy();
  });

  test("keeps nothing by the bounce of the last press, nor by its key held down", async () => {
    const { clock, kept } = opened();
    await measured(clock, 10, 10, 10);
    clock.now += 200;
    await click("Keep 10.0 s");
    await click(words.again);
    expect(kept).toEqual([]);
    clock.now += 1000;
    const held = new KeyboardEvent("keydown", {
      key: "Enter",
      repeat: true,
      bubbles: true,
      cancelable: true,
    });
    button("Keep 10.0 s").dispatchEvent(held);
    expect(held.defaultPrevented).toBe(true);
    await click("Keep 10.0 s");
    expect(kept).toEqual([[10, 10, 10]]);
  });

  test("takes back the last press, and leaves the focus where the next one is made", async () => {
    const { clock } = opened();
    expect(button(words.takeBack).getAttribute("aria-disabled")).toBe("true");
    await finger();
    clock.now += 5000;
    await finger();
    clock.now += 1000;
    button(words.takeBack).focus();
    await click(words.takeBack);
    expect(times()[0]).toBe(words.none);
    expect(document.activeElement).toBe(button(words.end["pour-in"]));
  });

  test("leaves a key on another button to that button", async () => {
    opened();
    button(words.leave).focus();
    await key(" ");
    expect(button(words.begin["pour-in"])).toBeTruthy();
  });

  test("is left by Escape, by its button and by the device's way back; the focus goes back where it was", async () => {
    const { clock, leave, opener } = opened();
    await key("Escape");
    expect(screen.queryByRole("dialog")).toBeNull();
    expect(document.activeElement).toBe(opener);
    await act(() => {
      fireEvent.click(opener);
    });
    await click(words.leave);
    expect(document.activeElement).toBe(opener);
    await act(() => {
      fireEvent.click(opener);
    });
    clock.now += 1000;
    const back = new Event("cancel", { cancelable: true });
    await act(() => {
      screen.getByRole("dialog").dispatchEvent(back);
    });
    expect(back.defaultPrevented).toBe(true);
    await act(() => {
      fireEvent.click(opener);
    });
    await act(() => {
      (screen.getByRole("dialog") as HTMLDialogElement).close();
    });
    expect(leave).toHaveBeenCalledTimes(4);
    expect(screen.queryByRole("dialog")).toBeNull();
  });

  test("opens in a browser without sheets of its own", () => {
    const { showModal } = HTMLDialogElement.prototype;
    Object.assign(HTMLDialogElement.prototype, { showModal: undefined });
    opened();
    Object.assign(HTMLDialogElement.prototype, { showModal });
    expect(screen.getByRole("dialog").hasAttribute("open")).toBe(true);
  });
});
