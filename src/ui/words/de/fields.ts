// What the fields of the development are called, by the pattern of their paths, and why they are asked.

export const fields = {
  language: { label: "Sprache der Stimme" },
  title: { label: "Name des Arbeitsblatts" },
  "films[].label": { label: "Film" },
  "films[].size": { label: "Format" },
  "films[].count": { label: "Wie viele" },
  "films[].boxSpeed": { label: "Nenn\u00adempfindlich\u00adkeit" },
  "films[].exposureIndex": {
    label: "Belichtet auf",
    why: "Die Empfindlichkeit, die am Belichtungsmesser eingestellt war. Leer gilt die Nennempfindlichkeit. Alle Filme in einer Dose bekommen dieselbe Zeit, also sollten sie auf denselben Wert belichtet sein.",
  },
  "developer.label": { label: "Entwickler" },
  "developer.dilution": {
    label: "Ver\u00addünnung",
    why: "Teile Vorratslösung, dann Teile Wasser: 1+3 heißt ein Teil Vorratslösung und drei Teile Wasser. „stock“ heißt unverdünnt. 1:3 wird nicht angenommen, weil es auf zwei Arten gelesen wird.",
  },
  "developer.leaflet[].temperature": { label: "Temperatur" },
  "developer.leaflet[].time": { label: "Zeit" },
  "developer.leaflet[].exposureIndex": { label: "Falls belichtet auf" },
  "developer.temperature": {
    label: "Jetzt im fertigen Bad",
    why: "Was das Thermometer im Bad selbst zeigt, kurz bevor es gebraucht wird. Dafür wird die Zeit ausgerechnet.",
  },
  "developer.perDegree": {
    label: "Änderung je °C",
    why: "k in Zeit × e^(−k × °C), für ein Datenblatt mit nur einer Zeile. Leer gilt 0,099.",
  },
  "developer.perStop.pull": {
    label: "Kürzer je Blende mehr Licht, %",
    why: "Leer gilt 10.",
  },
  "developer.perStop.push": {
    label: "Länger je Blende weniger Licht, %",
    why: "Leer gilt 40.",
  },
  "developer.stockPerFilm": {
    label: "Mindestens Vorrats\u00adlösung je Film",
    why: "Was 80 Quadratzoll (516 cm²) verbrauchen: ein 135-36, ein 120 oder vier Planfilme 4×5 Zoll. Der Hersteller gibt es an. Bleibt das Feld leer, wird nichts geprüft.",
  },
  "developer.filmsBefore": { label: "Filme, die schon durch sind" },
  "developer.perFilmBefore": { label: "Länger für jeden davon, %" },
  "tank.method": { label: "Verfahren" },
  "tank.volume": { label: "Menge, die den Film bedeckt" },
  "tank.pourIn": {
    label: "Einfüllen dauert",
    why: "Mit Wasser ausprobieren und die Zeit nehmen. Die Uhr richtet sich danach.",
  },
  "tank.pourOut": { label: "Ausgießen dauert" },
  "tank.handover": { label: "Von leer bis zum nächsten Bad" },
  "tank.timeFactor": {
    label: "Zeit mal",
    why: "Für dieses Verfahren. Leer gilt 1, bei der Trommel 0,85.",
  },
  "tank.room": {
    label: "Im Raum",
    why: "Eine Dose wandert zur Raumtemperatur hin. Mit dieser Angabe und der Halbzeit rechnet die Antwort das ein.",
  },
  "tank.halfway": {
    label: "Halber Weg dorthin in",
    why: "Die Halbzeit: Minuten, in denen eine Dose voll Wasser die halbe Strecke von ihrer Temperatur zu der des Raums zurücklegt.",
  },
  "agitation.first": { label: "Anfangs ohne Pause" },
  "agitation.every": { label: "Dann alle" },
  "agitation.for": {
    label: "Jeweils",
    why: "Bei 0 steht das Bad still. Ist es so lang wie „Dann alle“ oder länger, wird ohne Pause bewegt.",
  },
  "agitation.perInversion": { label: "Einmal hin und zurück dauert" },
  "agitation.taps": { label: "Wie oft aufklopfen" },
  "clock.starts": { label: "Die Uhr läuft los" },
  "clock.ends": { label: "Die Zeit ist um" },
  "baths.*.use": { label: "Verwendet" },
  "baths.*.time": { label: "Zeit" },
  "baths.*.temperature": { label: "Temperatur" },
  "baths.*.agitation.first": { label: "Anfangs ohne Pause" },
  "baths.*.agitation.every": { label: "Dann alle" },
  "baths.*.agitation.for": { label: "Jeweils" },
  "baths.*.agitation.perInversion": { label: "Einmal hin und zurück dauert" },
  "baths.*.agitation.taps": { label: "Wie oft aufklopfen" },
  "baths.*.afterwards": { label: "Danach kommt es" },
  "baths.*.fills": {
    label: "Mit Wasserwechseln",
    why: "Statt einer Zeit: wie oft in jeder Füllung frischen Wassers gekippt wird, etwa 5, 10, 20.",
  },
  darkWait: {
    label: "Im Dunkeln warten",
    why: "Um nach Licht zu suchen, bevor der Film herauskommt. Leer heißt 3:00, wie üblich; bei 0:00 entfällt es. Augen brauchen eine halbe Stunde, bis sie alles sehen.",
  },
  loading: { label: "Der Film" },
  "voice.detail": { label: "Wie viel gesagt wird" },
  "voice.rate": {
    label: "Tempo",
    why: "1 ist wie aufgenommen, 0,8 am langsamsten, 1,6 am schnellsten.",
  },
};
