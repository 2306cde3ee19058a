// @vitest-environment happy-dom
// The screen kept on while a run is in the light: asked for, let go, and asked for again by whoever comes back.
import { expect, test, vi } from "vitest";

test("A screen that is kept on is asked for again as often as the page comes back, until it is let go", async () => {
  const released: number[] = [];
  let asked = 0;
  const request = async () => {
    asked += 1;
    const which = asked;
    return { release: async () => void released.push(which) };
  };
  vi.stubGlobal("navigator", { wakeLock: { request } });
  let state = "visible";
  vi.spyOn(document, "visibilityState", "get").mockImplementation(
    () => state as DocumentVisibilityState,
  );
  const seen = async (next: "visible" | "hidden") => {
    state = next;
    document.dispatchEvent(new Event("visibilitychange"));
    await new Promise((resolve) => setTimeout(resolve));
  };
  const { keepAwake } = await import("../../src/live/screen-lock.ts");
  keepAwake(true);
  expect(asked).toBe(1);
  await seen("hidden");
  expect(asked).toBe(1);
  await seen("visible");
  expect(asked).toBe(2);
  keepAwake(false);
  await seen("hidden");
  await seen("visible");
  expect(asked).toBe(2);
  // None is left on: each that was given is let go.
  expect(released).toEqual([1, 2]);
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});
