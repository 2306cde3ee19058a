// A run made heard as one track, for a locked phone in a pocket: an audio element goes on there when nothing
// else does. A press is a seek, waiting is a stretch played over and over; what nobody planned makes the track
// anew, and it is changed where nothing sounds. It is past 200 lines because all of it moves the one position.
import type { Heard } from "./outlet.ts";
import { CHANGE, openMaking } from "./pocket-making.ts";
import {
  alike,
  behind,
  isFree,
  type Lying,
  lacking,
  placeIn,
  soundingAt,
  turns,
  type Wanted,
} from "./pocket-place.ts";
import type { Pocket, PocketParts } from "./pocket-shape.ts";

/** A track that is off by no more than this, seconds, stays where it is: a moment is never off by 0.06. */
const OFF = 0.045;
/** Right after a seek it is put right once if off by more than this, seconds. */
const CLOSE = 0.03;
/** One that is off by more than this, seconds, is moved at once: what would be cut is heard too late anyway. */
const ASTRAY = 0.5;
/** After a seek, so long until its place can be believed, seconds. */
const SETTLED = 0.3;
/** A seek this soon after the press answers it with the whole of its tone, and is put right behind it, seconds. */
const ANSWERS = 0.25;
const TONE = 0.14;
/** Times that its place is read before it is believed to be off. */
const MEASURED = 5;
/** Between two looks for a place where nothing sounds, seconds. */
const POLL = 0.1;
/** Checks closer than this, seconds, tell nothing; of longer ones, this part must have been played. */
const APART = 0.2;
const ALIVE = 0.3;
/** What sounded so long ago may still be in the room, what comes so soon is as good as there, seconds. */
const AROUND = { before: 2, ahead: 0.5 };
/** What the element's own clock may err by, seconds, before it counts as having stood still. */
const ERR = 0.06;

export function openPocket(parts: PocketParts): Pocket {
  const { player, delay } = parts;
  let heard: Heard = { sections: [], index: -1, pressedAt: 0 };
  let loaded: Lying | null = null;
  /** What is to take its place: being made, or waiting for a place where nothing sounds. */
  let wanted: Wanted | null = null;
  let loading = false;
  let begun = false;
  let closed = false;
  /** Seconds that a seek takes, and the start of a track, as learnt. */
  const lags = { seek: 0.01, start: 0.01 };
  const making = openMaking();
  /** Of the last time: when, where, and how much may be missing without having stood still. */
  let seen = { at: player.now(), position: 0, but: ERR };
  /** Whether it is to be looked at where it is anyway. */
  let awaited = false;
  let stood = 0;
  let alive = false;
  let callOff = () => {};

  const elapsed = (ahead = 0) => player.now() + ahead - heard.pressedAt + delay;
  const section = () => heard.sections[heard.index];
  const place = (ahead = 0) => (loaded === null ? null : placeIn(loaded, heard, elapsed(ahead)));

  function later(seconds: number, act: () => void): void {
    callOff();
    awaited = true;
    callOff = player.after(seconds, () => {
      awaited = false;
      if (!closed) act();
    });
  }

  function seek(to: number, settled: () => void, after = SETTLED): void {
    notice();
    player.seek(to);
    seen = { at: player.now(), position: to, but: ASTRAY };
    later(after, settled);
  }

  /** A press, or a section that is on from another time than was thought. */
  function jump(): void {
    const here = place();
    if (here === null || loading) return;
    if (elapsed() < ANSWERS + delay) seek(here.section.start, () => putRight(CLOSE), TONE);
    else go(CLOSE);
  }

  /** @param within how well it is to be met. */
  function go(within: number): void {
    const there = place(lags.seek);
    if (there !== null) seek(there.at, () => learn("seek", within));
  }

  /** What a seek or a start took, and whether it led where it should. */
  function learn(what: keyof typeof lags, within: number): void {
    measure((off) => {
      if (Math.abs(off) < ASTRAY) lags[what] = Math.max(0, lags[what] + off);
      putRight(within, off);
    });
  }

  /** An element's clock goes in steps, and errs on a busy device: the middle of several is believed. */
  function measure(then: (off: number) => void, before: readonly number[] = []): void {
    const off = offNow();
    if (off === null) return;
    const all = [...before, off].toSorted((a, b) => a - b);
    if (all.length === MEASURED) then(all[(MEASURED - 1) / 2] ?? off);
    else later(POLL, () => measure(then, all));
  }

  /** Seconds by which the track is behind; null while that cannot be told. */
  function offNow(): number | null {
    const here = place();
    if (loaded === null || here === null || loading || player.paused()) return null;
    const position = player.position();
    return turns(loaded, here, position) ? Infinity : behind(loaded, here, position);
  }

  /** Puts right what is off. */
  function settle(): void {
    const off = offNow();
    if (off === null || Math.abs(off) <= OFF) return;
    if (Math.abs(off) > ASTRAY) go(CLOSE);
    else measure((middle) => putRight(OFF, middle));
  }

  /** Where nothing sounds, and no moment is passed. */
  function putRight(within: number, off = offNow()): void {
    if (offNow() === null || off === null || Math.abs(off) <= within) return;
    const now = elapsed();
    const [from, to] = [Math.min(now, now - off), Math.max(now, now - off) + lags.seek + OFF];
    if (Math.abs(off) > ASTRAY || isFree(section(), from, to)) go(OFF);
    else later(POLL, () => putRight(within, off));
  }

  function update(next: Heard): void {
    const pressed = next.index !== heard.index || Math.abs(next.pressedAt - heard.pressedAt) > OFF;
    heard = next;
    const lying = { laid: parts.lay(next.sections.slice(next.index)), first: next.index };
    if (loaded !== null && alike(loaded, lying, next.index, elapsed())) {
      wanted?.rendering.callOff();
      wanted = null;
    } else if (wanted === null || !alike(wanted.lying, lying, next.index, elapsed())) make(lying);
    if (pressed) jump();
  }

  function make(lying: Lying): void {
    wanted?.rendering.callOff();
    const rendering = parts.render(lying.laid);
    const mine: Wanted = { lying, rendering, since: player.now() };
    wanted = mine;
    rendering.track.then(
      (track) => {
        if (track === null) return;
        // The first is all of a session, and no answer.
        if (begun) making.took(player.now() - mine.since);
        change(mine, track);
      },
      () => {
        if (wanted === mine) fail();
      },
    );
  }

  /** Another track in place of the one that plays, as soon as nothing sounds. */
  function change(mine: Wanted, track: Blob): void {
    if (closed || wanted !== mine) return;
    missed(mine);
    if (wanted !== mine) return;
    if (loading || !isFree(section(), elapsed(), elapsed() + CHANGE)) {
      player.after(POLL, () => change(mine, track));
      return;
    }
    notice();
    // Whatever was to be put right was of the track before.
    callOff();
    awaited = false;
    loaded = mine.lying;
    wanted = null;
    loading = true;
    const since = player.now();
    void player.load(track, () => place(lags.start)?.at ?? 0).then((how) => tried(how, since));
  }

  function tried(how: Awaited<ReturnType<PocketParts["player"]["load"]>>, since: number): void {
    loading = false;
    seen = { at: player.now(), position: player.position(), but: ASTRAY };
    if (begun && seen.at - since > ASTRAY) stood += seen.at - since;
    if (closed) return;
    if (how === "plays") heardNow();
    else if (begun) stopped();
    else if (how === "cannot") fail();
    // It is there, and waits for a press as all else does.
    else parts.silent();
  }

  /** What was never let sound so far, from where it is by now. */
  function begin(): void {
    loading = true;
    player.seek(place(lags.start)?.at ?? 0);
    const since = player.now();
    void player.play().then((goesOn) => tried(goesOn ? "plays" : "not-let", since));
  }

  /** Words that the other track comes too late for are to be told anew: that makes another one. */
  function missed({ since }: Wanted): void {
    const on = section();
    if (loaded === null || on === undefined) return;
    const from = elapsed(since - player.now());
    const words = lacking(loaded, heard.index, on, from, elapsed(CHANGE));
    if (words.length > 0) heard.late?.(words);
  }

  function heardNow(): void {
    alive = true;
    if (!begun) {
      begun = true;
      parts.begins();
    }
    // Something may have been pressed meanwhile that the track does not hold.
    if (place() === null) update(heard);
    else later(SETTLED, () => learn("start", CLOSE));
  }

  function fail(): void {
    wanted = null;
    if (!begun) parts.failed();
  }

  /** It stands still, which nobody asked for: an alarm, and never a command. */
  function stopped(): void {
    if (closed || loading) return;
    void player.play().then((goesOn) => {
      if (closed || loaded === null) return;
      if (goesOn) later(SETTLED, settle);
      else {
        alive = false;
        parts.silent();
      }
    });
  }

  /** Counts what was not played since the last time. */
  function notice(): void {
    if (loading) return;
    const now = { at: player.now(), position: player.position(), but: ERR };
    const lost = now.at - seen.at - (now.position - seen.position);
    if (lost > seen.but) stood += lost;
    seen = now;
  }

  function whenFree(act: () => void): void {
    if (isFree(section(), elapsed() - POLL, elapsed() + POLL)) act();
    else player.after(POLL, () => whenFree(act));
  }

  player.onPauseUnasked(stopped);
  return {
    update,
    ahead: () => making.ahead() + delay,
    look() {
      if (!awaited) settle();
    },
    resettle() {
      const off = offNow();
      if (off !== null && Math.abs(off) > OFF) go(CLOSE);
    },
    close() {
      closed = true;
      callOff();
      wanted?.rendering.callOff();
      wanted = null;
    },
    check() {
      const passed = player.now() - seen.at;
      if (loading || passed < APART) return alive;
      alive = player.position() - seen.position > ALIVE * passed;
      notice();
      if (!alive || player.paused()) stopped();
      return alive;
    },
    wake() {
      if (loaded === null || begun || loading || closed) void player.play();
      else begin();
    },
    clock: () => player.now() - stood,
    sounding() {
      const now = section();
      if (now === undefined) return [];
      const zero = heard.pressedAt - delay;
      return soundingAt(now, elapsed(), AROUND).flatMap(({ from, to, kind }) =>
        [-OFF, OFF].map((off) => ({ from: zero + from + off, to: zero + to + off, kind })),
      );
    },
    whenFree,
  };
}
