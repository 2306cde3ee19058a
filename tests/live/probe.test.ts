import { describe, expect, test } from "vitest";
import { giveTo, openProbe } from "../../src/live/probe.ts";
import { demos } from "../../src/ui/demo.ts";
import type { Temperature } from "../../src/units/temperature.ts";
import { runByHand } from "./by-hand.ts";
import { thermometerByHand } from "./probe-by-hand.ts";

function opened() {
  const hand = thermometerByHand();
  const given: number[] = [];
  let useful = true;
  const probe = openProbe(hand.thermometer, (celsius) => {
    given.push(celsius);
    return useful;
  });
  return {
    ...hand,
    probe,
    given,
    setUseful(on: boolean) {
      useful = on;
    },
  };
}

describe("The probe", () => {
  test("says how it stands, from the asking to the end", async () => {
    const { probe, tell, lose, find, wait, answer, closed } = opened();
    expect(probe.state.value).toEqual({ kind: "off" });
    wait();
    const connecting = probe.connect();
    expect(probe.state.value).toEqual({ kind: "connecting" });
    answer();
    await connecting;
    const name = "Gullrock probe";
    expect(probe.state.value).toEqual({ kind: "on", name, celsius: null, isInTank: true });
    tell(20.25, 0);
    expect(probe.state.value).toEqual({ kind: "on", name, celsius: 20.25, isInTank: true });
    tell(26, 2);
    expect(probe.state.value).toEqual({ kind: "on", name, celsius: 26, isInTank: false });
    lose();
    expect(probe.state.value).toEqual({ kind: "lost", name, celsius: 26 });
    find();
    expect(probe.state.value).toMatchObject({ kind: "on", celsius: 26 });
    probe.disconnect();
    expect([probe.state.value, closed()]).toEqual([{ kind: "off" }, 1]);
  });

  test("hands on what is worth it, and offers anew what there was no use for", async () => {
    const { probe, tell, given, setUseful } = opened();
    await probe.connect();
    for (const at of [0, 2, 4, 6, 8]) tell(20, at);
    expect(given).toEqual([20]);
    setUseful(false);
    for (const at of [10, 12, 14]) tell(20.3, at);
    setUseful(true);
    tell(20.3, 16);
    tell(20.3, 18);
    expect(given).toEqual([20, 20.3, 20.3, 20.3]);
  });

  test("that was refused says why, and can be tried again", async () => {
    const { thermometer } = thermometerByHand({ kind: "refused", why: "none" });
    const probe = openProbe(thermometer, () => true);
    await probe.connect();
    expect(probe.state.value).toEqual({ kind: "refused", why: "none" });
    await probe.connect();
    expect(probe.state.value).toEqual({ kind: "refused", why: "none" });
  });

  test("let go of while the browser was still asking is closed as soon as it comes, and stays off", async () => {
    const { probe, wait, answer, closed, listeners, given } = opened();
    wait();
    const connecting = probe.connect();
    probe.disconnect();
    answer();
    await connecting;
    expect([probe.state.value, closed()]).toEqual([{ kind: "off" }, 1]);
    for (const at of [0, 2, 4]) listeners[0]?.read(20, at);
    listeners[0]?.lost();
    expect([probe.state.value, given]).toEqual([{ kind: "off" }, []]);
  });
});

describe("A probe's reading given to a run", () => {
  const taken: Temperature[] = [];
  const run = {
    read(temperature: Temperature) {
      taken.push(temperature);
      return true;
    },
  };

  test("is in the worksheet's unit, to a tenth, and of no use where none is on", () => {
    const { gullrock } = demos;
    const inFahrenheit = {
      ...gullrock,
      developer: { ...gullrock.developer, temperature: { f: 68 } },
    };
    const inCelsius = { ...gullrock, developer: { ...gullrock.developer, temperature: { c: 20 } } };
    expect(giveTo({ worksheet: inFahrenheit, run }, 19.52)).toBe(true);
    expect(giveTo({ worksheet: inCelsius, run }, 19.57)).toBe(true);
    expect(taken).toEqual([{ f: 67.1 }, { c: 19.6 }]);
    expect(giveTo(null, 20)).toBe(false);
  });

  test("moves the end while the film is in the developer, and is refused before", () => {
    const it = runByHand(demos.gullrock);
    const session = { worksheet: demos.gullrock, run: it.run };
    expect(giveTo(session, 20)).toBe(false);
    const developer = it.planned.sections.findIndex(({ id }) => id === "developer");
    it.pressThrough(developer + 1);
    it.wait(60);
    const end = () => it.run.journal().timeline.sections[developer]?.seconds ?? 0;
    const before = end();
    expect(giveTo(session, 22)).toBe(true);
    const sooner = end();
    expect(sooner).toBeLessThan(before);
    // Another within the same second is as good as one later.
    expect(giveTo(session, 20)).toBe(true);
    expect(end()).toBeGreaterThan(sooner);
  });
});
