// @vitest-environment happy-dom
import { signal } from "@preact/signals";
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import type { KnockPort } from "../../src/live/knock-port.ts";
import { KnockSwitch } from "../../src/ui/knock-switch.tsx";
import { knocks as words } from "../../src/ui/words/en/hands.ts";
import { microphone, recording } from "../../src/ui/words/en/own-voice.ts";
import "./late-words.ts";

afterEach(cleanup);

function shown(becomes: KnockPort["on"]["value"] = "asking") {
  const on = signal<KnockPort["on"]["value"]>("off");
  const turned: boolean[] = [];
  render(
    <KnockSwitch
      knocks={{
        on,
        turn(wanted) {
          turned.push(wanted);
          on.value = wanted ? becomes : "off";
        },
      }}
    />,
  );
  return { on, turned };
}

const box = () => screen.getByRole("checkbox", { name: words.hear }) as HTMLInputElement;
const click = () =>
  act(() => {
    fireEvent.click(box());
  });
const status = () => screen.getByRole("status").textContent;

describe("The switch for knocks", () => {
  test("is off until it is pressed, and says that nothing is kept, sent or needed", () => {
    const { turned } = shown();
    expect([box().checked, turned]).toEqual([false, []]);
    const hint = document.getElementById(box().getAttribute("aria-describedby") ?? "");
    expect(hint?.textContent).toMatch(/not kept and never leaves this device.*never needed/);
  });

  test("asks for the microphone, hears, and is switched off again", async () => {
    const { on, turned } = shown();
    await click();
    expect([box().checked, status()]).toEqual([true, recording.opening]);
    await act(() => {
      on.value = "on";
    });
    expect([box().checked, status()]).toEqual([true, ""]);
    await click();
    expect([box().checked, turned]).toEqual([false, [true, false]]);
  });

  test.each(["denied", "none", "busy", "unable"] as const)(
    "is off where it was refused, every time, and says why: %s",
    async (why) => {
      const { turned } = shown(why);
      for (const times of [1, 2]) {
        await click();
        expect([box().checked, status()]).toEqual([false, microphone[why]]);
        expect(turned.length).toBe(times);
      }
    },
  );
});
