// Which of a language's two packs a phrase is heard from, and when the second is asked for.
import { expect, test } from "vitest";
import type { Sounds } from "../../src/live/browser-sounds.ts";
import { voiceSoundsOn } from "../../src/live/browser-voice-sounds.ts";
import type { Pack } from "../../src/voice/pack.ts";
import { english } from "../timeline/scene.ts";

/** A pack of one phrase, each sample of which is `sample`. */
const packOf = (text: string, sample: number) =>
  ({
    index: { phrases: { [text]: { from: 0, bytes: 1, samples: 3 } } },
    decode: () => new Float32Array(3).fill(sample),
  }) as unknown as Pack;

function opened(earPack: () => Promise<Pack>) {
  const heard: number[] = [];
  const channel = { set: (samples: Float32Array) => heard.push(samples[0] ?? 0) };
  const audio = {
    createBuffer: () => ({ getChannelData: () => channel }),
    createBufferSource: () => ({
      connect() {},
      stop() {},
      start() {
        (this as unknown as { onended: () => void }).onended();
      },
    }),
  } as unknown as AudioContext;
  const sounds = async () => ({ pack: packOf("The fixer.", 1) }) as Sounds;
  return { heard, voice: voiceSoundsOn({ sounds, earPack, awake: async () => audio }) };
}

test("a phrase is heard from the pack of the runs, or else from that of asking by ear, asked for only then", async () => {
  let asked = 0;
  const { heard, voice } = opened(async () => {
    asked += 1;
    return packOf("Its temperature.", 2);
  });
  await voice.script("en");
  await voice.say("The fixer.", "en");
  expect([heard, asked]).toEqual([[1], 0]);
  await voice.say("Its temperature.", "en");
  expect([heard, asked]).toEqual([[1, 2], 1]);
});

test("the script to be asked by comes once what it says is there, and not where that cannot be fetched", async () => {
  let come = (_: Pack) => {};
  const coming = opened(
    () =>
      new Promise((resolve) => {
        come = resolve;
      }),
  );
  let script: unknown = null;
  const asking = coming.voice.script("en", "ear").then((it) => {
    script = it;
  });
  await coming.voice.script("en");
  expect(script).toBeNull();
  come(packOf("Its temperature.", 2));
  await asking;
  expect(script).toMatchObject({ source: english.source });
  const lost = opened(() => Promise.reject(new Error("no network")));
  await expect(lost.voice.script("en", "ear")).rejects.toThrow("no network");
});
