// The words of Walk through, the score's own among them. What is spoken, and the names of the steps, come
// with the timeline.
import type { Method } from "../../../trade/method.ts";
import { bathName, bathWithin } from "./baths.ts";

export const walk = {
  noWorksheet:
    "Es gibt nichts durchzuspielen, solange sich das Arbeitsblatt nicht ausrechnen lässt.",
  toWorkOut: "Zu „Ausrechnen“",
  onItsWay: "Die Schritte werden zusammengestellt …",
  failed:
    "Die Schritte ließen sich nicht zusammenstellen: Worte und Töne waren hier nicht zu bekommen.",
  again: "Noch einmal versuchen",
  stops: "Das zuerst ansehen",
  stop: "Halt",
  stopsAfter: "Die Schritte stehen trotzdem hier.",
  lead: "Das Ganze, vom Arbeitsblatt bis zur Trockenleine. Hier beginnt kein Durchgang.",
  steps: "Schritte",
  print: "Die ganze Partitur drucken",
  total: (steps: number, clock: string) =>
    steps === 1
      ? `1 Schritt. ${clock} nach der Uhr.`
      : `${steps} Schritte. ${clock} nach der Uhr; die übrigen warten, bis gedrückt wird.`,
  dark: "dunkel",
  light: "hell",
  screenBlack: "Hier ist der Bildschirm schwarz.",
  ownPace: "ohne Uhr",
  /** Beneath a step's name. */
  hint: (light: string, lasts: string) => `${light}, ${lasts}`,
  spoken: (seconds: string) => `${seconds} Ansage, danach wartet die Uhr, bis gedrückt wird.`,
  clocked: (time: string) => `${time} nach der Uhr.`,
  previous: "Voriger Schritt",
  next: "Nächster Schritt",
  step: (n: number, of: number) => `Schritt ${n} von ${of}`,
  /** Read on from that, by those who listen to the page. */
  stepTitle: (title: string) => `: ${title}`,
  hear: "Diesen Schritt anhören",
  hearWhy: "Warum und wie anhören",
  stopHearing: "Anhalten",
  hearing: (time: string, of: string) => `${time} von ${of}`,
  notHeard: "Hier ließ sich kein Ton starten.",
  runIsOn: "Ein Durchgang läuft, deshalb bleibt alles andere still. Er geht weiter unter",
  lightsOut: "Licht aus",
  /** What ends that sentence, behind the link. */
  runIsOnEnd: ".",
  inWords: "Dasselbe in Worten",
  time: "Zeit",
  hands: "Hände",
  voice: "Stimme",
  hearFrom: "anhören",
  /** Read on from the word before it, by those who listen to the page. */
  from: (time: string) => `ab ${time}`,
  left: (count: number) => (count === 1 ? "1 Satz ausgelassen" : `${count} Sätze ausgelassen`),
  leftWhy: "Was zwischen den Signalen keinen Platz hatte, und warum.",
  nothingLeft: "Alles, was gesagt werden soll, hat Platz.",
};

export const score = {
  /** Said of the whole picture; what it holds stands beside it in words. */
  picture: (title: string) => `Partitur: ${title}`,
  region: (title: string) => `Partitur: ${title}, seitlich verschiebbar`,
  key: "Die Partitur lesen",
  keys: {
    words: "Ein Balken, so lang wie die Worte dauern; die Worte stehen darüber.",
    count: "Drei Schläge zählen ein.",
    moment:
      "Genau im Augenblick ertönt ein Horn: drei Bögen zum Einfüllen, kräftigere zum Ausgießen, zwei, wenn die Bewegung beginnt.",
    beats: "Schläge für hin und zurück.",
    rest: "Ein Ring, wo die Dose abgestellt wird; ein Strich, wo ein leiser Ton sagt, dass alles gut ist.",
    water:
      "Fünf Linien sind das Bad: Sie öffnen sich beim Einfüllen, schwingen mit der Dose, liegen eben, solange sie ruht, und schließen sich beim Ausgießen.",
    fold: "Eine lange Ruhe ist gefaltet; in der Lücke steht, wie lang sie ist.",
    clock:
      "Schwarz und Weiß im Wechsel: je fünf Sekunden; je eine Sekunde, wo nur Worte zu hören sind.",
  },
  /** What stands for words, and for the length of a fold, where the signs are shown. */
  example: { words: "Bereit", fold: "17 s" },
  /** @param bath its id */
  bath: (bath: string) => bathName(bath),
  press: "drücken",
  "pour-in": "einfüllen",
  full: "voll",
  rest: "ruhen",
  "pour-out": "ausgießen",
  empty: "leer",
  tap: (count: number) => `${count}× klopfen`,
  still: (time: string) => time,
  moving: (count: number, time: string) => `${count}×, ${time}`,
};

/** A bout, short enough to stand under its notes. */
export const turnsInScore: { readonly [method in Method]: (count: number) => string } = {
  inversion: (count) => `${count}× kippen`,
  twist: (count) => `${count}× drehen`,
  rotary: (count) => `${count}× rollen`,
  tray: (count) => `${count}× schichten`,
  hanger: (count) => `${count}× heben`,
};

const times = (count: number) =>
  count === 1 ? "einmal" : count === 2 ? "zweimal" : `${count}-mal`;

/** A bout, as a sentence's part. */
export const turnsInWords: { readonly [method in Method]: (count: number) => string } = {
  inversion: (count) => `${times(count)} kippen`,
  twist: (count) => `${times(count)} drehen`,
  rotary: (count) => `die Trommel ${times(count)} rollen`,
  tray: (count) => `${times(count)} umschichten`,
  hanger: (count) => `${times(count)} anheben und neigen`,
};

export const deeds = {
  /** @param bath its id, here and below */
  pourIn: (bath: string) => `${bathWithin(bath)} einfüllen`,
  full: "Dose voll",
  until: (turns: string, time: string) => `${turns}, bis ${time}`,
  rest: "ruhen lassen",
  tap: (count: number) => `${times(count)} aufklopfen`,
  pourOut: (bath: string) => `${bathWithin(bath)} ausgießen`,
  empty: "Dose leer",
  joined: (deeds: readonly string[]) => deeds.join(", "),
};
