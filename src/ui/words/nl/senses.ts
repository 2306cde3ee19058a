// The words of how a run reaches a person (heard, read out, felt, read), and of the statement on accessibility.

export const senses = {
  title: "Wie spreekt er?",
  why: "Twee stemmen zouden door elkaar praten, daarom is het er één. Voor elke sessie kun je dat hier veranderen.",
  hear: "De vraag beluisteren",
  hearHint: "of antwoord meteen: toetsen 1, 2 en 3",
  notHeard: "De stem kon niet worden opgehaald. De eerste keer is er een netwerk nodig.",
  names: {
    program: "Het programma spreekt",
    reader: "Mijn schermlezer spreekt",
    tones: "Alleen tonen",
  },
  hints: {
    program:
      "Wat er te zeggen is, komt alleen van deze pagina; tijdens een sessie krijgt de schermlezer niets te zeggen.",
    reader:
      "Tijdens een sessie komen de woorden op hun tijd als tekst bij je schermlezer; de tonen blijven.",
    tones: "Een sessie geeft haar tonen en zegt niets, tot je erom vraagt.",
  },
  change: "Veranderen",
  also: "Om te voelen en te lezen",
  vibrates: "Bij elke toon ook trillen",
  vibratesHint:
    "Ook in het donker. Draag het apparaat op je lichaam en probeer het hier: of er een motor in zit, kan deze pagina niet weten.",
  noMotor: "Deze browser kan een apparaat niet laten trillen.",
  feel: "De tekens voelen",
  captions: "Opschrijven wat er gezegd wordt",
  captionsHint:
    "Groot op het scherm van de sessie zolang er licht is. Wat er in het donker gezegd wordt, staat er voordat het licht uitgaat.",
  darkAhead: "In het donker wordt gezegd:",
  /** The two halves of a turn, as large as the beat is short. */
  turns: { over: "Heen", back: "Terug" },
};

export const statement = {
  built: (standard: string, point: string) =>
    `Tankside is gemaakt voor ${standard}: niveau AA helemaal, en niveau AAA op één ding na, de tijd (${point}).`,
  time: "De klok in een tank kun je niet stilzetten en niet rekken. In plaats daarvan:",
  instead: [
    "Elk moment wordt aangekondigd, afgeteld en dan als toon gegeven, en is ook te voelen en te lezen.",
    "Tussen de stappen met een klok wacht de sessie op je druk, zo lang je wilt.",
    "Een druk kun je drie seconden lang terugnemen, en wie te laat is kan dat zeggen: de rest wordt opnieuw berekend.",
    "Hoe lang je giet en hoe langzaam de stem spreekt, stel je zelf in.",
  ],
  ways: "Een sessie kan op het gehoor, met schermlezer, op tonen, op trillingen of, zolang er licht is, door te lezen; met één toets, één vinger of één pedaal. Alles wat je ingedrukt houdt of twee of drie keer indrukt, heeft ook een eigen knop.",
  measured:
    "Tests meten bij elke wijziging: tekst op haar grond met 7 op 1 of beter, op beide papieren; knoppen van een sessie van minstens 88 pixels; pagina’s van 320 pixels breed zonder zijwaarts schuiven; ruim gezette tekst; geforceerde kleuren; en dat axe-core nergens iets vindt.",
  limits:
    "Bekende grenzen: een schermlezer houdt zijn eigen tempo en kan nog spreken als er een toon komt; in de zak, op een vergrendeld apparaat, heeft hij niets te lezen en hoor je alleen tonen.",
  trials:
    "Er zijn geen proeven geweest met mensen die blind of doof zijn of met één hand werken. Wat hier staat volgt de normen, en is te proberen.",
};
