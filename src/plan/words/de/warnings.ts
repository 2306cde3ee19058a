// The warnings about time, mix, hands, baths and voice, in German.
import type { WarningWords } from "../warning-words.ts";

const than = (warmer: boolean) => (warmer ? "wärmer" : "kälter");

export const warnings: WarningWords = {
  extrapolated: ({ by, row, bath, warmer, tooFar }) =>
    `Der Entwickler ist ${by} ${than(warmer)} als die nächste Zeile des Datenblatts (${row}), ${
      tooFar
        ? "so weit von den Zeilen entfernt, dass auf die Zeit kein Verlass ist"
        : "und wie sich die Zeit dort ändert, ist nicht bekannt"
    }. Näher an ${row} bringen, oder die Zeile des Datenblatts für ${bath} ergänzen.`,
  driftExtrapolated: ({ end, by, row, bath, warmer }) =>
    `Die Dose hat am Ende ${end}, ${by} ${than(warmer)} als die nächste Zeile des Datenblatts (${row}). Wie sich die Zeit dort ändert, ist nicht bekannt, und das trifft den letzten Teil. Die Dose in Wasser von ${bath} stellen.`,
  readingExtrapolated: ({ reading, by, row, warmer }) =>
    `In der Dose waren es ${reading}, ${by} ${than(warmer)} als die nächste Zeile des Datenblatts (${row}). Wie sich die Zeit dort ändert, ist nicht bekannt, und das trifft diesen Teil.`,
  tooCold: ({ bath }) =>
    `Der Entwickler hat ${bath}. Unter 15,6 °C (60 °F) verliert ein Entwickler mit Hydrochinon rasch an Kraft, und mehr Zeit macht das nicht wett. Das Bad erwärmen.`,
  tooWarm: ({ bath }) =>
    `Der Entwickler hat ${bath}. Über 26,7 °C (80 °F) wird die Gelatine weich, und die Zeit ist zu kurz, um sie gut einzuhalten. Das Bad kühlen.`,
  shortDevelopment: ({ time, least }) =>
    `Die Entwicklung dauert ${time}. Unter ${least} werden die zuerst benetzten Stellen sichtbar dichter. Eine stärkere Verdünnung oder ein kühleres Bad braucht länger.`,
  leastAt: ({ least, temperature }) =>
    `Nach diesem Datenblatt sind es ${least} bei ${temperature}.`,
  rowOutOfLine: ({ time, temperature, expected }) =>
    `Eine Zeile des Datenblatts fällt aus der Reihe: ${time} bei ${temperature}, wo die anderen auf etwa ${expected} deuten. Noch einmal nachsehen: Eine Ziffer ist schnell falsch gelesen.`,
  soughtNowhere: ({ time }) =>
    `Für ${time} lässt sich keine Temperatur nennen: Die Zeiten des Datenblatts werden mit der Wärme nicht durchweg kürzer.`,
  soughtBeyond: ({ time, temperature, by }) =>
    `${time} kämen bei ${temperature} heraus, aber das liegt ${by} außerhalb der Zeilen des Datenblatts. Wie sich die Zeit dort ändert, ist nicht bekannt.`,
  readingsPastEnd: ({ done, read }) =>
    `Nach den Messungen in der Dose war die Entwicklung bei ${done} fertig, noch vor der Messung bei ${read}. Etwas zu lang schadet wenig; jetzt ausgießen und aufschreiben.`,
  longerThanADay: ({ hours }) =>
    `Für die Entwicklung kommen ${hours} heraus; gekürzt ist auf 24:00:00, und das ist nicht die ausgerechnete Zeit. In den Zeilen des Datenblatts, den Temperaturen oder der Belichtung steckt wohl ein Fehler: dort nachsehen.`,
  hours: ({ count }) => (count === 1 ? "1 Stunde" : `${count} Stunden`),
  moreHours: ({ count }) => (count === 1 ? "mehr als 1 Stunde" : `mehr als ${count} Stunden`),
  mixedRatings: ({ films, first }) =>
    `Die Filme sind auf verschiedene Werte belichtet: ${films}. Jeder braucht seine eigene Zeit, und eine Zeit dazwischen stimmt für keinen; dieser Plan gilt nur für „${first}“. Die anderen für sich entwickeln.`,
  ratedFilm: ({ film, rating }) => `„${film}“ auf ${rating}`,
  ratedFilmOfSpeed: ({ film, rating, box }) =>
    `„${film}“ auf ${rating} (Nennempfindlichkeit ${box})`,
  unratedFilm: ({ film }) => `„${film}“ ohne Angabe`,
  leafletBackwards: ({ warmer, colder }) =>
    `Die Zeiten des Datenblatts werden kürzer, wenn es kälter wird: ${warmer}, aber ${colder}. Ein kälteres Bad arbeitet langsamer, also ist eine der beiden falsch gelesen. Diese Zeile berichtigen.`,
  stockShort: ({ tank, dilution, stock, needed, films, wanted, served }) =>
    `${tank} (${dilution}) enthalten ${stock} Vorratslösung, für ${films} zu 80 Quadratzoll sind aber ${needed} nötig: Der Entwickler wäre erschöpft, bevor der Film fertig ist. Mit ${wanted} in der Dose ginge es; ${tank} reichen für ${served} zu 80 Quadratzoll.`,
  bathTooShort: ({ bath, time, pouring, least }) =>
    `${bath}: Bei ${time} müsste das Ausgießen beginnen, bevor die Dose voll ist, denn Einfüllen und Ausgießen nehmen ${pouring} davon. ${least} oder mehr geben, schneller gießen, oder die Zeit erst ab der vollen Dose zählen.`,
  temperatureStep: ({ bath, temperature, by, most, warmer }) =>
    `${bath}: ${temperature}, das ist ${by} ${than(warmer)} als der Entwickler. Ein Sprung von mehr als ${most} kann Runzelkorn geben. Die Bäder auf ähnliche Temperatur bringen.`,
  languageUnavailable: ({ language }) =>
    `Für die Sprache „${language}“ gibt es noch keine Stimme, deshalb spricht die Stimme Englisch.`,
  fixerSpent: ({ times }) =>
    `Das Fixierbad braucht zum Klären ${times}-mal so lang wie im frischen Zustand; beim Doppelten ist es erschöpft, und darin fixierter Film hält sich nicht. Zur Silberrückgewinnung abgeben und frisch ansetzen.`,
  clearedQuicker:
    "Der Schnipsel klärte schneller als im frischen Fixierbad, und das kann nicht sein. War es wärmer, war es ein anderer Film, oder ist eine der beiden Zeiten falsch abgelesen?",
  fixerShort: ({ given, asked, twice }) =>
    `Fürs Fixierbad stehen ${given} da, aber die ${twice ? "doppelte" : "dreifache"} Klärzeit ist ${asked}. Mindestens so lange fixieren, oder die Zeit leer lassen.`,
  washShort: ({ left, limit, cure }) =>
    `Nach bloßer Verdünnung gerechnet lässt diese Wässerung ${left} Thiosulfat auf dem Film, mehr als die ${limit}, die bleiben dürfen. ${cure}`,
  moreChanges: ({ count }) =>
    count === 1 ? "Nötig ist 1 Wasserwechsel." : `Nötig sind ${count} Wasserwechsel.`,
  moreRunning: ({ time }) => `Das Wasser ${time} laufen lassen.`,
  pastCapacity: ({ bath, before, now, all, developer }) =>
    `${bath}: ${before} vorher und ${now} jetzt sind mehr, als die Menge hergibt, nämlich ${all} zu 80 Quadratzoll. ${
      developer
        ? "Der Entwickler wäre erschöpft, bevor der Film fertig ist. Frischen nehmen oder weniger Filme."
        : "Zählen allein beweist nichts: mit einem Filmschnipsel prüfen, und frisch ansetzen, wenn er nicht besteht."
    }`,
  replenishedTwice:
    "Für jeden früheren Film ist mehr Zeit verlangt, und Regenerator dazu. Mit Regenerator bleibt die Zeit gleich: Eines von beiden genügt.",
  unevenHands: ({ what, spread, median }) =>
    `${what}: Die Zeiten liegen ${spread} auseinander, um ${median} herum. Mit Wasser üben: Gleichmaß zählt mehr als Tempo.`,
  notAsMeasured: ({ what, used, median }) =>
    `${what} ist mit ${used} gerechnet, die eigenen Hände brauchten aber ${median}.`,
};
