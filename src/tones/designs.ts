// The signals by name, with their exact lengths: what every stage may know of a tone without
// hearing it. How each is made stands in render.ts, which only the build needs.

/** Samples a second, of every tone and of every spoken clip. */
export const sampleRate = 24_000;

export type ToneName =
  | "press" // a press was heard
  | "count" // a beat of the count-in
  | "pour-in"
  | "pour-out" // the one that must not be mistaken
  | "agitate" // a bout begins; stands for its first "over" as well
  | "over"
  | "back"
  | "rest" // set the tank down
  | "confirm"; // still here

/**
 * Seconds each tone lasts, its last sample included: whole samples at 24 kHz, so that a
 * compiled cue ends exactly where the sound does.
 */
export const toneSeconds: Readonly<Record<ToneName, number>> = {
  press: 0.12,
  count: 0.2,
  "pour-in": 0.5,
  "pour-out": 1.1,
  agitate: 0.5,
  over: 0.25,
  back: 0.25,
  rest: 0.5,
  confirm: 0.4,
};

export const toneNames: readonly ToneName[] = [
  "press",
  "count",
  "pour-in",
  "pour-out",
  "agitate",
  "over",
  "back",
  "rest",
  "confirm",
];

/** Samples of a tone at 24 kHz; a whole number for every length above. */
export const toneSamples = (name: ToneName): number => Math.round(toneSeconds[name] * sampleRate);
