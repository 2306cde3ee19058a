// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test, vi } from "vitest";
import { readingsIn } from "../../src/live/journal.ts";
import { openProbe, type Probe } from "../../src/live/probe.ts";
import { demos } from "../../src/ui/demo.ts";
import { Reading } from "../../src/ui/reading.tsx";
import { reading as words } from "../../src/ui/words/en/hands.ts";
import { sink } from "../../src/ui/words/en/wet.ts";
import type { Temperature } from "../../src/units/temperature.ts";
import { runByHand } from "../live/by-hand.ts";
import { thermometerByHand } from "../live/probe-by-hand.ts";
import "./late-words.ts";

afterEach(cleanup);

interface Shown {
  readonly like?: Temperature;
  readonly probe?: Probe | null;
  readonly passes?: (event: KeyboardEvent) => boolean;
  /** Seconds into the developer; null before it. */
  readonly at?: number | null;
}

/** A run of the practice worksheet, a minute into the developer. */
function shown({ like = { c: 20 }, probe = null, passes, at = 60 }: Shown = {}) {
  const it = runByHand(demos.gullrock);
  if (at !== null) {
    it.pressThrough(it.planned.sections.findIndex(({ id }) => id === "developer") + 1);
    it.wait(at);
  }
  let show = () => {};
  const { container } = render(
    <Reading
      run={it.run}
      like={like}
      probe={probe}
      after={(_ms, act) => {
        show = act;
        return () => {};
      }}
      {...(passes && { passes })}
    />,
  );
  const taken = () => readingsIn(it.run.journal().entries).map(({ temperature }) => temperature);
  return { ...it, container, taken, show: () => act(() => show()) };
}

const field = () => screen.getByRole("textbox", { name: words.typed }) as HTMLInputElement;
const status = () => screen.getAllByRole("status")[0]?.textContent;
const type = (text: string) =>
  act(() => {
    fireEvent.input(field(), { target: { value: text } });
  });
const button = (name: string | RegExp) => screen.getByRole("button", { name });
const press = (name: string | RegExp) =>
  act(() => {
    fireEvent.pointerDown(button(name), { isPrimary: true, button: 0 });
    fireEvent.click(button(name), { detail: 1 });
  });
const set = () => press(/^Read /);
/** Fingers do not press again at once. */
const later = () => new Promise((resolve) => setTimeout(resolve, 320));

describe("A thermometer read while the film is in the developer", () => {
  test("is asked for then alone", async () => {
    const before = shown({ at: null });
    expect(before.container.textContent).toBe("");
    before.pressThrough(before.planned.sections.findIndex(({ id }) => id === "developer") + 1);
    before.wait(60);
    await before.show();
    expect(field().value).toBe("20 °C");
    // Folded away, so that the one press keeps the screen.
    expect(document.querySelector("details")?.open).toBe(false);
    expect(document.querySelector("summary")?.textContent).toBe("Thermometer · 20\u00a0°C");
    before.wait(900);
    await before.show();
    expect(before.container.textContent).toBe("");
  });

  test("shows what was read last, from whoever gave it, but for what is being typed", async () => {
    const { run, show } = shown();
    run.read({ c: 20.7 });
    await show();
    expect(field().value).toBe("20.7 °C");
    await type("21");
    run.read({ c: 20.9 });
    await show();
    expect(field().value).toBe("21");
  });

  test("is typed with its unit, and moves the end of the development", async () => {
    const { run, taken } = shown();
    const end = () => run.journal().timeline.sections.find(({ id }) => id === "developer")?.seconds;
    const before = end() ?? 0;
    await type("21.5 °C");
    expect(button(/^Read 21\.5\u00a0°C now/)).toBeTruthy();
    await set();
    expect(taken()).toEqual([{ c: 21.5 }]);
    expect(end()).toBeLessThan(before);
    expect(status()).toBe("21.5 °C taken.");
    expect(field().value).toBe("21.5 °C");
  });

  test("without a unit is in the worksheet's", async () => {
    const inCelsius = shown();
    await type("19,5");
    await set();
    expect(inCelsius.taken()).toEqual([{ c: 19.5 }]);
    cleanup();
    const inFahrenheit = shown({ like: { f: 68 } });
    expect(field().value).toBe("68 °F");
    await type("67");
    await set();
    await later();
    await type("19.5 °C");
    await set();
    expect(inFahrenheit.taken()).toEqual([{ f: 67 }, { c: 19.5 }]);
  });

  test("goes up and down by half degrees, from what was typed or read last", async () => {
    const { taken } = shown();
    await press(sink.more);
    await later();
    await press(sink.more);
    expect(field().value).toBe("21 °C");
    await type("19.3");
    await press(sink.less);
    expect(field().value).toBe("19 °C");
    await set();
    await later();
    await press(sink.less);
    await set();
    // A wet finger that bounces sets it once.
    await set();
    expect(taken()).toEqual([{ c: 19 }, { c: 18.5 }]);
  });

  test("is set by Enter in its field, and by assistive technology, which clicks alone", async () => {
    const { taken } = shown();
    await type("20.5");
    await act(() => {
      fireEvent.keyDown(field(), { key: "Enter" });
      fireEvent.keyDown(field(), { key: "Enter", repeat: true });
    });
    await later();
    await act(() => {
      fireEvent.click(button(sink.more), { detail: 0 });
    });
    await act(() => {
      fireEvent.click(button(/^Read /), { detail: 0 });
    });
    expect(taken()).toEqual([{ c: 20.5 }, { c: 21 }]);
  });

  test("that cannot be read says what it may be, as the worksheet's field does", async () => {
    const { taken } = shown();
    await type("warm");
    expect(status()).toBe("");
    await set();
    expect(status()).toBe(
      '“warm” cannot be used. It may hold a temperature with its unit, such as "20 °C", "20.5 C" or "68 °F".',
    );
    expect(field().getAttribute("aria-invalid")).toBe("true");
    expect(taken()).toEqual([]);
    await type("20");
    expect(field().getAttribute("aria-invalid")).toBe("false");
  });

  test("that no developer in a tank has is not taken: a slip of the unit, most likely", async () => {
    const { taken } = shown();
    await type("67");
    await set();
    const { range } = words;
    expect(status()).toBe(range("10\u00a0°C", "45\u00a0°C"));
    expect(taken()).toEqual([]);
    cleanup();
    shown({ like: { f: 68 } });
    await type("20");
    await set();
    expect(status()).toBe(range("50\u00a0°F", "113\u00a0°F"));
  });

  test("set a moment too late is not taken, and is asked for no more", async () => {
    const it = shown();
    it.wait(900);
    await set();
    expect([it.container.textContent, it.taken()]).toEqual(["", []]);
  });

  test("keeps its keys from the run, but for those that are the run's everywhere", async () => {
    const heard: string[] = [];
    const listen = (event: KeyboardEvent) => heard.push(`${event.type} ${event.key}`);
    window.addEventListener("keydown", listen);
    window.addEventListener("keyup", listen);
    shown({ passes: ({ code }) => code === "PageDown" });
    for (const key of ["5", "Enter", " ", "ArrowUp", "Backspace"]) {
      fireEvent.keyDown(field(), { key, code: key });
      fireEvent.keyUp(button(sink.more), { key, code: key });
    }
    fireEvent.keyDown(field(), { key: "PageDown", code: "PageDown" });
    fireEvent.keyUp(field(), { key: "PageDown", code: "PageDown" });
    window.removeEventListener("keydown", listen);
    window.removeEventListener("keyup", listen);
    expect(heard).toEqual(["keydown PageDown", "keyup PageDown"]);
  });
});

describe("A thermometer that tells by itself", () => {
  const probeByHand = (refusal?: Parameters<typeof thermometerByHand>[0]) => {
    const hand = thermometerByHand(refusal);
    const give = vi.fn(() => true);
    return { ...hand, give, probe: openProbe(hand.thermometer, give) };
  };
  const click = (name: string) =>
    act(async () => {
      fireEvent.click(button(name));
    });
  const text = () => document.querySelector(".probe")?.textContent ?? "";

  test("is offered where there is such a thing", () => {
    shown();
    expect(screen.queryByRole("button", { name: words.connect })).toBeNull();
    cleanup();
    shown({ probe: probeByHand().probe });
    expect(button(words.connect)).toBeTruthy();
    expect(text()).toContain(words.hint);
  });

  test("shows its name, its last reading in the worksheet's unit, and how it stands", async () => {
    const { probe, tell, lose, find, wait, answer } = probeByHand();
    shown({ probe, like: { f: 68 } });
    wait();
    await click(words.connect);
    expect(screen.getByText(words.connecting).getAttribute("role")).toBe("status");
    await act(async () => {
      answer();
      await new Promise((resolve) => setTimeout(resolve, 0));
    });
    expect(text()).toContain("Gullrock probe: connected, no reading yet.");
    await act(() => tell(20, 0));
    expect(text()).toContain("Gullrock probe: 68 °F.");
    await act(() => tell(26.02, 1));
    expect(text()).toContain("Gullrock probe: 78.8 °F. It seems to be out of the tank");
    await act(() => lose());
    expect(text()).toContain("out of touch, and being looked for. Last reading: 78.8 °F.");
    await act(() => find());
    expect(text()).not.toContain("out of touch");
    await click(words.disconnect);
    expect(button(words.connect)).toBeTruthy();
  });

  test("goes on telling the run when nothing of it is shown any more", async () => {
    const { probe, tell, give } = probeByHand();
    shown({ probe });
    await click(words.connect);
    cleanup();
    for (const at of [0, 2, 4]) tell(20.5, at);
    expect(give.mock.calls).toEqual([[20.5]]);
  });

  test.each(["none", "denied", "unreachable", "unfit", "unable"] as const)(
    "that was refused says why: %s",
    async (why) => {
      shown({ probe: probeByHand({ kind: "refused", why }).probe });
      await click(words.connect);
      expect(screen.getByText(words.refused[why]).getAttribute("role")).toBe("status");
      expect(button(words.connect)).toBeTruthy();
    },
  );
});
