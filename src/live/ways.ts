// In which way a run is heard, and how it goes from one to the other in the middle of a bath: the old way
// sounds on until the new one can, and nothing is cut, missed or heard twice on the way.
import type { Cue } from "../timeline/score.ts";
import type { BrowserAudio, Checked } from "./browser-audio.ts";
import type { BrowserPlayer } from "./browser-player.ts";
import type { BrowserElement } from "./browser-pocket.ts";
import { breathe } from "./browser-pocket.ts";
import type { Clocks } from "./clocks.ts";
import type { Way } from "./journal.ts";
import type { OwnSound } from "./knocks.ts";
import type { Outlet } from "./outlet.ts";
import { openPlacer } from "./placer.ts";
import { openPocket } from "./pocket.ts";
import { openRenderer } from "./pocket-render.ts";
import type { Pocket, PocketTrack } from "./pocket-shape.ts";

export interface WaysParts {
  readonly audio: BrowserAudio;
  readonly player: BrowserPlayer;
  readonly element: BrowserElement;
  /** Fetched when it is first wanted. */
  readonly pocketTrack: () => Promise<PocketTrack>;
  readonly soundOf: (cue: Cue) => Float32Array;
  readonly delay: number;
  /** The run is to be heard through another outlet from now on. */
  readonly through: (outlet: Outlet, way: Way) => void;
  /** It stands still, and was not let go on. */
  readonly silent: () => void;
}

export interface Ways {
  /** What the run begins with: the room. */
  readonly outlet: Outlet;
  way(): Way;
  go(way: Way): void;
  /** To be called now and then: whether the way that is heard went on since the last time. */
  check(): Checked;
  /** To be called from a press, where nothing is heard. */
  wake(): void;
  /** What is sounded about now, on the audio context's clock. */
  sounding(): readonly OwnSound[];
  /** The clocks, the audio clock being that of the way that is heard. */
  clocks(): Clocks;
  close(): void;
}

export function openWays(parts: WaysParts): Ways {
  const { audio, player, element } = parts;
  const outlet = openPlacer(player);
  let way: Way = "room";
  let room: Outlet | null = outlet;
  let pocket: Pocket | null = null;
  let closed = false;
  let fetching = false;
  /** Of the clock in use, less what the audio clock showed as it came into use. */
  let ahead = 0;

  /** Whether it is the track that is heard: until that can be, it is still the room. */
  const inPocket = () => room === null && pocket !== null;
  const clock = () => (inPocket() ? (pocket?.clock() ?? 0) : audio.clocks().audio);

  /** One audio clock goes on over both ways. */
  function keepingTime(change: () => void): void {
    const before = clock() - ahead;
    change();
    ahead = clock() - before;
  }

  async function toPocket(): Promise<void> {
    fetching = true;
    const track = await parts.pocketTrack().catch(() => null);
    fetching = false;
    if (track === null || closed || pocket !== null) return;
    const opened = openPocket({
      player: element,
      lay: track.lay,
      render: openRenderer(track, parts.soundOf, breathe, () => performance.now()),
      delay: parts.delay,
      begins: () =>
        keepingTime(() => {
          room?.close();
          room = null;
        }),
      failed: backToRoom,
      silent: parts.silent,
    });
    pocket = opened;
    way = "pocket";
    parts.through(both(opened), way);
  }

  /** The room sounds on beside it for as long as it is not heard itself. */
  function both(opened: Pocket): Outlet {
    return {
      update(heard) {
        room?.update(heard);
        opened.update(heard);
      },
      ahead: () => (room ?? opened).ahead(),
      look() {
        room?.look();
        opened.look();
      },
      resettle(how) {
        room?.resettle(how);
        opened.resettle(how);
      },
      close() {
        room?.close();
        opened.close();
      },
    };
  }

  function backToRoom(): void {
    if (closed || pocket === null) return;
    const leaving = pocket;
    const other = room ?? openPlacer(player, audio.clocks().steady);
    keepingTime(() => {
      leaving.close();
      pocket = null;
      room = other;
    });
    element.bed();
    way = "room";
    audio.check();
    parts.through(other, way);
  }

  return {
    outlet,
    way: () => way,
    go(next) {
      if (next === way || fetching) return;
      if (next === "pocket") void toPocket();
      else if (inPocket()) pocket?.whenFree(backToRoom);
      else backToRoom();
    },
    check() {
      // A track that is off is put right by the pocket itself.
      if (inPocket()) return { sounding: pocket?.check() ?? false, off: 0, unsure: false };
      // Someone rang, or a headset was pulled out: without the bed no key of a headset reaches the page.
      if (pocket === null && element.paused()) void element.play();
      return audio.check();
    },
    wake() {
      if (pocket === null) void element.play();
      else pocket.wake();
    },
    sounding() {
      const track = inPocket() ? (pocket?.sounding() ?? []) : [];
      const onContext = track.map(({ from, to, kind }) => ({
        from: audio.audioAt(from),
        to: audio.audioAt(to),
        kind,
      }));
      // The answer to a press is the context's own in either way.
      return [...player.sounding(), ...onContext];
    },
    clocks: () => ({ ...audio.clocks(), audio: clock() - ahead }),
    close() {
      closed = true;
      room?.close();
      pocket?.close();
    },
  };
}
