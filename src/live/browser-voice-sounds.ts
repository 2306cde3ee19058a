// What the recording of a voice hears, in a browser: single phrases and clips, one at a time.
import { scriptIn } from "../script/scripts.ts";
import { sampleRate } from "../tones/designs.ts";
import type { Language } from "../units/language.ts";
import { toSound } from "../voice/speaker.ts";
import type { Sounds } from "./browser-sounds.ts";
import type { VoiceSounds } from "./voice-sounds.ts";

interface World {
  readonly sounds: (language: Language) => Promise<Sounds>;
  /** The page's audio context, made and woken within a press. */
  readonly awake: () => Promise<AudioContext>;
}

export function voiceSoundsOn({ sounds, awake }: World): VoiceSounds {
  let hush = () => {};

  async function play(clip: Promise<Float32Array>): Promise<void> {
    hush();
    const waking = awake();
    const samples = await clip;
    const audio = await waking;
    // Asked for twice while it was fetched, it is heard once.
    hush();
    const buffer = audio.createBuffer(1, samples.length, sampleRate);
    buffer.getChannelData(0).set(samples);
    const source = audio.createBufferSource();
    source.buffer = buffer;
    source.connect(audio.destination);
    const over = new Promise<void>((resolve) => {
      source.onended = () => resolve();
    });
    hush = () => source.stop();
    source.start();
    await over;
  }

  return {
    script: scriptIn,
    say: (text, language) => play(sounds(language).then(({ pack }) => pack.decode(text))),
    play: (samples) => play(Promise.resolve(toSound(samples))),
    hush: () => hush(),
  };
}
