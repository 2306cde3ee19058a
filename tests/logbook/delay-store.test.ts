import { describe, expect, test } from "vitest";
import { mostDelay } from "../../src/live/latency.ts";
import { delayStore } from "../../src/logbook/delay-store.ts";

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

describe("The delay of this device's sound", () => {
  test("is none until one is kept, and then that one on every visit", () => {
    const kept = storage();
    expect(delayStore(kept).load()).toBe(0);
    for (const delay of [0.24, mostDelay, 0]) {
      expect(delayStore(kept).keep(delay)).toBe(true);
      expect(delayStore(kept).load()).toBe(delay);
    }
  });

  test("holds for the page alone where the browser keeps nothing, and that is told", () => {
    const refusing = () => {
      throw new DOMException("no", "SecurityError");
    };
    for (const kept of [storage({}, true), refusing]) {
      const store = delayStore(kept);
      expect(store.keep(0.3)).toBe(false);
      expect(store.load()).toBe(0.3);
      expect(delayStore(kept).load()).toBe(0);
    }
  });

  test("is none where something else stands there", () => {
    for (const text of ["", "{", "null", '"0.2"', "-0.1", "1.01", "1e9", "[0.2]", "NaN"]) {
      expect(delayStore(storage({ "tankside-delay": text })).load(), text).toBe(0);
    }
  });

  test("is kept only as what could be read again", () => {
    for (const delay of [-0.01, 1.001, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => delayStore(storage()).keep(delay)).toThrow();
    }
  });
});
