// What a locked screen and a headset are told of a run.
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { openMediaKeys } from "../../src/live/media-session.ts";

interface Told {
  playbackState: string;
  metadata: { readonly title: string } | null;
  readonly positions: (MediaPositionState | undefined)[];
  readonly handlers: Map<string, (() => void) | null>;
  setActionHandler(action: string, handler: (() => void) | null): void;
  setPositionState(state?: MediaPositionState): void;
}

let told: Told;
beforeEach(() => {
  const [positions, handlers]: [Told["positions"], Told["handlers"]] = [[], new Map()];
  told = {
    playbackState: "none",
    metadata: null,
    positions,
    handlers,
    setActionHandler(action, handler) {
      if (action === "seekto") throw new TypeError("unheard of");
      handlers.set(action, handler);
    },
    setPositionState: (state) => void positions.push(state),
  };
  vi.stubGlobal("navigator", { mediaSession: told, audioSession: { type: "auto" } });
  vi.stubGlobal(
    "MediaMetadata",
    class {
      readonly title: string;
      constructor({ title }: { readonly title: string }) {
        this.title = title;
      }
    },
  );
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const developer = { title: "Developer and stop", seconds: 600, dark: false };

describe("A locked screen", () => {
  test("is told of the section and of the place in it, and again only where it would be wrong by itself", () => {
    const keys = openMediaKeys(() => {});
    keys.show(developer, 10);
    expect(told.playbackState).toBe("playing");
    expect(told.metadata?.title).toBe("Developer and stop");
    expect(told.positions).toEqual([{ duration: 600, position: 10, playbackRate: 1 }]);
    vi.advanceTimersByTime(60_000);
    keys.show(developer, 70);
    expect(told.positions).toHaveLength(1);
    // The device slept, or a press was taken back.
    keys.show(developer, 75);
    expect(told.positions.at(-1)).toEqual({ duration: 600, position: 75, playbackRate: 1 });
    keys.show({ ...developer, seconds: 615 }, 75);
    expect(told.positions.at(-1)).toEqual({ duration: 615, position: 75, playbackRate: 1 });
  });

  test("shows no place in what only waits, nor one past the end", () => {
    const keys = openMediaKeys(() => {});
    keys.show({ title: "Lay out", seconds: 0, dark: false }, 4);
    expect(told.positions).toEqual([undefined]);
    keys.show(developer, 700);
    expect(told.positions.at(-1)).toEqual({ duration: 600, position: 600, playbackRate: 1 });
  });

  test("is told no letter and no place in the dark, and that once", () => {
    const keys = openMediaKeys(() => {});
    keys.show({ ...developer, dark: true }, 3);
    const first = told.metadata;
    expect(first?.title.trim()).toBe("");
    expect(told.positions).toEqual([undefined]);
    keys.show({ ...developer, dark: true }, 300);
    expect(told.metadata).toBe(first);
    expect(told.positions).toHaveLength(1);
  });

  test("is left as it was once the run is", () => {
    const keys = openMediaKeys(() => {});
    keys.show(developer, 0);
    const { audioSession } = navigator as unknown as { audioSession: { type: string } };
    expect(audioSession.type).toBe("playback");
    keys.close();
    expect(audioSession.type).toBe("auto");
    expect([told.playbackState, told.metadata]).toEqual(["none", null]);
    expect([...told.handlers.values()].every((handler) => handler === null)).toBe(true);
  });
});

test("Every key of a headset is a press, and one that a browser has never heard of stops no other", () => {
  let presses = 0;
  openMediaKeys(() => {
    presses += 1;
  });
  for (const action of ["play", "pause", "stop", "nexttrack", "previoustrack", "seekbackward"])
    told.handlers.get(action)?.();
  expect(presses).toBe(6);
  expect(told.handlers.has("seekto")).toBe(false);
});
