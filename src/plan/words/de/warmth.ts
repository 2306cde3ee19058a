// Mixing and tempering, lines and warnings, in German.
import type { MixingWords, TemperingWords } from "../warmth-words.ts";

export const mixing: MixingWords = {
  water: "Wasser dazu",
  waterSum: ({ total, target, weight, stock, at, stockWeight, sum }) =>
    `${total} wiegen bei ${target} ${weight}, ${stock} Vorratslösung bei ${at} etwa ${stockWeight}: ${sum}`,
  hot: "Heiß aus dem Hahn",
  cold: "Kalt aus dem Hahn",
  pourSum: ({ sum, at, density }) => `${sum}; bei ${at} wiegt ein ml ${density}`,
  marks: "Auf ganze Striche",
  marksSum: ({ stock, cold, hot, whole, dilution }) =>
    `${stock} Vorratslösung, ${cold} kalt und ${hot} heiß ergeben ${whole} (${dilution})`,
  warnings: {
    nothingToMix:
      "Der Entwickler wird unverdünnt gebraucht, es gibt also kein Wasser, mit dem er sich erwärmen ließe. In ein Wasserbad stellen.",
    outOfReach: ({ target, coldest, warmest }) =>
      `Mit dieser Vorratslösung und diesen Wasserhähnen lassen sich ${target} nicht mischen: Zu haben ist alles von ${coldest} bis ${warmest}. Erst die Vorratslösung kühlen oder erwärmen, Eiswasser nehmen, oder das Nächstliegende mischen und ins Wasserbad stellen.`,
    oneTap: ({ temperature }) =>
      `Beide Wasserhähne haben dieselbe Temperatur, der Ansatz wird also ${temperature} haben, wie viel auch von jedem kommt.`,
    noWater:
      "Wasser ist von 0 bis 100 °C (32 bis 212 °F) flüssig: Eine der Temperaturen zum Mischen liegt außerhalb.",
    marksTooCoarse: ({ mark, dilution }) =>
      `Eine Teilung von ${mark} ist für diesen Ansatz zu grob: Damit wird er ${dilution}. Die Vorratslösung in einem kleineren Messzylinder abmessen.`,
    lessThanAMark: ({ mark }) =>
      `Eine Teilung von ${mark} ist für diesen Ansatz zu grob: Die Vorratslösung kommt nicht einmal auf einen halben Strich. Sie in einem kleineren Messzylinder abmessen.`,
  },
};

export const tempering: TemperingWords = {
  thermometer: "Thermometer",
  reading: ({ at, temperature }) => `${at} ${temperature}`,
  readings: ({ count }) => (count === 1 ? "1 Messung" : `${count} Messungen`),
  goes: "Verlauf",
  minutes: "Minuten",
  goesSum: ({ sum, room, halfway, from, to, misfit }) =>
    `${sum}, alle ${halfway} min den halben Weg zu ${room}; stehen bleiben kann es zwischen ${from} und ${to}; die Messungen liegen im Mittel ${misfit} daneben`,
  settles: ({ temperature }) => `bleibt bei ${temperature} stehen`,
  reached: ({ temperature }) => `Auf ${temperature}`,
  reachedSum: ({ sum, range }) =>
    `${sum} auf der Uhr der Messungen; was das Thermometer offen lässt: ${range}`,
  orNever: ({ soonest }) => `frühestens ${soonest}, oder nie`,
  range: ({ from, to }) => `${from} bis ${to}`,
  onTheWall: ({ time }) => `an der Wand ist es dann ${time}`,
  about: ({ time }) => `etwa ${time}`,
  muchLater: "viel später",
  bathFor: ({ count }) => (count === 1 ? "Bad für 1 Minute" : `Bad für ${count} Minuten`),
  ice: "Eis dafür",
  iceSum: ({ water, from, to, sum }) => `${water} Wasser von ${from} auf ${to}: ${sum}`,
  asItIs: "Oder so, wie er ist",
  asItIsSum: ({ temperature, time }) =>
    `bei zuletzt gemessenen ${temperature} braucht dieser Film ${time}`,
  beyond: ({ by }) => `das liegt ${by} außerhalb der Zeilen des Datenblatts`,
  readAgain: "vor dem Einfüllen noch einmal messen",
  guess: ({ time }) => `${time}, geschätzt`,
  warnings: {
    atTarget: ({ target }) =>
      `Der Entwickler hat ${target}, so genau ein Thermometer es zeigt. Aus dem Wasserbad nehmen oder das Wasserbad auf dieselbe Temperatur bringen.`,
    unfit: {
      "too-few":
        "Zu wenige Messungen, um zu sagen, wann es so weit ist: zwei, wenn die Temperatur des Wasserbads bekannt ist, sonst drei. Umrühren und in zwei Minuten wieder messen.",
      "too-close":
        "Die Messungen liegen weniger als eine Minute auseinander. In zwei oder drei Minuten wieder messen.",
      still:
        "Die Messungen unterscheiden sich nicht mehr, als ein Thermometer zeigen kann, deshalb lässt sich keine Zeit sagen. Warten, umrühren, wieder messen; oder das Wasserbad hat getan, was es kann.",
      noisy:
        "Die Messungen springen stärker hin und her, als ein Thermometer es tut. Vor jeder umrühren, das Thermometer von der Wand weghalten und falsch abgelesene weglassen.",
      contradictory:
        "Die Messungen passen nicht zu einem einzigen Wasserbad: Sie kehren um oder entfernen sich von ihm. Kam Eis oder Wasser dazu, oder ist eine falsch abgelesen? Mit der letzten neu beginnen.",
    },
    movesAway: ({ target }) =>
      `Der Entwickler ist über ${target} hinaus und entfernt sich weiter davon. Aus diesem Wasserbad herausnehmen.`,
    neverReaches: ({ target, settles }) =>
      `In diesem Wasserbad kommt der Entwickler nie auf ${target}: Er bleibt bei etwa ${settles} stehen. Das Wasser im Bad wechseln, oder ihn nehmen, wie er ist, und so lange entwickeln wie angegeben.`,
    askIce: "Mit Temperatur und Wassermenge des Wasserbads lässt sich das Eis dafür ausrechnen.",
    mayNotReach: ({ target }) =>
      `Aus diesen Messungen ist nicht zu sehen, ob der Entwickler in diesem Wasserbad überhaupt auf ${target} kommt. In zwei oder drei Minuten wieder messen, oder gleich das Wasser wechseln.`,
    takesLong: ({ target, wait }) =>
      `Bis ${target} dauert es noch etwa ${wait}. Mit einem Wasserbad, dessen Temperatur weiter weg liegt, geht es schneller; oder ihn nehmen, wie er ist, und so lange entwickeln wie angegeben.`,
    wait: ({ target, wait, range }) =>
      `Noch etwa ${wait} warten bis ${target} (${range}), dann noch einmal messen und aus dem Wasserbad nehmen.`,
  },
};
