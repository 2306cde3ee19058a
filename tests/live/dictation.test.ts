import { describe, expect, test } from "vitest";
import { browserDictation } from "../../src/live/dictation.ts";

/** A recogniser as browsers have it, by hand. */
function recogniser(available?: () => Promise<string>) {
  const made: Speech[] = [];
  class Speech extends EventTarget {
    static available = available;
    lang = "";
    continuous = false;
    interimResults = true;
    processLocally = false;
    began = 0;
    constructor() {
      super();
      made.push(this);
    }
    start() {
      this.began += 1;
    }
    stop() {
      this.dispatchEvent(new Event("end"));
    }
    hear(words: string, isFinal: boolean, resultIndex = 0) {
      const result = Object.assign([{ transcript: words }], { isFinal });
      const before = Array.from({ length: resultIndex }, () => result);
      const event = { results: [...before, result], resultIndex };
      this.dispatchEvent(Object.assign(new Event("result"), event));
    }
  }
  return { Speech, made };
}

function begun(onlyHere: boolean, Speech: unknown) {
  const told: string[] = [];
  const stop = browserDictation({ SpeechRecognition: Speech })?.start({
    language: "de-DE",
    onlyHere,
    heard: (words) => told.push(words),
    over: (how) => told.push(how),
  });
  return { told, stop };
}

describe("dictating in a browser", () => {
  test("is not to be had where it has no recogniser", () => {
    expect(browserDictation({})).toBeNull();
    expect(browserDictation({ webkitSpeechRecognition: recogniser().Speech })).not.toBeNull();
  });

  const cases: readonly (readonly [string, (() => Promise<string>) | undefined, boolean])[] = [
    ["says so", async () => "available", true],
    ["would fetch something first", async () => "downloadable", false],
    ["cannot", async () => "unavailable", false],
    ["fails", (): Promise<string> => Promise.reject(new Error("no")), false],
    ["cannot be asked", undefined, false],
  ];

  test.each(cases)("is on the device only where it %s", async (_, available, here) => {
    const { Speech, made } = recogniser(available);
    expect(await browserDictation({ SpeechRecognition: Speech })?.here("de")).toBe(here);
    expect(made).toEqual([]);
  });

  test.each([true, false])(
    "tells whole stretches once, in the language asked for, on the device alone: %s",
    (onlyHere) => {
      const { Speech, made } = recogniser();
      const { told, stop } = begun(onlyHere, Speech);
      expect(made[0]).toMatchObject({ began: 1, lang: "de-DE", processLocally: onlyHere });
      made[0]?.hear("ein wenig", false);
      made[0]?.hear(" ein wenig dünn ", true);
      made[0]?.hear("am Rand", true, 1);
      made[0]?.hear("  ", true, 2);
      stop?.();
      expect(told).toEqual(["ein wenig dünn", "am Rand", "stopped"]);
    },
  );

  test("that the browser breaks off is told as failed", () => {
    const { Speech, made } = recogniser();
    const { told } = begun(false, Speech);
    made[0]?.dispatchEvent(new Event("error"));
    made[0]?.dispatchEvent(new Event("end"));
    expect(told).toEqual(["failed"]);
    Speech.prototype.start = () => {
      throw new DOMException("not now", "InvalidStateError");
    };
    expect(begun(false, Speech).told).toEqual(["failed"]);
  });
});
