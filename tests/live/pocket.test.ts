import { setImmediate } from "node:timers/promises";
import { describe, expect, test } from "vitest";
import { openPocket } from "../../src/live/pocket.ts";
import { openRenderer } from "../../src/live/pocket-render.ts";
import type { Laid, PocketPlayer, PocketTrack } from "../../src/live/pocket-shape.ts";
import { forms } from "../../src/script/script.ts";
import type { Cue, Section } from "../../src/timeline/score.ts";
import { headerBytes, lay, pieceBytes } from "../../src/track/pocket-track.ts";
import { gullrock } from "../plan/worksheets.ts";
import { english } from "../timeline/scene.ts";
import { runByHand } from "./by-hand.ts";

/** A short bath or two, so that whole sessions can be heard. */
const worksheet = {
  ...gullrock,
  developer: { ...gullrock.developer, leaflet: [{ temperature: { f: 69 }, time: "2:30" }] },
  baths: { stop: { time: "0:30" }, fixer: { time: "1:00" }, wash: { time: "1:00" } },
} as const;

/** Seconds that the element by hand needs for a seek, and for another source. */
const SEEK = 0.05;
const LOAD = 0.12;

interface Stretch {
  readonly laid: Laid | undefined;
  /** Position at the time it begins at. */
  readonly position: number;
  readonly from: number;
  until: number;
}

/**
 * A run heard in the pocket by an element by hand, whose clock is the run's.
 * @param makes seconds that a track takes to be made, the how-manyth it may be.
 */
function pocketByHand({
  delay = 0,
  lets = true,
  can = true,
  makes = (_nth: number): number => 0,
} = {}) {
  const hand = runByHand(worksheet);
  const now = () => hand.clocks().steady;
  const stretches: Stretch[] = [];
  const loads: Laid[] = [];
  const seeks: number[] = [];
  let timers: readonly { readonly at: number; readonly act: () => void }[] = [];
  let rendering: Laid | undefined;
  let paused = true;
  let unasked = () => {};
  let rendered = 0;
  let begun = 0;
  let silent = 0;
  let failed = 0;
  let plays = 0;
  let letOn = lets;

  const position = () => {
    const last = stretches.at(-1);
    if (last === undefined) return 0;
    return last.position + Math.max(0, Math.min(now(), last.until) - last.from);
  };
  function moveTo(to: number, after: number): void {
    const last = stretches.at(-1);
    if (last !== undefined) last.until = Math.min(last.until, now());
    const laid = loads.at(-1);
    stretches.push({ laid, position: to, from: now() + after, until: Number.POSITIVE_INFINITY });
  }
  function pause(): void {
    const at = position();
    moveTo(at, 0);
    const last = stretches.at(-1);
    if (last !== undefined) last.until = now();
    paused = true;
  }

  const player: PocketPlayer = {
    now,
    load(_, at) {
      if (!paused) pause();
      if (rendering !== undefined) loads.push(rendering);
      return new Promise((resolve) => {
        player.after(LOAD, () => {
          moveTo(at(), 0);
          if (!letOn || !can) pause();
          paused = !letOn || !can;
          resolve(!can ? "cannot" : letOn ? "plays" : "not-let");
        });
      });
    },
    seek(to) {
      seeks.push(to);
      moveTo(to, SEEK);
      if (paused) pause();
    },
    position,
    paused: () => paused,
    async play() {
      plays += 1;
      if (letOn && paused) {
        moveTo(position(), 0);
        paused = false;
      }
      return letOn;
    },
    onPauseUnasked(act) {
      unasked = act;
    },
    after(seconds, act) {
      const timer = { at: now() + seconds, act };
      timers = [...timers, timer];
      return () => {
        timers = timers.filter((each) => each !== timer);
      };
    },
  };

  const pocket = openPocket({
    player,
    lay,
    render(laid) {
      rendering = laid;
      rendered += 1;
      let off = false;
      const made =
        makes(rendered) === 0
          ? setImmediate()
          : new Promise<void>((resolve) => void player.after(makes(rendered), resolve));
      return {
        track: made.then(() => (off ? null : new Blob())),
        callOff() {
          off = true;
        },
      };
    },
    delay,
    begins: () => {
      begun += 1;
    },
    failed: () => {
      failed += 1;
    },
    silent: () => {
      silent += 1;
    },
  });
  hand.run.through(pocket, "pocket");

  async function wait(seconds: number): Promise<void> {
    for (const end = now() + seconds; now() < end - 1e-9; ) {
      hand.wait(Math.min(0.05, end - now()), 0.05);
      const due = timers.filter(({ at }) => at <= now());
      timers = timers.filter(({ at }) => at > now());
      for (const { act } of due) act();
      await setImmediate();
    }
  }

  return {
    hand,
    pocket,
    wait,
    loads,
    seeks,
    begun: () => begun,
    silent: () => silent,
    failed: () => failed,
    plays: () => plays,
    lets(on: boolean) {
      letOn = on;
    },
    /** Stopped from outside. */
    stop() {
      pause();
      unasked();
    },
    /** It plays on, and no script comes to be run. */
    suspend(seconds: number) {
      hand.shift({ steady: seconds, wall: seconds * 1000, audio: seconds });
    },
    /** Its clock is off from now on, as if it had lost so many seconds. */
    lose(seconds: number) {
      moveTo(position() - seconds, 0);
    },
    /** Words that were heard from their first to their last, and since when: seconds on the steady clock. */
    heardWhole(): readonly { readonly says: string; readonly at: number }[] {
      return stretches.flatMap(({ laid, position: at, from, until }) =>
        (laid?.sections ?? []).flatMap(({ start, pieces }) =>
          [...new Set(pieces.flatMap(({ sounds }) => sounds.map(({ cue }) => cue)))].flatMap(
            ({ says, at: into, until: over }) => {
              const when = from + start + into - at;
              const whole =
                when >= from - 1e-9 && when + over - into <= Math.min(until, now()) + 1e-9;
              return says !== undefined && whole ? [{ says, at: when }] : [];
            },
          ),
        ),
      );
    },
    /** When a place in a section was played: seconds on the steady clock, each time it was. */
    heardAt(index: number, seconds: number): readonly number[] {
      return stretches.flatMap(({ laid, position: at, from, until }) => {
        const first = hand.run.journal().timeline.sections.length - (laid?.sections.length ?? 0);
        const start = laid?.sections[index - first]?.start;
        if (start === undefined) return [];
        const when = from + start + seconds - at;
        return when >= from - 1e-9 && when < until - 1e-9 ? [when] : [];
      });
    },
  };
}

const isWording = (says: string, key: string) =>
  forms.some((form) => says === english.say(key, form).join(" "));

/** Pressed up to a bath, and a second into it. */
async function inBath(upTo: string, options = {}) {
  const heard = pocketByHand(options);
  const { hand, wait } = heard;
  const index = hand.planned.sections.findIndex(({ id }) => id === upTo);
  for (let i = 0; i <= index; i += 1) {
    hand.press();
    await wait(i === index ? 1 : 1.5);
  }
  return { ...heard, index, section: hand.planned.sections[index] as Section };
}

describe("A run heard in the pocket", () => {
  test("has one source from its first press to its end, where all goes by plan, and sounds each cue once (60 ms)", async () => {
    const { hand, wait, loads, heardAt, begun } = pocketByHand();
    const pressed: number[] = [];
    for (const section of hand.planned.sections) {
      hand.press();
      pressed.push(hand.run.begunAt());
      const last = section.cues.reduce((until, cue) => Math.max(until, cue.until), section.seconds);
      await wait(last + (section.id === "developer" ? 200 : 3));
    }
    expect(begun()).toBe(1);
    expect(loads).toHaveLength(1);
    for (const [i, section] of hand.planned.sections.entries()) {
      for (const cue of section.cues) {
        if (i === 0 && cue.at < 1) continue;
        const times = heardAt(i, cue.at).map((at) => at - (pressed[i] ?? 0) - cue.at);
        expect(times, `${section.id} ${cue.at} ${cue.sounds}`).toHaveLength(1);
        expect(Math.abs(times[0] ?? 9)).toBeLessThan(0.06);
      }
    }
  }, 60_000);

  test("seeks to a section as it is pressed for, with its press tone, and is where it should be before a word", async () => {
    const { hand, seeks, loads, wait, heardAt, index, section } = await inBath("developer");
    await wait(section.seconds + 10);
    const before = seeks.length;
    hand.press();
    const laid = loads.at(-1) as Laid;
    const next = laid.sections[index + 1 - (hand.planned.sections.length - laid.sections.length)];
    expect(seeks.slice(before)).toEqual([next?.start]);
    await wait(3);
    const pressedAt = hand.run.begunAt();
    expect(heardAt(index + 1, 0)).toEqual([expect.closeTo(pressedAt + SEEK, 2)]);
    expect(heardAt(index + 1, 1)).toEqual([expect.closeTo(pressedAt + 1, 1)]);
    expect(loads).toHaveLength(1);
  });

  test("says an answer by another source, changed where nothing sounds, and loses no cue by it", async () => {
    const { hand, loads, wait, heardAt, index, section } = await inBath("developer");
    await wait(73);
    hand.run.where();
    await wait(section.seconds - 70);
    expect(loads).toHaveLength(2);
    const pressedAt = hand.run.begunAt();
    const tones = section.cues.filter(({ channel, kind }) => channel === "tone" && kind !== "beat");
    for (const cue of tones) {
      const heard = heardAt(index, cue.at).map((at) => at - pressedAt - cue.at);
      expect(heard, `${cue.sounds} ${cue.at}`).toHaveLength(1);
      expect(Math.abs(heard[0] ?? 9)).toBeLessThan(0.06);
    }
    const answer = loads[1]?.sections[0]?.pieces.flatMap(
      (piece) => (piece as unknown as { sounds: { cue: Cue }[] }).sounds,
    );
    const told = answer?.find(({ cue }) => !section.cues.includes(cue) && cue.says)?.cue;
    expect(told?.says).toContain("left");
    expect(heardAt(index, told?.at ?? 0)).toHaveLength(1);
  });

  /** Renderers of a slow phone, of one that is slow now and then, and of one that nobody notices. */
  const renderers = {
    quick: () => 0,
    slow: () => 0.7,
    "slow now and then": (nth: number) => (nth % 3 === 0 ? 1.6 : 0.1),
  };

  for (const [how, makes] of Object.entries(renderers)) {
    test(`says whole whatever is asked for, where a track is made anew by a ${how} renderer`, async () => {
      for (const delay of [0, 0.3]) {
        const { hand, wait, heardWhole } = await inBath("developer", { makes, delay });
        await wait(20);
        const from = hand.clocks().steady;
        hand.hold();
        await wait(65);
        const all = heardWhole().filter(({ at }) => at > from);
        for (const option of ["rest.wrong", "rest.reading", "rest.less", "rest.leave", "rest.end"])
          expect(
            all.filter(({ says }) => isWording(says, option)),
            option,
          ).toHaveLength(1);
        hand.guide.hushOrSpeak();
        await wait(8);
        hand.guide.hushOrSpeak();
        await wait(8);
        hand.guide.takeBack();
        await wait(6);
        const said = heardWhole().map(({ says }) => says);
        for (const key of ["hush.on", "hush.off", "taken-back.not"])
          expect(
            said.filter((says) => isWording(says, key)),
            key,
          ).toHaveLength(1);
      }
    }, 60_000);
  }

  test("says whole what is asked for where it waits, and says again what was told there", async () => {
    for (const makes of Object.values(renderers)) {
      const { hand, wait, heardWhole } = pocketByHand({ makes });
      hand.press();
      await wait(150);
      const from = hand.clocks().steady;
      hand.hold();
      await wait(40);
      const all = heardWhole().filter(({ at }) => at > from);
      for (const option of ["rest.wrong", "rest.less", "rest.leave", "rest.end"])
        expect(
          all.filter(({ says }) => isWording(says, option)),
          option,
        ).toHaveLength(1);
      const asked = hand.clocks().steady;
      hand.press();
      expect(hand.run.position().kind).toBe("waiting");
      await wait(0.3);
      hand.press();
      await wait(40);
      const again = heardWhole().flatMap(({ says, at }) => (at > asked ? [says] : []));
      expect(again).toEqual(hand.planned.sections[0]?.cues.flatMap(({ says }) => says ?? []));
    }
  }, 60_000);

  test("takes an option that was told late by a press after it, and offers none before the one before is over", async () => {
    const makes = (nth: number) => (nth > 1 && nth % 2 === 0 ? 2 : 0.1);
    const { hand, wait, heardWhole } = await inBath("developer", { makes });
    await wait(20);
    hand.hold();
    const told = () => heardWhole().at(-1)?.says ?? "";
    for (let i = 0; i < 900 && !isWording(told(), "rest.less"); i += 1) await wait(0.1);
    hand.press();
    expect(hand.run.detail()).toBe("brief");
  });

  test("makes nothing anew for an update that sounds the same", async () => {
    const { hand, pocket, loads, seeks, wait, index } = await inBath("developer");
    const before = [loads.length, seeks.length];
    const sections = structuredClone(hand.run.journal().timeline.sections);
    pocket.update({ sections, index, pressedAt: hand.run.begunAt() });
    await wait(3);
    expect([loads.length, seeks.length]).toEqual(before);
  });

  test("is put right where nothing sounds once it is off by more than 45 ms, and left alone by less", async () => {
    const { hand, seeks, wait, lose, heardAt, index, section } = await inBath("developer");
    await wait(20);
    const before = seeks.length;
    lose(0.02);
    await wait(5);
    expect(seeks).toHaveLength(before);
    lose(0.2);
    await wait(section.seconds - 30);
    expect(seeks.length - before).toBe(1);
    const pressedAt = hand.run.begunAt();
    for (const cue of section.cues.filter(({ kind }) => kind === "now")) {
      const heard = heardAt(index, cue.at).map((at) => at - pressedAt - cue.at);
      expect(heard, `${cue.sounds} ${cue.at}`).toHaveLength(1);
      if (cue.at > 35) expect(Math.abs(heard[0] ?? 9)).toBeLessThan(0.06);
    }
  });

  test("goes on at once after a pause that nobody asked for, and says so where it is not let", async () => {
    const { pocket, wait, stop, lets, silent, plays, hand, heardAt, index } =
      await inBath("developer");
    await wait(2);
    stop();
    await wait(1);
    expect([plays(), silent(), pocket.check()]).toEqual([1, 0, true]);
    lets(false);
    stop();
    await wait(1);
    expect([silent() > 0, pocket.check()]).toEqual([true, false]);
    const stood = hand.clocks().steady - pocket.clock();
    await wait(5);
    pocket.check();
    expect(hand.clocks().steady - pocket.clock() - stood).toBeCloseTo(5, 0);
    lets(true);
    await wait(0.5);
    pocket.check();
    await wait(3);
    expect(pocket.check()).toBe(true);
    const at = hand.clocks().steady - hand.run.begunAt() - 0.5;
    expect(heardAt(index, at)[0]).toBeCloseTo(hand.run.begunAt() + at, 1);
  });

  test("waits where it was not let sound, as all else does, and is in its place from the press that lets it", async () => {
    const { pocket, wait, lets, begun, silent, failed, hand, heardAt, index } = await inBath(
      "developer",
      { lets: false },
    );
    await wait(20);
    expect([begun(), silent(), failed()]).toEqual([0, 1, 0]);
    pocket.wake();
    await wait(1);
    expect([begun(), silent(), failed()]).toEqual([0, 2, 0]);
    lets(true);
    pocket.wake();
    await wait(3);
    expect([begun(), failed(), pocket.check()]).toEqual([1, 0, true]);
    const at = hand.clocks().steady - hand.run.begunAt() - 0.5;
    expect(heardAt(index, at)[0]).toBeCloseTo(hand.run.begunAt() + at, 1);
  });

  test("is given up where its track cannot be played at all", async () => {
    const { begun, failed } = await inBath("developer", { can: false });
    expect([begun(), failed() > 0]).toEqual([0, true]);
  });

  test("begins nothing that nobody pressed for while no script runs for 9 min of waiting, and is right at the press", async () => {
    const { hand, wait, suspend, heardAt, heardWhole, index, section } = await inBath("developer");
    await wait(section.seconds + 20);
    const from = hand.clocks().steady;
    suspend(540);
    const now = hand.clocks().steady;
    expect(heardAt(index + 1, 0).filter((at) => at < now)).toEqual([]);
    expect(heardWhole().filter(({ at }) => at > from)).toEqual([]);
    hand.press();
    await wait(3);
    expect(heardAt(index + 1, 1)).toEqual([expect.closeTo(hand.run.begunAt() + 1, 1)]);
  });

  test("plays as much ahead as it is heard late", async () => {
    const { hand, wait, heardAt, index } = await inBath("developer", { delay: 0.3 });
    await wait(20);
    const pressedAt = hand.run.begunAt();
    for (const at of [5, 12, 19])
      expect(heardAt(index, at)[0]).toBeCloseTo(pressedAt + at - 0.3, 1);
  });
});

describe("A track that is made", () => {
  const cues = (says: string, at: number) =>
    ({
      at,
      until: at + 1,
      channel: "voice",
      kind: "tell",
      moment: null,
      says,
      sounds: [says],
    }) as const;
  const section = (answer: string): Section => ({
    id: "bath",
    title: "Bath",
    dark: false,
    seconds: 600,
    moments: [],
    cues: [cues("First", 1), cues(answer, 300), cues("Last", 500)],
    left: [],
  });
  const silence = (cue: Cue) => new Float32Array((cue.until - cue.at) * 24_000);
  const rendered: string[] = [];
  const track = {
    lay,
    headerBytes,
    pieceBytes: (...[piece, soundOf]: Parameters<typeof pieceBytes>) => {
      rendered.push(piece.key);
      return pieceBytes(piece, soundOf);
    },
  };

  test("is as long as its layout, and made anew only where it sounds otherwise", async () => {
    const render = openRenderer(
      track as PocketTrack,
      silence,
      async () => {},
      () => 0,
    );
    const laid = lay([section("Now"), section("Then")]);
    const blob = await render(laid).track;
    const pieces = laid.sections.flatMap((each) => each.pieces);
    expect(blob?.size).toBe(44 + pieces.length * laid.pieceSeconds * 48_000);
    expect(rendered).toHaveLength(new Set(pieces.map(({ key }) => key)).size);
    rendered.length = 0;
    await render(lay([section("Otherwise"), section("Then")])).track;
    expect(rendered).toEqual([expect.stringContaining("Otherwise")]);
  });

  test("lets others have their turn between slices, and gives up where it is called off", async () => {
    let clock = 0;
    let turns = 0;
    const breathe = async () => {
      turns += 1;
      if (turns === 3) rendering.callOff();
    };
    const render = openRenderer(track as PocketTrack, silence, breathe, () => (clock += 3));
    const rendering = render(lay([section("Now")]));
    expect(await rendering.track).toBeNull();
    expect(turns).toBe(3);
  });
});
