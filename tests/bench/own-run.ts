// A whole run as the microphone beside the loudspeaker hears it: the timeline's own sounds, thinned by a
// small loudspeaker, with a room about them, and where each of them stands.
import type { OwnSound } from "../../src/live/knocks.ts";
import { planOf } from "../../src/plan/plan.ts";
import { scriptIn } from "../../src/script/scripts.ts";
import { lengthsOf } from "../../src/timeline/lengths.ts";
import { compile } from "../../src/timeline/timeline.ts";
import { gain } from "../../src/tones/loudness.ts";
import { mix, trackSamples } from "../../src/track/mix.ts";
import { trackOf } from "../../src/track/track.ts";
import type { Language } from "../../src/units/language.ts";
import { openPack } from "../../src/voice/pack.ts";
import { builtKit } from "../browser/built-kit.ts";
import { add, room } from "../live/knock-scenes.ts";
import { between, type Random, rate } from "../live/knock-sounds.ts";
import { gullrock } from "../plan/worksheets.ts";
import { builtPack } from "../voice/built-pack.ts";

/** Seconds of waiting where a press would be. */
const GAP = 20;
/** Hz, and dB at the microphone: a telephone's loudspeaker, turned up. */
const SMALL = 350;
const LOUD = -6;
/** Seconds by which a browser is wrong about a loudspeaker's delay, at most: it says it came sooner. */
const WRONG = 0.06;

export interface OwnRun {
  readonly samples: Float32Array;
  readonly own: readonly OwnSound[];
}

export async function ownRun(language: Language, random: Random): Promise<OwnRun> {
  const { index, bytes } = builtPack(language);
  const pack = await openPack(index, bytes);
  const worksheet = { ...gullrock, language };
  const script = await scriptIn(language);
  const timeline = compile(worksheet, planOf(worksheet), script, lengthsOf(index, 1));
  const sources = {
    phrase: (text: string) => pack.decode(text),
    tone: (name: Parameters<typeof builtKit.samples>[0]) => builtKit.samples(name),
  };
  const track = trackOf(
    { timeline, script, lengths: lengthsOf(index, 1), speaks: false },
    { gap: GAP, waits: "pass" },
  );
  const played = new Float32Array(trackSamples(track));
  let filled = 0;
  for (const piece of mix(track, sources)) {
    played.set(piece, filled);
    filled += piece.length;
  }
  const thin = thinned(played);
  const samples = room(random, Math.ceil(thin.length / rate) + 1);
  add(samples, thin, 0, gain(LOUD));
  for (let echo = 0; echo < 40; echo += 1) {
    const after = between(random, 0.002, 0.35);
    const strength = 0.15 * Math.exp((-6.9 * after) / 0.35) * (random() < 0.5 ? -1 : 1);
    add(samples, thin, Math.round(after * rate), gain(LOUD) * strength);
  }
  const { starts } = track;
  const own = timeline.sections.flatMap((section, i) =>
    section.cues.map(({ at, until, channel }): OwnSound => {
      const from = (starts[i]?.at ?? 0) + at - between(random, 0, WRONG);
      return { from, to: from + until - at, kind: channel === "voice" ? "voice" : "tone" };
    }),
  );
  return { samples, own };
}

/** Without its bass: two poles. */
function thinned(samples: Float32Array): Float32Array {
  const slow = 1 - Math.exp((-2 * Math.PI * SMALL) / rate);
  let [first, second] = [0, 0];
  return samples.map((sample) => {
    first += slow * (sample - first);
    const once = sample - first;
    second += slow * (once - second);
    return once - second;
  });
}
