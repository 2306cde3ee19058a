// A run whose page died, and which never ended: found, and gone on with where it would be by now, or closed.
import { type Language, spokenIn } from "../units/language.ts";
import type { BrowserAudio } from "./browser-audio.ts";
import type { JournalStore, RunHeader, UnfinishedRun } from "./browser-journal.ts";
import { type Stamp, stampOf } from "./clocks.ts";
import type { Entry } from "./journal.ts";
import { claimRun, runIsHeld } from "./one-runner.ts";
import { flagRun } from "./run-flag.ts";
import type { Runs } from "./runs.ts";
import { steadyClock } from "./steady-clock.ts";

interface LeftRunParts {
  readonly journal: JournalStore;
  readonly audio: Pick<BrowserAudio, "context" | "clocks">;
  /** The browser's own, if not given; null where it has none: then no other page can be known of. */
  readonly locks?: LockManager | null;
  readonly after?: (seconds: number, act: () => void) => void;
  /** Whether this page leads a run: then none was left. */
  readonly isOn: () => boolean;
  /** To be called from a press, or at once where the browser lets a page sound. */
  readonly awake: () => Promise<unknown>;
  readonly fetchSounds: (language: Language) => Promise<unknown>;
  /** Opens it; false where another page leads a run. */
  readonly lead: (
    header: RunHeader,
    entries: readonly Entry[],
    waking: Promise<unknown>,
  ) => Promise<boolean>;
}

/** So long after a run was last seen alive, ms, a bath may still be in. */
const FRESH = 30 * 60_000;

/** A page that has just gone may hold its run a little longer: so often, so many seconds apart, it is asked for. */
const LOOKS = 10;
const APART = 0.1;

/** Whether a run goes on by itself. A wall clock that was set back meanwhile proves nothing: then it does. */
export const goesOnByItself = (aliveAt: number, now: number): boolean => now - aliveAt < FRESH;

export function openLeftRun(
  parts: LeftRunParts,
): Pick<Runs, "unfinished" | "goOnWithUnfinished" | "dropUnfinished"> {
  const { journal, audio, isOn, awake, fetchSounds, lead } = parts;
  const { locks = navigator.locks ?? null, after = steadyClock.after } = parts;

  async function isLedElsewhere(): Promise<boolean> {
    for (let look = 0; look < LOOKS; look += 1) {
      if (!(await runIsHeld(locks))) return false;
      await new Promise<void>((resolve) => after(APART, resolve));
    }
    return true;
  }

  /** What is needed to go on is fetched while it is decided whether to. */
  async function found(): Promise<UnfinishedRun | "elsewhere" | null> {
    if (isOn()) return null;
    // A run that is led has not ended yet, and is nobody else's to end.
    if (await isLedElsewhere()) return "elsewhere";
    const left = await journal.unfinished();
    if (left !== null) {
      void fetchSounds(spokenIn(left.header.worksheet.language)).catch(() => {});
      audio.context();
    }
    return left;
  }

  return {
    async unfinished() {
      const left = await found();
      if (left === null || left === "elsewhere") return null;
      const { worksheet, begunAt } = left.header;
      const aliveAt = lastSeen(left)?.wall ?? begunAt;
      return { worksheet, begunAt, isFresh: goesOnByItself(aliveAt, Date.now()) };
    },

    async goOnWithUnfinished() {
      const waking = awake();
      const left = await found();
      if (left === null) return "gone";
      if (left === "elsewhere") return left;
      const seen = lastSeen(left);
      const entries =
        seen === null
          ? left.entries
          : [...left.entries, { ...stampOf(seen), kind: "alive" as const }];
      return (await lead(left.header, entries, waking)) ? "begun" : "elsewhere";
    },

    async dropUnfinished() {
      const left = await found();
      if (left === null) return "gone";
      if (left === "elsewhere") return left;
      // Nothing is written without it: another page may have gone on with the run meanwhile.
      const letGo = await claimRun(locks);
      if (letGo === null) return "elsewhere";
      const ended: Entry = { ...stampOf(audio.clocks()), kind: "ended", how: "left" };
      await journal.add(left.header.id, ended);
      flagRun(null);
      letGo();
      return "dropped";
    },
  };
}

/** Its last entry, or when it was seen alive after that. */
function lastSeen({ entries, alive }: UnfinishedRun): Stamp | null {
  const last = entries.at(-1) ?? null;
  return alive !== null && (last === null || isAfter(alive, last)) ? alive : last;
}

/** Of one life by its steady clock, else by the wall clock. */
const isAfter = (a: Stamp, b: Stamp): boolean =>
  a.life === b.life ? a.steady > b.steady : a.wall > b.wall;
