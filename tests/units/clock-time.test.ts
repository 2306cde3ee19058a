import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readClockTime, readTypedTime, writeClockTime } from "../../src/units/clock-time.ts";

describe("a clock time in a worksheet", () => {
  test.each([
    ["9:30", 570],
    ["0:05", 5],
    ["1:02:00", 3720],
    ["90:00", 5400],
    ["24:00:00", 86_400],
  ])("%s is %d seconds", (text, seconds) => {
    expect(readClockTime(text)).toEqual({ kind: "read", seconds });
  });

  test.each([
    "",
    "9",
    "9.30",
    "9:5",
    "9:60",
    "1:60:00",
    ":30",
    "-1:00",
    " 9:30",
    "９:30",
    "24:00:01",
  ])("%j is refused, with a form that would do", (text) => {
    const reading = readClockTime(text);
    expect(reading.kind).toBe("unread");
    expect(reading).toHaveProperty("may", expect.stringContaining('"9:30"'));
  });

  test("whole seconds come back from what was written", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 86_400 }), (seconds) => {
        expect(readClockTime(writeClockTime(seconds))).toEqual({ kind: "read", seconds });
      }),
    );
  });

  test.each([
    [569.2, "9:29"],
    [569.5, "9:30"],
    [3599.5, "1:00:00"],
    [0, "0:00"],
  ])("%d seconds is written to the nearest whole, half up: %s", (seconds, text) => {
    expect(writeClockTime(seconds)).toBe(text);
  });
});

describe("a time typed into a form", () => {
  test.each([
    ["9:30", 570],
    [" 9：30 ", 570],
    ["9.5 min", 570],
    ["9,5 Min", 570],
    ["11½ min", 690],
    ["11 ½ min", 690],
    ["11 1/2 min", 690],
    ["½ min", 30],
    ["9 min 30 s", 570],
    ["9m30s", 570],
    ["9'30\"", 570],
    ["9′ 30″", 570],
    ["90 s", 90],
    ["90 sec", 90],
    ["1 h 2 min", 3720],
    ["1.5 hours", 5400],
  ])("%j is %d seconds", (typed, seconds) => {
    expect(readTypedTime(typed)).toEqual({ kind: "read", seconds });
  });

  test.each([
    "",
    "9",
    "9.30",
    "9 30",
    "9.5 min 30 s",
    "9 min 90 s",
    "30 s 9 min",
    "min",
    "25 h",
    "-9 min",
  ])("%j is refused, since it has no one meaning", (typed) => {
    expect(readTypedTime(typed)).toEqual({
      kind: "unread",
      may: 'a time such as "9:30", "9 min 30 s", "9.5 min" or "90 s"',
    });
  });

  test.each(["٩:٣٠", "९ min", "9 min ३० s"])("%j is refused for its digits, by name", (typed) => {
    const reading = readTypedTime(typed);
    expect(reading).toHaveProperty("may", expect.stringMatching(/digits 0 to 9$/));
  });

  test("no text at all makes the reader throw, and what it reads lies within a day", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 60 }), (typed) => {
        const reading = readTypedTime(typed);
        if (reading.kind === "unread") expect(reading.may).not.toBe("");
        else expect(reading.seconds).toSatisfy((s: number) => s >= 0 && s <= 86_400);
      }),
    );
  });
});
