import { describe, expect, test } from "vitest";
import { everyPhrase, phraseLimits } from "../../src/script/script.ts";
import { nextMissing, recordingOrder } from "../../src/ui/recording-order.ts";
import { openRecording } from "../../src/ui/recording-state.ts";
import { voiceShelf } from "../../src/ui/voice-shelf.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled, english } from "../timeline/scene.ts";
import { roomByHand, spokenFor, storeByHand } from "./voice-by-hand.ts";

const script = everyPhrase(english);

describe("The order of recording", () => {
  const timeline = compiled(gullrock);
  const order = recordingOrder(timeline, script);

  test("begins with all that the worksheet will say, in the order in which it is heard", () => {
    const heard = timeline.sections
      .flatMap(({ cues }) => cues)
      .flatMap((cue) => (cue.channel === "voice" ? cue.sounds : []));
    expect(order.wanted).toBeGreaterThan(40);
    expect(order.phrases.slice(0, order.wanted)).toEqual([...new Set(heard)]);
  });

  test("goes on with the rest of the script, every phrase once", () => {
    expect(order.phrases).toHaveLength(script.length);
    expect([...order.phrases].sort()).toEqual([...script].sort());
    const rest = order.phrases.slice(order.wanted);
    expect(rest).toEqual(script.filter((text) => rest.includes(text)));
  });

  test("is the script's own where no worksheet is whole", () => {
    expect(recordingOrder(null, script)).toEqual({ phrases: script, wanted: 0 });
  });

  test("leads from any phrase to the next without a clip, round the end, and stays where none is left", () => {
    const has = (text: string) => text !== "b";
    expect([0, 1, 2].map((at) => nextMissing(["a", "b", "c"], has, at))).toEqual([1, 1, 1]);
    expect(nextMissing(["a", "b", "c"], () => true, 2)).toBe(2);
    expect(nextMissing(["a", "b", "c"], () => false, -1)).toBe(0);
  });
});

async function opened(held: Record<string, Int16Array> = {}) {
  const room = roomByHand();
  const kept = storeByHand(held);
  const shelf = voiceShelf(kept.store, "en");
  await shelf.ready;
  const order = { phrases: script, wanted: 0 };
  const recording = openRecording(order, phraseLimits(english), shelf, room.ports);
  return { ...room, kept, shelf, recording };
}
const [first = "", second = "", third = ""] = script;

describe("Recording a phrase", () => {
  test("goes by one press to begin, one to end, and one to keep, and then on to the next", async () => {
    const { recording, kept } = await opened();
    expect(recording.take.value.kind).toBe("ready");
    await recording.press();
    expect(recording.take.value.kind).toBe("recording");
    await recording.press();
    expect(recording.take.value.kind).toBe("taken");
    expect(kept.clips.size).toBe(0);
    await recording.keep();
    expect(recording.told.value).toBe("kept");
    expect([...kept.clips.keys()]).toEqual([first]);
    expect(recording.at.value).toBe(1);
    expect(recording.take.value.kind).toBe("ready");
  });

  test("goes on where it was left off: at the first phrase without a clip", async () => {
    const { recording } = await opened({ [first]: Int16Array.of(1), [second]: Int16Array.of(1) });
    expect(recording.order.phrases[recording.at.value]).toBe(third);
  });

  test("is done again by the same press, and what was taken before is gone", async () => {
    const { recording, state } = await opened();
    await recording.press();
    await recording.press();
    await recording.press();
    expect(recording.take.value.kind).toBe("recording");
    state.heard = new Float32Array(24_000);
    await recording.press();
    expect(recording.take.value).toEqual({ kind: "refused", why: { kind: "too-quiet" } });
    await recording.keep();
    expect(recording.at.value).toBe(0);
  });

  test("refuses what takes longer than the script has room for", async () => {
    const { recording, state } = await opened();
    state.heard = spokenFor(7);
    await recording.press();
    await recording.press();
    expect(recording.take.value).toMatchObject({ kind: "refused", why: { kind: "too-long" } });
  });

  test("hushes the loudspeaker first, so that it is not recorded", async () => {
    const { recording, played } = await opened();
    await recording.say();
    await recording.press();
    expect(played).toEqual([first, "hush", "begin"]);
    await recording.say();
    await recording.hear();
    expect(played).toHaveLength(3);
  });

  test("plays what was taken, or what is kept; and tells where nothing can be played", async () => {
    const mine = Int16Array.of(5);
    const { recording, played, state } = await opened({ [first]: mine });
    await recording.hear();
    expect(played).toEqual([]);
    recording.step(-1);
    expect(recording.at.value).toBe(0);
    await recording.hear();
    expect(played.at(-1)).toBe(mine);
    state.silent = true;
    await recording.say();
    expect(recording.told.value).toBe("no-sound");
  });

  test("waits while a run is on, and never opens the microphone then", async () => {
    const { recording, state } = await opened();
    state.running = true;
    await recording.press();
    expect([recording.take.value.kind, recording.told.value, state.open]).toEqual([
      "ready",
      "run-on",
      0,
    ]);
  });

  test.each(["denied", "none", "busy", "unable"] as const)(
    "says why where the microphone is %s, and tries again at the next press",
    async (why) => {
      const { recording, state } = await opened();
      state.refuses = why;
      await recording.press();
      expect(recording.take.value).toEqual({ kind: "no-microphone", why });
      state.refuses = null;
      await recording.press();
      expect(recording.take.value.kind).toBe("recording");
    },
  );

  test("opens the microphone once, and lets go of it at the end, even where it opens only then", async () => {
    const { recording, state } = await opened();
    await recording.press();
    await recording.press();
    await recording.press();
    expect(state.open).toBe(1);
    recording.leave();
    expect(state.open).toBe(0);
    const late = await opened();
    const opening = late.recording.press();
    late.recording.leave();
    await opening;
    expect(late.state.open).toBe(0);
  });

  test("can be taken back: a clip deleted, and one recorded over another", async () => {
    const mine = Int16Array.of(5);
    const { recording, kept, shelf } = await opened({ [first]: mine });
    recording.step(-1);
    await recording.remove();
    expect([recording.told.value, kept.clips.has(first)]).toEqual(["removed", false]);
    await recording.undo();
    expect([recording.told.value, kept.clips.get(first)]).toEqual(["undone", mine]);
    await recording.press();
    await recording.press();
    await recording.keep();
    expect(shelf.clips.value.get(first)).not.toEqual(mine);
    await recording.undo();
    expect(kept.clips.get(first)).toEqual(mine);
  });

  test("says so where the browser does not keep it", async () => {
    const { recording, kept } = await opened();
    kept.state.willKeep = false;
    await recording.press();
    await recording.press();
    await recording.keep();
    expect(recording.told.value).toBe("not-kept");
  });
});
