import { describe, expect, test } from "vitest";
import { asides } from "../../src/plan/asides.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { answersSaid } from "../../src/ui/by-ear-answers.ts";
import type { Saying } from "../../src/ui/by-ear-field.ts";
import type { Draft } from "../../src/ui/draft.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { readDraft } from "../../src/ui/work-out-model.ts";
import { benchInCelsius, benchInFahrenheit } from "../plan/bench-worksheets.ts";
import { gullrock } from "../plan/worksheets.ts";

/** What an answer says in figures: `"told.cold 355 ml"`, `"time 9:02"`. */
function inFigures(says: readonly Saying[]): string {
  const signs = says.slice(1).map(({ slots }) => {
    if (slots?.digit !== undefined) return slots.digit === "point" ? "." : slots.digit;
    if (slots?.unit === "minutes") return ":";
    return slots?.unit === "seconds" ? "" : ` ${slots?.unit}`;
  });
  return `${says[0]?.key.replace("ear.", "")} ${signs.join("")}`.trim();
}

function told(draft: Draft): readonly string[] {
  const { plan } = readDraft(draft);
  if (plan === null) throw new Error("a time can be told");
  return answersSaid(draft, plan).map(inFigures);
}

/** What the page itself writes of a question. */
function written(worksheet: Worksheet, about: string): string {
  const { plan } = readDraft(draftOf(worksheet), asides);
  const lines = plan?.working.filter((line) => line.about === about) ?? [];
  return lines
    .map(({ label, expression, result }) => `${label} ${expression} ${result}`)
    .join("\n");
}

describe("what Work out answers, by ear", () => {
  test("is the time and the mix, each amount in the unit of the tank", () => {
    const { stock, water } = readDraft(draftOf(gullrock)).plan?.mix ?? { stock: 0, water: 0 };
    expect(stock).toBeGreaterThan(0);
    expect(told(draftOf(gullrock))).toEqual([
      "time 9:29",
      `told.stock ${stock} ml`,
      `told.water ${water} ml`,
    ]);
  });

  test("of stock as it is names no water", () => {
    const undiluted = { ...gullrock, developer: { ...gullrock.developer, dilution: "stock" } };
    expect(told(draftOf(undiluted)).map((it) => it.split(" ")[0])).toEqual(["time", "told.stock"]);
  });

  test.each([
    ["°C and ml", benchInCelsius, "ml", /^told\.none$/],
    ["°F and fluid ounces", benchInFahrenheit, "fl oz", /^told\.reached (\d+):$/],
  ])("beside the development is what the page writes, in %s", (_, worksheet, unit, reaches) => {
    const all = told(draftOf(worksheet));
    const [mixing, tempering, contrast] = ["mixing", "tempering", "contrast"].map((aside) =>
      all.indexOf(`gate.${aside}`),
    ) as [number, number, number];
    expect(mixing).toBeGreaterThan(0);
    const pours = all.slice(mixing + 1, tempering);
    expect(pours.map((pour) => pour.split(" ")[0])).toEqual([
      "told.stock",
      "told.cold",
      "told.hot",
    ]);
    for (const pour of pours) {
      const amount = `${pour.split(" ")[1]} ${unit}`;
      expect(written(worksheet, "mixing")).toContain(amount);
    }
    const [reached = ""] = all.slice(tempering + 1, contrast);
    expect(reached).toMatch(reaches);
    const minutes = reaches.exec(reached)?.[1];
    if (minutes !== undefined)
      expect(written(worksheet, "tempering")).toContain(`= ${minutes} min`);
    const [time] = all.slice(contrast + 1);
    expect(written(worksheet, "contrast")).toContain(time?.replace("time ", ""));
  });

  test("is said to be none where a question is half filled in, or has no answer", () => {
    const draft = draftOf(benchInCelsius);
    const half = { ...draft, "mixing.hot": "" };
    const all = told(half);
    expect(all[all.indexOf("gate.mixing") + 1]).toBe("told.none");
    const tooHot = { ...draft, "mixing.target": "90 °C" };
    expect(told(tooHot)[told(tooHot).indexOf("gate.mixing") + 1]).toBe("told.none");
  });
});
