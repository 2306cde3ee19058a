// The words for what the hands use beside the one press: a thermometer, a pedal, a knock.

export const reading = {
  name: "Thermometer",
  typed: "Temperature in the tank",
  taken: (temperature: string) => `${temperature} taken.`,
  range: (least: string, most: string) =>
    `A developer in a tank has from ${least} to ${most}. Nothing was changed.`,
  connect: "Connect a thermometer",
  hint: "One with Bluetooth then moves the end by itself. It is never needed.",
  connecting: "Looking for a thermometer…",
  disconnect: "Disconnect it",
  nameless: "Thermometer",
  on: (name: string, temperature: string) => `${name}: ${temperature}.`,
  nothingYet: (name: string) => `${name}: connected, no reading yet.`,
  out: (name: string, temperature: string) =>
    `${name}: ${temperature}. It seems to be out of the tank, and nothing is taken from it.`,
  lost: (name: string) => `${name}: out of touch, and being looked for.`,
  last: (temperature: string) => `Last reading: ${temperature}.`,
  refused: {
    none: "No thermometer was chosen. Switch it on, hold it near, then press again.",
    denied: "Bluetooth may not be used here. Allow it in the settings, then press again.",
    unreachable:
      "The thermometer did not answer. Bring it nearer, or free it from another device, then press again.",
    unfit: "That one tells no temperature that can be read here.",
    unable: "This browser cannot use Bluetooth on this page.",
  },
};

export const pedal = {
  name: "Page turner, pedal or other button",
  hint: "Whatever sends keys to this device can be a press in a run. It is learnt by pressing it.",
  learn: "Learn one",
  capture: "Press it now: once briefly, then once more for a second. Escape calls it off.",
  again: "Heard. Now once more, for a second.",
  calledOff: "Nothing was learnt.",
  nothing: "No key came. Is it switched on, and paired with this device?",
  learnt: "Learnt.",
  notKept: "This browser cannot keep it: it holds until the page is closed.",
  known: "Learnt so far",
  holds: (key: string) => `${key}: can be pressed and held`,
  taps: (key: string) => `${key}: can be pressed, not held`,
  keyboard: "In a run these keys press wherever they come from, a keyboard too.",
  refused: {
    moves: "Tab and Escape stay what they are: whoever moves about by keys needs them.",
    modifier: "This key means nothing by itself, so it cannot be a press.",
    nameless: "This key has no name by which it could be known again.",
  },
  try: "Try",
  trying: "Press as in a run. Escape ends it.",
  meanings: {
    once: "Once: goes on, or says where we are.",
    twice: "Twice: says where we are.",
    thrice: "Three times: hushes the voice, or has it speak again.",
    held: "Held: takes back, or offers what else can be done.",
  },
  tried: "That was the trial.",
  forget: (key: string) => `Forget ${key}`,
  forgotten: "Forgotten.",
  keys: { space: "Space", enter: "Enter", pageUp: "Page up", pageDown: "Page down" },
};

export const knocks = {
  hear: "Hear knocks on the bench (microphone)",
  hint: "What it hears is not kept and never leaves this device. It is never needed: a press does the same.",
};
