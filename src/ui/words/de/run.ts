// The words of Lights out. What the voice says stands in audio-scripts/.
import type { Deed } from "../../../process/moments.ts";
import type { Method } from "../../../trade/method.ts";
import { inBath } from "./baths.ts";

/** What the hands are to do, large enough to read across a room; by method where hands differ. */
export const runDeeds: { readonly [deed in Deed]: string } = {
  "pour-in": "Einfüllen",
  full: "Voll",
  agitate: "Kippen",
  invert: "Kippen",
  rest: "Ruhen lassen",
  tap: "Aufklopfen",
  "pour-out": "Ausgießen",
  empty: "Leer",
};

/** Moving the tank, by method. */
export const moves: { readonly [method in Method]: string } = {
  inversion: "Kippen",
  twist: "Drehen",
  rotary: "Rollen",
  tray: "Umschichten",
  hanger: "Anheben",
};

export const beforeRun = {
  noWorksheet: "Der Durchgang folgt dem Arbeitsblatt, und das ist noch nicht vollständig.",
  toWorkOut: "Zu „Ausrechnen“",
  ahead: "Was angesagt wird",
  develop: (films: string, time: string, temperature: string, developer: string) =>
    `${films}: ${time} bei ${temperature} in ${developer}.`,
  films: (films: readonly string[]) => films.join(", "),
  mix: (mix: string) => `Ansatz: ${mix}.`,
  how: "Wie gedrückt wird",
  once: "Einmal drücken, irgendwo auf dem Bildschirm oder auf eine beliebige Taste, führt zum nächsten Schritt.",
  twice:
    "Zweimal kurz hintereinander drücken: Die Stimme sagt, wo wir sind und was als Nächstes kommt. Während ein Bad läuft, genügt dafür einmal.",
  thrice:
    "Dreimal: Die Stimme schweigt, die Töne der Handgriffe gehen weiter; noch dreimal, und sie spricht wieder.",
  held: "Eine Sekunde lang gedrückt halten: alles Übrige nach Gehör, eine Wahl nach der anderen; drücken, wenn die eigene kommt. Binnen drei Sekunden nach einem Druck gehalten, nimmt es ihn zurück; die Rücktaste tut das auch.",
  reading:
    "Während entwickelt wird, geben die Pfeiltasten auf und ab eine Temperatur ein, Schritt für Schritt gesprochen; ein Druck setzt sie, und das Ende verschiebt sich danach.",
  clock:
    "Sobald der Entwickler in der Dose ist, wartet nichts mehr: Die Uhr in der Dose bleibt nie stehen.",
  dark: "Von „Licht aus“, bis der Deckel eingerastet ist, ist der Bildschirm schwarz und der Mauszeiger verborgen. Schwarz ist nicht aus: Das Gerät unter ein dunkles Tuch legen und zum Drücken mit der Hand darunterfahren.",
  volume: "So laut stellen, dass die Töne auch bei laufendem Wasser zu hören sind.",
  stops: "Vor dem Durchgang",
  accept: "Ich habe das gelesen und mache trotzdem weiter.",
  begin: "Beginnen",
  beginHint: "der erste Druck; ab hier übernimmt die Stimme",
  fetching: "Die Stimme wird geladen …",
  failed:
    "Die Stimme ließ sich nicht laden, deshalb hat nichts begonnen. Ein Netz wird nur einmal gebraucht, beim ersten Mal.",
  elsewhere:
    "In einem anderen Tab oder Fenster dieses Browsers läuft schon ein Durchgang. Dort weitermachen oder ihn zuerst verlassen.",
  again: "Noch einmal versuchen",
};

export const duringRun = {
  name: "Der Durchgang",
  press: "Irgendwo drücken, und es geht weiter",
  where: "Wo sind wir?",
  /** By how much is said now: what a press makes of it. */
  say: { full: "Weniger sagen", brief: "Nur Töne", tones: "Alles sagen" },
  leave: "Abbrechen",
  leaveTimed: "Die Uhr in der Dose läuft auch ohne Ansage weiter. Den Durchgang abbrechen?",
  leaveWaiting: "Den Durchgang abbrechen? Was bisher getan ist, bleibt unter „Aufschreiben“.",
  stay: "Bleiben",
  now: (deed: string) => `Jetzt: ${deed}`,
  next: "Als Nächstes",
  in: (time: string) => `in ${time}`,
  after: (deed: string, time: string) => `danach: ${deed}, in ${time}`,
  /** @param bath its id */
  leftIn: (bath: string) => `noch ${inBath(bath)}`,
  untilPour: "bis zum Einfüllen",
  emptying: "bis die Dose leer ist",
  waiting: "Drücken",
  waitingFor: (title: string) => `dann beginnt: ${title}`,
  said: "Was gesagt wurde",
  tookOver:
    "Die Stimme dieses Geräts ist zweimal hintereinander ausgefallen: Von hier an spricht die Stimme von Tankside.",
  over: "Fertig",
  overHint: "Der Film hängt. Was getan wurde, steht unter „Aufschreiben“.",
  toWriteUp: "Zu „Aufschreiben“",
};
