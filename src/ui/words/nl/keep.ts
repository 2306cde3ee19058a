// The words of what the page says about itself: a newer version, standing among the programs, what is kept.

export const news = {
  ready:
    "Er staat een nieuwe versie klaar. De pagina laadt daarvoor opnieuw; wat je hebt ingevuld blijft staan.",
  takenElsewhere:
    "Een ander tabblad gebruikt al een nieuwe versie. Van deze pagina kunnen delen ontbreken tot ze opnieuw is geladen.",
  takeIt: "Nu overnemen",
  loadAnew: "Opnieuw laden",
  /** Said of the version, where something is in the way of it. */
  waits: {
    "run-is-on": "Ze wacht tot de sessie voorbij is.",
    "other-pages":
      "Sluit eerst de andere tabbladen en vensters van Tankside: die werken nog met de vorige versie.",
    failed:
      "Overnemen lukte nu niet. De versie komt vanzelf zodra alle tabbladen van Tankside dicht zijn geweest.",
  },
};

export const install = {
  offer: "Tankside kan tussen de programma’s van dit apparaat staan.",
  install: "Installeren",
};

export const keeping = {
  /** Before a run, this and the next. */
  nothing:
    "Deze browser bewaart niets van een sessie: als de pagina wordt gesloten, vindt ze niet terug waar ze was, en er blijft niets van over. Zo gaat het in privévensters en bij sommige instellingen.",
  noRoom:
    "Er is geen ruimte meer om een sessie te bewaren: als de pagina wordt gesloten, vindt ze niet terug waar ze was, en er blijft niets van over. Maak eerst ruimte op dit apparaat.",
  /** Beside the records. */
  noMoreRoom:
    "Er is hier geen ruimte meer voor nog een sessie. Maak ruimte op dit apparaat, of sla de sessies op in een bestand en haal er een paar weg.",
  mayBeCleared:
    "Deze browser mag wissen wat hij hier bewaart: een privévenster bij het sluiten, elk ander als de schijf vol raakt. Sla sessies die ertoe doen op in een bestand.",
};
