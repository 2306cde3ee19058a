// Sounds laid ahead on the audio clock: each once, whatever is asked, taken back or stands still meanwhile.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { openPlacer, type Player } from "../../src/live/placer.ts";
import type { Cue, Section } from "../../src/timeline/score.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled } from "../timeline/scene.ts";
import { runByHand } from "./by-hand.ts";

const { sections } = compiled(gullrock);

describe("While a run waits", () => {
  test("its soft tone comes every 30 s and no sooner, whatever is asked and taken back meanwhile", () => {
    const act = fc.tuple(
      fc.constantFrom("where", "twice", "nothing"),
      fc.double({ min: 1, max: 50, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(act, { maxLength: 6 }), (acts) => {
        const here = runByHand(gullrock);
        here.press();
        here.wait(50);
        for (const [what, wait] of acts) {
          if (what === "where") here.run.where();
          if (what === "twice") {
            here.press();
            here.wait(0.2, 0.1);
            here.press();
          }
          here.wait(wait);
        }
        const tones = here.ears().filter(({ cue }) => cue.kind === "confirm");
        const gaps = tones.slice(1).map(({ at }, i) => at - (tones[i]?.at ?? 0));
        for (const gap of gaps) expect(gap).toBeGreaterThan(29.9);
      }),
      { numRuns: 40 },
    );
  });
});

describe("A placer", () => {
  const [section] = sections.filter(({ id }) => id === "developer");
  if (section === undefined) throw new Error("a development has a developer");

  /** @param late seconds by which it is heard late: so much sooner it lies. */
  function placer(late = 0) {
    let now = 0;
    let audio = 0;
    /** `stopped`: before any of it was heard. */
    const laid: { readonly cue: Cue; readonly at: number; stopped: boolean; cut: boolean }[] = [];
    const player: Player = {
      now: () => now,
      play(cue, at) {
        const sound = {
          cue,
          at: Math.max(audio, audio + at - now - late),
          stopped: false,
          cut: false,
        };
        laid.push(sound);
        return {
          begun: () => audio >= sound.at,
          stop() {
            sound.stopped ||= audio < sound.at;
            sound.cut ||= audio >= sound.at && audio < sound.at + cue.until - cue.at;
          },
        };
      },
    };
    const outlet = openPlacer(player);
    return {
      outlet,
      laid,
      ahead: () => laid.filter(({ at, stopped }) => !stopped && at > audio),
      on: (heard: Section, pressedAt = 0) =>
        outlet.update({ sections: [heard], index: 0, pressedAt }),
      pass(seconds: number, sounding = true) {
        now += seconds;
        if (sounding) audio += seconds;
      },
    };
  }

  test("takes away all that lies ahead where sound stands still, however long it stood", () => {
    for (const still of [0.3, 5, 60, 600]) {
      const here = placer();
      here.on(section);
      here.pass(20);
      here.outlet.look();
      here.pass(still, false);
      // A press may come before anyone noticed.
      here.outlet.look();
      here.outlet.resettle("all");
      expect(here.ahead()).toEqual([]);
      here.outlet.look();
      const late = here.ahead().filter(({ cue, at }) => at - 20 < cue.at - 20 - still - 1e-6);
      expect(late).toEqual([]);
      for (const { cue, at } of here.ahead()) expect(at + still).toBeCloseTo(cue.at, 6);
    }
  });

  test("begins none twice, and stops none that sounds, where its section is compiled anew just before it is heard", () => {
    const tones = section.cues.filter(({ channel, at }) => channel === "tone" && at < 200);
    expect(tones.length).toBeGreaterThan(10);
    for (const tone of tones) {
      const here = placer(0.3);
      here.on(section);
      for (let to = 0; to < tone.at - 0.1; to += 0.5) {
        here.pass(Math.min(0.5, tone.at - 0.1 - to));
        here.outlet.look();
      }
      here.on(structuredClone(section));
      here.pass(1);
      const times = here.laid.filter(
        ({ cue, stopped }) => !stopped && cue.at === tone.at && cue.sounds[0] === tone.sounds[0],
      );
      expect(times, `${tone.sounds} at ${tone.at}`).toHaveLength(1);
      expect(times[0]?.cut).toBe(false);
    }
  });

  test("of several cues that come late sounds the moment alone", () => {
    const tone = (at: number, kind: Cue["kind"]): Cue => ({
      at,
      until: at + 0.3,
      channel: kind === "tell" ? "voice" : "tone",
      kind,
      moment: null,
      sounds: ["x"],
    });
    const cues = [tone(9.7, "tell"), tone(9.8, "now"), tone(9.9, "confirm"), tone(12, "tell")];
    const here = placer();
    here.pass(10);
    here.on({ ...section, cues });
    expect(here.laid.map(({ cue }) => cue)).toEqual([cues[1], cues[3]]);
    here.pass(1);
    here.outlet.look();
    expect(here.laid).toHaveLength(2);
  });

  test("begins no cue twice though its section is left and taken up again", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 600, noNaN: true }), (seconds) => {
        const here = placer();
        here.on(section);
        for (let i = 0; i < seconds; i += 1) {
          here.pass(1);
          here.outlet.look();
        }
        here.outlet.update({ sections: [section, ...sections], index: 1, pressedAt: seconds });
        here.pass(0.2);
        here.on(section);
        here.pass(30);
        const begun = here.laid.filter(({ stopped }) => !stopped);
        const cues = begun.map(({ cue }) => cue).filter((cue) => section.cues.includes(cue));
        expect(cues.filter((cue, i) => cues.indexOf(cue) < i)).toEqual([]);
      }),
      { numRuns: 30 },
    );
  });
});
