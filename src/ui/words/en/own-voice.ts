// The words of "Who speaks" and of the sheet on which a voice is recorded.

export const speaker = {
  who: "Who speaks on this device",
  bundled: "The voice that comes with Tankside",
  own: (recorded: number, of: number) => `My own voice (${recorded} of ${of} recorded)`,
  ownHint:
    "A sentence is spoken in your voice once all of it is recorded; until then by the voice that comes with Tankside.",
  /** What a saved voice is called within its file. */
  packName: "My own voice",
  record: "Record your voice",
  goOn: "Go on recording your voice",
  export: "Save your voice to a file",
  import: "Open a voice from a file",
  removeAll: "Delete all recordings",
  undo: "Undo",
  choiceNotKept: "This browser will not keep the choice: it holds until the page is closed.",
  opening: "Fetching the script…",
  notOpened: "The script could not be fetched. A network is needed once, the first time.",
  saved: (name: string) => `Saved as ${name}.`,
  nothingToSave: "Nothing is recorded yet.",
  imported: (clips: number, unknown: readonly string[]) =>
    clips === 1
      ? `1 phrase was taken in. ${leftOut(unknown)}Undo takes it out again.`
      : `${clips} phrases were taken in. ${leftOut(unknown)}Undo takes them out again.`,
  removedAll: "All recordings are deleted. Undo brings them back.",
  undone: "Undone.",
  notKept:
    "This browser will not keep that: it holds until the page is closed. Save your voice to a file before then.",
  notRead: "What you recorded before could not be read from this browser.",
};

function leftOut(unknown: readonly string[]): string {
  if (unknown.length === 0) return "";
  const named = unknown
    .slice(0, 3)
    .map((text) => `“${text}”`)
    .join(", ");
  return unknown.length <= 3
    ? `Left out, since nothing here says it: ${named}. `
    : `${unknown.length} were left out, since nothing here says them: ${named} and others. `;
}

export const deviceVoice = {
  device: "A voice of this device",
  hint: "It speaks at its own pace, and only while this page is in sight. If it fails twice in a row, the voice that comes with Tankside takes over. The tones never depend on it.",
  which: "Which one",
  measure: "Hear and measure it",
  measuring: "Speaking a few phrases, to be measured…",
  first: "It has to be heard and measured before it can lead a run.",
  runOn: "A run is on. Measuring has to wait until it is over.",
  measured: (delay: string, letters: number) =>
    `Starts after ${delay}, speaks ${letters} letters a second.`,
  refused: {
    "never-starts":
      "This voice did not begin to speak within 3 seconds, so no run can be led by it.",
    "never-ends":
      "This voice does not tell when it has finished, so no run can be led by it: it might speak over a moment.",
    failed: "This voice could not speak.",
    "too-slow":
      "This voice takes longer than 10 seconds for a sentence, so no run can be led by it.",
  },
};

export const recording = {
  name: "Record your voice",
  progress: (recorded: number, of: number) => `${recorded} of ${of}`,
  recorded: "recorded",
  forWorksheet: (recorded: number, of: number) =>
    recorded === of
      ? "All that the worksheet on the page says is recorded."
      : `Of what the worksheet on the page says: ${recorded} of ${of}.`,
  say: "Say",
  isRecorded: "This phrase is recorded.",
  level: "Level",
  levels: { none: "nothing heard", soft: "soft", good: "good", loud: "very loud" },
  record: "Record",
  stop: "Stop",
  keep: "Keep, and on to the next",
  again: "Record again",
  hear: "Hear it",
  sayIt: "Read it to me",
  back: "Back",
  skip: "On",
  remove: "Delete this one",
  undo: "Undo",
  leave: "Leave off",
  keys: {
    press: "Space",
    keep: "Enter",
    hear: "H",
    say: "R",
    back: "←",
    skip: "→",
    remove: "Delete",
    undo: "U",
    leave: "Esc",
  },
  opening: "Asking for the microphone…",
  ready:
    "Speak as you would to someone beside you, a hand’s breadth from the microphone. If a screen reader speaks to you, wear earphones: it would be recorded too.",
  recording: "Recording. Say it, then stop.",
  taken: (seconds: string) => `Recorded: ${seconds}. Hear it, keep it, or record again.`,
  told: {
    kept: "Kept.",
    "not-kept":
      "This browser will not keep it: it is here until the page is closed. Save your voice to a file before then.",
    removed: "Deleted. Undo brings it back.",
    undone: "Undone.",
    "run-on": "A run is on. Recording has to wait until it is over.",
    "no-sound": "No sound could be played.",
  },
};

/** Why there is nothing to keep of what was recorded. */
export const unusable = {
  "too-quiet": "Too quiet to use. Come nearer to the microphone, or turn it up, and record again.",
  clipped:
    "Too loud for the microphone: it crackles. Move back a little, or turn it down, and record again.",
  noise:
    "No words stand out from the noise of the room. Come nearer, or find a quieter place, and record again.",
  "too-short": "Too short to be the phrase. Press, speak, and press again when you have spoken.",
  "too-long": (lasts: string, most: string) =>
    `It lasts ${lasts}, and there is room for ${most}. Say it more briskly, and record again.`,
};

export const microphone = {
  denied:
    "The microphone may not be used here. Allow it for this page in the browser’s settings, then press again.",
  none: "No microphone was found. Plug one in, then press again.",
  busy: "The microphone cannot be had: another program may be using it. Close that, then press again.",
  unable: "This browser cannot record on this page.",
};

/** Why a voice's file was refused; `name` is the file's own. */
export const noPack = {
  foreign: (name: string) => `${name} is not a voice saved by Tankside. Nothing was changed.`,
  "other-version": (name: string) =>
    `${name} was saved by a newer Tankside, which this one cannot read. Nothing was changed.`,
  damaged: (name: string) =>
    `${name} is damaged: some of it is missing or altered. Nothing was changed.`,
  "too-large": (name: string) => `${name} holds more than a voice can. Nothing was changed.`,
  "other-language": (name: string, language: string) =>
    `${name} speaks another language (${language}). Nothing was changed.`,
  "other-sound": (name: string, file: string) =>
    `${file} in ${name} is not a plain WAV of 24 kHz, 16 bits, one channel. Nothing was changed.`,
};
