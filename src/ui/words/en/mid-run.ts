// The words of what comes up in the middle of a run, of a run that was left, and of what went otherwise than
// planned. Times and temperatures come ready written.

export const midRun = {
  more: "More",
  wrong: "Something is wrong",
  takeBack: "Take it back",
  hush: "Hush",
  speak: "Speak",
  poured: "Pouring only now",
  emptied: "Empty now",
  /** To the other way, by which is gone now. */
  way: { room: "Into the pocket", pocket: "To the loudspeaker" },
  silent: "No sound",
  silentHint: "Press anywhere to hear it again. The clock in the tank goes on.",
  notKept:
    "This browser keeps nothing of this run. Stay on this page: if it closes, the run cannot be found again.",
};

export const leftRun = {
  title: (when: string) => `A run of ${when} never ended`,
  hint: "Its page was closed in the midst of it. It can go on where it would be by now.",
  goOn: "Go on with it",
  drop: "Close it",
  dropped: "It is closed. What was done of it is in Write up.",
};

export const otherwise = {
  title: "What went otherwise",
  /** Each stands behind the name of its bath. */
  pouredLate: (time: string) => `poured in ${time} late`,
  emptiedLate: (time: string) => `empty ${time} late`,
  emptiedEarly: (time: string) => `empty ${time} early`,
  read: (temperature: string, time: string) =>
    `${temperature} in the tank, ${time} after the press`,
  developed: (real: string, planned: string) => `Developed for ${real}; planned were ${planned}.`,
  lost: {
    closed: (time: string) => `Not heard for ${time}: the page was closed.`,
    frozen: (time: string) => `Not heard for ${time}: the page stood still.`,
    asleep: (time: string) => `Not heard for ${time}: the device slept.`,
    silent: (time: string) => `Not heard for ${time}: the sound stood still.`,
  },
  /** What was told of as wrong. */
  wrong: {
    eye: "Something splashed in an eye.",
    light: "A light came on.",
    bath: "A wrong bath went in.",
    leak: "The lid leaked.",
    clock: "The clock was lost.",
  },
  clockSet: (time: string) => `The device’s clock was set by ${time}.`,
};
