// A voice of the device in, how late it begins and how long it takes a letter out: measured by having it
// speak a handful of phrases. Or the reason why no run can be led by it.
import { type DevicePace, devicePace, type SpokenOnce, slotFor } from "../voice/device-pace.ts";
import type { Clock, Synthesiser } from "./synthesiser.ts";

export type MeasuredVoice =
  | { readonly kind: "measured"; readonly pace: DevicePace }
  | { readonly kind: "refused"; readonly why: WhyNotVoice };

/** It did not begin in 3 s; it began and was never heard to end; it broke; it takes too long. */
export type WhyNotVoice = "never-starts" | "never-ends" | "failed" | "too-slow";

const BEGINS_WITHIN = 3;
/** No voice takes longer than this for a letter, seconds, nor for anything this short. */
const SLOWEST = { perLetter: 0.3, atLeast: 3 };
/** Some devices fall silent for good in long utterances: each must have ended by then, seconds. */
const LONGEST = 10;
/** Between two phrases, seconds. */
const REST = 0.3;

/** @param phrases short ones and long ones: one at least. The longest stands for all that will be said. */
export async function measureVoice(
  voice: string,
  phrases: readonly string[],
  synthesiser: Synthesiser,
  clock: Clock,
): Promise<MeasuredVoice> {
  const spoken: SpokenOnce[] = [];
  synthesiser.cancel();
  for (const text of phrases) {
    const once = await spokenOnce(text, voice, synthesiser, clock);
    if (typeof once === "string") {
      synthesiser.cancel();
      return { kind: "refused", why: once };
    }
    spoken.push(once);
    await new Promise<void>((resolve) => {
      clock.after(REST, resolve);
    });
  }
  const pace = devicePace(spoken);
  const tooSlow = phrases.some((text) => slotFor(text, pace) > LONGEST);
  return tooSlow ? { kind: "refused", why: "too-slow" } : { kind: "measured", pace };
}

function spokenOnce(
  text: string,
  voice: string,
  synthesiser: Synthesiser,
  { now, after }: Clock,
): Promise<SpokenOnce | WhyNotVoice> {
  return new Promise((resolve) => {
    const asked = now();
    let started: number | null = null;
    let giveUp = after(BEGINS_WITHIN, () => resolve("never-starts"));
    const settle = (result: SpokenOnce | WhyNotVoice) => {
      giveUp();
      resolve(result);
    };
    synthesiser.speak(text, voice, {
      started() {
        if (started !== null) return;
        started = now();
        giveUp();
        const most = Math.max(SLOWEST.atLeast, text.length * SLOWEST.perLetter);
        giveUp = after(most, () => resolve("never-ends"));
      },
      ended() {
        // An end without a beginning tells nothing of when it was heard.
        if (started === null) settle("never-starts");
        else settle({ letters: text.length, delay: started - asked, lasts: now() - started });
      },
      failed: () => settle("failed"),
    });
  });
}
