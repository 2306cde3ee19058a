// Names, lists and times of day as they are given by ear: sign by sign.
import { describe, expect, test } from "vitest";
import { type Act, linesOf, stopsOf } from "../../src/ui/by-ear-lines.ts";
import { rangeSaid, valueSaid } from "../../src/ui/by-ear-said.ts";
import type { Draft } from "../../src/ui/draft.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { readDraft } from "../../src/ui/work-out-model.ts";
import { benchInCelsius } from "../plan/bench-worksheets.ts";
import { at, comesTo, draft, field, inWords, typing } from "./by-ear-by-hand.ts";

const label = "films[0].label";
const typed = (path: string, text: string, of = draft) =>
  comesTo(at(path, of), typing(text).slice(0, -1), of).talk;
const heard = (path: string, of: Draft) => inWords(valueSaid(field(path, of), of));

describe("What is given by ear sign by sign", () => {
  test("a name is told letter by letter, and what has no name of its own as another sign", () => {
    expect(heard(label, { ...draft, [label]: "Kelp 2-b" })).toBe(
      "It holds K. E. L. P. Space. Two. Hyphen. B.",
    );
    expect(heard(label, { ...draft, [label]: "½ R." })).toBe(
      "It holds Another sign. Space. R. Point.",
    );
    expect(heard("tank.label", draft)).toBe("Nothing is filled in.");
    expect(inWords(rangeSaid(field(label), draft))).toBe("Any name you like.");
  });

  test("each sign of a name is echoed alone, and all that is left once one is taken back", () => {
    const talk = typed(label, "Fog");
    expect([inWords(talk.answer), talk.typed]).toEqual(["G.", "Fog"]);
    const back = comesTo(talk, [{ kind: "delete" }]).talk;
    expect([inWords(back.answer), back.typed]).toEqual(["One taken back. F. O.", "Fo"]);
    expect(typed(label, "x".repeat(300)).typed).toHaveLength(200);
  });

  test("by one key a name begins with a capital, and has small letters, spaces and digits behind it", () => {
    const signs = (text: string) =>
      linesOf({ ...at(label), typed: text }, draft, null, ["a", "ß", "é", "-", " "]).flatMap(
        ({ offers }) => (offers?.kind === "type" ? [offers.sign] : []),
      );
    expect(signs("")).toEqual(["A", "ß", "É", ..."1234567890"]);
    expect(signs("A")).toEqual(["a", "ß", "é", "-", " ", ..."1234567890"]);
  });

  test("a name that may be left out can be, and one that every session needs cannot", () => {
    const offers = (path: string) =>
      linesOf({ ...at(path), typed: "" }, draft, null).map((each) => each.offers?.kind);
    expect(offers("title")).toContain("empty");
    expect(offers(label)).not.toContain("empty");
    const untitled = comesTo(at("title"), [{ kind: "change" }, { kind: "empty" }]).draft;
    expect(readDraft(untitled).worksheet?.title).toBeUndefined();
    const blank = comesTo(at(label), typing("  "));
    expect(inWords(blank.talk.answer)).toBe("That cannot be. Any name you like.");
    expect(blank.draft).toBe(draft);
  });

  test("a wedge's densities are told step by step, and each is echoed with its own digits alone", () => {
    const tests = comesTo(at("contrast.tests"), typing("1")).draft;
    const path = "contrast.tests[0].densities";
    expect(inWords(typed(path, "0.3,0.41", tests).answer)).toBe("Zero. Point. Four. One.");
    expect(inWords(typed(path, "0.3,", tests).answer)).toBe("The next step.");
    const given = comesTo(at(path, tests), typing("0.3:.0.4.1,0.55,"), tests).draft;
    expect(given[path]).toBe("0.3 0.41 0.55");
    const whole = draftOf(benchInCelsius);
    expect(heard(path, { ...whole, [path]: "0.3 0.45 1" })).toBe(
      "It holds Zero. Point. Three. The next step. Zero. Point. Four. Five. The next step. One.",
    );
  });

  test("a logarithm below zero is begun by its sign, which no other number takes", () => {
    const below = comesTo(at("contrast.firstLog"), typing("-2.9")).draft;
    expect(below["contrast.firstLog"]).toBe("-2.9");
    expect(heard("contrast.firstLog", below)).toBe("It holds Minus. Two. Point. Nine.");
    expect(typed("tank.pourIn", "-2").typed).toBe("2");
    const isOffered = (path: string) =>
      linesOf({ ...at(path), typed: "" }, draft, null).some(
        ({ offers }) => offers?.kind === "type" && offers.sign === "-",
      );
    expect([isOffered("contrast.firstLog"), isOffered("tank.pourIn")]).toEqual([true, false]);
  });

  test("a time of day is said in hours and minutes, and refused with what it may be", () => {
    const path = "tempering.began";
    expect(inWords(typed(path, "23:55").answer)).toBe("Two. Three. Hours. Five. Five.");
    const given = comesTo(at(path), typing("23:55"));
    expect(heard(path, given.draft)).toBe("It holds Two. Three. Hours. Five. Five. Minutes.");
    expect(heard(path, { ...draft, [path]: "7:05:30" })).toBe(
      "It holds Seven. Hours. Zero. Five. Minutes. Three. Zero. Seconds.",
    );
    const never = comesTo(at(path), typing("25:00"));
    expect(inWords(never.talk.answer)).toBe("That cannot be. Any time of day.");
    expect(never.draft).toBe(draft);
  });

  test("a fixer whose time a snip of film gave is not said to last as long as usual", () => {
    const path = "baths.fixer.time";
    expect(heard(path, draft)).toBe("It holds As usual. Five. Minutes.");
    const tried = comesTo(at("baths.fixer.clearing.time"), typing("1:15")).draft;
    expect(heard(path, tried)).toBe("It holds As usual.");
    expect(
      heard("baths.fixer.clearing.times", { ...tried, "baths.fixer.clearing.times": "3" }),
    ).toBe("It holds Three times as long.");
  });

  test("a factor is said as finely as it is given, and a mass with what it counts", () => {
    expect(heard("developer.perDegree", { ...draft, "developer.perDegree": "0.0985" })).toBe(
      "It holds Zero. Point. Zero. Nine. Eight. Five.",
    );
    const path = "baths.wash.thiosulfate";
    expect(heard(path, { ...draft, [path]: "150" })).toBe(
      "It holds One. Five. Zero. Grams a litre.",
    );
    expect(inWords(rangeSaid(field(path), draft))).toMatch(
      /One\. Zero\. Zero\. Zero\. Grams a litre\.$/,
    );
  });

  test("rows of a list that may be empty are added, asked, and taken out to none", () => {
    const two = comesTo(at("developer.readings"), typing("2"));
    expect(stopsOf(two.draft)[two.talk.at]).toMatchObject({ path: "developer.readings[0].at" });
    const filled = ["3:00", "6:00"].reduce((so, text, row) => {
      const start = `developer.readings[${row}]`;
      const timed = comesTo(at(`${start}.at`, so), typing(text), so).draft;
      const acts: readonly Act[] = [...typing("68").slice(0, -1), { kind: "set", unit: "f" }];
      return comesTo(at(`${start}.temperature`, timed), acts, timed).draft;
    }, two.draft);
    expect(readDraft(filled).worksheet?.developer.readings).toEqual([
      { at: "3:00", temperature: { f: 68 } },
      { at: "6:00", temperature: { f: 68 } },
    ]);
    const none = comesTo(at("developer.readings", filled), typing("0"), filled).draft;
    expect(readDraft(none).worksheet).toEqual(readDraft(draft).worksheet);
    expect(comesTo(at("developer.readings"), typing("101")).draft).toBe(draft);
  });
});
