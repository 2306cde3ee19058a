// All that a worksheet may hold, given by ear alone: every field that the page shows is asked or stands in a short list
// with its reason, what is given comes back as the same worksheet, and whatever is said is in one of the two packs.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { everyPhrase, packNames } from "../../src/script/script.ts";
import { scriptIn } from "../../src/script/scripts.ts";
import type { EarField, Saying } from "../../src/ui/by-ear-field.ts";
import { type Act, isField, linesOf, stopsOf } from "../../src/ui/by-ear-lines.ts";
import { startOfTalk } from "../../src/ui/by-ear-model.ts";
import { choosable, chosenOf } from "../../src/ui/by-ear-said.ts";
import { bathInUse } from "../../src/ui/candidate.ts";
import { type Draft, isFilled, rowCount } from "../../src/ui/draft.ts";
import { draftOf, emptyDraft } from "../../src/ui/draft-of.ts";
import { fieldKinds, kindOf, patternOf } from "../../src/ui/fields.ts";
import { unitTyped } from "../../src/ui/read-field.ts";
import { readDraft } from "../../src/ui/work-out-model.ts";
import { languages } from "../../src/units/language.ts";
import { anyWorksheet } from "../plan/any-worksheet.ts";
import { benchInCelsius, benchInFahrenheit } from "../plan/bench-worksheets.ts";
import { foghorn, gullrock } from "../plan/worksheets.ts";
import { comesTo, fieldsOf, typing } from "./by-ear-by-hand.ts";

/** What is not asked, by the pattern of its path, and why. */
const notAsked: { readonly [pattern: string]: string } = {
  "tank.measured.pourIn": "taken by pressing along",
  "tank.measured.pourOut": "taken by pressing along",
  "tank.measured.perInversion": "taken by pressing along",
};

/** Of the developer's own bath the page has no field but where it goes; its time and temperature are the developer's. */
const noField = /^baths\.developer\.(?!afterwards$)/;

const bottled: Worksheet = {
  ...gullrock,
  language: "fr",
  darkWait: "1:30",
  developer: { ...gullrock.developer, bottle: "brown no. 2", kept: { ml: 900 }, filmsPerLitre: 8 },
  baths: {
    prewet: { time: "2:00" },
    stop: { skip: true },
    fixer: {
      temperature: { c: 19.5 },
      agitation: { first: 20, every: 60, for: 10, perInversion: 3, taps: 1 },
      afterwards: "return",
      bottle: "Fixer-A",
    },
  },
  tempering: {
    target: { c: 20 },
    readings: [
      { at: "0:00", temperature: { c: 26 } },
      { at: "8:00", temperature: { c: 23 } },
    ],
    bath: { c: 18 },
    began: "19:05:30",
  },
  voice: { detail: "brief", rate: 1.2 },
};

const worksheets = { gullrock, foghorn, benchInCelsius, benchInFahrenheit, bottled };
const drafts = Object.values(worksheets).map(draftOf);

const pathsOf = (draft: Draft) =>
  Object.keys(draft).filter((path) => patternOf(path) !== null && isFilled(draft, path));

/** Filled in, shown by the page, and neither asked nor excused. */
function missedIn(draft: Draft): readonly string[] {
  const asked = new Set(fieldsOf(draft).map(({ path }) => path));
  return pathsOf(draft).filter((path) => {
    const bath = /^baths\.([^.]+)\./.exec(path)?.[1];
    const isHidden = bath !== undefined && !bathInUse(draft, bath) && !path.endsWith(".use");
    return (
      !asked.has(path) && !isHidden && !noField.test(path) && !(`${patternOf(path)}` in notAsked)
    );
  });
}

/** What gives a field by ear what it holds in another draft; null where it holds nothing to give. */
function giving(field: EarField, wanted: Draft, now: Draft): readonly Act[] | null {
  const { path, takes } = field;
  const text = (wanted[path] ?? "").trim();
  switch (takes.kind) {
    case "rows": {
      const count = rowCount(wanted, takes.list);
      return count === rowCount(now, takes.list) ? null : typing(String(count));
    }
    case "choice":
    case "sizes": {
      const value = chosenOf(field, wanted);
      if (value < 0) throw new Error(`nothing that is offered for ${path} is ${text}`);
      return [{ kind: "change" }, { kind: "take", value }];
    }
    case "parts":
      return typing(text === "stock" || text === "" ? "0" : text.replace(/^1\+/, ""));
    case "counts":
      return text === "" ? null : typing(text.replace(/[ ,]+/g, ","));
    case "text":
    case "clock":
      return text === "" ? null : typing(text);
    case "number": {
      if (text === "") return null;
      const kind = kindOf(path);
      const unit = kind === "temperature" || kind === "volume" ? unitTyped(kind, text) : null;
      const bare = text.replace(/[^\d.:−-]+$/, "").replace("−", "-");
      return unit === null ? typing(bare) : [...typing(bare).slice(0, -1), { kind: "set", unit }];
    }
  }
}

/** An empty page, given by ear field by field what another draft holds; what is refused is tried again behind the others. */
function givenByEar(wanted: Draft): Draft {
  let now = emptyDraft();
  const given = new Set<string>();
  for (let before = -1; before < given.size; ) {
    before = given.size;
    for (let at = 0; at < stopsOf(now).length; at += 1) {
      const field = stopsOf(now)[at];
      if (!isField(field) || given.has(field.path)) continue;
      const acts = giving(field, wanted, now);
      const { talk, draft } = comesTo({ ...startOfTalk, at }, acts ?? [], now);
      if (acts !== null && talk.answer[0]?.key !== "ear.taken") continue;
      given.add(field.path);
      now = draft;
    }
  }
  return now;
}

/** Figures as people type them, sizes that are offered, a dilution of one part, and nothing that is not asked. */
const typable = ({ tank: { measured: _, ...tank }, ...rest }: Worksheet): Worksheet => {
  const { developer: own, ...baths } = rest.baths ?? {};
  const afterwards =
    own?.afterwards === undefined ? {} : { developer: { afterwards: own.afterwards } };
  const dilution = rest.developer.dilution?.startsWith("1+") ? rest.developer.dilution : "stock";
  const kept: Worksheet = {
    ...rest,
    tank,
    developer: { ...rest.developer, dilution },
    ...(rest.language === undefined ? {} : { language: "de" }),
    ...(rest.baths === undefined ? {} : { baths: { ...baths, ...afterwards } }),
  };
  return JSON.parse(JSON.stringify(kept), (key, value) => {
    if (key === "skip") return undefined;
    if (key === "size") return value === "9x12cm" ? "120" : value;
    if (typeof value !== "number") return value;
    // Nothing but a logarithm is given below 0.
    const sign = key === "firstLog" && value < 0 ? -1 : 1;
    const size = Number.isInteger(value) ? value : Math.max(Math.abs(value), 0.01);
    return sign * Number(Math.abs(size).toPrecision(4));
  });
};

describe("Work out by ear, all of it", () => {
  test("asks every field that a filled-in page shows, but for a short list", () => {
    for (const draft of drafts) expect(missedIn(draft)).toEqual([]);
    fc.assert(
      fc.property(anyWorksheet.map(draftOf), (draft) => {
        expect(missedIn(draft)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  test("asks by every pattern that a field has, and lists none as left out that is asked", () => {
    const asked = new Set(drafts.flatMap(fieldsOf).map(({ path }) => patternOf(path)));
    const left = Object.keys(fieldKinds).filter((pattern) => !asked.has(pattern as "title"));
    expect(left).toEqual(Object.keys(notAsked));
  });

  test.each(Object.entries(worksheets))("gives the worksheet of %s as it was", (_, worksheet) => {
    const wanted = typable({ ...worksheet, baths: worksheet.baths ?? {} });
    const skipped = worksheet.baths?.stop?.skip ? { stop: { skip: true } } : {};
    const all = { ...wanted, baths: { ...wanted.baths, ...skipped } };
    expect(readDraft(givenByEar(draftOf(all))).worksheet).toEqual(
      readDraft(draftOf(all)).worksheet,
    );
    expect(readDraft(draftOf(all)).worksheet).not.toBeNull();
  });

  test("gives any worksheet whose figures can be typed as it was", () => {
    fc.assert(
      fc.property(anyWorksheet.map(typable).map(draftOf), (draft) => {
        const { worksheet, faults } = readDraft(draft);
        fc.pre(worksheet !== null && Object.keys(faults).length === 0);
        expect(readDraft(givenByEar(draft)).worksheet).toEqual(worksheet);
      }),
      { numRuns: 8 },
    );
  });

  test("says nothing that is in neither pack, and nearly all that is in its own", async () => {
    const scripts = await Promise.all(languages.map(scriptIn));
    const letters = [
      ...new Set(scripts.flatMap(({ source }) => Object.keys(source.slots.letter ?? {}))),
    ];
    const sayings = new Map<string, Saying>();
    for (const draft of [...drafts, emptyDraft()]) {
      const { plan } = readDraft(draft);
      stopsOf(draft).forEach((stop, at) => {
        const of = isField(stop) && choosable(stop).length > 0 ? [{ from: 0 }] : [];
        const typed = isField(stop) && of.length === 0 ? [{ typed: "" }, { typed: "1" }] : [];
        for (const talk of [{}, ...of, ...typed])
          for (const line of linesOf({ ...startOfTalk, at, ...talk }, draft, plan, letters))
            for (const each of line.says) sayings.set(JSON.stringify(each), each);
      });
    }
    for (const script of scripts) {
      const [run, ear] = packNames.map((pack) => new Set(everyPhrase(script, pack)));
      const said = new Set(
        [...sayings.values()].flatMap(({ key, slots }) => script.say(key, "full", slots)),
      );
      expect([...said].filter((it) => !run?.has(it) && !ear?.has(it))).toEqual([]);
      // What came of an act is said only then, and baths that nobody here uses are.
      const unsaid = [...(ear ?? [])].filter((it) => !said.has(it));
      expect(unsaid.length, unsaid.join(" ")).toBeLessThan(12);
    }
  });
});
