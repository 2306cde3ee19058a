// The words of the rehearsal with water. What the voice says stands in audio-scripts/.

export const rehearse = {
  title: "Rehearse with water",
  lead: "The whole run by ear, in the light: water in every vessel, and a film that no longer matters. Pours and bouts take the time they always do; only the rests between them are shortened.",
  press:
    "Press as you begin to pour in, and as you begin to pour out; if you like, as a bout begins, too. Afterwards you are told what is worth practising.",
  keeps:
    "It leaves no record among the runs, and no bath grows older by it. It is over when the page is closed.",
  rests: "Rests",
  /** What is left of a rest. */
  factors: {
    whole: "whole",
    half: "half",
    quarter: "a quarter",
    least: "as short as the words allow",
  },
  why: "Say why before each bath, and how at each step of loading",
  begin: "Begin the rehearsal",
  beginHint: (clock: string) => `${clock} by the clock`,
  overHint: "What is worth practising stands in Walk through, with seconds.",
  back: "Back to Walk through",
  found: "The last rehearsal",
  unmarked: "No pour was pressed, so there is nothing to compare.",
  well: (n: number, of: number, seconds: string) =>
    `${n} of ${of} moments were well done: within ${seconds}.`,
  practise: "Worth practising, the most important first",
  all: "All that was off",
  late: (seconds: string) => `${seconds} late`,
  early: (seconds: string) => `${seconds} early`,
  missed: "no press",
};
