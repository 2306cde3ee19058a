// The words of how a run reaches a person (heard, read out, felt, read), and of the statement on accessibility.

export const senses = {
  title: "Who speaks?",
  why: "Two voices would talk over each other, so there is one. It can be changed here at any time before a run.",
  hear: "Hear the question",
  hearHint: "or answer at once: the keys 1, 2 and 3",
  notHeard: "The voice could not be fetched. A network is needed once, the first time.",
  names: { program: "The program speaks", reader: "My screen reader speaks", tones: "Tones only" },
  hints: {
    program:
      "What needs saying is heard from this page alone; in a run it gives your screen reader nothing to say.",
    reader: "In a run the words come to your screen reader as text, at their time; the tones stay.",
    tones: "A run gives its signals and says nothing, until you ask it to.",
  },
  change: "Change",
  also: "To feel and to read",
  vibrates: "Vibrate with every signal",
  vibratesHint:
    "In the dark too. Carry the device on your body, and try it here: whether it has a motor cannot be known from this page.",
  noMotor: "This browser cannot make a device vibrate.",
  feel: "Feel the signals",
  captions: "Write out what is said",
  captionsHint:
    "Large on the run’s screen while there is light. What is said in the dark stands there before the light goes out.",
  darkAhead: "In the dark it will be said:",
  /** The two halves of a turn, as large as the beat is short. */
  turns: { over: "Over", back: "Back" },
};

export const statement = {
  built: (standard: string, point: string) =>
    `Tankside is built for ${standard}: level AA as a whole, and level AAA but for one thing, time (${point}).`,
  time: "The clock in a tank can be neither stopped nor made longer. Instead:",
  instead: [
    "Each moment is told of, counted in and then sounded, and can be felt and read as well.",
    "Between timed steps the run waits for your press, as long as you like.",
    "A press can be taken back for three seconds, and late hands can be told of: the rest is worked out anew.",
    "How long you pour, and how slowly the voice speaks, is yours to set.",
  ],
  ways: "A run can be done by ear, by screen reader, by tones, by vibration or, as long as there is light, by reading; with one key, one finger or one pedal. All that is held down or pressed two or three times has a button of its own, too.",
  measured:
    "Tests measure at every change: text against its ground at 7 to 1 or better, on both papers; buttons of a run at 88 pixels or more; pages 320 pixels wide without scrolling sideways; wide-set type; forced colours; and that axe-core finds nothing in any place.",
  limits:
    "Known limits: a screen reader keeps its own pace, and may still be speaking when a tone comes; in the pocket, on a locked device, it has nothing to read and only tones are heard.",
  trials:
    "There were no trials with people who are blind, who are deaf or who work with one hand. What is here follows the standards, and is offered for trial.",
};
