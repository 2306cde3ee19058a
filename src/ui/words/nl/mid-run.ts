// The words of what comes up in the middle of a run, of a run that was left, and of what went otherwise than
// planned. Times and temperatures come ready written.

export const midRun = {
  more: "Meer",
  wrong: "Er gaat iets mis",
  takeBack: "Terugnemen",
  hush: "Stil",
  speak: "Spreken",
  poured: "Nu pas ingegoten",
  emptied: "Nu leeg",
  /** To the other way, by which is gone now. */
  way: { room: "In de zak", pocket: "Op de luidspreker" },
  silent: "Geen geluid",
  silentHint: "Druk ergens om het weer te horen. De klok in de tank loopt door.",
  notKept:
    "Deze browser bewaart niets van deze sessie. Blijf op deze pagina: gaat ze dicht, dan is de sessie niet terug te vinden.",
};

export const leftRun = {
  title: (when: string) => `Een sessie van ${when} is nooit afgelopen`,
  hint: "De pagina ging halverwege dicht. De sessie kan verder waar ze nu zou zijn.",
  goOn: "Ermee verdergaan",
  drop: "Afsluiten",
  dropped: "Ze is afgesloten. Wat er gedaan is, staat in “Opschrijven”.",
};

export const otherwise = {
  title: "Wat anders ging",
  /** Each stands behind the name of its bath. */
  pouredLate: (time: string) => `${time} te laat ingegoten`,
  emptiedLate: (time: string) => `${time} te laat leeg`,
  emptiedEarly: (time: string) => `${time} te vroeg leeg`,
  read: (temperature: string, time: string) => `${temperature} in de tank, ${time} na het drukken`,
  developed: (real: string, planned: string) => `${real} ontwikkeld; gepland was ${planned}.`,
  lost: {
    closed: (time: string) => `${time} niet te horen: de pagina was dicht.`,
    frozen: (time: string) => `${time} niet te horen: de pagina stond stil.`,
    asleep: (time: string) => `${time} niet te horen: het apparaat sliep.`,
    silent: (time: string) => `${time} niet te horen: het geluid stond stil.`,
  },
  /** What was told of as wrong. */
  wrong: {
    eye: "Er spatte iets in een oog.",
    light: "Er ging licht aan.",
    bath: "Er kwam een verkeerd bad in.",
    leak: "Het deksel lekte.",
    clock: "De tijd was kwijt.",
  },
  clockSet: (time: string) => `De klok van het apparaat is ${time} verzet.`,
};
