// What the recording of a voice and asking by ear let be heard, in a browser: single phrases and clips, one at a time.
import { scriptIn } from "../script/scripts.ts";
import { sampleRate } from "../tones/designs.ts";
import type { Language } from "../units/language.ts";
import type { Pack } from "../voice/pack.ts";
import { toSound } from "../voice/speaker.ts";
import type { Sounds } from "./browser-sounds.ts";
import type { VoiceSounds } from "./voice-sounds.ts";

interface World {
  readonly sounds: (language: Language) => Promise<Sounds>;
  readonly earPack: (language: Language) => Promise<Pack>;
  /** The page's audio context, made and woken within a press. */
  readonly awake: () => Promise<AudioContext>;
}

export function voiceSoundsOn({ sounds, earPack, awake }: World): VoiceSounds {
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

  async function spoken(text: string, language: Language): Promise<Float32Array> {
    const { pack } = await sounds(language);
    return (text in pack.index.phrases ? pack : await earPack(language)).decode(text);
  }

  return {
    async script(language, pack) {
      if (pack === "ear") {
        // While it is still a press that asks for it: what is said first may be long in coming.
        void awake().catch(() => {});
        await Promise.all([sounds(language), earPack(language)]);
      }
      return scriptIn(language);
    },
    say: (text, language) => play(spoken(text, language)),
    play: (samples) => play(Promise.resolve(toSound(samples))),
    hush: () => hush(),
  };
}
