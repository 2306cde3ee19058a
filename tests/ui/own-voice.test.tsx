// @vitest-environment happy-dom
import { act, cleanup, fireEvent, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { everyPhrase, phraseLimits } from "../../src/script/script.ts";
import { OwnVoice } from "../../src/ui/own-voice.tsx";
import { openRecording } from "../../src/ui/recording-state.ts";
import { whyNoPack, whyUnusable } from "../../src/ui/voice-messages.ts";
import { voiceShelf } from "../../src/ui/voice-shelf.ts";
import { microphone, speaker, recording as words } from "../../src/ui/words/en/own-voice.ts";
import { english } from "../timeline/scene.ts";
import { openedOver } from "./opener.tsx";
import { roomByHand, storeByHand } from "./voice-by-hand.ts";
import "./late-words.ts";

afterEach(cleanup);

const script = everyPhrase(english);
const [first = "", second = ""] = script;

async function opened(held: Record<string, Int16Array> = {}) {
  const room = roomByHand();
  const kept = storeByHand(held);
  const shelf = voiceShelf(kept.store, "en");
  await shelf.ready;
  const order = { phrases: script, wanted: 2 };
  const recording = openRecording(order, phraseLimits(english), shelf, room.ports);
  const shows = new Set<() => void>();
  const opener = openedOver((close) => (
    <OwnVoice
      recording={recording}
      shelf={shelf}
      leave={close}
      often={(show) => {
        shows.add(show);
        return () => shows.delete(show);
      }}
    />
  ));
  return { ...room, kept, opener, shows };
}

const key = (name: string) =>
  act(async () => {
    const on = document.activeElement ?? document.body;
    fireEvent.keyDown(on, { key: name });
    fireEvent.keyUp(document.activeElement ?? document.body, { key: name });
    // What the key began has to be kept first.
    await new Promise((resolve) => setTimeout(resolve, 0));
  });
const button = (name: string) => screen.getByRole("button", { name: new RegExp(`^${name}`) });
const status = () => screen.getByRole("status").textContent;
const able = (name: string) => button(name).getAttribute("aria-disabled") === "false";

describe("The sheet on which a voice is recorded", () => {
  test("shows the phrase, how far one is, and what the worksheet still wants", async () => {
    await opened({ [first]: Int16Array.of(1) });
    expect(screen.getByRole("dialog", { name: words.name })).toBeTruthy();
    expect(screen.getByText(second).getAttribute("lang")).toBe("en");
    expect(screen.getByText(`1 of ${script.length}`)).toBeTruthy();
    expect(screen.getByText(words.forWorksheet(1, 2))).toBeTruthy();
    expect(status()).toBe(words.ready);
  });

  test("is worked by keys alone, each of which its button names, and tells what came of each", async () => {
    const { kept, played } = await opened();
    for (const [name, keyName] of [
      [words.record, words.keys.press],
      [words.keep, words.keys.keep],
      [words.hear, words.keys.hear],
      [words.sayIt, words.keys.say],
      [words.remove, words.keys.remove],
      [words.undo, words.keys.undo],
      [words.leave, words.keys.leave],
    ] as const) {
      expect(button(name).querySelector("kbd")?.textContent).toBe(keyName);
    }
    await key("r");
    expect(played.at(-1)).toBe(first);
    await key(" ");
    expect([status(), able(words.sayIt), able(words.keep)]).toEqual([
      words.recording,
      false,
      false,
    ]);
    await key(" ");
    expect(status()).toContain("Recorded: 0.");
    expect(able(words.keep)).toBe(true);
    await key("Enter");
    expect(status()).toBe(words.told.kept);
    expect([...kept.clips.keys()]).toEqual([first]);
    expect(screen.getByText(second)).toBeTruthy();
    await key("ArrowLeft");
    expect(status()).toBe(words.isRecorded);
    await key("Delete");
    expect([status(), kept.clips.size]).toEqual([words.told.removed, 0]);
    await key("U");
    expect([status(), kept.clips.size]).toEqual([words.told.undone, 1]);
  });

  test("keeps the focus on the one button that records, so that the next key is a press", async () => {
    await opened();
    expect(document.activeElement).toBe(button(words.record));
    await act(async () => {
      fireEvent.click(button(words.sayIt));
    });
    expect(document.activeElement).toBe(button(words.record));
    expect(able(words.keep)).toBe(false);
    await act(async () => {
      fireEvent.click(button(words.keep));
    });
    expect(screen.getByText(first)).toBeTruthy();
  });

  test("says in words why there is nothing to keep", async () => {
    const { state } = await opened();
    state.refuses = "denied";
    await key(" ");
    expect(status()).toBe(microphone.denied);
    state.refuses = null;
    await key(" ");
    state.heard = new Float32Array(24_000);
    await key(" ");
    expect(status()).toBe(whyUnusable({ kind: "too-quiet" }));
    expect(button(words.again)).toBeTruthy();
  });

  test("shows the level as a bar and in a word, for the eye alone", async () => {
    const { shows } = await opened();
    await key(" ");
    act(() => {
      for (const show of shows) show();
    });
    const meter = document.querySelector(".own-meter");
    expect(meter?.getAttribute("aria-hidden")).toBe("true");
    expect(meter?.textContent).toContain(words.levels.good);
  });

  test("lets go of the microphone when it is left, and the focus goes back where it was", async () => {
    const { state, opener } = await opened();
    await key(" ");
    expect(state.open).toBe(1);
    await key("Escape");
    expect([screen.queryByRole("dialog"), state.open]).toEqual([null, 0]);
    expect(document.activeElement).toBe(opener);
  });
});

describe("The words about a voice", () => {
  test("say of every file that is refused what is wrong, and that nothing was changed", () => {
    const all = [
      whyNoPack("a.zip", { kind: "foreign" }),
      whyNoPack("a.zip", { kind: "other-version" }),
      whyNoPack("a.zip", { kind: "damaged" }),
      whyNoPack("a.zip", { kind: "too-large" }),
      whyNoPack("a.zip", { kind: "other-language", language: "de" }),
      whyNoPack("a.zip", { kind: "other-sound", file: "001.wav" }),
    ];
    expect(new Set(all).size).toBe(all.length);
    for (const text of all) expect(text).toMatch(/a\.zip.* Nothing was changed\.$/);
  });

  test("name what was left out of a file, the first few where there are many", () => {
    expect(speaker.imported(1, [])).toBe("1 phrase was taken in. Undo takes it out again.");
    expect(speaker.imported(3, ["x", "y"])).toContain("“x”, “y”");
    const many = speaker.imported(3, ["a", "b", "c", "d"]);
    expect(many).toContain("4 were left out");
    expect(many).not.toContain("“d”");
  });

  test("say of every refused recording what to do next", () => {
    const all = [
      whyUnusable({ kind: "too-quiet" }),
      whyUnusable({ kind: "clipped" }),
      whyUnusable({ kind: "noise" }),
      whyUnusable({ kind: "too-long", lasts: 6.2, most: 5.6 }),
    ];
    for (const text of all) expect(text).toMatch(/and record again\.$/);
    expect(all.at(-1)).toContain("6.2\u00a0s");
    expect(whyUnusable({ kind: "too-short" })).toContain("press again");
  });
});
