// Knocks on the bench as a port: the microphone opened, listened to on the run's own audio clock, and let
// go of. What it hears goes through the detector in this page and is forgotten: nothing is kept or sent.
import { type MicrophoneRefusal, openHearing } from "./hearing.ts";
import { type OwnSound, openKnockDetector } from "./knocks.ts";

export type Listening =
  | { readonly kind: "listening"; stop(): void }
  | { readonly kind: "refused"; readonly why: MicrophoneRefusal };

export interface KnockParts {
  /** The context that the run plays on, so that sounds and knocks stand on one clock. */
  readonly context: AudioContext;
  /**
   * A knock was heard.
   * @param at seconds on the clock of `performance.now()`: the first contact, exact to one block of the
   * device's sound (3 to 25 ms) and to what the microphone's delay differs from what is told of it.
   */
  readonly heard: (at: number) => void;
  /** What was placed on the context's clock and is not long over, the answer to a press included. */
  readonly ownSounds: () => readonly OwnSound[];
  /** The microphone was taken away. */
  readonly ended: () => void;
}

/** Samples in a part: about 10 ms, of the 100 in which a press is to be answered. */
const PART = 512;
/** The delay of a microphone, and of a loudspeaker, whose browser tells none, seconds: usual for built-in ones. */
const DELAY = 0.02;

/** To be called from a press. Never rejects. */
export async function listenForKnocks(parts: KnockParts): Promise<Listening> {
  const { context, heard, ownSounds, ended } = parts;
  let delay = DELAY;
  /** As the microphone's parts are stamped: after the way through loudspeaker and microphone. */
  const sounding = () => {
    const late = delay + (context.outputLatency ?? context.baseLatency + DELAY);
    return ownSounds().map(({ from, to, kind }) => ({ from: from + late, to: to + late, kind }));
  };
  const detector = openKnockDetector(context.sampleRate, sounding);
  const hearing = await openHearing({
    context,
    part: PART,
    heard({ samples, at }) {
      for (const contact of detector.hear(samples, at)) {
        const ago = context.currentTime - contact + delay;
        heard(performance.now() / 1000 - ago);
      }
    },
    ended,
  });
  if (hearing.kind === "refused") return hearing;
  delay = hearing.delay ?? DELAY;
  return { kind: "listening", stop: hearing.close };
}
