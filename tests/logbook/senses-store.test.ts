import { describe, expect, test } from "vitest";
import { sensesStore } from "../../src/logbook/senses-store.ts";
import { openSenses } from "../../src/ui/senses.ts";
import { usualSenses, whoSpeaksIds } from "../../src/voice/senses.ts";

/** A browser's storage, in memory. */
function storage(held: Record<string, string> = {}): () => Storage {
  const map = new Map(Object.entries(held));
  const it: Pick<Storage, "getItem" | "setItem"> = {
    getItem: (key) => map.get(key) ?? null,
    setItem: (key, value) => void map.set(key, value),
  };
  return () => it as Storage;
}

describe("How a run reaches the person at this device", () => {
  test("is asked for until it is answered, and known at every visit from then on", () => {
    const kept = storage();
    expect(sensesStore(kept).load()).toEqual(usualSenses);
    for (const speaks of whoSpeaksIds) {
      const senses = openSenses(sensesStore(kept));
      expect(senses.change({ speaks })).toBe(true);
      expect(senses.change({ vibrates: speaks === "tones", captions: true })).toBe(true);
      const next = openSenses(sensesStore(kept)).now.value;
      expect(next).toEqual({ speaks, vibrates: speaks === "tones", captions: true });
    }
  });

  test("holds for the page alone where the browser keeps nothing, and that is told", () => {
    const senses = openSenses(
      sensesStore(() => {
        throw new DOMException("no", "SecurityError");
      }),
    );
    expect(senses.change({ speaks: "reader" })).toBe(false);
    expect(senses.now.value.speaks).toBe("reader");
  });

  test("is as if nobody had been asked where something else stands there", () => {
    for (const text of [
      "",
      "{",
      "null",
      "[]",
      '"reader"',
      '{"speaks":"everyone"}',
      '{"vibrates":1}',
    ])
      expect(sensesStore(storage({ "tankside-senses": text })).load(), text).toEqual(usualSenses);
  });
});
