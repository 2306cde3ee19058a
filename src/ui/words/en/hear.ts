// The words of what is heard before a run: the test with the tap running, and headphones that play late.

export const hearFirst = {
  title: "Hear it first",
  how: "Turn the tap on as you will have it, and stand where you will work. Let it run while you listen.",
  ask: "Did you hear all of it, with the tap running?",
  play: "Play the test",
  playAgain: "Play it again",
  playHint: "a few tones and a sentence, as loud as in the run",
  playing: "Playing…",
  listen: "Listen now, with the tap running.",
  failed: "The test could not be played. A network is needed once, the first time, for the voice.",
  heard: "I heard it",
  notHeard: "I did not",
  good: "Good. The run will be as loud as that.",
  mend: "Then one of these, most likely, and play it again:",
  advice: [
    "The volume: turn it up by hand, on the device and on the loudspeaker or the headphones.",
    "The mute switch: some devices have one on their side, or a silent mode.",
    "Where it goes: a loudspeaker in another room, or headphones in a drawer, may be connected.",
    "The water: a thinner stream, the device nearer to you, or headphones.",
  ],
  begin: "Begin without hearing it",
  beginHint: "for whoever feels the tones on the body, or reads the words",
};

export const tapAlong = {
  ask: "Wireless headphones?",
  why: "They play late, often by a quarter of a second, and a tone to pour by comes late with them. Tap along to some beats, and what sounds in a run is sent ahead by as much.",
  kept: (delay: string) => `Sent ahead on this device: ${delay}.`,
  noneKept: "Nothing is sent ahead on this device.",
  notKept: "This browser will not keep that between visits.",
  measure: "Measure by tapping along",
  none: "No delay",
  name: "By how much the headphones play late",
  advice: "Headphones on. Three beats and a rest, over and over, for twenty seconds.",
  start: "Press to hear the beats",
  fetching: "Fetching the beats…",
  tap: "Tap here on each beat",
  tapHint: "or press the space bar; not in the rests",
  taps: (count: number) => `Taps: ${count}`,
  failed:
    "The beats could not be played. A network is needed once, the first time. Press to try again.",
  late: (delay: string) => `${delay} late`,
  notLate: "No delay worth mending",
  sure: (apart: string) => `Half of the taps lie within ${apart} of that.`,
  keep: (delay: string) => `Keep ${delay}`,
  keepNone: "Keep no delay",
  again: "Again",
  leave: "Leave",
  refused: {
    few: "Too few taps to tell by. Once more: a tap on every beat.",
    uneven:
      "The taps lie too far apart to tell by. Once more: find the beat first, then tap with it.",
    unclear: "That fits two delays. Once more: three taps, and none in the rest.",
    far: "That is more than a second, more than can be mended. Headphones with a cable, or the device’s own loudspeaker, will do.",
  },
};

export const byEar = {
  open: "Work it out by ear",
  name: "Work out by ear",
  hint: "Any key or a touch takes what is being offered, or goes on. Up and down lead from field to field, left and right through the values that can be chosen, and Enter takes one; digits and the letters of a name go in as you type them, Enter sets them, C or F, M or O in that unit, a comma parts the fills of a wash, a space the steps of a wedge, Backspace takes one back, Escape closes.",
  end: "The whole of it",
  previous: "Previous",
  next: "Next",
  close: "Close",
  notHeard: "The voice could not be fetched. Look for a network, and press again.",
};
