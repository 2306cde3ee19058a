// What is asked of how negatives look, what it was, and what to change.

export const negatives = {
  name: "Wie sehen die Negative aus?",
  hint: "Trocken gegen ein Licht halten, nicht gegen die Sonne. Beantworten Sie, was zu sehen ist: Was es war und was zu ändern ist, steht darunter.",
  density: "Gegen das Licht sind sie",
  densities: {
    clear: "klar wie Glas",
    thin: "dünn und flau",
    good: "gut",
    dense: "dicht und dunkel",
  },
  edge: "Die Zahlen am Rand sind",
  edges: {
    none: "nicht da",
    faint: "schwach",
    usual: "wie sonst",
    heavy: "fett und schwarz",
  },
  mark: "Außerdem ist da",
  marks: {
    milky: "ein milchiger Schleier",
    purple: "ein violetter oder blauer Stich",
    drying: "Ränder oder Läufer getrockneter Tropfen",
    grey: "ein gleichmäßiges Grau, auch zwischen den Bildern",
    streaks: "Streifen von der Perforation her",
    spots: "kleine runde klare Flecken",
    moons: "Halbmonde, dunkel oder klar",
    patches: "eine Stelle, die nie entwickelt wurde",
  },
  unsaid: "nicht gesagt",
  mend: "Das lässt sich jetzt noch beheben.",
  change: "Zu ändern:",
  causes: {
    well: {
      was: "Gut belichtet und gut entwickelt.",
      change: "nichts. Wieder so, wie es hier steht.",
    },
    "not-exposed": {
      was: "Der Rand hat seine Zahlen, also hat der Entwickler gearbeitet: Auf diesen Film kam kein Bild.",
      change: "prüfen, ob die Kamera den Film transportiert und der Verschluss sich öffnet.",
    },
    "not-developed": {
      was: "Nicht einmal die Zahlen kamen: Der Entwickler war verbraucht oder fehlte, oder das Fixierbad kam zuerst.",
      change:
        "die Gefäße in ihrer Reihenfolge nummerieren und einen Tropfen Entwickler bei Licht auf ein abgeschnittenes Filmende geben: Es muss dunkel werden.",
    },
    "under-exposed": {
      was: "Die Zahlen sind kräftig, am Entwickeln lag es also nicht: Zu wenig Licht kam auf den Film. Längeres Entwickeln holt Schatten nicht zurück.",
      change: "mit niedrigerer Empfindlichkeit messen.",
    },
    "under-developed": {
      was: "Auch die Zahlen sind schwach: zu wenig entwickelt. Zu kurz, zu kalt, zu dünn oder verbraucht.",
      change:
        "das Thermometer am Anfang und am Ende in der Dose ablesen, die Verdünnung prüfen und ein Zehntel bis ein Fünftel der Zeit zugeben.",
    },
    "over-exposed": {
      was: "Die Zahlen sind wie sonst, also lag es an der Belichtung: zu viel Licht.",
      change: "mit höherer Empfindlichkeit messen, oder Objektiv und Belichtungsmesser prüfen.",
    },
    "over-developed": {
      was: "Auch die Zahlen sind fett: zu viel entwickelt. Zu lang, zu warm, zu stark oder zu viel bewegt.",
      change:
        "Temperatur und Verdünnung prüfen und ein Zehntel bis ein Fünftel der Zeit wegnehmen.",
    },
    "clear-either": {
      was: "Ohne die Zahlen ist es nicht zu sagen: nicht belichtet oder nicht entwickelt.",
      change: "am Rand nachsehen. Mit Zahlen war es die Kamera, ohne der Entwickler.",
    },
    "thin-either": {
      was: "Ohne die Zahlen ist es nicht zu sagen: zu wenig Licht oder zu wenig Entwicklung.",
      change:
        "am Rand nachsehen. Schwache Zahlen sprechen für das Entwickeln, kräftige für das Belichten.",
    },
    "dense-either": {
      was: "Ohne die Zahlen ist es nicht zu sagen: zu viel Licht oder zu viel Entwicklung.",
      change:
        "am Rand dieses oder des nächsten Films nachsehen. Fette Zahlen sprechen für das Entwickeln.",
    },
    milky: {
      was: "Er ist nicht ausfixiert.",
      change:
        "bei Licht noch einmal für die doppelte Klärzeit in frisches Fixierbad und neu wässern. Das Fixierbad vor dem nächsten Film prüfen.",
    },
    purple: {
      was: "Farbstoff ist darin geblieben; bei manchen Filmen ist ein wenig üblich.",
      change: "etwas länger in frischem Fixierbad fixieren und länger wässern, nicht zu kalt.",
    },
    drying: {
      was: "Tropfen sind getrocknet, wo sie hingen.",
      change:
        "noch einmal wässern und ein Netzmittel in weichem oder destilliertem Wasser geben. Staubfrei aufhängen.",
    },
    grey: {
      was: "Außerhalb der Kamera kam Licht daran, oder alte Chemie hat ihn verschleiert.",
      change:
        "länger im Dunkeln warten und nach Lecks sehen, Kern und Verschluss des Deckels ertasten und frischen Entwickler nehmen.",
    },
    streaks: {
      was: "Zu heftig bewegt oder immer gleich.",
      change: "sanfter kippen, mit einer Vierteldrehung dazwischen.",
    },
    spots: {
      was: "Luftblasen hingen daran.",
      change: "nach jedem Kippen die Dose fest aufklopfen und stetig eingießen.",
    },
    moons: {
      was: "Er wurde beim Einspulen geknickt.",
      change: "ohne Kraft einspulen, auf trockener Spirale; klemmt es, eine Windung zurück.",
    },
    patches: {
      was: "Zwei Windungen berührten sich auf der Spirale, und nichts kam dazwischen.",
      change:
        "beim Einspulen beide Ränder jeder Windung fühlen; bei Licht mit einem alten Film üben.",
    },
  },
};
