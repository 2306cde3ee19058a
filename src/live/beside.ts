// What a run gives beside its sound, at the same times: its words for a screen reader and as captions, its signals
// for the skin. It is laid ahead by the rules of any sound (placer.ts), so lateness, answers and hush hold here too.
import { type ReadonlySignal, signal } from "@preact/signals";
import type { Script } from "../script/script.ts";
import { forms } from "../script/script.ts";
import type { Cue } from "../timeline/score.ts";
import { mayBeLate } from "./lateness.ts";
import type { Outlet } from "./outlet.ts";
import { openPlacer, type Placed } from "./placer.ts";
import { type Pulses, pulsesFor, pulsesLast } from "./pulses.ts";
import type { Clock } from "./synthesiser.ts";

/** Words that are due now. */
export interface Saying {
  readonly says: string;
  /** A caution: whatever else is being read out gives way to it. */
  readonly urgent: boolean;
  /** Seconds on the steady clock: the same words at another time are news. */
  readonly at: number;
}

/** Half a turn of the tank. */
export type Turn = "over" | "back";

export interface Beside {
  readonly saying: ReadonlySignal<Saying | null>;
  /** The half that the hands are at; the first of a bout is its own signal. */
  readonly turn: ReadonlySignal<Turn | null>;
  /** The same run, heard and given beside. */
  with(outlet: Outlet): Outlet;
}

interface BesideParts {
  readonly script: Script;
  readonly clock: Clock;
  /** Null where nothing is to be felt now. */
  readonly vibrate: () => ((pulses: Pulses) => void) | null;
}

/** Words stay to be read for so long after they would have been said, seconds. */
const STAYS = 2;
/** A timer that comes sooner than this before its cue is set anew, seconds: clocks differ. */
const EARLY = 0.005;
/** A moment is felt if its timer is no later than this, seconds. */
const TIMER_LATE = 0.15;

export function openBeside({ script, clock, vibrate }: BesideParts): Beside {
  const saying = signal<Saying | null>(null);
  const turn = signal<Turn | null>(null);
  const cautions = cautionsIn(script);

  /** Begins at its time; `begin` gives back how it is ended before its time. */
  function placed(at: number, late: number, begin: () => () => void): Placed {
    let begun = false;
    let end = () => {};
    let callOff = () => {};
    const wait = () => {
      callOff = clock.after(Math.max(0, at - clock.now()), due);
    };
    function due(): void {
      const by = clock.now() - at;
      if (by < -EARLY) wait();
      else if (by <= late) {
        begun = true;
        end = begin();
      }
    }
    wait();
    return {
      begun: () => begun,
      stop() {
        callOff();
        end();
      },
    };
  }

  function say(cue: Cue, at: number): () => void {
    const says = cue.says ?? "";
    const mine: Saying = { says, urgent: cautions.has(says), at };
    saying.value = mine;
    const callOff = clock.after(cue.until - cue.at + STAYS, over);
    return () => {
      callOff();
      over();
    };
    function over(): void {
      if (saying.peek() === mine) saying.value = null;
    }
  }

  const beside = openPlacer({
    now: clock.now,
    play(cue, at) {
      const pulses = pulsesFor(cue);
      if (pulses === null)
        return placed(at, Math.max(mayBeLate[cue.kind], TIMER_LATE), () => say(cue, at));
      return placed(at, TIMER_LATE, () => {
        vibrate()?.(pulses);
        turn.value = turnOf(cue);
        const over = clock.now() + pulsesLast(pulses);
        return () => void (clock.now() < over && vibrate()?.([]));
      });
    },
  });

  return {
    saying,
    turn,
    with: (outlet) => ({
      update(heard) {
        outlet.update(heard);
        beside.update(heard);
      },
      ahead: outlet.ahead,
      look() {
        outlet.look();
        beside.look();
      },
      resettle(how) {
        outlet.resettle(how);
        beside.resettle(how);
      },
      close() {
        outlet.close();
        beside.close();
      },
    }),
  };
}

function turnOf({ sounds: [tone] }: Cue): Turn | null {
  return tone === "over" || tone === "back" ? tone : null;
}

/** Every wording of a sentence that warns of harm. */
function cautionsIn(script: Script): ReadonlySet<string> {
  const keys = Object.keys(script.source.sentences).filter((key) => key.startsWith("caution."));
  return new Set(keys.flatMap((key) => forms.map((form) => script.say(key, form).join(" "))));
}
