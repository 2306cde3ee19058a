// A run with clocks that are moved by hand, and a player whose sounds lie on the audio clock, as in a browser:
// where that stands still they come late. Times are seconds on the steady clock, at 100 as the run is opened.
// It is past 200 lines because clocks, player, timers and the look are one small world that moves together.
import type { Clocks } from "../../src/live/clocks.ts";
import { type Guide, openGuide } from "../../src/live/guide.ts";
import type { Entry } from "../../src/live/journal.ts";
import { audioAt, knownWith, nothingKnown } from "../../src/live/pairing.ts";
import { openPlacer, type Player } from "../../src/live/placer.ts";
import { openPresser } from "../../src/live/presser.ts";
import { openRun } from "../../src/live/run.ts";
import { runCompiler } from "../../src/live/run-compiler.ts";
import type { Learnt } from "../../src/live/run-shape.ts";
import { openTeller } from "../../src/live/teller.ts";
import { planOf } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import type { Rehearsal } from "../../src/process/rehearsal.ts";
import type { Cue, Timeline } from "../../src/timeline/score.ts";
import { english, estimatedLengths } from "../timeline/scene.ts";

interface Sounded {
  readonly cue: Cue;
  /** When it was to sound. */
  readonly at: number;
  /** Where it lies on the audio clock. */
  readonly audio: number;
  /** When it began to be heard; null where it never did. */
  begunAt: number | null;
  stoppedAt: number | null;
}

interface ByHandParts {
  /** A journal to go on with; the clocks then stand where they are told to. */
  readonly entries?: readonly Entry[];
  readonly clocks?: Partial<Clocks>;
  /** Where it is one. */
  readonly rehearsal?: Rehearsal;
  /** A sound card of its own: its seconds in one of the steady clock, and by how many seconds each reading of it errs. */
  readonly card?: { readonly pace: number; readonly scatter: () => number };
  /** Seconds by which the clocks go on from one reading of them to the next; none, if not given. */
  readonly tick?: () => number;
}

const utc = 1_700_000_000_000;

/** Timelines are the same for the same worksheet, and a property opens it many times. */
const compiledBefore = new WeakMap<Worksheet, Map<string, Timeline>>();

export function runByHand(worksheet: Worksheet, parts: ByHandParts = {}) {
  let clocks: Clocks = { life: "first", steady: 100, wall: utc, audio: 100, ...parts.clocks };
  let sounding = true;
  const { card } = parts;
  const pace = card?.pace ?? 1;
  let known = nothingKnown;
  /** As a browser's page does before each look. */
  function readCard(): void {
    if (card === undefined) return;
    known = knownWith(known, { steady: clocks.steady, audio: clocks.audio + card.scatter() });
  }
  const heard: Sounded[] = [];
  const kept: Entry[] = [];
  let answered = 0;
  let waiting: readonly { readonly at: number; readonly act: () => void }[] = [];
  const player: Player = {
    now: () => clocks.steady,
    play(cue, at) {
      const audio =
        card === undefined ? clocks.audio + at - clocks.steady : audioAt(known.pairing, at);
      const entry: Sounded = { cue, at, audio, begunAt: null, stoppedAt: null };
      heard.push(entry);
      const begun = () => clocks.audio >= audio;
      return {
        begun,
        stop() {
          if (!begun() || clocks.audio < audio + cue.until - cue.at) {
            entry.stoppedAt ??= clocks.steady;
          }
        },
      };
    },
  };

  function tick(seconds: number): void {
    const { steady, wall, audio } = clocks;
    const on = { steady: steady + seconds, wall: wall + seconds * 1000, audio: audio + seconds };
    moved({ ...clocks, ...on });
  }

  /** All that the audio clock comes by is heard. */
  function moved(to: Clocks): void {
    for (const each of heard) {
      if (each.stoppedAt !== null || each.begunAt !== null) continue;
      if (each.audio < to.audio) each.begunAt = to.steady - (to.audio - each.audio) / pace;
    }
    clocks = to;
  }
  readCard();
  const lengths = estimatedLengths(worksheet.voice?.rate ?? 1);
  const plan = planOf(worksheet);
  const { rehearsal } = parts;
  const compile = runCompiler({ worksheet, plan, rehearsal }, english, lengths);
  const compiledFor = (learnt: Learnt): Timeline => {
    const known = compiledBefore.get(worksheet) ?? new Map<string, Timeline>();
    compiledBefore.set(worksheet, known);
    const key = JSON.stringify([learnt, rehearsal]);
    const timeline = known.get(key) ?? compile(learnt);
    known.set(key, timeline);
    return timeline;
  };
  const detail = worksheet.voice?.detail ?? "full";
  const planned = compiledFor({ happened: {}, readings: [], detail, judged: [] });
  const run = openRun({
    timeline: planned,
    detail,
    entries: parts.entries ?? [],
    rehearses: rehearsal !== undefined,
    clocks() {
      if (parts.tick !== undefined) tick(parts.tick());
      return clocks;
    },
    teller: openTeller(english, lengths),
    compiled: compiledFor,
    keep: (entry) => kept.push(entry),
    outlet: openPlacer(player),
    changed() {},
  });
  let left = false;
  const guide: Guide = openGuide({
    run,
    script: english,
    steady: () => clocks.steady,
    temperature: () => worksheet.developer.temperature,
    way: () => "room",
    ways: ["room"],
    go() {},
    leave() {
      left = true;
    },
  });
  const presser = openPresser({
    felt() {
      answered += 1;
    },
    does: guide.does,
    steady: () => clocks.steady,
    after(seconds, act) {
      const entry = { at: clocks.steady + seconds, act };
      waiting = [...waiting, entry];
      return () => {
        waiting = waiting.filter((it) => it !== entry);
      };
    },
  });

  function look(): void {
    readCard();
    run.look(sounding);
    guide.look();
  }

  /** All clocks go on together, timers come when they are due. */
  function pass(seconds: number): void {
    for (const end = clocks.steady + seconds; ; ) {
      const due = waiting.toSorted((a, b) => a.at - b.at)[0];
      const to = due === undefined || due.at > end ? end : Math.max(due.at, clocks.steady);
      const by = to - clocks.steady;
      moved({
        ...clocks,
        steady: to,
        wall: clocks.wall + by * 1000,
        audio: clocks.audio + (sounding ? by * pace : 0),
      });
      if (due === undefined || due.at > end) return;
      waiting = waiting.filter((it) => it !== due);
      due.act();
    }
  }

  return {
    run,
    /** What it was opened with. */
    planned,
    guide,
    presser,
    kept,
    clocks: () => clocks,
    /** Every sound that was asked for. */
    heard,
    /** What has been heard so far, as it was heard: times are those of the ear, and end where it was stopped. */
    ears: () =>
      heard.flatMap(({ cue, begunAt, stoppedAt }) => {
        if (begunAt === null) return [];
        const until = begunAt + cue.until - cue.at;
        return [{ cue, at: begunAt, until: Math.min(until, stoppedAt ?? until) }];
      }),
    left: () => left,
    answered: () => answered,
    /** What reached the ears: not what was stopped before it began. */
    sounded: () => heard.filter(({ at, stoppedAt }) => stoppedAt === null || stoppedAt > at),
    said: () =>
      heard.flatMap(({ cue, at, stoppedAt }) =>
        cue.says !== undefined && (stoppedAt === null || stoppedAt > at) ? [cue.says] : [],
      ),
    /** A press that is let go of at once. */
    press() {
      presser.tap(clocks.steady);
    },
    hold() {
      presser.down("finger", clocks.steady);
      pass(1);
      presser.up("finger", clocks.steady);
    },
    /** Clocks that go wrong: added to where they stand. */
    shift(by: Partial<Omit<Clocks, "life">>) {
      moved({
        ...clocks,
        steady: clocks.steady + (by.steady ?? 0),
        wall: clocks.wall + (by.wall ?? 0),
        audio: clocks.audio + (by.audio ?? 0),
      });
    },
    setSounding(on: boolean) {
      sounding = on;
    },
    look,
    wait(seconds: number, step = 1) {
      for (const end = clocks.steady + seconds; clocks.steady < end - 1e-9; ) {
        pass(Math.min(step, end - clocks.steady));
        look();
      }
    },
    pressThrough(sections: number) {
      const { timeline } = run.journal();
      for (let i = 0; i < sections; i += 1) {
        this.press();
        this.wait(i === sections - 1 ? 0 : (timeline.sections[i]?.seconds ?? 0) + 30);
      }
    },
  };
}
