// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen, within } from "@testing-library/preact";
import { afterEach, describe, expect, test, vi } from "vitest";
import { rhythm } from "../../src/live/latency.ts";
import { delayStore } from "../../src/logbook/delay-store.ts";
import { Wireless } from "../../src/ui/wireless.tsx";
import { tapAlong as words } from "../../src/ui/words/en/hear.ts";
import { checkByHand } from "./check-by-hand.ts";
import "./late-words.ts";

afterEach(cleanup);

/** Seconds by which a busy machine may hear of a tap late, and take it for earlier, and no figure changes. */
const BUSY = 0.004;

/** The question opened and the sheet on it; nothing has been pressed there. */
async function opened(kept = 0, willKeep = true) {
  const clock = { now: 60_000 };
  const check = checkByHand();
  let waiting: { readonly at: number; readonly act: () => void }[] = [];
  const delays = delayStore(() => {
    if (!willKeep) throw new DOMException("no", "SecurityError");
    return { getItem: () => String(kept), setItem() {} } as unknown as Storage;
  });
  render(
    <Wireless
      language="en"
      delays={delays}
      soundCheck={check.port}
      now={() => clock.now}
      after={(ms, act) => {
        const entry = { at: clock.now + ms, act };
        waiting.push(entry);
        return () => {
          waiting = waiting.filter((it) => it !== entry);
        };
      }}
    />,
  );
  fireEvent.click(screen.getByText(words.ask));
  await click(words.measure);
  const it = {
    clock,
    check,
    delays,
    /** Lets so many ms go by. */
    pass: (ms: number) =>
      act(async () => {
        clock.now += ms;
        const due = waiting.filter(({ at }) => at <= clock.now);
        waiting = waiting.filter(({ at }) => at > clock.now);
        for (const { act } of due) act();
      }),
    /** Taps to all beats, so many seconds late, from the first press to what came of it. */
    async measure(delay: number, by: () => Promise<void> = finger) {
      await by();
      await check.begin();
      const start = clock.now / 1000 + 0.5;
      for (const beat of rhythm) {
        clock.now = (start + beat + delay + BUSY) * 1000;
        await by();
      }
      await check.end(rhythm.map((beat) => start + beat));
      await it.pass(1300);
      await it.pass(1000);
    },
  };
  return it;
}

/** On the sheet, where one is open. */
const button = (name: string) =>
  within(screen.queryByRole("dialog") ?? document.body).getByRole("button", { name });
const click = (name: string) =>
  act(async () => {
    fireEvent.click(button(name), { detail: 1 });
  });
const target = () => document.querySelector(".wet-press") as HTMLElement;
const finger = () =>
  act(async () => {
    const on = target();
    fireEvent.pointerDown(on, { isPrimary: true, button: 0 });
    fireEvent.pointerUp(on, { isPrimary: true, button: 0 });
    fireEvent.click(on, { detail: 1 });
  });
const key = (name = " ", how: KeyboardEventInit = {}) =>
  act(async () => {
    fireEvent.keyDown(document.activeElement ?? document.body, { key: name, ...how });
    fireEvent.keyUp(document.activeElement ?? document.body, { key: name });
  });
const told = () =>
  [...document.querySelectorAll("[role=status]")].map((it) => it.textContent?.trim());
const isOpen = () => screen.queryByRole("dialog") !== null;

describe("Tapping along", () => {
  test("is one target over all of the screen, which has the focus and says what to do", async () => {
    await opened();
    expect(screen.getByRole("dialog", { name: words.name })).toBeTruthy();
    expect(document.activeElement).toBe(button(words.start));
    expect(screen.getByText(words.advice)).toBeTruthy();
  });

  test.each([
    ["a finger", finger],
    ["the space bar", () => key()],
  ] as const)(
    "by %s finds by how much the headphones are late, and keeps it when told to",
    async (_, by) => {
      const it = await opened();
      await it.measure(0.24, by);
      expect(told()).toContain("0.24\u00a0s late");
      expect(document.activeElement).toBe(button("Keep 0.24\u00a0s"));
      expect(it.delays.load()).toBe(0);
      await click("Keep 0.24\u00a0s");
      expect(it.delays.load()).toBeCloseTo(0.24, 1);
      expect(isOpen()).toBe(false);
      expect(told()).toEqual([words.kept("0.24\u00a0s")]);
    },
  );

  test("takes the time from when the finger came down, not from when the page heard of it", async () => {
    const it = await opened();
    const heardLate = vi.spyOn(performance, "now");
    await it.measure(0.5, () =>
      act(async () => {
        const event = new Event("pointerdown", { bubbles: true });
        Object.assign(event, { isPrimary: true, button: 0 });
        heardLate.mockReturnValueOnce(event.timeStamp + 200);
        if (button(words.leave) && target().textContent?.includes(words.start)) {
          heardLate.mockReset();
          fireEvent.click(target(), { detail: 1 });
          return;
        }
        target().dispatchEvent(event);
      }),
    );
    heardLate.mockRestore();
    expect(button("Keep 0.30\u00a0s")).toBeTruthy();
  });

  test("is asked to hear the beats by a whole press: browsers let nothing sound at a finger coming down", async () => {
    const it = await opened();
    await act(async () => {
      fireEvent.pointerDown(target(), { isPrimary: true, button: 0 });
    });
    expect(it.check.asked).toEqual([]);
    await act(async () => {
      fireEvent.click(target(), { detail: 1 });
    });
    expect(it.check.asked).toEqual([{ what: "beats", language: "en" }]);
    expect(told()).toContain(words.fetching);
  });

  test("counts no tap before the beats sound, and says nothing while they do", async () => {
    const it = await opened();
    await finger();
    await finger();
    expect(screen.getByText(words.taps(0))).toBeTruthy();
    await it.check.begin();
    await finger();
    await key();
    await key(" ", { repeat: true });
    expect(screen.getByText(words.taps(2)).getAttribute("aria-hidden")).toBe("true");
    expect(told().at(-1)).toBe("");
  });

  test("waits for the last tap, which comes late when all is late", async () => {
    const it = await opened();
    await finger();
    await it.check.begin();
    const start = it.clock.now / 1000;
    for (const beat of rhythm.slice(0, -1)) {
      it.clock.now = (start + beat + 0.9 + BUSY) * 1000;
      await finger();
    }
    await it.check.end(rhythm.map((beat) => start + beat));
    it.clock.now = (start + (rhythm.at(-1) ?? 0) + 0.9 + BUSY) * 1000;
    await finger();
    expect(screen.getByText(words.taps(rhythm.length))).toBeTruthy();
    await it.pass(1300);
    expect(button("Keep 0.90\u00a0s")).toBeTruthy();
  });

  test("by whoever goes on tapping presses nothing of what has come beneath", async () => {
    const it = await opened(0.4);
    await finger();
    await it.check.begin();
    const start = it.clock.now / 1000;
    for (const beat of rhythm) {
      it.clock.now = (start + beat + 0.3 + BUSY) * 1000;
      await finger();
    }
    await it.check.end(rhythm.map((beat) => start + beat));
    await it.pass(1300);
    await it.pass(900);
    for (const name of ["Keep 0.30\u00a0s", words.again, words.none, words.leave]) {
      await click(name).catch(() => {});
    }
    await key();
    expect([isOpen(), it.delays.load()]).toEqual([true, 0.4]);
    await it.pass(200);
    await click("Keep 0.30\u00a0s");
    expect(it.delays.load()).toBeCloseTo(0.3, 1);
  });

  test("says so where there is no delay worth mending, and keeps none", async () => {
    const it = await opened(0.4);
    await it.measure(0.03);
    expect(told()).toContain(words.notLate);
    await click(words.keepNone);
    expect(it.delays.load()).toBe(0);
    expect(told()).toEqual([words.noneKept]);
  });

  test.each([
    ["few", [0, 1, 2, 3, 4]],
    ["far", rhythm.map((beat) => beat + 1.4)],
  ] as const)("says why where nothing could be found: %s", async (why, taps) => {
    const it = await opened();
    await finger();
    await it.check.begin();
    const start = it.clock.now / 1000;
    for (const tap of taps) {
      it.clock.now = (start + tap) * 1000;
      await finger();
    }
    await it.check.end(rhythm.map((beat) => start + beat));
    await it.pass(1300);
    expect(told()).toContain(words.refused[why]);
    expect(document.activeElement).toBe(button(words.again));
    await it.pass(1000);
    await click(words.again);
    expect(it.check.asked).toHaveLength(2);
    await it.check.begin();
    expect(screen.getByText(words.taps(0))).toBeTruthy();
    expect(document.activeElement).toBe(target());
  });

  test("can be begun again where the beats could not be fetched", async () => {
    const it = await opened();
    await finger();
    await it.check.refuse();
    expect(document.activeElement).toBe(button(words.failed));
    await it.measure(0.2);
    expect(button("Keep 0.20\u00a0s")).toBeTruthy();
  });

  test("is left by its button and by Escape at any time, the beats falling silent, and keeps nothing", async () => {
    for (const leave of [() => click(words.leave), () => key("Escape")]) {
      const it = await opened(0.4);
      await finger();
      await it.check.begin();
      await leave();
      expect(isOpen()).toBe(false);
      expect(it.check.stops()).toBe(1);
      await it.pass(5000);
      expect(it.delays.load()).toBe(0.4);
      cleanup();
    }
  });
});

describe("The delay that is kept", () => {
  test("is shown in words, and taken back by one press", async () => {
    const it = await opened(0.25);
    await key("Escape");
    expect(told()).toEqual([words.kept("0.25\u00a0s")]);
    await click(words.none);
    expect(it.delays.load()).toBe(0);
    expect(told()).toEqual([words.noneKept]);
    expect(button(words.none).getAttribute("aria-disabled")).toBe("true");
  });

  test("is taken back on the sheet too", async () => {
    const it = await opened(0.25);
    await it.measure(0.5);
    await click(words.none);
    expect([isOpen(), it.delays.load()]).toEqual([false, 0]);
  });

  test("holds for the page where the browser keeps nothing, and that is told", async () => {
    const it = await opened(0, false);
    await it.measure(0.25);
    await click("Keep 0.25\u00a0s");
    expect(it.delays.load()).toBeCloseTo(0.25, 1);
    expect(told()).toEqual([`${words.kept("0.25\u00a0s")} ${words.notKept}`]);
  });
});
