// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { AlsoFelt } from "../../src/ui/also-felt.tsx";
import { AskWho } from "../../src/ui/ask-who.tsx";
import { openSenses } from "../../src/ui/senses.ts";
import { runDeeds } from "../../src/ui/words/en/run.ts";
import { senses as words } from "../../src/ui/words/en/senses.ts";
import { type Senses, usualSenses } from "../../src/voice/senses.ts";
import { english } from "../timeline/scene.ts";
import "./late-words.ts";

afterEach(cleanup);

function asked(more: Partial<Senses> = {}, keeps = true, isRunOn = false) {
  const said: string[] = [];
  let hushed = 0;
  let over = () => {};
  const senses = openSenses({ load: () => ({ ...usualSenses, ...more }), keep: () => keeps });
  const sounds = {
    script: async () => english,
    say: (text: string) => {
      said.push(text);
      return new Promise<void>((resolve) => {
        over = resolve;
      });
    },
    play: async () => {},
    hush() {
      hushed += 1;
      over();
    },
  };
  let paused = () => {};
  const after = (_: number, act: () => void) => {
    paused = act;
    return () => {};
  };
  render(<AskWho senses={senses} sounds={sounds} isRunOn={isRunOn} after={after} />);
  return {
    senses,
    said,
    hushed: () => hushed,
    next: () => act(async () => over()),
    passes: () => act(async () => paused()),
  };
}

const press = (key: string, on: Element = document.body) =>
  act(async () => {
    fireEvent.keyDown(on, { key });
  });

describe("Who speaks", () => {
  test("is asked by voice at the first button's press, phrase after phrase, and hushed by an answer", async () => {
    const it = asked();
    const [first] = screen.getAllByRole("button");
    expect(first?.textContent).toBe(words.hear);
    await act(async () => first?.click());
    await it.next();
    await it.next();
    expect(it.said).toEqual(["Who is to speak?", "For the program,", "press one."]);
    const before = it.hushed();
    await press("2");
    expect(it.hushed()).toBe(before + 1);
    await it.next();
    expect(it.said).toHaveLength(3);
    expect(it.senses.now.value.speaks).toBe("reader");
  });

  test.each([
    ["1", "program"],
    ["2", "reader"],
    ["3", "tones"],
  ] as const)("is answered by the key %s: %s, and the hand is led on", async (key, speaks) => {
    const it = asked();
    await press(key);
    expect(it.senses.now.value.speaks).toBe(speaks);
    expect(document.activeElement?.textContent).toMatch(words.names[speaks]);
    await act(async () => screen.getByRole("button", { name: words.change }).click());
    await act(async () => screen.getByRole("button", { name: `3 ${words.names.tones}` }).click());
    expect(it.senses.now.value.speaks).toBe("tones");
  });

  test("is answered by one key alone: the first button takes what is being told, and in the pause behind it", async () => {
    const it = asked();
    const [first] = screen.getAllByRole("button");
    await act(async () => first?.click());
    await it.next();
    await it.next();
    await it.next();
    expect(it.said.at(-1)).toBe("press one.");
    await it.passes();
    expect(it.said.at(-1)).toBe("For your screen reader,");
    await it.next();
    await it.next();
    await act(async () => first?.click());
    expect(it.senses.now.value.speaks).toBe("reader");
    expect(it.said).toHaveLength(5);
  });

  test("takes no key that is typed into a field, held with another, or a press of the run", async () => {
    const it = asked();
    document.body.append(document.createElement("input"));
    await press("1", document.querySelector("input") as Element);
    await act(async () => {
      fireEvent.keyDown(document.body, { key: "1", ctrlKey: true });
    });
    await press("4");
    expect(it.senses.now.value.speaks).toBeNull();
    cleanup();
    const running = asked({}, true, true);
    await press("1");
    expect(running.senses.now.value.speaks).toBeNull();
  });

  test("says where the browser keeps no answer", async () => {
    asked({}, false);
    await press("1");
    expect(screen.getByRole("status").textContent).toMatch(/will not keep/);
  });
});

describe("What can also be felt and read", () => {
  test("says that a browser cannot vibrate, and offers nothing to feel", () => {
    const senses = openSenses({
      load: () => ({ ...usualSenses, vibrates: true }),
      keep: () => true,
    });
    render(<AlsoFelt senses={senses} vibrate={null} />);
    expect(screen.getByText(words.noMotor)).toBeTruthy();
    const box = screen.getByRole("checkbox", { name: words.vibrates }) as HTMLInputElement;
    expect([box.disabled, box.checked]).toEqual([true, false]);
    expect(screen.queryByText(words.feel)).toBeNull();
  });

  test("lets each signal be tried on the skin once it is switched on", async () => {
    const senses = openSenses({ load: () => usualSenses, keep: () => true });
    const felt: (readonly number[])[] = [];
    render(<AlsoFelt senses={senses} vibrate={(pulses) => felt.push(pulses)} />);
    await act(async () => screen.getByRole("checkbox", { name: words.vibrates }).click());
    for (const deed of ["pour-in", "agitate", "rest", "pour-out"] as const)
      await act(async () => screen.getByRole("button", { name: runDeeds[deed] }).click());
    expect(new Set(felt.map(String)).size).toBe(4);
    await act(async () => screen.getByRole("checkbox", { name: words.captions }).click());
    expect(senses.now.value).toEqual({ speaks: null, vibrates: true, captions: true });
  });
});
