// What is on offer by ear, and what is told of what is wrong, wherever the run stands: pure, by its position.
import { describe, expect, test } from "vitest";
import { type Position, positionAt } from "../../src/live/position.ts";
import { restAt, type Talk, wrongList } from "../../src/live/rest.ts";
import { answerTo, wrongsAt } from "../../src/live/wrong.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { wrongs } from "../../src/process/wrongs.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled, english } from "../timeline/scene.ts";

const inTrays: Worksheet = {
  ...gullrock,
  films: [{ label: "Gullrock 125", size: "4x5in", count: 4 }],
  tank: { ...gullrock.tank, method: "tray" },
};

/** So many seconds into a section, or where it waits. */
function at(id: string, elapsed = 100_000, worksheet = gullrock): Position {
  const timeline = compiled(worksheet);
  const index = timeline.sections.findIndex((section) => section.id === id);
  if (index < 0) throw new Error(`no section ${id}`);
  return positionAt(timeline, { index, pressedAt: 0 }, elapsed);
}

const saysOf = (talk: Talk): readonly string[] =>
  talk.kind === "list" ? talk.of.map(({ says }) => says) : [];
const restIn = (position: Position) => saysOf(restAt(position, "full", "room", ["room", "pocket"]));

/** Every sentence that a talk can come to. */
function keysOf(talk: Talk): readonly string[] {
  switch (talk.kind) {
    case "list":
      return talk.of.flatMap(({ says, takes }) => [says, ...keysOf(takes)]);
    case "lines":
      return [...talk.keys, ...keysOf(talk.behind)];
    case "told":
      return talk.keys;
    default:
      return [];
  }
}

describe("The rest by ear", () => {
  test("begins with being told more where there is more to tell, and with the way out of a jam", () => {
    expect(restIn(at("wind"))).toEqual([
      ...["rest.told", "rest.stuck", "rest.wrong"],
      ...["rest.pocket", "rest.less", "rest.leave"],
    ]);
    expect(restIn(at("spool"))[0]).toBe("rest.stuck");
    expect(restIn(at("core"))).not.toContain("rest.stuck");
    expect(restIn(at("lay-out"))[0]).toBe("rest.wrong");
  });

  test("offers in a bath what hands were late with before what is wrong, and that anywhere", () => {
    expect(restIn(at("developer", 20)).slice(0, 3)).toEqual([
      ...["rest.poured", "rest.wrong", "rest.reading"],
    ]);
    const { sections } = compiled(gullrock);
    for (const { id } of sections) expect(restIn(at(id)), id).toContain("rest.wrong");
  });

  test("offers a pour that is later than a minute behind what is asked for more often, until it is called out", () => {
    expect(restIn(at("developer", 300)).slice(0, 3)).toEqual([
      ...["rest.wrong", "rest.reading", "rest.poured"],
    ]);
    expect(restIn(at("developer", 592))).not.toContain("rest.poured");
  });

  test("can say whatever it can come to", () => {
    const { sections } = compiled(gullrock);
    for (const { id } of sections) {
      for (const key of keysOf(restAt(at(id), "full", "room", ["room", "pocket"]))) {
        expect(english.say(key, "full").join(" "), key).toMatch(/\w/);
      }
    }
  });
});

describe("What is wrong", () => {
  test("is asked for by harm, worst first, and ends with the way back", () => {
    expect(saysOf(wrongList(at("developer", 60)))).toEqual([
      ...wrongs.map((wrong) => `wrong.${wrong}`),
      "wrong.back",
    ]);
  });

  test("speaks of no bath before one can be poured, and of no lid where none is on", () => {
    expect(wrongsAt(at("wind"))).toEqual(["eye", "light", "clock"]);
    expect(wrongsAt(at("light"))).toEqual(["eye", "light", "bath", "leak", "clock"]);
    expect(wrongsAt(at("developer", 60, inTrays))).not.toContain("leak");
    expect(wrongsAt(at("wash", 60))).not.toContain("leak");
  });

  test.each<readonly [string, Position, readonly string[]]>([
    ["film in its cassette", at("wait"), ["wrong.light.safe"]],
    ["film half on its reel", at("wind"), ["wrong.light.cover", "wrong.light.open"]],
    ["a lid that is only being locked", at("close"), ["wrong.light.cover", "wrong.light.open"]],
    ["a locked lid", at("everyone"), ["wrong.light.safe"]],
    ["the developer in a tank", at("developer", 60), ["wrong.light.safe"]],
    [
      "the developer in a tray",
      at("developer", 60, inTrays),
      ["wrong.light.cover", "wrong.light.open"],
    ],
    [
      "the fixer in a tray, at first",
      at("fixer", 60, inTrays),
      ["wrong.light.cover", "wrong.light.open"],
    ],
    ["the fixer in a tray, two minutes on", at("fixer", 140, inTrays), ["wrong.light.safe"]],
    ["film that is fixed", at("fixer", 100_000, inTrays), ["wrong.light.safe"]],
  ])("a light that came on to %s", (_, position, keys) => {
    expect(answerTo("light", position)).toEqual(keys);
  });

  test("a wrong bath costs the picture only before development", () => {
    const early = ["wrong.bath.out", "wrong.bath.stop", "wrong.bath.fixer"];
    expect(answerTo("bath", at("light"))).toEqual(early);
    expect(answerTo("bath", at("developer", 60))).toEqual(early);
    expect(answerTo("bath", at("developer"))).toEqual(["wrong.bath.out", "wrong.bath.on"]);
    expect(answerTo("bath", at("wash", 60))).toEqual(["wrong.bath.out", "wrong.bath.on"]);
  });

  test("is answered in one to three sentences, an eye with water for a quarter of an hour and with help", () => {
    const { sections } = compiled(gullrock);
    for (const { id } of sections) {
      for (const wrong of wrongsAt(at(id))) {
        const keys = answerTo(wrong, at(id));
        expect(keys.length).toBeGreaterThan(0);
        expect(keys.length).toBeLessThan(4);
      }
    }
    const eye = answerTo("eye", at("fixer", 60)).map((key) => english.say(key, "full").join(" "));
    expect(eye.join(" ")).toMatch(/running water, fifteen minutes or more.*help.*safety sheet/s);
  });
});
