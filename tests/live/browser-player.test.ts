// The answer to a press, on a context whose clock a test moves by hand.
import { describe, expect, test } from "vitest";
import { openBrowserPlayer } from "../../src/live/browser-player.ts";

function playerByHand() {
  const begun: number[] = [];
  const node = { connect: (to: unknown) => to, disconnect() {}, gain: {} };
  const context = {
    state: "running",
    currentTime: 5,
    destination: node,
    createGain: () => ({ ...node }),
    createBuffer: () => ({ duration: 0.1, getChannelData: () => ({ set() {} }) }),
    createBufferSource: () => ({
      ...node,
      start: (at?: number) => at !== undefined && begun.push(at),
    }),
  };
  const audio = {
    awake: async () => context,
    context: () => context,
    clocks: () => ({ life: "a", steady: 0, wall: 0, audio: context.currentTime }),
    audioAt: (at: number) => at,
    check: () => ({ sounding: true, off: 0, unsure: false }),
  };
  const sources = { tone: () => new Float32Array(8), spoken: () => new Float32Array(8) };
  const player = openBrowserPlayer(audio as never, sources as never, 0);
  return { player, context, begun };
}

describe("The answer to a press", () => {
  test("sounds at once", () => {
    const { player, context, begun } = playerByHand();
    player.answerPress();
    context.currentTime = 5.5;
    player.answerPress();
    expect(begun).toEqual([5, 5.5]);
  });

  test("is no pile of tones that all sound together when a clock that stood still goes on", () => {
    const { player, context, begun } = playerByHand();
    player.answerPress();
    player.answerPress();
    player.answerPress();
    expect(begun).toEqual([5]);
    context.state = "suspended";
    context.currentTime = 5.02;
    player.answerPress();
    expect(begun).toEqual([5]);
    context.state = "running";
    player.answerPress();
    expect(begun).toEqual([5, 5.02]);
  });
});
