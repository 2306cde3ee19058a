// A run with a clock that is moved by hand, and a player that notes what it was given.
import { openRun, type Player } from "../../src/live/run.ts";
import type { Cue, Timeline } from "../../src/timeline/score.ts";
import { english, estimatedLengths } from "../timeline/scene.ts";

export function runByHand(played: Timeline) {
  let now = 100;
  let looks: (() => void)[] = [];
  const heard: { cue: Cue; at: number; stoppedAt: number | null }[] = [];
  const player: Player = {
    now: () => now,
    play(cue, at) {
      const entry: (typeof heard)[number] = { cue, at, stoppedAt: null };
      heard.push(entry);
      return {
        stop() {
          entry.stoppedAt ??= now;
        },
      };
    },
    answerPress() {},
  };
  const run = openRun({
    timeline: played,
    script: english,
    lengths: estimatedLengths(1),
    player,
    everySecond(look) {
      looks.push(look);
      return () => {
        looks = looks.filter((each) => each !== look);
      };
    },
    utc: () => 1_700_000_000_000 + now * 1000,
  });
  return {
    run,
    /** What reached the ears: not what was stopped before it began. */
    sounded: () => heard.filter(({ at, stoppedAt }) => stoppedAt === null || stoppedAt > at),
    wait(seconds: number, step = 1) {
      for (const end = now + seconds; now < end - 1e-9; ) {
        now = Math.min(now + step, end);
        for (const look of looks) look();
      }
    },
    pressThrough(sections: number) {
      for (let i = 0; i < sections; i += 1) {
        run.press();
        this.wait(i === sections - 1 ? 0 : (played.sections[i]?.seconds ?? 0) + 30);
      }
    },
  };
}
