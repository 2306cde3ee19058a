// @vitest-environment happy-dom
// A whole run as a screen reader reads it out: every sentence through the page's live region, in its order and once.

import { virtual } from "@guidepup/virtual-screen-reader";
import { signal } from "@preact/signals";
import { act, cleanup, render } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import type { Saying } from "../../src/live/beside.ts";
import { demos } from "../../src/ui/demo.ts";
import { RunView } from "../../src/ui/run-view.tsx";
import { openSenses } from "../../src/ui/senses.ts";
import { usualSenses } from "../../src/voice/senses.ts";
import { runByHand } from "../live/by-hand.ts";
import { emptyHands, sessionOf, silentRuns } from "./run-stand-ins.ts";
import "./late-words.ts";

afterEach(async () => {
  await virtual.stop();
  cleanup();
});

test("A whole run is read out by a screen reader, from the check to the hanging film", async () => {
  const steady = performance.now() / 1000;
  const hand = runByHand(demos.gullrock, { clocks: { steady, audio: steady } });
  const saying = signal<Saying | null>(null);
  const shows = new Set<() => void>();
  const { runs } = silentRuns();
  const { container } = render(
    <RunView
      session={sessionOf(hand, demos.gullrock, { saying, speaks: "reader" })}
      ports={{
        runs,
        ...emptyHands,
        senses: openSenses({
          load: () => ({ ...usualSenses, speaks: "reader" }),
          keep: () => true,
        }),
        toWriteUp() {},
        keepAwake() {},
        after(_ms, again) {
          shows.add(again);
          return () => void shows.delete(again);
        },
      }}
    />,
  );
  await virtual.start({ container });
  const heard: string[] = [];
  let told = 0;
  async function listen(): Promise<void> {
    const said = hand.ears().filter(({ cue }) => cue.says !== undefined);
    for (const { cue, at } of said.slice(told)) {
      await act(async () => {
        saying.value = { says: cue.says ?? "", urgent: false, at };
      });
    }
    told = said.length;
    await act(async () => {
      for (const show of shows) show();
    });
    heard.push(...(await virtual.spokenPhraseLog()));
    await virtual.clearSpokenPhraseLog();
  }
  for (const { id, seconds } of hand.planned.sections) {
    heard.push("", `# ${id}`);
    hand.press();
    for (let passed = 0; passed < seconds + 30; passed += 10) {
      hand.wait(10);
      await listen();
    }
  }
  const read = heard.filter((line) => line.startsWith("polite: ")).map((line) => line.slice(8));
  expect(read).toEqual(hand.said());
  await expect(heard.join("\n").trim()).toMatchFileSnapshot("heard-run.txt");
});
