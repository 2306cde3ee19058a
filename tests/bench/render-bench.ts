// How fast a session is mixed into one track, against the time it takes to hear it, and in what memory.

import { lengthsOf } from "../../src/timeline/lengths.ts";
import { sampleRate } from "../../src/tones/designs.ts";
import { openKit } from "../../src/tones/kit.ts";
import { pcmOf } from "../../src/tones/wav.ts";
import { mix } from "../../src/track/mix.ts";
import { trackOf } from "../../src/track/track.ts";
import { openPack } from "../../src/voice/pack.ts";
import { english } from "../timeline/scene.ts";
import { compiler, kitBytes, kitIndex, packBytes, packIndex, sessionOf } from "./sessions.ts";
import type { Table } from "./table.ts";

export async function renderBench(): Promise<Table> {
  const pack = await openPack(packIndex, packBytes);
  const kit = openKit(kitIndex, kitBytes);
  const sources = {
    phrase: (text: string) => pack.decode(text),
    tone: (name: Parameters<typeof kit.samples>[0]) => kit.samples(name),
  };
  const rows = [1, 1].map((hours, i) => {
    const timeline = compiler(sessionOf(hours))();
    const spoken = { timeline, script: english, lengths: lengthsOf(packIndex, 1), speaks: true };
    const track = trackOf(spoken, { gap: 60, waits: "pass" });
    const from = performance.now();
    let samples = 0;
    let bytes = 44;
    for (const piece of mix(track, sources)) {
      samples += piece.length;
      bytes += pcmOf(piece).length;
    }
    const seconds = (performance.now() - from) / 1000;
    const heard = samples / sampleRate;
    return {
      track: `${(heard / 60).toFixed(0)} min, ${i === 0 ? "cold" : "warm"}`,
      "mix and wav s": seconds.toFixed(2),
      "times real time": Math.round(heard / seconds),
      "wav MB": (bytes / 1e6).toFixed(0),
      "memory MB": Math.round(process.memoryUsage().rss / 1e6),
    };
  });
  return { title: "Render, in Node", rows };
}
