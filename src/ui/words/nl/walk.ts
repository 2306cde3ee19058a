// The words of Walk through, the score's own among them. What is spoken, and the names of the steps, come
// with the timeline.
import type { Method } from "../../../trade/method.ts";
import { bathName, bathWithin } from "./baths.ts";

export const walk = {
  noWorksheet: "Er valt niets door te nemen zolang de werkkaart niet uit te rekenen is.",
  toWorkOut: "Naar “Uitrekenen”",
  onItsWay: "De stappen worden op een rij gezet…",
  failed:
    "De stappen konden niet op een rij worden gezet: de woorden en tonen waren hier niet te krijgen.",
  again: "Opnieuw proberen",
  stops: "Bekijk dit eerst",
  stop: "Stop",
  stopsAfter: "De stappen staan er toch.",
  lead: "Het hele verloop, van de werkkaart tot de drooglijn. Hier begint geen sessie.",
  steps: "Stappen",
  print: "De hele partituur afdrukken",
  total: (steps: number, clock: string) =>
    steps === 1
      ? `1 stap. ${clock} volgens de klok.`
      : `${steps} stappen. ${clock} volgens de klok; de andere wachten tot je drukt.`,
  dark: "donker",
  light: "licht",
  screenBlack: "Hier is het scherm zwart.",
  ownPace: "zonder klok",
  /** Beneath a step's name. */
  hint: (light: string, lasts: string) => `${light}, ${lasts}`,
  spoken: (seconds: string) => `${seconds} aan woorden, daarna wacht het tot je drukt.`,
  clocked: (time: string) => `${time} volgens de klok.`,
  previous: "Vorige stap",
  next: "Volgende stap",
  step: (n: number, of: number) => `Stap ${n} van ${of}`,
  /** Read on from that, by those who listen to the page. */
  stepTitle: (title: string) => `: ${title}`,
  hear: "Deze stap horen",
  hearWhy: "Waarom en hoe horen",
  stopHearing: "Stop",
  hearing: (time: string, of: string) => `${time} van ${of}`,
  notHeard: "Er kon hier geen geluid worden gestart.",
  runIsOn: "Er loopt een sessie, dus verder klinkt er niets. De sessie gaat door in",
  lightsOut: "Licht uit",
  /** What ends that sentence, behind the link. */
  runIsOnEnd: ".",
  inWords: "Hetzelfde in woorden",
  time: "Tijd",
  hands: "Handen",
  voice: "Stem",
  hearFrom: "horen",
  /** Read on from the word before it, by those who listen to the page. */
  from: (time: string) => `vanaf ${time}`,
  left: (count: number) => (count === 1 ? "1 zin weggelaten" : `${count} zinnen weggelaten`),
  leftWhy: "Wat tussen de signalen geen plaats vond, en waarom.",
  nothingLeft: "Alles wat gezegd moet worden, vindt zijn plaats.",
};

export const score = {
  /** Said of the whole picture; what it holds stands beside it in words. */
  picture: (title: string) => `Partituur: ${title}`,
  region: (title: string) => `Partituur: ${title}, opzij te schuiven`,
  key: "Zo lees je het",
  keys: {
    words: "Een balk zo lang als de woorden duren, met de woorden erboven.",
    count: "Drie slagen tellen af.",
    moment:
      "Op het moment zelf klinkt een hoorn: drie bogen bij het ingieten, zwaardere bij het uitgieten, twee als het bewegen begint.",
    beats: "Slagen voor heen en terug.",
    rest: "Een ring waar de tank wordt neergezet; een streepje waar een zachte toon zegt dat alles goed gaat.",
    water:
      "Vijf lijnen zijn het bad: ze gaan open bij het ingieten, zwaaien met de tank mee, liggen vlak zolang hij rust, en sluiten zich bij het uitgieten.",
    fold: "Een lange rust is ingevouwen; in de opening staat hoe lang hij is.",
    clock:
      "Om en om zwart en wit: telkens vijf seconden; telkens één seconde waar je alleen woorden hoort.",
  },
  /** What stands for words, and for the length of a fold, where the signs are shown. */
  example: { words: "Sta klaar", fold: "17 s" },
  /** @param bath its id */
  bath: (bath: string) => bathName(bath),
  press: "druk",
  "pour-in": "ingieten",
  full: "vol",
  rest: "rust",
  "pour-out": "uitgieten",
  empty: "leeg",
  tap: (count: number) => `${count}× tikken`,
  still: (time: string) => time,
  moving: (count: number, time: string) => `${count}×, ${time}`,
};

/** A bout, short enough to stand under its notes. */
export const turnsInScore: { readonly [method in Method]: (count: number) => string } = {
  inversion: (count) => `${count}× kantelen`,
  twist: (count) => `${count}× draaien`,
  rotary: (count) => `${count}× rollen`,
  tray: (count) => `${count}× stapelen`,
  hanger: (count) => `${count}× tillen`,
};

/** "keer" has no plural of its own. */
const times = (count: number) =>
  count === 1 ? "één keer" : count === 2 ? "twee keer" : `${count} keer`;

/** A bout, as a sentence's part. */
export const turnsInWords: { readonly [method in Method]: (count: number) => string } = {
  inversion: (count) => `${times(count)} kantelen`,
  twist: (count) => `${times(count)} draaien`,
  rotary: (count) => `de trommel ${times(count)} rollen`,
  tray: (count) => `${times(count)} omstapelen`,
  hanger: (count) => `${times(count)} optillen en schuin houden`,
};

export const deeds = {
  /** @param bath its id, here and below */
  pourIn: (bath: string) => `${bathWithin(bath)} ingieten`,
  full: "tank vol",
  until: (turns: string, time: string) => `${turns}, tot ${time}`,
  rest: "rust",
  tap: (count: number) => `${times(count)} tikken`,
  pourOut: (bath: string) => `${bathWithin(bath)} uitgieten`,
  empty: "tank leeg",
  joined: (deeds: readonly string[]) => deeds.join(", "),
};
