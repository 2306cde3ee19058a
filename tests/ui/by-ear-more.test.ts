import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Act,
  gateOf,
  isField,
  linesOf,
  restAt,
  type Stop,
  stopsOf,
  type Talk,
} from "../../src/ui/by-ear-lines.ts";
import { acted, startOfTalk, thenOf } from "../../src/ui/by-ear-model.ts";
import type { Draft } from "../../src/ui/draft.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { readDraft } from "../../src/ui/work-out-model.ts";
import { benchInCelsius, benchInFahrenheit } from "../plan/bench-worksheets.ts";
import { at, comesTo, draft, fieldsOf, inWords, onScreen, typing } from "./by-ear-by-hand.ts";

/** What is told to somebody who asks for the rest and presses nothing else. */
function walked(of: Draft): readonly Stop[] {
  const stops = stopsOf(of);
  const path = [0];
  while ((path.at(-1) ?? 0) < stops.length - 1) {
    const from = { ...startOfTalk, at: path.at(-1) ?? 0 };
    const act: Act = { kind: stops[from.at] === "end" ? "rest" : "next" };
    path.push(acted(from, act, of).talk.at);
  }
  return path.flatMap((place) => stops[place] ?? []);
}

describe("What is asked by ear about a bath beyond the usual", () => {
  test("writes of the fills of a wash what the page's own field would write, whichever key parts them", () => {
    const path = "baths.wash.fills";
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 250 }), { minLength: 1, maxLength: 9 }),
        fc.constantFrom(".", ",", ":"),
        (fills, parting) => {
          const { talk, draft: next } = comesTo(at(path), typing(fills.join(parting)));
          const page = onScreen(draft, (it) => it.type(path, fills.join(",")));
          if (fills.some((fill) => fill < 1 || fill > 200)) {
            expect(readDraft(page).faults[path]).toBeDefined();
            expect(inWords(talk.answer)).toMatch(/^That cannot be\. It may hold, from One\./);
            expect(next).toBe(draft);
          } else {
            expect(next).toEqual(page);
            expect(readDraft(next).worksheet?.baths?.wash?.fills).toEqual(fills);
          }
        },
      ),
      { numRuns: 60 },
    );
    const twice = comesTo(at(path), typing(".5..6.")).draft;
    expect(readDraft(twice).worksheet?.baths?.wash?.fills).toEqual([5, 6]);
    const typed = comesTo(at(path), typing("5.1").slice(0, -1)).talk;
    expect(inWords(typed.answer)).toBe("Five. A fresh fill. One.");
    // They make the time, and it is asked only where one stands in their way.
    const time = "baths.wash.time";
    expect(() => at(time, twice)).toThrow();
    const timed = comesTo(at(time), typing("10")).draft;
    const both = comesTo(at(path, timed), typing("5"), timed).draft;
    expect(Object.keys(readDraft(both).faults)).toEqual([time]);
    const freed = acted(at(time, both), { kind: "empty" }, both).draft ?? {};
    expect(readDraft(freed).worksheet?.baths?.wash).toMatchObject({ fills: [5] });
    // Where water runs there are none.
    expect(() => at(path, draftOf(benchInCelsius))).toThrow();
  });

  test("empties first whichever of two fields needs the other, and says at the end which is wanting", () => {
    const drifts = comesTo(at("tank.room"), typing("17.5")).draft;
    expect(readDraft(drifts).wanting).toEqual(["tank.halfway"]);
    const end = { ...startOfTalk, at: restAt(drifts) - 1 };
    expect(inWords(linesOf(end, drifts, null).flatMap(({ says }) => says))).toBe(
      "No time can be told yet. Half-way there in. Nothing is filled in. To change it, press. To hear the rest of it, press. To hear it all again, press.",
    );
    const whole = comesTo(at("tank.halfway", drifts), typing("25"), drifts).draft;
    expect(readDraft(whole).worksheet?.tank).toMatchObject({ room: { f: 17.5 }, halfway: 25 });
    const offered = linesOf({ ...at("tank.room", whole), typed: "" }, whole, null);
    const empty = offered.find(({ offers }) => offers?.kind === "empty");
    expect(inWords(empty?.says ?? [])).toBe("Left out.");
    const half = acted(at("tank.room", whole), { kind: "empty" }, whole).draft ?? {};
    expect(readDraft(half).wanting).toEqual(["tank.room"]);
    const none = acted(at("tank.halfway", half), { kind: "empty" }, half).draft ?? {};
    expect(readDraft(none).worksheet).toEqual(readDraft(draft).worksheet);
  });

  test("passes by what lies behind a bath's gate, there and back, until it is asked for", () => {
    const heard = walked(draft);
    expect(heard.filter((stop) => isField(stop) && stop.behind !== undefined)).toEqual([]);
    const baths = ["developer", "stop", "fixer", "wash", "wetting-agent"];
    const used = ["tank", ...baths, "mixing", "tempering", "contrast"];
    expect(heard.flatMap((stop) => gateOf(stop) ?? [])).toEqual(used);
    const gate = stopsOf(draft).findIndex((stop) => gateOf(stop) === "fixer");
    const talk: Talk = { ...startOfTalk, at: gate };
    const lines = linesOf(talk, draft, null);
    expect(lines.map(({ says }) => inWords(says))).toEqual([
      "The fixer. To hear the rest of it, press.",
    ]);
    expect(lines[0]?.offers).toEqual({ kind: "more" });
    expect(thenOf(talk, draft)).toEqual({ kind: "next" });
    const within = acted(talk, { kind: "more" }, draft).talk;
    expect(stopsOf(draft)[within.at]).toMatchObject({ path: "baths.fixer.temperature" });
    const told = inWords(linesOf(within, draft, null)[0]?.says ?? []);
    expect(told).toBe("The fixer. Its temperature. It holds As usual.");
    const behind = stopsOf(draft).filter((stop) => isField(stop) && stop.behind === "fixer");
    const past = behind.reduce((so) => acted(so, { kind: "next" }, draft).talk, within);
    expect(past).toEqual(acted(talk, { kind: "next" }, draft).talk);
    expect(acted(past, { kind: "previous" }, draft).talk).toEqual(talk);
    expect(acted(within, { kind: "previous" }, draft).talk).toEqual(talk);
    expect(acted(past, { kind: "step", by: -1, told: null }, draft).talk.typed).toBeNull();
  });

  test("tells what lies behind a bath's gate unasked where something of it is filled in", () => {
    const full = draftOf(benchInFahrenheit);
    const behind = new Set(
      walked(full).flatMap((stop) => (isField(stop) && stop.behind ? [stop.behind] : [])),
    );
    const beside = ["mixing", "tempering", "contrast"];
    expect([...behind]).toEqual(["tank", "developer", "fixer", "wash", ...beside]);
    const after = stopsOf(full).findLastIndex((stop) => isField(stop) && stop.behind === "wash");
    const back = acted({ ...startOfTalk, at: after + 1 }, { kind: "previous" }, full).talk;
    expect(back.at).toBe(after);
  });

  test("asks of anybody no more than the page wants, and little more of those who ask for the rest", () => {
    const first = stopsOf(draft).slice(0, restAt(draft) - 1);
    expect(first.filter((stop) => !isField(stop) || stop.behind !== undefined)).toEqual([]);
    // Two names among them.
    expect(first).toHaveLength(19);
    // Of the rest, the gates of five baths, of the tank and of three questions beside the development are told as gates alone.
    expect(walked(draft)).toHaveLength(first.length + 28 + 4 + 9 + 1);
    expect(fieldsOf(draft).length).toBeGreaterThan(110);
  });
});
