// The tone kit, built: rendered samples as 16-bit PCM, and the index that finds each in it.
import { createHash } from "node:crypto";
import { toneNames } from "./designs.ts";
import type { KitIndex } from "./kit.ts";
import { renderTones, tonesMade } from "./render.ts";

export interface BuiltKit {
  readonly index: KitIndex;
  readonly bytes: Uint8Array;
}

/** Of all that goes into the tones: as long as it is the same, so are they. */
export function kitHash(): string {
  return createHash("sha256").update(tonesMade()).digest("hex");
}

export async function buildKit(): Promise<BuiltKit> {
  const rendered = await renderTones();
  const tones: Record<string, { from: number; samples: number }> = {};
  const parts: Int16Array[] = [];
  let from = 0;
  for (const name of toneNames) {
    const samples = rendered.get(name) ?? new Float32Array();
    tones[name] = { from, samples: samples.length };
    parts.push(Int16Array.from(samples, (sample) => Math.round(sample * 32767)));
    from += samples.length;
  }
  const bytes = new Uint8Array(from * 2);
  const view = new DataView(bytes.buffer);
  let at = 0;
  for (const part of parts) {
    for (const sample of part) {
      view.setInt16(at, sample, true);
      at += 2;
    }
  }
  return { index: { made: kitHash(), tones: tones as KitIndex["tones"] }, bytes };
}
