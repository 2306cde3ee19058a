import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { timeSaid } from "../../src/ui/by-ear-echo.ts";
import type { EarField, Range } from "../../src/ui/by-ear-field.ts";
import { type Act, linesOf, restAt, stopsOf, type Talk } from "../../src/ui/by-ear-lines.ts";
import { acted, startOfTalk, thenOf } from "../../src/ui/by-ear-model.ts";
import { choosable, rangeSaid, valueSaid } from "../../src/ui/by-ear-said.ts";
import type { Draft } from "../../src/ui/draft.ts";
import { draftOf, emptyDraft } from "../../src/ui/draft-of.ts";
import { commonSizes, kindOf, patternOf } from "../../src/ui/fields.ts";
import { choices } from "../../src/ui/words/en/questions.ts";
import { readDraft } from "../../src/ui/work-out-model.ts";
import { languages } from "../../src/units/language.ts";
import { benchInCelsius, benchInFahrenheit } from "../plan/bench-worksheets.ts";
import { english } from "../timeline/scene.ts";
import {
  at,
  choosing,
  comesTo,
  draft,
  field,
  fieldsOf,
  inWords,
  onScreen,
  typing,
} from "./by-ear-by-hand.ts";

describe("Work out by ear", () => {
  test("tells of each field its name, what it holds, what it sets, and of a number what it may hold", () => {
    for (const each of fieldsOf(draft)) {
      const said = linesOf(at(each.path), draft, null).map(({ says }) => inWords(says));
      expect(said, each.path).toHaveLength(3);
      if (each.name !== null)
        expect(said[0]).toContain(english.say(`ear.${each.name}`, "full").join(" "));
      else expect(said[0]).toMatch(/^The [a-z -]+\. It holds/);
      expect(said[0]).toMatch(/It holds|Nothing is filled in/);
      expect(said[2]).toMatch(/^It sets/);
      const range = /Up to|above zero|Any name|Any time/;
      if (choosable(each).length === 0) expect(said[2]).toMatch(range);
      else expect(said[2]).not.toMatch(range);
    }
    expect(fieldsOf(draft).length).toBeGreaterThan(100);
  });

  test("asks everything that the page asks and that keeps a time away", () => {
    const { wanting } = readDraft(emptyDraft());
    for (const path of wanting) expect(() => at(path, emptyDraft()), path).not.toThrow();
    expect(wanting).toContain("developer.label");
  });

  test("offers of each choice what the page offers, and in its order", () => {
    const all: { readonly [pattern: string]: object | undefined } = choices;
    for (const each of fieldsOf(draft)) {
      const values = choosable(each).map(({ value }) => value);
      const kind = kindOf(each.path);
      if (kind === "choice")
        expect(values, each.path).toEqual(Object.keys(all[patternOf(each.path) ?? ""] ?? {}));
      if (kind === "size") expect(values).toEqual(commonSizes);
      if (kind === "use") expect(values).toEqual(["yes", "no"]);
      // The page writes nothing for English.
      if (each.path === "language") expect(values).toEqual(["", ...languages.slice(1)]);
    }
  });

  test("says a value in the unit it was given in, digit by digit, and a choice by its name", () => {
    const said = (path: string, text?: string) => {
      const of = text === undefined ? draft : { ...draft, [path]: text };
      return inWords(valueSaid(field(path, of), of));
    };
    expect(said("developer.temperature")).toBe("It holds Six. Nine. Degrees Fahrenheit.");
    expect(said("tank.pourIn", "12.5")).toBe("It holds One. Two. Point. Five. Seconds.");
    expect(said("films[0].size", "135-36")).toBe(
      "It holds One. Three. Five. Three. Six. Exposures.",
    );
    expect(said("films[0].size", "9 x 12cm")).toBe("It holds Nine. By. One. Two. Centimetres.");
    expect(said("films[0].size", "great")).toBe("That cannot be.");
    expect(said("developer.dilution", "1+3")).toBe("It holds Three.");
    expect(said("developer.dilution", "2+3")).toBe("It holds One. Point. Five.");
    expect(said("developer.dilution", "")).toBe("It holds Zero.");
    expect(said("tank.method")).toBe("It holds Turned over by hand.");
    expect(said("films[0].exposureIndex", "")).toBe("It holds As usual.");
    expect(said("baths.fixer.time", "")).toBe("It holds As usual. Five. Minutes.");
    expect(said("films")).toBe("It holds One.");
    expect(said("developer.perStop.push", "12.5 %")).toBe("It holds One. Two. Point. Five.");
    expect(said("developer.perStop.pull", "")).toBe("It holds As usual.");
    expect(said("developer.filmsPerLitre", "")).toBe("Nothing is filled in.");
    expect(said("tank.halfway", "25")).toBe("It holds Two. Five. Minutes.");
    expect(said("baths.wash.fills", "5, 10")).toBe("It holds Five. A fresh fill. One. Zero.");
    expect(said("baths.wash.fills", "five")).toBe("That cannot be.");
    expect(said("baths.fixer.agitation.every", "30")).toBe("It holds Three. Zero. Seconds.");
    expect(said("language")).toBe("It holds English.");
    expect(said("language", "de-AT")).toBe("It holds German.");
    expect(inWords(timeSaid(569))).toBe("Nine. Minutes. Two. Nine. Seconds.");
    expect(inWords(timeSaid(60))).toBe("One. Minutes.");
    expect(inWords(timeSaid(45))).toBe("Four. Five. Seconds.");
  });

  test.each(
    fieldsOf(draft).flatMap((each) =>
      ["number", "parts", "counts"].includes(each.takes.kind) ? [[each.path, each] as const] : [],
    ),
  )("promises no range for %s that its field would not take", (_, each) => {
    const range: Range = "range" in each.takes ? each.takes.range : null;
    const units = Object.keys(range ?? {});
    for (const unit of units) {
      const kind = unit === "c" || unit === "f" ? "temperature" : "volume";
      const lent = { ...draft, [`unit.${kind}`]: unit, [`${each.path}@unit`]: unit };
      const other: Record<string, string> =
        each.name === "every" ? { "agitation.for": "0" } : { "agitation.every": "3600" };
      for (const end of range?.[unit] ?? []) {
        const { talk, draft: next } = comesTo(at(each.path), typing(String(end)), {
          ...lent,
          ...other,
        });
        expect(inWords(talk.answer), `${each.path} ${end}`).toBe("Taken.");
        expect(readDraft(next).faults[each.path]).toBeUndefined();
      }
    }
    expect(inWords(rangeSaid(each, draft))).toMatch(units.length > 0 ? /Up to/ : /above zero/);
  });

  const starts = [draft, draftOf(benchInCelsius), draftOf(benchInFahrenheit), emptyDraft()];
  const anyField = (of: Draft, is: (each: EarField) => boolean) =>
    fc.constantFrom(...fieldsOf(of).filter(is));

  test.each(starts)(
    "writes what the page's own choice would write, or refuses it and stays (%#)",
    (start) => {
      fc.assert(
        fc.property(
          anyField(start, (each) => choosable(each).length > 0).chain((each) =>
            fc.tuple(fc.constant(each), fc.constantFrom(...choosable(each).map((it) => it.value))),
          ),
          ([each, value]) => {
            const { talk, draft: next } = comesTo(
              at(each.path, start),
              choosing(each, value),
              start,
            );
            if (inWords(talk.answer) === "That cannot be.") {
              expect(next).toBe(start);
              const written = onScreen(start, (page) => page.type(each.path, value));
              const { faults, wanting } = readDraft(written);
              expect([...Object.keys(faults), ...wanting]).toContain(each.path);
              return;
            }
            expect(next).toEqual(onScreen(start, (page) => page.type(each.path, value)));
            expect(talk).toEqual({ ...at(each.path, next), answer: [{ key: "ear.taken" }] });
            const said = choosable(field(each.path, next)).find((it) => it.value === value)?.says;
            expect(valueSaid(field(each.path, next), next)).toEqual([
              { key: "ear.holds" },
              ...(said ?? []),
            ]);
          },
        ),
        { numRuns: 60 },
      );
    },
  );

  test.each(starts)(
    "writes what the page's own field would write of a number, or refuses it and stays (%#)",
    (start) => {
      const typed = fc.oneof(
        fc.integer({ min: 0, max: 9999 }).map(String),
        fc.double({ min: 0, max: 300, noNaN: true }).map((it) => it.toFixed(1)),
        fc
          .integer({ min: 0, max: 5999 })
          .map((it) => `${Math.floor(it / 60)}:${String(it % 60).padStart(2, "0")}`),
      );
      const unit = fc.constantFrom(undefined, "c", "f", "ml", "flOz");
      const signs: Record<string, string> = { c: "°C", f: "°F", ml: "ml", flOz: "fl oz" };
      fc.assert(
        fc.property(
          anyField(start, (each) => each.takes.kind === "number"),
          typed,
          unit,
          (each, text, of) => {
            const kind = kindOf(each.path) ?? "";
            const isTemperature = of === "c" || of === "f";
            const fits = of !== undefined && kind === (isTemperature ? "temperature" : "volume");
            const acts = [
              ...typing(text).slice(0, -1),
              { kind: "set", ...(fits ? { unit: of } : {}) } as const,
            ];
            const bare = kind === "time" && !text.includes(":");
            const written = bare ? `${text} min` : fits ? `${text} ${signs[of]}` : text;
            const page = onScreen(start, (it) => it.type(each.path, written));
            const { faults, wanting } = readDraft(page);
            const { talk, draft: next } = comesTo(at(each.path, start), acts, start);
            if (each.path in faults || wanting.includes(each.path)) {
              expect(next).toBe(start);
              expect(inWords(talk.answer)).toMatch(/^That cannot be\. /);
            } else expect(next).toEqual(page);
          },
        ),
        { numRuns: 150 },
      );
    },
  );

  test("adds rows and takes them out as the page does, and asks the first that it added", () => {
    const list = "developer.leaflet";
    const three = comesTo(at(list), typing("3"));
    expect(three.draft).toEqual(
      onScreen(draft, (page) => {
        page.addRow(list, 2);
      }),
    );
    expect(stopsOf(three.draft)[three.talk.at]).toMatchObject({
      path: `${list}[2].temperature`,
      row: 3,
    });
    const one = comesTo(at(list, three.draft), typing("1"), three.draft);
    expect(one.draft).toEqual(
      onScreen(draft, (page) => {
        page.removeRow(list, 1);
      }),
    );
    expect(stopsOf(one.draft)[one.talk.at]).toMatchObject({ path: list });
    for (const text of ["0", "201"]) expect(comesTo(at(list), typing(text)).draft).toBe(draft);
    const two = comesTo(at("films"), typing("2")).draft;
    const second = at("films[1].size", two);
    expect(inWords(linesOf(second, two, null)[0]?.says ?? [])).toBe(
      "Two. The film's size. Nothing is filled in.",
    );
  });

  test("takes a number by its digits, echoes them, and works the time out anew", () => {
    const path = "developer.leaflet[0].time";
    const { talk, draft: next } = comesTo(at(path), typing("8:15"));
    expect(readDraft(next).worksheet?.developer.leaflet[0]?.time).toBe("8:15");
    expect(talk).toEqual({ ...at(path), answer: [{ key: "ear.taken" }] });
    const typed = comesTo(at(path), typing("8:15").slice(0, -1)).talk;
    expect(inWords(typed.answer)).toBe("Eight. Minutes. One. Five.");
  });

  test("reads a time of whole minutes, and lends a temperature the unit that was used, or the one chosen", () => {
    const time = comesTo(at("developer.leaflet[0].time"), typing("11")).draft;
    expect(readDraft(time).worksheet?.developer.leaflet[0]?.time).toBe("11:00");
    const warm = comesTo(at("developer.temperature"), typing("70.5")).draft;
    expect(readDraft(warm).worksheet?.developer.temperature).toEqual({ f: 70.5 });
    const given = comesTo(at("developer.temperature"), typing("20").slice(0, -1));
    const offered = linesOf(given.talk, draft, null).find(
      ({ offers }) => offers?.kind === "set" && offers.unit === "c",
    );
    expect(inWords(offered?.says ?? [])).toBe("Degrees Celsius. If that is all, press.");
    const celsius = acted(given.talk, offered?.offers as Act, draft).draft ?? {};
    expect(readDraft(celsius).worksheet?.developer.temperature).toEqual({ c: 20 });
  });

  test("writes a dilution of 1 and so many parts of water, and undiluted stock for none", () => {
    expect(comesTo(at("developer.dilution"), typing("9")).draft["developer.dilution"]).toBe("1+9");
    expect(comesTo(at("developer.dilution"), typing("0")).draft["developer.dilution"]).toBe(
      "stock",
    );
  });

  test("empties what may be empty, which is as it usually is", () => {
    const set = comesTo(at("darkWait"), typing("5")).draft;
    expect(readDraft(set).worksheet?.darkWait).toBe("5:00");
    const offers = linesOf({ ...at("darkWait", set), typed: "" }, set, null).map((it) => it.offers);
    expect(offers).toContainEqual({ kind: "empty" });
    const emptied = comesTo(
      at("darkWait", set),
      [{ kind: "change" }, { kind: "empty" }],
      set,
    ).draft;
    expect(readDraft(emptied).worksheet).toEqual(readDraft(draft).worksheet);
  });

  test("takes a digit back, and leaves the field as it was where the number cannot be", () => {
    const back = comesTo(at("tank.pourIn"), [
      { kind: "change" },
      { kind: "type", sign: "9" },
      { kind: "type", sign: "1" },
      { kind: "delete" },
      { kind: "set" },
    ]);
    expect(readDraft(back.draft).worksheet?.tank.pourIn).toBe(9);
    const never = comesTo(at("tank.pourIn"), typing("0"));
    expect(never.draft).toBe(draft);
    expect(inWords(never.talk.answer)).toMatch(/^That cannot be\. It may hold, from One\./);
    expect(never.talk.typed).toBe("");
    expect(comesTo(at("tank.pourIn"), typing("0").concat({ kind: "leave" })).talk.typed).toBeNull();
  });

  test("tells the values of a choice from the one behind its own, each to be taken, and goes round by steps", () => {
    const method = field("tank.method");
    const open = comesTo(at("tank.method"), [{ kind: "change" }]).talk;
    const told = linesOf(open, draft, null);
    expect(told.map(({ says }) => inWords(says))).toEqual([
      "Press at the one you want.",
      "A twisted spindle.",
      "A drum that rolls.",
      "A tray.",
      "Hangers.",
      "Turned over by hand.",
      "To leave it as it was, press.",
    ]);
    expect(thenOf(open, draft)).toEqual({ kind: "change" });
    const firstTold = (talk: Talk) =>
      linesOf(talk, draft, null).find(({ offers }) => offers?.kind === "take")?.offers;
    const step = (talk: Talk, by: 1 | -1, value: number | null) =>
      comesTo(talk, [{ kind: "step", by, told: value }]).talk;
    expect(firstTold(step(open, 1, null))).toEqual({ kind: "take", value: 1 });
    expect(firstTold(step(open, 1, 1))).toEqual({ kind: "take", value: 2 });
    expect(firstTold(step(open, -1, 0))).toEqual({ kind: "take", value: 4 });
    expect(firstTold(step(at("tank.method"), -1, null))).toEqual({ kind: "take", value: 4 });
    expect(firstTold(step(at("tank.method"), 1, null))).toEqual({ kind: "take", value: 1 });
    expect(step(at("tank.volume"), 1, null)).toMatchObject({ at: at("tank.pourIn").at });
    const typedAt = comesTo(open, [{ kind: "type", sign: "7" }]);
    expect(typedAt.talk).toEqual({ ...open, answer: [] });
    expect(choosable(method)).toHaveLength(5);
  });

  test("goes through what everybody sets, ends with the time and the way to the run, and tells the rest when asked", () => {
    let talk = startOfTalk;
    const first = restAt(draft) - 1;
    for (let i = 0; i < first; i += 1) {
      expect(thenOf(talk, draft)).toEqual({ kind: "next" });
      talk = acted(talk, { kind: "next" }, draft).talk;
    }
    expect(thenOf(talk, draft)).toBeNull();
    const { plan } = readDraft(draft);
    const lines = linesOf(talk, draft, plan);
    expect(inWords(lines.flatMap(({ says }) => says))).toMatch(
      /^The development time is Nine\. Minutes\. Two\. Nine\. Seconds\./,
    );
    const offered = (of: typeof lines) => of.flatMap(({ offers }) => offers?.kind ?? []);
    expect(offered(lines)).toEqual(["run", "rest", "again"]);
    talk = acted(talk, { kind: "rest" }, draft).talk;
    for (let i = 0; thenOf(talk, draft) !== null && i < 100; i += 1)
      talk = acted(talk, { kind: "next" }, draft).talk;
    expect(offered(linesOf(talk, draft, plan))).toEqual(["run", "again"]);
  });

  test("leads from an empty page to a time by what it says is wanting", () => {
    let now: Draft = emptyDraft();
    const numbers: Record<string, string> = {
      "developer.leaflet[0].temperature": "20",
      "developer.leaflet[0].time": "9:30",
      "developer.temperature": "21",
      "agitation.every": "30",
      "agitation.for": "5",
      "films[0].label": "Gullrock 125",
    };
    let talk: Talk = { ...startOfTalk, at: restAt(now) - 1 };
    for (let i = 0; i < 30 && readDraft(now).plan === null; i += 1) {
      const go = linesOf(talk, now, null).find(({ offers }) => offers?.kind === "go")?.offers;
      if (go?.kind !== "go") throw new Error("nothing is said to be wanting");
      const { path } = stopsOf(now)[go.to] as EarField;
      const opened = acted(talk, go, now).talk;
      const filled =
        opened.typed === null
          ? comesTo(opened, [{ kind: "take", value: 0 }], now)
          : comesTo(opened, typing(numbers[path] ?? "1"), now);
      expect(filled.talk.answer, path).toEqual([{ key: "ear.taken" }]);
      now = filled.draft;
      talk = { ...startOfTalk, at: restAt(now) - 1 };
    }
    expect(readDraft(now).worksheet?.films[0]?.size).toBe("135-36");
    expect(readDraft(now).plan?.developmentSeconds).toBeGreaterThan(300);
    expect(readDraft(now).worksheet?.films[0]?.label).toBe("Gullrock 125");
    const unnamed = { ...now, "developer.label": "" };
    expect(inWords(linesOf(talk, unnamed, null).flatMap(({ says }) => says))).toMatch(
      /^No time can be told yet\. What you call the developer\. Nothing is filled in\./,
    );
  });
});
