import { describe, expect, test } from "vitest";
import { speakerStore } from "../../src/logbook/speaker-store.ts";

/** A browser's storage, in memory. */
function storage(held: Record<string, string> = {}, full = false): () => Storage {
  const map = new Map(Object.entries(held));
  const it: Pick<Storage, "getItem" | "setItem"> = {
    getItem: (key) => map.get(key) ?? null,
    setItem(key, value) {
      if (full) throw new DOMException("full", "QuotaExceededError");
      map.set(key, value);
    },
  };
  return () => it as Storage;
}

const pace = { delay: { least: 0.1, most: 0.2 }, perLetter: { least: 0.05, most: 0.07 } };

describe("Who speaks on this device", () => {
  test("is the bundled voice until another is chosen, and then that one on every visit", () => {
    const kept = storage();
    expect(speakerStore(kept).load()).toEqual({ kind: "bundled" });
    for (const choice of [
      { kind: "own" },
      { kind: "device", voice: "Ada", language: "en-GB" },
    ] as const) {
      expect(speakerStore(kept).keep(choice)).toBe(true);
      expect(speakerStore(kept).load()).toEqual(choice);
    }
  });

  test("is kept with the pace of each of the device's voices that was measured", () => {
    const kept = storage();
    expect(speakerStore(kept).pace("Ada")).toBeNull();
    speakerStore(kept).keepPace("Ada", pace);
    expect(speakerStore(kept).pace("Ada")).toEqual(pace);
    expect(speakerStore(kept).pace("Ben")).toBeNull();
  });

  test("holds for the page alone where the browser keeps nothing, and that is told", () => {
    const refusing = () => {
      throw new DOMException("no", "SecurityError");
    };
    for (const kept of [storage({}, true), refusing]) {
      const store = speakerStore(kept);
      expect(store.keep({ kind: "own" })).toBe(false);
      expect(store.load()).toEqual({ kind: "own" });
      expect(speakerStore(kept).load()).toEqual({ kind: "bundled" });
      expect(store.keepPace("Ada", pace)).toBe(false);
      expect(store.pace("Ada")).toEqual(pace);
    }
  });

  test("is the bundled voice where something else stands there", () => {
    for (const text of ["", "{", "null", "3", '{"kind":"radio"}', '{"kind":"device"}']) {
      expect(speakerStore(storage({ "tankside-speaker": text })).load()).toEqual({
        kind: "bundled",
      });
    }
    const odd = [{}, { ...pace, delay: 3 }, { ...pace, delay: { least: 2, most: 1 } }, [pace]];
    for (const each of odd) {
      const kept = storage({ "tankside-pace-Ada": JSON.stringify(each) });
      expect(speakerStore(kept).pace("Ada")).toBeNull();
    }
  });
});
