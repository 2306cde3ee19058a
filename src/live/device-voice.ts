// Cues spoken by a voice of the device, each under watch: begun near its time or not at all, cut off where
// it does not keep to its slot. It may fall silent; it may never be late, nor run into a moment.
import { begunWithin, type DevicePace } from "../voice/device-pace.ts";
import type { Placed } from "./placer.ts";
import type { Clock, Synthesiser } from "./synthesiser.ts";

interface DeviceVoiceParts {
  readonly synthesiser: Synthesiser;
  readonly voice: string;
  readonly pace: DevicePace;
  /** The steady clock, as words and tones both go by it. */
  readonly clock: Clock;
  /** Whether the page is out of sight: timers are late there, and some devices do not speak. */
  readonly hidden: () => boolean;
  /** Called once, when it has failed so often in a row that another voice had better speak. */
  readonly gaveUp: () => void;
}

export interface DeviceVoice {
  /** Seconds on the clock; `until` ends its slot, by which all of it has been said or is cut off. */
  say(text: string, at: number, until: number): Placed;
  /** Whether it has given up, or was closed: it then says nothing any more. */
  isOver(): boolean;
  close(): void;
}

/** A cue whose time has gone by for longer than this is skipped, seconds. */
const LATE = 0.3;
/** A timer that comes sooner than this before its cue is set anew, seconds: clocks differ. */
const EARLY = 0.02;
/** One that has not begun so long after its time never does, unless the voice is known to be slower, seconds. */
const BEGINS_WITHIN = 0.7;
const FAILURES = 2;

export function openDeviceVoice(parts: DeviceVoiceParts): DeviceVoice {
  const { synthesiser, voice, pace, clock, hidden, gaveUp } = parts;
  const beginsWithin = Math.max(BEGINS_WITHIN, begunWithin(pace));
  const said = new Set<Placed>();
  let failures = 0;
  let over = false;
  /** The cue that the synthesiser is at. */
  let speaking: object | null = null;

  function say(text: string, at: number, until: number): Placed {
    let callOff = () => {};
    let state: "waiting" | "asked" | "started" | "done" = "waiting";
    const cue: Placed = { begun: () => state !== "waiting", stop: () => finish() };
    if (over) return cue;
    said.add(cue);
    wait();
    return cue;

    function wait(): void {
      callOff = clock.after(Math.max(0, at - clock.now()), begin);
    }

    function begin(): void {
      const late = clock.now() - at;
      if (late < -EARLY) wait();
      else if (late > LATE || hidden()) fail();
      else ask();
    }

    function ask(): void {
      state = "asked";
      speaking = cue;
      callOff = clock.after(Math.min(at + beginsWithin, until) - clock.now(), fail);
      synthesiser.speak(text, voice, { started, ended, failed: () => state !== "done" && fail() });
    }

    function started(): void {
      // Cancelled, and begun all the same: some devices do. Nothing else is being said, so it is now.
      if (state === "done" && speaking === null) synthesiser.cancel();
      if (state !== "asked") return;
      if (clock.now() > at + beginsWithin) {
        fail();
        return;
      }
      state = "started";
      callOff();
      callOff = clock.after(until - clock.now(), fail);
    }

    function ended(): void {
      if (state === "done") return;
      // An end alone is no proof that anything was heard.
      if (state !== "started") {
        fail();
        return;
      }
      failures = 0;
      speaking = null;
      state = "done";
      callOff();
      said.delete(cue);
    }

    function fail(): void {
      finish();
      failures += 1;
      if (failures < FAILURES || over) return;
      close();
      gaveUp();
    }

    function finish(): void {
      callOff();
      state = "done";
      said.delete(cue);
      if (speaking !== cue) return;
      speaking = null;
      synthesiser.cancel();
    }
  }

  function close(): void {
    over = true;
    for (const cue of [...said]) cue.stop();
  }

  return { say, isOver: () => over, close };
}
