// The words for what the hands use beside the one press, in German: a thermometer, a pedal, a knock.

export const reading = {
  name: "Thermometer",
  typed: "Temperatur in der Dose",
  taken: (temperature: string) => `${temperature} übernommen.`,
  range: (least: string, most: string) =>
    `Ein Entwickler in der Dose hat ${least} bis ${most}. Nichts hat sich geändert.`,
  connect: "Ein Thermometer verbinden",
  hint: "Eines mit Bluetooth verschiebt das Ende dann von selbst. Nötig ist es nie.",
  connecting: "Ein Thermometer wird gesucht …",
  disconnect: "Trennen",
  nameless: "Thermometer",
  on: (name: string, temperature: string) => `${name}: ${temperature}.`,
  nothingYet: (name: string) => `${name}: verbunden, noch keine Messung.`,
  out: (name: string, temperature: string) =>
    `${name}: ${temperature}. Es ist wohl nicht in der Dose, deshalb zählt das nicht.`,
  lost: (name: string) => `${name}: Verbindung verloren, wird gesucht.`,
  last: (temperature: string) => `Letzte Messung: ${temperature}.`,
  refused: {
    none: "Kein Thermometer ausgewählt. Einschalten, in die Nähe bringen, dann noch einmal drücken.",
    denied:
      "Bluetooth darf hier nicht benutzt werden. In den Einstellungen erlauben, dann noch einmal drücken.",
    unreachable:
      "Das Thermometer hat nicht geantwortet. Näher heranbringen oder von einem anderen Gerät trennen, dann noch einmal drücken.",
    unfit: "Dieses gibt keine Temperatur her, die sich hier lesen lässt.",
    unable: "Dieser Browser kann auf dieser Seite kein Bluetooth benutzen.",
  },
};

export const pedal = {
  name: "Umblätterer, Pedal oder anderer Knopf",
  hint: "Was diesem Gerät Tasten schickt, kann im Durchgang drücken. Gelernt wird es, indem man es drückt.",
  learn: "Einen lernen",
  capture:
    "Jetzt drücken: einmal kurz, dann noch einmal eine Sekunde lang. Die Escape-Taste bricht ab.",
  again: "Angekommen. Jetzt noch einmal, eine Sekunde lang.",
  calledOff: "Nichts gelernt.",
  nothing: "Keine Taste kam an. Ist der Knopf eingeschaltet und mit diesem Gerät gekoppelt?",
  learnt: "Gelernt.",
  notKept: "Dieser Browser kann es nicht behalten: Es gilt, bis die Seite geschlossen wird.",
  known: "Bisher gelernt",
  holds: (key: string) => `${key}: zum Drücken und Halten`,
  taps: (key: string) => `${key}: zum Drücken, nicht zum Halten`,
  keyboard: "Im Durchgang drücken diese Tasten, woher sie auch kommen, auch von einer Tastatur.",
  refused: {
    moves: "Tabulator und Escape bleiben, was sie sind: Wer sich mit Tasten bewegt, braucht sie.",
    modifier: "Diese Taste bedeutet allein nichts, also kann sie nicht drücken.",
    nameless: "Diese Taste hat keinen Namen, an dem sie wiederzuerkennen wäre.",
  },
  try: "Ausprobieren",
  trying: "Drücken wie im Durchgang. Die Escape-Taste beendet es.",
  meanings: {
    once: "Einmal: geht weiter oder sagt, wo wir sind.",
    twice: "Zweimal: sagt, wo wir sind.",
    thrice: "Dreimal: lässt die Stimme schweigen oder wieder sprechen.",
    held: "Gehalten: nimmt zurück oder bietet an, was sonst noch geht.",
  },
  tried: "Die Probe ist zu Ende.",
  forget: (key: string) => `${key} vergessen`,
  forgotten: "Vergessen.",
  keys: { space: "Leertaste", enter: "Eingabetaste", pageUp: "Bild auf", pageDown: "Bild ab" },
};

export const knocks = {
  hear: "Auf Klopfen am Tisch hören (Mikrofon)",
  hint: "Was es hört, wird nicht behalten und verlässt dieses Gerät nie. Nötig ist es nie: Ein Druck tut dasselbe.",
};
