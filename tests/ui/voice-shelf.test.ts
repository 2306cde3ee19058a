import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { speakerStore } from "../../src/logbook/speaker-store.ts";
import { openSpeakers } from "../../src/ui/speakers.ts";
import { voiceShelf } from "../../src/ui/voice-shelf.ts";
import { bundled } from "../../src/voice/speaker.ts";
import { storeByHand } from "./voice-by-hand.ts";

const clip = (sample: number) => Int16Array.of(sample);
const texts = ["a", "b", "c"];

describe("The recorded clips", () => {
  test("are those that were kept, once they have been read", async () => {
    const shelf = voiceShelf(storeByHand({ a: clip(1) }).store, "en");
    expect(await shelf.ready).toBe(true);
    expect(shelf.clips.value).toEqual(new Map([["a", clip(1)]]));
  });

  test("are as they were after every change taken back, in memory and in the store alike", async () => {
    const anyChange = fc.dictionary(
      fc.constantFrom(...texts),
      fc.option(fc.integer({ min: 1, max: 99 }).map(clip)),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(anyChange, { maxLength: 5 }), async (changes) => {
        const { store, clips } = storeByHand({ a: clip(0) });
        const shelf = voiceShelf(store, "en");
        const before: Map<string, Int16Array>[] = [];
        for (const change of changes) {
          before.push(new Map(clips));
          await shelf.change(new Map(Object.entries(change)));
          expect(shelf.clips.value).toEqual(clips);
        }
        for (const was of before.toReversed()) {
          expect(shelf.canUndo.value).toBe(true);
          expect(await shelf.undo()).toBe(true);
          expect(shelf.clips.value).toEqual(was);
          expect(clips).toEqual(was);
        }
        expect(shelf.canUndo.value).toBe(false);
        expect(await shelf.undo()).toBe(true);
      }),
    );
  });

  test("hold here what the browser will not keep, and say so", async () => {
    const { store, clips, state } = storeByHand();
    const shelf = voiceShelf(store, "en");
    state.willKeep = false;
    expect(await shelf.change(new Map([["a", clip(1)]]))).toBe(false);
    expect(shelf.clips.value.get("a")).toEqual(clip(1));
    expect(clips.size).toBe(0);
  });

  test("are none where the browser lets nothing be read, which is told", async () => {
    const { store, state } = storeByHand({ a: clip(1) });
    state.willRead = false;
    const shelf = voiceShelf(store, "en");
    expect(await shelf.ready).toBe(false);
    expect(shelf.clips.value.size).toBe(0);
  });
});

describe("Who speaks", () => {
  const pace = { delay: { least: 0, most: 0.2 }, perLetter: { least: 0.05, most: 0.07 } };
  const opened = () =>
    openSpeakers(
      storeByHand({ a: clip(1) }).store,
      speakerStore(() => ({ getItem: () => null, setItem() {} }) as unknown as Storage),
    );

  test("is the bundled voice until another is chosen, and then the clips that are recorded", async () => {
    const speakers = opened();
    expect(await speakers.speaker("en")).toBe(bundled);
    expect(speakers.choose({ kind: "own" })).toBe(true);
    expect(await speakers.speaker("en")).toEqual({ kind: "clips", own: new Map([["a", clip(1)]]) });
  });

  test("is a voice of the device only once it is measured, and only in the language that it speaks", async () => {
    const speakers = opened();
    speakers.choose({ kind: "device", voice: "Ada", language: "en-GB" });
    expect(await speakers.speaker("en")).toBe(bundled);
    speakers.keepPace("Ada", pace);
    expect(await speakers.speaker("en")).toEqual({ kind: "device", voice: "Ada", pace });
    expect(await speakers.speaker("de")).toBe(bundled);
  });
});
