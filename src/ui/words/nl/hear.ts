// The Dutch words of what is heard before a run: the test with the tap running, and headphones that play late.

export const hearFirst = {
  title: "Luister eerst",
  how: "Zet de kraan open zoals straks, en ga staan waar je gaat werken. Laat hem lopen terwijl je luistert.",
  ask: "Heb je alles gehoord, met de kraan open?",
  play: "Proef afspelen",
  playAgain: "Nog eens afspelen",
  playHint: "een paar tonen en een zin, zo hard als in de sessie",
  playing: "Speelt af…",
  listen: "Luister nu, met de kraan open.",
  failed:
    "De proef kon niet worden afgespeeld. Je hebt maar één keer een netwerk nodig, de eerste keer, voor de stem.",
  heard: "Gehoord",
  notHeard: "Niet gehoord",
  good: "Goed. Zo hard klinkt straks ook de sessie.",
  mend: "Dan is het meestal een van deze dingen; speel daarna nog eens af:",
  advice: [
    "Het volume: zet het met de hand hoger, op het apparaat en op de luidspreker of de koptelefoon.",
    "De dempknop: sommige apparaten hebben er een aan de zijkant, of een stille stand.",
    "Waar het geluid heen gaat: misschien is een luidspreker in een andere kamer verbonden, of een koptelefoon in een la.",
    "Het water: een dunnere straal, het apparaat dichterbij, of een koptelefoon.",
  ],
  begin: "Beginnen zonder het te horen",
  beginHint: "voor wie de tonen op het lichaam voelt, of de woorden meeleest",
};

export const tapAlong = {
  ask: "Draadloze koptelefoon?",
  why: "Die speelt te laat, vaak een kwart seconde, en de toon om uit te gieten komt dan ook te laat. Tik mee met een paar slagen, en alles wat in de sessie klinkt wordt zoveel eerder verstuurd.",
  kept: (delay: string) => `Op dit apparaat wordt ${delay} eerder verstuurd.`,
  noneKept: "Op dit apparaat wordt niets eerder verstuurd.",
  notKept: "Deze browser bewaart dat niet tot een volgend bezoek.",
  measure: "Meten door mee te tikken",
  none: "Geen vertraging",
  name: "Hoeveel te laat de koptelefoon speelt",
  advice: "Koptelefoon op. Drie slagen en een rust, steeds opnieuw, twintig seconden lang.",
  start: "Druk om de slagen te horen",
  fetching: "De slagen worden opgehaald…",
  tap: "Tik hier bij elke slag",
  tapHint: "of druk op de spatiebalk; niet in de rusten",
  taps: (count: number) => `Getikt: ${count} keer`,
  failed:
    "De slagen konden niet worden afgespeeld. Je hebt maar één keer een netwerk nodig, de eerste keer. Druk om het opnieuw te proberen.",
  late: (delay: string) => `${delay} te laat`,
  notLate: "Geen vertraging van belang",
  sure: (apart: string) => `De helft van de tikken ligt er hooguit ${apart} vandaan.`,
  keep: (delay: string) => `${delay} bewaren`,
  keepNone: "Zonder vertraging verder",
  again: "Nog eens",
  leave: "Sluiten",
  refused: {
    few: "Te weinig tikken om iets te zeggen. Nog eens: een tik bij elke slag.",
    uneven: "De tikken liggen te ver uiteen. Nog eens: vind eerst de maat, en tik dan mee.",
    unclear: "Dat past bij twee vertragingen. Nog eens: drie tikken, en geen in de rust.",
    far: "Dat is meer dan een seconde, meer dan te verhelpen is. Een koptelefoon met draad, of de luidspreker van het apparaat, werkt wel.",
  },
};

export const byEar = {
  open: "Op het gehoor uitrekenen",
  name: "Op het gehoor uitrekenen",
  hint: "Elke toets of aanraking neemt wat wordt aangeboden, of gaat verder. Omhoog en omlaag leiden van veld naar veld, links en rechts langs de waarden die te kiezen zijn, Enter neemt er een; cijfers en de letters van een naam gelden zoals u ze tikt, Enter legt ze vast, C of F, M of O in die eenheid, een komma scheidt de vullingen van een spoeling, een spatie de trappen van een wig, Backspace neemt er een terug, Escape sluit.",
  end: "Alles samen",
  previous: "Vorige",
  next: "Volgende",
  close: "Sluiten",
  notHeard: "De stem kon niet worden opgehaald. Zoek een netwerk en druk opnieuw.",
};
