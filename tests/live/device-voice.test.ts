import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { openDeviceVoice } from "../../src/live/device-voice.ts";
import { measureVoice } from "../../src/live/measure-voice.ts";
import { planOf } from "../../src/plan/plan.ts";
import { lengthsFor } from "../../src/timeline/lengths.ts";
import { compile } from "../../src/timeline/timeline.ts";
import { type DevicePace, devicePace, slotFor } from "../../src/voice/device-pace.ts";
import { anyWorksheet } from "../timeline/any-worksheet.ts";
import { brokenLaws } from "../timeline/laws.ts";
import { english } from "../timeline/scene.ts";
import { packIndex, phrases } from "../voice/built-pack.ts";
import { type Behaviour, handClock, synthesiserByHand } from "./device-by-hand.ts";

const usual: Behaviour = { delay: 0.2, perLetter: 0.06 };
const measured: DevicePace = {
  delay: { least: 0.1, most: 0.3 },
  perLetter: { least: 0.05, most: 0.07 },
};
const text = "Get ready to pour out.";
const slot = slotFor(text, measured);

function opened(behave: (text: string) => Behaviour = () => usual, pace = measured) {
  const hand = handClock();
  const spoken = synthesiserByHand(hand.clock, behave);
  const state = { hidden: false, gaveUp: 0 };
  const voice = openDeviceVoice({
    synthesiser: spoken.synthesiser,
    voice: "Ada",
    pace,
    clock: hand.clock,
    hidden: () => state.hidden,
    gaveUp: () => {
      state.gaveUp += 1;
    },
  });
  return { ...hand, ...spoken, state, voice };
}

describe("A voice of the device is measured", () => {
  const some = ["Lid locked.", "Get ready to pour out.", "The next bath is the developer."];

  async function measure(behave: (text: string) => Behaviour) {
    const { clock, pass } = handClock();
    const { synthesiser } = synthesiserByHand(clock, behave);
    const result = measureVoice("Ada", some, synthesiser, clock);
    for (let i = 0; i < 400; i += 1) {
      pass(0.1);
      await Promise.resolve();
    }
    return result;
  }

  test("by how late it begins and how long it takes a letter, least and most", async () => {
    const delays = [0.2, 0.5, 0.1];
    const result = await measure((said) => ({
      delay: delays[some.indexOf(said)] ?? 0,
      perLetter: 0.06,
    }));
    if (result.kind === "refused") throw new Error(result.why);
    expect(result.pace.delay.least).toBeCloseTo(0.1, 6);
    expect(result.pace.delay.most).toBeCloseTo(0.5, 6);
    expect(result.pace.perLetter.least).toBeCloseTo(0.06, 6);
    expect(result.pace.perLetter.most).toBeCloseTo(0.06, 6);
  });

  test.each([
    ["never-starts", { ...usual, delay: 3.1 }],
    ["never-starts", { ...usual, never: "anything" }],
    ["never-starts", { ...usual, never: "start" }],
    ["never-ends", { ...usual, never: "end" }],
    ["failed", { ...usual, fails: true }],
    ["too-slow", { ...usual, perLetter: 0.29 }],
  ] as const)("and refused with its reason: %s", async (why, behaviour) => {
    expect(await measure(() => behaviour)).toEqual({ kind: "refused", why });
  });
});

describe("A timeline for a voice of the device", () => {
  test("gives every sentence a slot that the voice does not overrun, anywhere within its measured spread", () => {
    const spread = (least: number, most: number) =>
      fc
        .tuple(
          fc.double({ min: least, max: most, noNaN: true }),
          fc.double({ min: least, max: most, noNaN: true }),
        )
        .map(([a, b]) => ({ least: Math.min(a, b), most: Math.max(a, b) }));
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        spread(0, 2.5),
        spread(0.03, 0.12),
        fc.constantFrom(...phrases),
        part,
        part,
        (delay, perLetter, said, d, p) => {
          const behaviour = {
            delay: delay.least + d * (delay.most - delay.least),
            perLetter: perLetter.least + p * (perLetter.most - perLetter.least),
          };
          const pace = { delay, perLetter };
          const { voice, pass, heard, state } = opened(() => behaviour, pace);
          const until = 10 + slotFor(said, pace);
          voice.say(said, 10, until);
          pass(60);
          expect(heard).toHaveLength(1);
          expect(heard[0]?.from).toBeGreaterThanOrEqual(10);
          expect(heard[0]?.to).toBeLessThanOrEqual(until);
          const lasts = (heard[0]?.to ?? 0) - (heard[0]?.from ?? 0);
          expect(lasts).toBeCloseTo(said.length * behaviour.perLetter, 6);
          expect(state.gaveUp).toBe(0);
        },
      ),
    );
  });

  test("keeps the laws of every timeline, for every worksheet", () => {
    const pace = devicePace([{ letters: 20, delay: 0.3, lasts: 1.3 }]);
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        const lengths = lengthsFor({ kind: "device", voice: "Ada", pace }, packIndex, 1);
        expect(brokenLaws(compile(worksheet, planOf(worksheet), english, lengths))).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});

describe("A voice of the device in a run", () => {
  test("is never heard outside of its slots, whatever it does", () => {
    const anyBehaviour: fc.Arbitrary<Behaviour> = fc.record(
      {
        delay: fc.double({ min: 0, max: 6, noNaN: true }),
        perLetter: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        never: fc.constantFrom("start" as const, "end" as const, "anything" as const),
        fails: fc.boolean(),
      },
      { requiredKeys: ["delay", "perLetter"] },
    );
    fc.assert(
      fc.property(fc.array(anyBehaviour, { minLength: 1, maxLength: 6 }), (behaviours) => {
        let next = 0;
        const { voice, pass, heard } = opened(() => behaviours[next++] ?? usual);
        const slots = behaviours.map((_, i) => ({ at: 5 + i * (slot + 0.55) }));
        for (const { at } of slots) voice.say(text, at, at + slot);
        pass(200);
        for (const { from, to } of heard) {
          const inSlot = slots.some(({ at }) => from >= at && to <= at + slot + 1e-9);
          expect(inSlot, `${from} to ${to}`).toBe(true);
          expect(slots.some(({ at }) => from >= at && from <= at + 0.7 + 1e-9)).toBe(true);
        }
      }),
    );
  });

  test("that has not begun 0.7 s after its time is cancelled, and never spoken late", () => {
    const { voice, pass, heard } = opened(() => ({ ...usual, delay: 0.71 }));
    voice.say(text, 5, 5 + slot);
    pass(60);
    expect(heard).toEqual([]);
  });

  test("that is known to begin later is given as long as that, and a little more", () => {
    const slow = { ...measured, delay: { least: 0.8, most: 1.2 } };
    for (const [delay, count] of [
      [1.29, 1],
      [1.31, 0],
    ] as const) {
      const { voice, pass, heard } = opened(() => ({ ...usual, delay }), slow);
      voice.say(text, 5, 5 + slotFor(text, slow));
      pass(60);
      expect(heard).toHaveLength(count);
    }
  });

  test("that begins although it was cancelled is cancelled again at once", () => {
    const { voice, pass, heard } = opened(() => ({ ...usual, delay: 2, deaf: true }));
    voice.say(text, 5, 5 + slot);
    pass(60);
    expect(heard.map(({ from, to }) => to - from)).toEqual([0]);
  });

  test("that still speaks at the end of its slot is cut off there", () => {
    const { voice, pass, heard } = opened(() => ({ ...usual, perLetter: 0.3 }));
    voice.say(text, 5, 5 + slot);
    pass(60);
    expect(heard[0]?.to).toBeCloseTo(5 + slot, 6);
  });

  test("skips a cue whose timer came more than 0.3 s late, or while the page is out of sight", () => {
    const slept = opened();
    slept.voice.say(text, 5, 5 + slot);
    slept.pass(5.31, true);
    slept.pass(60);
    expect(slept.heard).toEqual([]);
    const inTime = opened();
    inTime.voice.say(text, 5, 5 + slot);
    inTime.pass(5.29, true);
    inTime.pass(60);
    expect(inTime.heard).toHaveLength(1);
    const away = opened();
    away.state.hidden = true;
    away.voice.say(text, 5, 5 + slot);
    away.pass(60);
    expect(away.heard).toEqual([]);
  });

  test("gives up after two failures in a row, once, and says nothing any more", () => {
    const { voice, pass, heard, state } = opened(() => ({ ...usual, never: "anything" }));
    for (const at of [5, 15, 25, 35]) voice.say(text, at, at + slot);
    pass(12);
    expect([state.gaveUp, voice.isOver()]).toEqual([0, false]);
    pass(60);
    expect([state.gaveUp, voice.isOver()]).toEqual([1, true]);
    voice.say(text, 80, 80 + slot);
    pass(60);
    expect(heard).toEqual([]);
  });

  test("is forgiven a failure by the next sentence that it speaks whole", () => {
    let said = 0;
    const { voice, pass, state, heard } = opened(() => {
      said += 1;
      return said % 2 === 1 ? { ...usual, fails: true } : usual;
    });
    for (let i = 0; i < 6; i += 1) voice.say(text, 5 + 10 * i, 5 + 10 * i + slot);
    pass(100);
    expect([state.gaveUp, heard.length]).toEqual([0, 3]);
  });

  test("is silenced by whoever stops a cue, before it begins or in the midst of it, and that is no failure", () => {
    const { voice, pass, heard, state } = opened();
    const one = voice.say(text, 5, 5 + slot);
    const other = voice.say(text, 15, 15 + slot);
    const third = voice.say(text, 25, 25 + slot);
    pass(4);
    one.stop();
    pass(11.8);
    other.stop();
    pass(1);
    third.stop();
    pass(60);
    expect(heard.map(({ from, to }) => [from, to])).toEqual([[15.2, 15.8]]);
    expect(state.gaveUp).toBe(0);
  });

  test("leaves nothing sounding when it is closed", () => {
    const { voice, pass, heard } = opened();
    voice.say(text, 5, 5 + slot);
    voice.say(text, 15, 15 + slot);
    pass(5.5);
    voice.close();
    pass(60);
    expect(heard).toHaveLength(1);
    expect(heard[0]?.to).toBe(5.5);
  });
});
