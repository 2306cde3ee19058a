import { describe, expect, test } from "vitest";
import { classStore } from "../../src/logbook/class-store.ts";
import { storage } from "./browser-by-hand.ts";

const STARTS = Date.UTC(2026, 11, 5, 17, 30);

describe("The minute of a class", () => {
  test("is there on the next visit until it has passed", () => {
    const { port } = storage();
    const kept = () => classStore(() => port);
    expect(kept().load(STARTS - 1)).toBeNull();
    kept().keep(STARTS);
    expect(kept().load(STARTS - 86_400_000)).toBe(STARTS);
    expect(kept().load(STARTS - 1)).toBe(STARTS);
    expect(kept().load(STARTS)).toBeNull();
  });

  test("is gone once it is put aside", () => {
    const { kept, port } = storage();
    const store = classStore(() => port);
    store.keep(STARTS);
    store.keep(null);
    expect(store.load(STARTS - 1)).toBeNull();
    expect(kept.size).toBe(0);
  });

  test("is none where something else stands there", () => {
    for (const text of ["", "soon", "{}", "null", "NaN", "-5", "Infinity", "9e15"]) {
      const { port } = storage({ "tankside-class": text });
      expect(classStore(() => port).load(STARTS), text).toBeNull();
    }
  });

  test("is none, and nothing breaks, where the browser keeps nothing", () => {
    const store = classStore(() => {
      throw new DOMException("no", "SecurityError");
    });
    store.keep(STARTS);
    store.keep(null);
    expect(store.load(0)).toBeNull();
  });
});
