import { describe, expect, test } from "vitest";
import {
  earFields,
  rangeSaid,
  type Saying,
  timeSaid,
  valueSaid,
} from "../../src/ui/by-ear-fields.ts";
import {
  type Act,
  acted,
  linesOf,
  startOfTalk,
  type Talk,
  thenOf,
} from "../../src/ui/by-ear-model.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { readDraft, typedInto } from "../../src/ui/work-out-model.ts";
import { gullrock } from "../plan/worksheets.ts";
import { english } from "../timeline/scene.ts";

const draft = draftOf(gullrock);
const inWords = (sayings: readonly Saying[]) =>
  sayings.flatMap(({ key, slots }) => english.say(key, "full", slots)).join(" ");
const field = (name: string) => {
  const found = earFields.find((each) => each.name === name);
  if (found === undefined) throw new Error(`there is no ${name}`);
  return found;
};
const at = (name: string): Talk => ({ ...startOfTalk, at: earFields.indexOf(field(name)) });

/** What a row of acts comes to. */
function comesTo(talk: Talk, acts: readonly Act[], start = draft) {
  return acts.reduce(
    (so, act) => {
      const next = acted(so.talk, act, so.draft);
      return { talk: next.talk, draft: next.draft ?? so.draft };
    },
    { talk, draft: start },
  );
}
const typing = (text: string): readonly Act[] => [
  { kind: "change" },
  ...[...text].map((sign): Act => ({ kind: "type", sign })),
  { kind: "set" },
];

describe("Work out by ear", () => {
  test("tells of each number its name, what it holds, what it sets and what it may hold", () => {
    for (const [i, each] of earFields.entries()) {
      const said = linesOf({ ...startOfTalk, at: i }, draft, null).map(({ says }) => inWords(says));
      expect(said).toHaveLength(3);
      expect(said[0]).toContain(english.say(`ear.${each.name}`, "full").join(" "));
      expect(said[0]).toMatch(/It holds|Nothing is filled in/);
      expect(said[2]).toMatch(/^(It sets|How)/);
      expect(said[2]).toMatch(/up to|Up to|above zero/);
    }
  });

  test("says a value in the unit it was given in, digit by digit", () => {
    expect(inWords(valueSaid(field("temperature"), draft))).toBe(
      "It holds Six. Nine. Degrees Fahrenheit.",
    );
    expect(inWords(valueSaid(field("pour-in"), { ...draft, "tank.pourIn": "12.5" }))).toBe(
      "It holds One. Two. Point. Five. Seconds.",
    );
    expect(inWords(timeSaid(569))).toBe("Nine. Minutes. Two. Nine. Seconds.");
    expect(inWords(timeSaid(60))).toBe("One. Minutes.");
    expect(inWords(timeSaid(45))).toBe("Four. Five. Seconds.");
  });

  test.each(earFields.map((each) => [each.name, each] as const))(
    "promises no range for %s that its field would not take",
    (_, each) => {
      const units = Object.keys(each.range ?? {});
      for (const unit of units) {
        const kind = unit === "c" || unit === "f" ? "temperature" : "volume";
        const lent = { ...draft, [`unit.${kind}`]: unit, [`${each.path}@unit`]: unit };
        const other: Record<string, string> =
          each.name === "every" ? { "agitation.for": "0" } : { "agitation.every": "3600" };
        for (const end of each.range?.[unit] ?? []) {
          const next = typedInto({ ...lent, ...other }, each.path, String(end));
          const { faults, wanting } = readDraft(next);
          expect(faults[each.path], String(end)).toBeUndefined();
          expect(wanting).not.toContain(each.path);
        }
      }
      expect(inWords(rangeSaid(each, draft))).toMatch(units.length > 0 ? /Up to/ : /above zero/);
    },
  );

  test("takes a number by its digits, echoes them, and works the time out anew", () => {
    const { talk, draft: next } = comesTo(at("row-time"), typing("8:15"));
    expect(readDraft(next).worksheet?.developer.leaflet[0]?.time).toBe("8:15");
    expect(talk).toEqual({ ...at("row-time"), answer: [{ key: "ear.taken" }] });
    const typed = comesTo(at("row-time"), typing("8:15").slice(0, -1)).talk;
    expect(inWords(typed.answer)).toBe("Eight. Minutes. One. Five.");
  });

  test("reads a time of whole minutes, and lends a temperature the unit that was used", () => {
    const time = comesTo(at("row-time"), typing("11")).draft;
    expect(readDraft(time).worksheet?.developer.leaflet[0]?.time).toBe("11:00");
    const warm = comesTo(at("temperature"), typing("70.5")).draft;
    expect(readDraft(warm).worksheet?.developer.temperature).toEqual({ f: 70.5 });
  });

  test("takes a digit back, and leaves the field as it was where the number cannot be", () => {
    const back = comesTo(at("pour-in"), [
      { kind: "change" },
      { kind: "type", sign: "9" },
      { kind: "type", sign: "1" },
      { kind: "delete" },
      { kind: "set" },
    ]);
    expect(readDraft(back.draft).worksheet?.tank.pourIn).toBe(9);
    const never = comesTo(at("pour-in"), typing("0"));
    expect(never.draft).toBe(draft);
    expect(inWords(never.talk.answer)).toMatch(/^That cannot be\. It may hold, from One\./);
    expect(never.talk.typed).toBe("");
    expect(comesTo(at("pour-in"), typing("0").concat({ kind: "leave" })).talk.typed).toBeNull();
  });

  test("goes through all of them by itself, and ends with the time and the way to the run", () => {
    let talk = startOfTalk;
    for (let i = 0; i < earFields.length; i += 1) {
      expect(thenOf(talk)).toEqual({ kind: "next" });
      talk = acted(talk, { kind: "next" }, draft).talk;
    }
    expect(thenOf(talk)).toBeNull();
    const { plan } = readDraft(draft);
    const lines = linesOf(talk, draft, plan);
    expect(inWords(lines.flatMap(({ says }) => says))).toMatch(
      /^The development time is Nine\. Minutes\. Two\. Nine\. Seconds\./,
    );
    expect(lines.map(({ offers }) => offers?.kind)).toEqual([undefined, "run", "again"]);
    expect(linesOf(talk, draft, null).map(({ offers }) => offers?.kind)).toEqual([
      undefined,
      "again",
    ]);
  });
});
