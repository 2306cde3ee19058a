// The words of taking a session along, of a worksheet that comes with a link, and of a class that starts together.

export const take = {
  title: "Om mee te nemen",
  lead: "De hele sessie als bestanden: om op elke speler te horen, om te lezen, om door te geven. Ze worden op dit apparaat gemaakt en er wordt niets verzonden. De meegeleverde stem spreekt, of je eigen stem waar je die hebt opgenomen.",
  notDevice:
    "De stem van dit apparaat, die hier is gekozen, kan niet in een bestand: daar spreekt de meegeleverde stem in haar plaats.",
  track: "De opname",
  waits: "Waar gedrukt zou worden",
  /** Each with what a plain player makes of it. */
  kinds: {
    pass: "Na een wachttijd gaat het vanzelf verder",
    stay: "Het wacht, op spelers die een hoofdstuk kunnen herhalen",
  },
  kindsHow: {
    pass: "Op een bestand kan niemand drukken. Een halve minuut en tien seconden van tevoren zegt het dat het verdergaat; wie langer nodig heeft, zet de speler op pauze.",
    stay: "Elke wachttijd is een eigen hoofdstuk en in een WAV-bestand een lus. De meeste spelers herhalen niets vanzelf: ze gaan na de wachttijd verder en zeggen dat niet. Zet de speler bij elke wachttijd op pauze, of laat hem dat hoofdstuk herhalen.",
  },
  gap: "Seconden wachttijd",
  gapMay: (most: string) => `Hier passen hele seconden van 0 tot ${most}.`,
  sizes:
    "Een MP3-bestand neemt een halve megabyte per minuut, een WAV-bestand drie. Beide bevatten een hoofdstuk per stap, en de woorden.",
  makes: {
    mp3: "MP3-bestand maken",
    wav: "WAV-bestand maken",
    vtt: "Ondertitels, WebVTT",
    srt: "Ondertitels, SubRip",
    ssml: "De gesproken tekst, SSML",
    txt: "Alles als tekst, 40 kolommen",
    ics: "Afspraak voor de agenda",
  },
  making: (share: string) => `Bezig: ${share}`,
  cancel: "Annuleren",
  cancelled: "Geannuleerd. Er is niets bewaard.",
  saved: (name: string) => `Bewaard als ${name}.`,
  failed: "Het kon hier niet worden gemaakt.",
  tooLong: "Dat is langer dan zo’n bestand kan zijn: ongeveer een dag.",
  texts: "Om te lezen, en voor andere programma’s",
  plannedFor: "Een dag en een tijd ervoor",
  planned: "Dag en tijd",
  wantsTime: "Kies eerst de dag en de tijd.",
  isPast: "Die tijd is voorbij. Kies een latere.",
  link: "Als link",
  linkLead:
    "De link bevat de hele werkkaart, met de titel en hoe je films heten: wie de link heeft, kan dat lezen. Hij gaat langs geen server en opent zonder netwerk op een apparaat dat Tankside al eens geopend heeft.",
  together: "Een klas begint samen, op de dag en de tijd hierboven",
  togetherHow:
    "Elke telefoon opent de link, gebruikt de werkkaart en drukt in ‘Licht uit’ op ‘Ik ben klaar’; op die minuut begint de eerste stap vanzelf. Klokken van telefoons verschillen, gewoonlijk tot een of twee seconden.",
  copy: "Link kopiëren",
  copied: "Gekopieerd.",
  notCopied: "Hij kon niet worden gekopieerd. Hier staat hij heel:",
  share: "Link doorgeven",
  code: "De link als code voor een camera",
  codeTooLong:
    "Deze werkkaart is te lang voor een code die een camera kan lezen. De link bevat haar toch.",
  linkTooLong:
    "Deze werkkaart is te lang voor een link. Bewaar haar in plaats daarvan als bestand, in ‘Uitrekenen’.",
};

export const brought = {
  title: "Met de link kwam een werkkaart mee",
  named: (title: string) => `Ze heet ${title}.`,
  starts: (time: string) => `De klas ervan begint om ${time}.`,
  keeps:
    "Je eigen werkkaart blijft zoals ze is tot je deze gebruikt; daarna haalt ‘Ongedaan maken’ haar terug.",
  use: "Deze werkkaart gebruiken",
  leave: "Laten liggen",
  broken:
    "De link is afgekapt, onderweg veranderd of van een andere versie. Hier is niets veranderd.",
  /** What a notice calls it. */
  name: "De werkkaart van de link",
};

export const classStart = {
  title: "Een klas begint samen",
  at: (time: string) => `Het begint om ${time}.`,
  left: (clock: string) => `nog ${clock}`,
  ready: "Ik ben klaar",
  notReady: "Toch niet klaar",
  putAside: "Niet op de klas wachten",
  waits: "De eerste stap begint vanzelf. Laat deze pagina open en in zicht.",
  clocks:
    "Klokken van telefoons verschillen, gewoonlijk tot een of twee seconden: die van de eigen telefoon telt.",
  passed: "Die tijd is voorbij. Begin zoals anders.",
  stopFirst: "Bekijk eerst de stop hierboven en aanvaard die.",
};
