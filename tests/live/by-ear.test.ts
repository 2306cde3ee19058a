// Changes told by ear alone, from the hold to the press that chooses: they count from when the hold began.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { staysOf } from "../../src/live/stays.ts";
import type { Section } from "../../src/timeline/score.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled, english } from "../timeline/scene.ts";
import { runByHand } from "./by-hand.ts";
import { acrossIn, coveredIn } from "./ear.ts";

const { sections } = compiled(gullrock);
const developer = sections.findIndex(({ id }) => id === "developer");
const planned = sections[developer] as Section;
const [first, second] = staysOf(planned);
if (first === undefined || second === undefined) throw new Error("a developer, and a stop bath");

type Here = ReturnType<typeof runByHand>;
const isSaid = (says: string | undefined, key: string) =>
  (["full", "brief", "shortest"] as const).some((form) =>
    says?.includes(english.say(key, form).join(" ")),
  );
const staysNow = (here: Here) =>
  staysOf(here.run.journal().timeline.sections[developer] as Section);

/** Holds, and presses as soon as the option is told. @returns when the hold began. */
function byEar(seconds: number, option: string) {
  const here = runByHand(gullrock);
  here.pressThrough(developer + 1);
  here.wait(seconds);
  const asked = here.clocks().steady;
  here.hold();
  for (let i = 0; i < 600; i += 1) {
    if (isSaid(here.ears().at(-1)?.cue.says, `rest.${option}`)) break;
    here.wait(0.1, 0.1);
  }
  here.wait(1, 0.1);
  const chosen = here.clocks().steady;
  here.press();
  return { here, asked, chosen };
}

describe("By ear", () => {
  test("a bath that is poured late counts from when the hold began, and can be taken back by another hold", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 50, noNaN: true }), (by) => {
        const { here, asked } = byEar(first.pourIn + by, "poured");
        expect(here.kept.at(-1)).toMatchObject({ kind: "poured", steady: asked, stay: 0 });
        expect(here.run.begunAt() + (staysNow(here)[0]?.pourIn ?? 0)).toBeCloseTo(asked, 5);
        here.wait(1.5, 0.1);
        here.hold();
        expect(here.kept.at(-1)?.kind).toBe("taken-back");
        expect(staysNow(here)[0]?.pourIn).toBe(first.pourIn);
      }),
      { numRuns: 10 },
    );
  });

  test("a tank that is emptied late is followed by the next pour-in 5 s after it was chosen", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 25, noNaN: true }), (by) => {
        const { here, asked, chosen } = byEar(first.empty + by, "emptied");
        const pressedAt = here.run.begunAt();
        expect(pressedAt + (staysNow(here)[0]?.empty ?? 0)).toBeCloseTo(asked, 5);
        const pourIn = pressedAt + (staysNow(here)[1]?.pourIn ?? 0);
        expect(pourIn).toBeCloseTo(chosen + 5, 5);
        here.wait(20);
        const heard = here.ears().filter(({ at }) => at > chosen);
        const tone = heard.find(({ cue }) => cue.kind === "now");
        expect(tone?.cue.sounds).toEqual(["pour-in"]);
        expect(tone?.at).toBeCloseTo(pourIn, 5);
        expect(heard.filter(({ cue, at }) => cue.kind === "count-in" && at < pourIn)).toHaveLength(
          3,
        );
        expect(coveredIn(heard, chosen)).toEqual([]);
        expect(acrossIn(heard)).toEqual([]);
      }),
      { numRuns: 10 },
    );
  });

  test("a reading is stepped by arrows and told of once it is pressed for", () => {
    const { here, chosen } = byEar(150, "reading");
    here.wait(8);
    here.guide.step(1);
    here.wait(4);
    here.press();
    expect(here.kept.at(-1)).toMatchObject({ kind: "read", temperature: { f: 70 } });
    here.wait(15);
    const said = here.ears().filter(({ cue, at }) => cue.says !== undefined && at > chosen);
    expect(said.some(({ cue }) => /degrees/.test(cue.says ?? ""))).toBe(true);
    expect(said.some(({ cue }) => /sooner/.test(cue.says ?? ""))).toBe(true);
  });

  test("what is being said is cut off where a moment moves under it", () => {
    const words = planned.cues.filter(
      ({ channel, at }) => channel === "voice" && at > first.pourIn + 11 && at < first.pourIn + 70,
    );
    expect(words.length).toBeGreaterThan(1);
    for (const cue of words) {
      const here = runByHand(gullrock);
      here.pressThrough(developer + 1);
      here.wait(cue.at + 0.3);
      const told = here.clocks().steady;
      // The tank is full, and the first agitation begins, a second from now.
      expect(here.run.poured(told - 11)).toBe(true);
      here.wait(4);
      expect(here.ears().some((each) => each.cue.kind === "now" && each.at > told)).toBe(true);
      expect(coveredIn(here.ears(), told)).toEqual([]);
    }
  });

  test("a second press in a row takes back what the first one chose, and nothing that was begun before it", () => {
    const { here } = byEar(first.pourIn + 5, "poured");
    here.wait(0.3, 0.1);
    here.press();
    here.wait(5);
    expect(here.run.position().section?.id).toBe("developer");
    expect(here.kept.slice(-2).map(({ kind }) => kind)).toEqual(["poured", "taken-back"]);
    expect(here.run.position().section?.moments).toEqual(planned.moments);
  });
});
