// A run made heard by sounds placed one by one on the audio clock, ahead of their time. Nothing sounds on a
// timer; the timer only looks ahead, and a late look costs nothing.
import type { Cue, CueKind, Section } from "../timeline/score.ts";
import { alive } from "../timeline/waiting.ts";
import { comingCues } from "./coming.ts";
import { mayBeLate } from "./lateness.ts";
import type { Heard, Outlet } from "./outlet.ts";

/** A sound that was asked for. */
export interface Placed {
  /** Whether any of it has been heard: sound may have stood still, then it lies ahead yet. */
  begun(): boolean;
  stop(): void;
}

/** Sounds on the steady clock. */
export interface Player {
  /** Seconds on the steady clock. */
  now(): number;
  /** @param at seconds on the steady clock. */
  play(cue: Cue, at: number): Placed;
}

/** Sounds are placed this far ahead, seconds: far enough for any stall, and never thousands at once. */
const HORIZON = 45;
/** What has been dealt with is remembered so long, seconds: longer than any cue may be late. */
const MEMORY = 10;

/** A cue and its time, seconds into its section: by these it is known again when the section lies elsewhere. */
interface Dealt {
  readonly section: string;
  readonly cue: Cue;
  readonly at: number;
  /** When it was dealt with, or is to sound: seconds on the steady clock. */
  readonly placedAt: number;
  /** null: it has been heard, or came too late; it is not to sound any more. */
  readonly sound: Placed | null;
}

/** Of several that come late, only the gravest is still worth hearing: the others would make a burst. */
const gravestFirst: readonly CueKind[] = [
  "now",
  "prepare",
  "tell",
  "remaining",
  "count-in",
  "beat",
  "confirm",
];

/** @param since what began before this, seconds on the steady clock, was heard another way. */
export function openPlacer(player: Player, since = Number.NEGATIVE_INFINITY): Outlet {
  let heard: Heard = { sections: [], index: -1, pressedAt: 0 };
  let dealt: readonly Dealt[] = [];

  /** Stops what is laid ahead and what is being heard; what was begun is not begun again. */
  function lift(which: (each: Dealt) => boolean): void {
    dealt = dealt.flatMap((each) => {
      if (each.sound === null || !which(each)) return [each];
      const begun = each.sound.begun();
      each.sound.stop();
      return begun ? [{ ...each, sound: null }] : [];
    });
  }

  function look(): void {
    const now = player.now();
    dealt = dealt.filter(
      ({ placedAt, sound }) => placedAt > now - MEMORY || sound?.begun() === false,
    );
    const section = heard.sections[heard.index];
    if (section === undefined) return;
    const { pressedAt } = heard;
    const isDealtWith = (cue: Cue, at: number) =>
      dealt.some((each) => each.section === section.id && near(each.at, at) && isSame(each, cue));
    const coming = comingCues(section, pressedAt, now - MEMORY, now + HORIZON).filter(
      ({ cue, at }) => !isDealtWith(cue, at - pressedAt),
    );
    const late = coming
      .filter(({ cue, at }) => at < now && at >= Math.max(since, now - mayBeLate[cue.kind]))
      .toSorted((a, b) => rank(a.cue) - rank(b.cue) || b.at - a.at)[0];
    for (const each of coming) {
      const { cue, at } = each;
      const sounds = at >= now || each === late;
      const placedAt = Math.max(at, now);
      const sound = sounds ? player.play(cue, placedAt) : null;
      dealt = [...dealt, { section: section.id, cue, at: at - pressedAt, placedAt, sound }];
    }
  }

  return {
    update(next) {
      const on = next.sections[next.index];
      const moved =
        !near(next.pressedAt, heard.pressedAt) || on?.id !== heard.sections[heard.index]?.id;
      lift((each) => {
        if (moved || on === undefined) return true;
        if (each.cue === alive) return !isStillAlive(on, each.at);
        return !on.cues.some((cue) => near(cue.at, each.at) && isSame(each, cue));
      });
      heard = next;
      look();
    },
    ahead: () => 0,
    look,
    resettle: (how) => lift(({ sound }) => how === "all" || sound?.begun() === false),
    close: () => lift(() => true),
  };
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-3;

/**
 * Whether it is the same sound. Of a section compiled anew cues are others, though they sound alike; what has
 * begun, which where it is heard late may be before its time, is not begun again for that.
 */
function isSame({ cue, sound }: Dealt, other: Cue): boolean {
  if (cue === other) return true;
  const begun = sound === null || sound.begun();
  const alike =
    cue.channel === other.channel &&
    near(cue.until - cue.at, other.until - other.at) &&
    cue.sounds.join() === other.sounds.join();
  return begun && alike;
}

const rank = ({ kind }: Cue): number => gravestFirst.indexOf(kind);

/** Whether the soft tone of a run that waits still comes at a time, seconds into the section. */
const isStillAlive = (section: Section, at: number): boolean =>
  comingCues(section, 0, at - 1, at + 1).some((each) => each.cue === alive && near(each.at, at));
