// The words of how a run reaches a person (heard, read out, felt, read), and of the statement on accessibility.

export const senses = {
  title: "Wer spricht?",
  why: "Zwei Stimmen würden einander ins Wort fallen, darum ist es eine. Vor jedem Durchgang lässt sich das hier ändern.",
  hear: "Die Frage anhören",
  hearHint: "oder gleich antworten: Tasten 1, 2 und 3",
  notHeard: "Die Stimme ließ sich nicht laden. Beim ersten Mal braucht es ein Netz.",
  names: {
    program: "Das Programm spricht",
    reader: "Mein Screenreader spricht",
    tones: "Nur Töne",
  },
  hints: {
    program:
      "Was zu sagen ist, kommt allein von dieser Seite; im Durchgang bekommt der Screenreader nichts zu sagen.",
    reader:
      "Im Durchgang kommen die Worte zu ihrer Zeit als Text zum Screenreader; die Töne bleiben.",
    tones: "Ein Durchgang gibt seine Töne und sagt nichts, bis man ihn darum bittet.",
  },
  change: "Ändern",
  also: "Zum Fühlen und Lesen",
  vibrates: "Bei jedem Ton auch vibrieren",
  vibratesHint:
    "Auch im Dunkeln. Das Gerät am Körper tragen und es hier ausprobieren: Ob es einen Motor hat, lässt sich von hier aus nicht erkennen.",
  noMotor: "Dieser Browser kann kein Gerät vibrieren lassen.",
  feel: "Die Zeichen fühlen",
  captions: "Mitschreiben, was gesagt wird",
  captionsHint:
    "Groß auf dem Bildschirm des Durchgangs, solange Licht ist. Was im Dunkeln gesagt wird, steht dort, bevor das Licht ausgeht.",
  darkAhead: "Im Dunkeln wird gesagt:",
  /** The two halves of a turn, as large as the beat is short. */
  turns: { over: "Hin", back: "Zurück" },
};

export const statement = {
  built: (standard: string, point: string) =>
    `Tankside ist für ${standard} gebaut: Stufe AA ganz, Stufe AAA bis auf eines, die Zeit (${point}).`,
  time: "Die Uhr in einer Dose lässt sich weder anhalten noch dehnen. Stattdessen:",
  instead: [
    "Jeder Handgriff wird angesagt, eingezählt und dann als Ton gegeben; er lässt sich auch fühlen und lesen.",
    "Zwischen den Schritten mit Uhr wartet der Durchgang auf den nächsten Druck, so lange man will.",
    "Ein Druck lässt sich drei Sekunden lang zurücknehmen, und wer sich verspätet, kann es sagen: Der Rest wird neu berechnet.",
    "Wie lange eingefüllt wird und wie langsam die Stimme spricht, ist einstellbar.",
  ],
  ways: "Ein Durchgang geht nach Gehör, mit dem Screenreader, nach Tönen, nach Vibration oder, solange Licht ist, durch Lesen; mit einer Taste, einem Finger oder einem Pedal. Alles, was gehalten oder zwei- und dreimal gedrückt wird, hat auch eine eigene Schaltfläche.",
  measured:
    "Tests messen bei jeder Änderung: Schrift zu Grund 7 zu 1 oder besser, auf beiden Papieren; Schaltflächen eines Durchgangs mit mindestens 88 Pixeln; Seiten mit 320 Pixeln Breite ohne seitliches Rollen; weit gesetzte Schrift; erzwungene Farben; und dass axe-core an keinem Ort etwas findet.",
  limits:
    "Bekannte Grenzen: Ein Screenreader hat sein eigenes Tempo und spricht vielleicht noch, wenn ein Ton kommt; in der Tasche, auf einem gesperrten Gerät, hat er nichts vorzulesen, und es sind nur Töne zu hören.",
  trials:
    "Mit Menschen, die blind oder gehörlos sind oder mit einer Hand arbeiten, wurde nichts erprobt. Was hier steht, folgt den Normen und ist zum Erproben angeboten.",
};
