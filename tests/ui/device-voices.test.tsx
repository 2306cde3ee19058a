// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { speakerStore } from "../../src/logbook/speaker-store.ts";
import { everyPhrase } from "../../src/script/script.ts";
import { DeviceVoices } from "../../src/ui/device-voices.tsx";
import { openSpeakers } from "../../src/ui/speakers.ts";
import { deviceVoice as words } from "../../src/ui/words/en/own-voice.ts";
import type { Language } from "../../src/units/language.ts";
import { type Behaviour, handClock, synthesiserByHand } from "../live/device-by-hand.ts";
import { english } from "../timeline/scene.ts";
import { storeByHand } from "./voice-by-hand.ts";
import "./late-words.ts";

afterEach(cleanup);

function shown(behaviour: Behaviour, { language = "en" as Language, isRunOn = false } = {}) {
  const { clock, pass } = handClock();
  const spoken = synthesiserByHand(clock, () => behaviour);
  const speakers = openSpeakers(
    storeByHand().store,
    speakerStore(() => ({ getItem: () => null, setItem() {} }) as unknown as Storage),
  );
  const view = () => (
    <DeviceVoices
      language={language}
      phrases={everyPhrase(english)}
      speakers={speakers}
      synthesiser={spoken.synthesiser}
      isRunOn={isRunOn}
      choose={speakers.choose}
      clock={clock}
    />
  );
  const { container, rerender } = render(view());
  async function measure(): Promise<void> {
    await act(async () => {
      fireEvent.click(screen.getByRole("button", { name: words.measure }));
    });
    const isOn = () => screen.getByRole("status").textContent === words.measuring;
    for (let i = 0; i < 300 && isOn(); i += 1) {
      await act(async () => {
        pass(0.1);
        await Promise.resolve();
      });
    }
    rerender(view());
  }
  return { container, speakers, measure, spoken };
}
const radio = () => screen.getByRole("radio") as HTMLInputElement;

describe("The voices of the device", () => {
  test("cannot be chosen before they are measured, and say what was measured in words", async () => {
    const { speakers, measure, spoken } = shown({ delay: 0.2, perLetter: 1 / 15 });
    expect(radio().disabled).toBe(true);
    expect(screen.getByRole("status").textContent).toBe(words.first);
    await measure();
    expect(spoken.heard.length).toBe(5);
    expect(screen.getByRole("status").textContent).toBe(
      "Starts after 0.2\u00a0s, speaks 15 letters a second.",
    );
    expect(speakers.choice.value).toEqual({ kind: "device", voice: "Ada", language: "en-GB" });
    expect([radio().disabled, radio().checked]).toEqual([false, true]);
  });

  test("that never begin are refused in words, and the choice stays as it was", async () => {
    const { speakers, measure } = shown({ delay: 9, perLetter: 0.06 });
    await measure();
    expect(screen.getByRole("status").textContent).toBe(words.refused["never-starts"]);
    expect(speakers.choice.value).toEqual({ kind: "bundled" });
    expect(radio().disabled).toBe(true);
  });

  test("are not shown where none of them speaks the worksheet's language", () => {
    const { container } = shown({ delay: 0.2, perLetter: 0.06 }, { language: "de" });
    expect(container.textContent).toBe("");
  });

  test("are not measured while a run is on, which is said", () => {
    shown({ delay: 0.2, perLetter: 0.06 }, { isRunOn: true });
    const measure = screen.getByRole("button", { name: words.measure }) as HTMLButtonElement;
    expect(measure.disabled).toBe(true);
    expect(screen.getByRole("status").textContent).toBe(words.runOn);
  });
});
