import { describe, expect, test } from "vitest";
import { pedalStore } from "../../src/logbook/pedal-store.ts";

/** A browser's storage, in memory. */
function storage(held?: string): () => Storage {
  let kept = held ?? null;
  const it: Pick<Storage, "getItem" | "setItem"> = {
    getItem: () => kept,
    setItem(_, value) {
      kept = value;
    },
  };
  return () => it as Storage;
}

const pedal = { code: "PageDown", key: "PageDown", holds: true };

describe("The pedals of this device", () => {
  test("are none at first, and on every visit those that were kept", () => {
    const kept = storage();
    expect(pedalStore(kept).load()).toEqual([]);
    const pedals = [pedal, { code: "", key: "AudioVolumeUp", holds: false }];
    expect(pedalStore(kept).keep(pedals)).toBe(true);
    expect(pedalStore(kept).load()).toEqual(pedals);
    expect(pedalStore(kept).keep([])).toBe(true);
    expect(pedalStore(kept).load()).toEqual([]);
  });

  test("are none where the browser refuses, and that is told", () => {
    const store = pedalStore(() => {
      throw new DOMException("no", "SecurityError");
    });
    expect([store.load(), store.keep([pedal])]).toEqual([[], false]);
  });

  test("leave out whatever else stands there", () => {
    for (const text of ["", "{", "null", "3", "{}", '"PageDown"']) {
      expect(pedalStore(storage(text)).load()).toEqual([]);
    }
    const odd = [
      null,
      "PageDown",
      {},
      { ...pedal, holds: 1 },
      { ...pedal, code: 3 },
      { ...pedal, code: "", key: "" },
      { ...pedal, key: "x".repeat(41) },
    ];
    expect(pedalStore(storage(JSON.stringify([...odd, pedal]))).load()).toEqual([pedal]);
    expect(pedalStore(storage(JSON.stringify(Array(20).fill(pedal)))).load().length).toBe(8);
  });
});
