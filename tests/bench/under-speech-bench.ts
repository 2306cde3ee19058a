// How far each tone stands out of the voice when both sound at once, and of running water beside it.
import { type ToneName, toneNames } from "../../src/tones/designs.ts";
import { gain } from "../../src/tones/loudness.ts";
import { openPack } from "../../src/voice/pack.ts";
import { builtKit } from "../browser/built-kit.ts";
import { bandsOf, standsOut } from "../tones/under-speech.ts";
import { level, water } from "../voice/water.ts";
import { packBytes, packIndex } from "./sessions.ts";
import { spread, type Table } from "./table.ts";

const underVoice: readonly ToneName[] = ["over", "back"];

export async function underSpeechBench(): Promise<Table> {
  const pack = await openPack(packIndex, packBytes);
  const phrases = Object.keys(packIndex.phrases).filter((_, i) => i % 6 === 0);
  const masks = phrases.map((phrase) => {
    const voice = pack.decode(phrase);
    const noise = water(voice.length, 24_000);
    const under = (level(voice) / level(noise)) * gain(-10);
    const both = voice.map((sample, i) => sample + under * (noise[i] ?? 0));
    return { voice: bandsOf(voice), both: bandsOf(both) };
  });
  const rows = toneNames.map((name) => {
    const tone = bandsOf(builtKit.samples(name));
    const dB = (mask: "voice" | "both") =>
      spread(
        masks.flatMap((masked) =>
          Array.from({ length: Math.floor(masked[mask].length / 8) }, (_, i) =>
            standsOut(tone, masked[mask], 8 * i),
          ),
        ),
      );
    const [voice, both] = [dB("voice"), dB("both")];
    return {
      tone: name,
      "sounds while the voice does": underVoice.includes(name) ? "yes" : "no",
      "least dB above the voice": voice.least.toFixed(1),
      "median dB": voice.median.toFixed(1),
      "least dB, water too": both.least.toFixed(1),
    };
  });
  return { title: "Tones under speech: dB above it in the ear's best band", rows };
}
