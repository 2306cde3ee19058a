import { describe, expect, test } from "vitest";
import { everyPhrase, forms, sayable } from "../../src/script/script.ts";
import { english } from "../timeline/scene.ts";

const sentences = Object.entries(english.source.sentences);

describe("The English script", () => {
  test("says each example as it is written", () => {
    expect(sentences.length).toBeGreaterThan(60);
    for (const [key, { example }] of sentences) {
      expect(english.say(key, "full", example.slots).join(" ")).toBe(example.says);
    }
  });

  test("gets no longer from full to brief to shortest, and bounds each", () => {
    for (const [key, sentence] of sentences) {
      const { slots } = sentence.example;
      const [full, brief, shortest] = forms.map((form) => english.say(key, form, slots).join(" "));
      expect(full?.length, key).toBeGreaterThanOrEqual(brief?.length ?? 0);
      expect(brief?.length, key).toBeGreaterThanOrEqual(shortest?.length ?? 0);
      expect(sentence.within, key).toHaveLength(3);
    }
  });

  test("never says “four” in one breath with “pour”", () => {
    for (const phrase of everyPhrase(english)) {
      expect(/\bfour\b/i.test(phrase) && /\bpour/i.test(phrase), phrase).toBe(false);
    }
  });

  test("writes every number out, so that the voice need not guess", () => {
    for (const phrase of everyPhrase(english)) expect(phrase).not.toMatch(/\d/);
  });

  test("lists every phrase that any sentence can say", () => {
    const all = new Set(everyPhrase(english));
    for (const minutes of [1, 4, 21, 60, 120]) {
      for (const form of forms) {
        for (const phrase of english.say("where.minutes", form, { minutes })) {
          expect(all).toContain(phrase);
        }
      }
    }
    for (const [key, { example }] of sentences) {
      for (const form of forms) {
        for (const phrase of english.say(key, form, example.slots)) expect(all).toContain(phrase);
      }
    }
  });

  test("knows one minute from two", () => {
    expect(english.say("remaining.minutes", "brief", { mark: 1 })).toEqual(["One minute left."]);
    expect(english.say("remaining.minutes", "brief", { mark: 2 })).toEqual(["Two minutes left."]);
  });

  test("refuses a key or a slot that it does not have", () => {
    expect(() => english.say("no-such-key", "full")).toThrow("no-such-key");
    expect(() => english.say("gate.bath", "full")).toThrow("bath");
    expect(() => english.say("gate.bath", "full", { bath: "tea" })).toThrow("tea");
  });

  test("rounds a count down to one that it can say", () => {
    expect(sayable("minutes", 67)).toBe(60);
    expect(sayable("minutes", 0)).toBeNull();
    expect(sayable("seconds", 44)).toBe(40);
  });
});
