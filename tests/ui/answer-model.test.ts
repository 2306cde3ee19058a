import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import {
  agitationAnswer,
  bathTemperature,
  mixAnswer,
  spokenAnswer,
  workingAbout,
} from "../../src/ui/answer-model.ts";
import { changed, foghorn, gullrock } from "../plan/worksheets.ts";

describe("the working", () => {
  test.each([gullrock, foghorn])("is cut by question, with no line lost: $title", (it) => {
    const plan = planOf(it);
    const [time = [], mix = [], baths = [], ...rest] = (
      ["time", "mix", "baths", "mixing", "tempering", "contrast", "hands"] as const
    ).map((topic) => workingAbout(plan, topic));
    expect([...time, ...mix, ...rest.flat(), ...baths]).toEqual(plan.working);
    expect(time.at(-1)?.label).toBe("Development");
    expect(mix[0]?.label).toBe("Mix");
    expect(baths.map(({ label }) => label)).toEqual(
      plan.baths.filter(({ id }) => id !== "developer").map(({ label }) => label),
    );
  });
});

describe("figures", () => {
  test("the mix is told in the unit of the tank", () => {
    expect(mixAnswer(gullrock, planOf(gullrock))).toEqual({
      stock: "75 ml",
      water: "225 ml",
      total: "300 ml",
    });
    expect(mixAnswer(foghorn, planOf(foghorn)).total).toBe("40 fl oz");
  });

  test("stock as it is has no water beside it", () => {
    const neat = changed(gullrock, { developer: { dilution: "stock" } });
    expect(mixAnswer(neat, planOf(neat)).water).toBeNull();
  });

  test("a bath's temperature is told in the unit typed for it", () => {
    const [developer] = planOf(gullrock).baths;
    expect(developer && bathTemperature(gullrock, developer)).toBe("69 °F");
  });
});

describe("agitation in words", () => {
  const usual = { first: 30, every: 60, for: 10, perInversion: 2.5, taps: 2 };

  test("names what comes first, what follows, and the taps", () => {
    expect(agitationAnswer(usual, 600)).toBe(
      "without a break for 30 s, then 10 s every 60 s, 2 taps after each",
    );
    expect(agitationAnswer({ ...usual, every: 150, taps: 1 }, 600)).toBe(
      "without a break for 30 s, then 10 s every 2:30, 1 tap after each",
    );
  });

  test("tells standing, never stopping, and left alone apart", () => {
    expect(agitationAnswer({ ...usual, first: 0, for: 0 }, 600)).toBe("left standing");
    expect(agitationAnswer({ ...usual, for: 60 }, 600)).toBe("without a break");
    expect(agitationAnswer(usual, 30)).toBe("without a break");
    expect(agitationAnswer(null, 600)).toBe("left alone");
  });
});

test("who listens hears the time, the mix and every warning with its weight", () => {
  const warm = changed(gullrock, { developer: { temperature: { f: 72 } } });
  expect(spokenAnswer(warm, planOf(warm))).toMatch(
    /^Develop for 8:06\. Mix 75 ml of stock and 225 ml of water\. Caution: The developer is/,
  );
});
