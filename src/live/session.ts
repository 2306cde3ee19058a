// One run on the air, in a browser: the run, what makes it heard, what is pressed, and the look that comes
// every second, put together. The page's runs (browser-runs.ts) begin one, and go on with one that was left.
import type { Script } from "../script/script.ts";
import type { Lengths } from "../timeline/lengths.ts";
import type { Cue, Timeline } from "../timeline/score.ts";
import type { Temperature } from "../units/temperature.ts";
import { openBeside } from "./beside.ts";
import type { BrowserAudio } from "./browser-audio.ts";
import type { JournalStore, RunHeader } from "./browser-journal.ts";
import type { BrowserPlayer } from "./browser-player.ts";
import type { BrowserElement } from "./browser-pocket.ts";
import { stampOf } from "./clocks.ts";
import type { Detail } from "./detail.ts";
import { type Guide, openGuide } from "./guide.ts";
import { type Entry, lastOf, readingsIn, type Way } from "./journal.ts";
import type { OwnSound } from "./knocks.ts";
import { openMediaKeys } from "./media-session.ts";
import type { PocketTrack } from "./pocket-shape.ts";
import { onlyWhileHeard, openPresser, type Presser } from "./presser.ts";
import { type Pulses, pulsesOf } from "./pulses.ts";
import { openRun } from "./run.ts";
import type { Learnt, Run } from "./run-shape.ts";
import type { Session } from "./runs.ts";
import { steadyClock } from "./steady-clock.ts";
import { openTeller } from "./teller.ts";
import { openWays } from "./ways.ts";

export interface SessionParts {
  readonly header: RunHeader;
  readonly timeline: Timeline;
  readonly detail: Detail;
  readonly entries: readonly Entry[];
  readonly audio: BrowserAudio;
  readonly player: BrowserPlayer;
  readonly element: BrowserElement;
  readonly pocketTrack: () => Promise<PocketTrack>;
  readonly soundOf: (cue: Cue) => Float32Array;
  /** Seconds by which what is played is heard late. */
  readonly delay: number;
  /** Null where nothing is to be felt now. */
  readonly vibrate: () => ((pulses: Pulses) => void) | null;
  readonly script: Script;
  readonly lengths: Lengths;
  readonly journal: Pick<JournalStore, "add" | "seenAlive">;
  readonly compiled: (learnt: Learnt) => Timeline;
  /** After whatever changes what is shown of it. */
  readonly changed: () => void;
  /** Asks the browser to let it be heard. */
  readonly wake: () => void;
  readonly leave: () => void;
}

export interface OpenSession {
  readonly run: Run;
  readonly guide: Guide;
  readonly presser: Presser;
  state(): Pick<Session, "way" | "ways" | "sounding" | "kept" | "saying" | "turn">;
  go(way: Way): void;
  /** To be called from a press, where it is not heard: of its element; the context is the page's. */
  wake(): void;
  /** What the run sounds about now, on the audio context's clock. */
  sounding(): readonly OwnSound[];
  look(): void;
  close(): void;
}

const bothWays: readonly Way[] = ["room", "pocket"];

/** After one that found no sound, or is not sure of what it found, the next look comes this soon, seconds. */
const SOON = 0.3;
/** Sound that has only begun tells its time wrongly now and then: for so many seconds it is looked at as often. */
const SETTLING = 2;

export function openSession(parts: SessionParts): OpenSession {
  const { header, audio, player, script, journal, changed } = parts;
  const beside = openBeside({ script, clock: steadyClock, vibrate: parts.vibrate });
  const ways = openWays({
    ...parts,
    through: (outlet, way) => run.through(beside.with(outlet), way),
    silent: look,
  });
  let { sounding } = ways.check();
  let kept = true;
  const steady = () => audio.clocks().steady;
  const openedAt = steady();

  const run = openRun({
    timeline: parts.timeline,
    detail: parts.detail,
    entries: parts.entries,
    rehearses: header.rehearsal !== undefined,
    clocks: ways.clocks,
    teller: openTeller(script, parts.lengths),
    compiled: parts.compiled,
    keep: (entry) => void journal.add(header.id, entry).then(seeKept),
    outlet: beside.with(ways.outlet),
    changed,
  });

  function seeKept(all: boolean): void {
    if (all === kept) return;
    kept = all;
    changed();
  }

  const guide = openGuide({
    run,
    script,
    steady,
    temperature: () => knownTemperature(header.worksheet.developer.temperature, run),
    way: ways.way,
    ways: bothWays,
    go: ways.go,
    leave: parts.leave,
  });

  const pressed = openPresser({
    felt() {
      player.answerPress();
      parts.vibrate()?.(pulsesOf("press"));
    },
    does(gesture) {
      guide.does(gesture);
      changed();
    },
    steady,
    after: steadyClock.after,
  });
  const presser = onlyWhileHeard(pressed, () => sounding, parts.wake);

  const keys = openMediaKeys(() => presser.tap(steady()));
  const left = lastOf(parts.entries, "way");
  if (left !== undefined) ways.go(left.way);

  let callOff = () => {};
  function look(): void {
    const before = sounding;
    const checked = ways.check();
    sounding = checked.sounding;
    if (!sounding || checked.unsure || steady() - openedAt < SETTLING) {
      callOff();
      callOff = steadyClock.after(SOON, look);
    }
    run.look(sounding, checked.off);
    guide.look();
    keys.show(run.position().section, steady() - run.begunAt());
    void journal.seenAlive(header.id, stampOf(audio.clocks())).then(seeKept);
    if (before !== sounding) changed();
  }

  /** A page is loaded anew by a slip of the hand. In the dark nothing asks: the question would shine. */
  function leaving(event: BeforeUnloadEvent): void {
    const here = run.position();
    if (here.kind === "timed" && !here.section.dark) event.preventDefault();
  }

  const timer = setInterval(look, 1000);
  const events = ["visibilitychange", "resume"] as const;
  for (const event of events) document.addEventListener(event, look);
  window.addEventListener("beforeunload", leaving);

  return {
    run,
    guide,
    presser,
    state: () => ({
      way: ways.way(),
      ways: bothWays,
      sounding,
      kept,
      saying: beside.saying,
      turn: beside.turn,
    }),
    go: ways.go,
    wake: ways.wake,
    sounding: ways.sounding,
    look,
    close() {
      clearInterval(timer);
      callOff();
      for (const event of events) document.removeEventListener(event, look);
      window.removeEventListener("beforeunload", leaving);
      keys.close();
      run.close();
      ways.close();
      player.close();
    },
  };
}

/** What was read last, or what the worksheet says. */
function knownTemperature(before: Temperature, run: Run): Temperature {
  return readingsIn(run.journal().entries).at(-1)?.temperature ?? before;
}
