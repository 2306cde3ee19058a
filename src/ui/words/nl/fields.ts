// What the fields of the development are called, by the pattern of their paths, and why they are asked.

export const fields = {
  language: { label: "De stem spreekt" },
  title: { label: "Naam van deze werkkaart" },
  "films[].label": { label: "Film" },
  "films[].size": { label: "Formaat" },
  "films[].count": { label: "Hoeveel" },
  "films[].boxSpeed": { label: "ISO op het doosje" },
  "films[].exposureIndex": {
    label: "Belicht op",
    why: "De gevoeligheid waarop de belichtingsmeter stond. Leeg geldt de ISO op het doosje. Alle films in één tank krijgen dezelfde tijd, dus horen ze op dezelfde waarde belicht te zijn.",
  },
  "developer.label": { label: "Ontwikkelaar" },
  "developer.dilution": {
    label: "Verdunning",
    why: "Delen stock, dan delen water: 1+3 is één deel stock en drie delen water. “stock” is onverdund. 1:3 kan hier niet, want dat wordt op twee manieren gelezen.",
  },
  "developer.leaflet[].temperature": { label: "Temperatuur" },
  "developer.leaflet[].time": { label: "Tijd" },
  "developer.leaflet[].exposureIndex": { label: "Als belicht op" },
  "developer.temperature": {
    label: "Nu in het gemengde bad",
    why: "Wat de thermometer in het bad zelf aanwijst, vlak voor gebruik. Daarvoor wordt de tijd uitgerekend.",
  },
  "developer.perDegree": {
    label: "Verandering per °C",
    why: "k in tijd × e^(−k × °C), voor een bijsluiter met maar één rij. Leeg geldt 0,099.",
  },
  "developer.perStop.pull": {
    label: "Korter per stop overbelicht, %",
    why: "Leeg geldt 10.",
  },
  "developer.perStop.push": {
    label: "Langer per stop onderbelicht, %",
    why: "Leeg geldt 40.",
  },
  "developer.stockPerFilm": {
    label: "Minste stock voor één film",
    why: "Wat 80 vierkante inch (516 cm²) verbruikt: één 135-36, één 120 of vier vellen 4×5 inch. De fabrikant geeft het op. Blijft dit leeg, dan wordt het niet nagerekend.",
  },
  "developer.filmsBefore": { label: "Films die er al door zijn" },
  "developer.perFilmBefore": { label: "Langer voor elk daarvan, %" },
  "tank.method": { label: "Methode" },
  "tank.volume": { label: "Om de film te bedekken" },
  "tank.pourIn": {
    label: "Ingieten duurt",
    why: "Neem de tijd op met water. De klok wordt erop afgestemd.",
  },
  "tank.pourOut": { label: "Uitgieten duurt" },
  "tank.handover": { label: "Van leeg tot het volgende bad" },
  "tank.timeFactor": {
    label: "Tijd maal",
    why: "Voor deze methode. Leeg geldt 1, of 0,85 bij een trommel.",
  },
  "tank.room": {
    label: "De ruimte",
    why: "Een tank gaat langzaam naar de temperatuur van de ruimte toe. Hiermee en met de tijd tot halverwege houdt het antwoord daar rekening mee.",
  },
  "tank.halfway": {
    label: "Halverwege daarheen in",
    why: "Minuten waarin een tank met water de helft aflegt van de weg van zijn eigen temperatuur naar die van de ruimte.",
  },
  "agitation.first": { label: "Eerst zonder pauze" },
  "agitation.every": { label: "Daarna om de" },
  "agitation.for": {
    label: "Telkens",
    why: "Bij 0 staat het bad stil; zo lang als “Daarna om de”, of langer, is zonder pauze.",
  },
  "agitation.perInversion": { label: "Heen en terug duurt" },
  "agitation.taps": { label: "Tikken na elke beurt" },
  "clock.starts": { label: "De klok begint" },
  "clock.ends": { label: "De tijd is om" },
  "baths.*.use": { label: "Gebruikt" },
  "baths.*.time": { label: "Tijd" },
  "baths.*.temperature": { label: "Temperatuur" },
  "baths.*.agitation.first": { label: "Eerst zonder pauze" },
  "baths.*.agitation.every": { label: "Daarna om de" },
  "baths.*.agitation.for": { label: "Telkens" },
  "baths.*.agitation.perInversion": { label: "Heen en terug duurt" },
  "baths.*.agitation.taps": { label: "Tikken na elke beurt" },
  "baths.*.afterwards": { label: "Na het uitgieten" },
  "baths.*.fills": {
    label: "Met verse vullingen",
    why: "In plaats van een tijd: hoe vaak je bij elke vulling vers water kantelt, bijvoorbeeld 5, 10, 20.",
  },
  darkWait: {
    label: "Wachten in het donker",
    why: "Om naar licht te zoeken voordat de film eruit komt. Leeg is 3:00, zoals gebruikelijk; 0:00 laat het weg. Ogen hebben een half uur nodig om alles te zien.",
  },
  loading: { label: "De film" },
  "voice.detail": { label: "Hoeveel gezegd wordt" },
  "voice.rate": {
    label: "Tempo",
    why: "1 is zoals opgenomen; 0,8 is het langzaamst, 1,6 het snelst.",
  },
};
