// The words of "Who speaks" and of the sheet on which a voice is recorded.

export const speaker = {
  who: "Wie op dit apparaat spreekt",
  bundled: "De stem die bij Tankside hoort",
  own: (recorded: number, of: number) => `Mijn eigen stem (${recorded} van ${of} opgenomen)`,
  ownHint:
    "Een zin klinkt in jouw stem zodra hij helemaal is opgenomen; tot dan spreekt de stem die bij Tankside hoort.",
  /** What a saved voice is called within its file. */
  packName: "Mijn eigen stem",
  record: "Je stem opnemen",
  goOn: "Verder je stem opnemen",
  export: "Je stem in bestand opslaan",
  import: "Stem uit bestand openen",
  removeAll: "Alle opnamen wissen",
  undo: "Ongedaan maken",
  choiceNotKept: "Deze browser onthoudt de keuze niet: die geldt tot je de pagina sluit.",
  opening: "De tekst wordt opgehaald…",
  notOpened:
    "De tekst kon niet worden opgehaald. Je hebt maar één keer een netwerk nodig, de eerste keer.",
  saved: (name: string) => `Opgeslagen als ${name}.`,
  nothingToSave: "Er is nog niets opgenomen.",
  imported: (clips: number, unknown: readonly string[]) =>
    clips === 1
      ? `1 stukje tekst is overgenomen. ${leftOut(unknown)}“Ongedaan maken” haalt het weer weg.`
      : `${clips} stukjes tekst zijn overgenomen. ${leftOut(unknown)}“Ongedaan maken” haalt ze weer weg.`,
  removedAll: "Alle opnamen zijn gewist. “Ongedaan maken” haalt ze terug.",
  undone: "Ongedaan gemaakt.",
  notKept:
    "Deze browser kan dat niet bewaren: het blijft tot je de pagina sluit. Sla je stem voor die tijd op in een bestand.",
  notRead: "Wat je eerder hebt opgenomen, kon niet uit deze browser worden gelezen.",
};

function leftOut(unknown: readonly string[]): string {
  if (unknown.length === 0) return "";
  const named = unknown
    .slice(0, 3)
    .map((text) => `“${text}”`)
    .join(", ");
  return unknown.length <= 3
    ? `Weggelaten, want niets hier zegt het: ${named}. `
    : `Er zijn er ${unknown.length} weggelaten, want niets hier zegt ze: ${named} en andere. `;
}

export const deviceVoice = {
  device: "Een stem van dit apparaat",
  hint: "Ze spreekt in haar eigen tempo, en alleen zolang deze pagina in beeld is. Laat ze het twee keer achter elkaar afweten, dan neemt de stem die bij Tankside hoort het over. De tonen hangen er nooit van af.",
  which: "Welke",
  measure: "Beluisteren en meten",
  measuring: "Spreekt een paar zinnetjes, om te meten…",
  first: "Ze moet eerst gehoord en gemeten zijn voordat ze een sessie kan leiden.",
  runOn: "Er loopt een sessie. Meten kan pas als die voorbij is.",
  measured: (delay: string, letters: number) =>
    letters === 1
      ? `Begint na ${delay}, spreekt 1 letter per seconde.`
      : `Begint na ${delay}, spreekt ${letters} letters per seconde.`,
  refused: {
    "never-starts":
      "Deze stem begon niet binnen 3 seconden te spreken, dus kan ze geen sessie leiden.",
    "never-ends":
      "Deze stem laat niet weten wanneer ze klaar is, dus kan ze geen sessie leiden: ze zou door een signaal heen kunnen praten.",
    failed: "Deze stem kon niet spreken.",
    "too-slow":
      "Deze stem doet langer dan 10 seconden over een zin, dus kan ze geen sessie leiden.",
  },
};

export const recording = {
  name: "Je stem opnemen",
  progress: (recorded: number, of: number) => `${recorded} van ${of}`,
  recorded: "opgenomen",
  forWorksheet: (recorded: number, of: number) =>
    recorded === of
      ? "Alles wat de werkkaart op de pagina zegt, is opgenomen."
      : `Van wat de werkkaart op de pagina zegt: ${recorded} van ${of}.`,
  say: "Zeg",
  isRecorded: "Dit is opgenomen.",
  level: "Geluid",
  levels: { none: "niets gehoord", soft: "zacht", good: "goed", loud: "heel hard" },
  record: "Opnemen",
  stop: "Stop",
  keep: "Bewaren en door naar de volgende",
  again: "Opnieuw opnemen",
  hear: "Beluisteren",
  sayIt: "Lees het me voor",
  back: "Terug",
  skip: "Verder",
  remove: "Deze wissen",
  undo: "Ongedaan maken",
  leave: "Ophouden",
  keys: {
    press: "Spatie",
    keep: "Enter",
    hear: "H",
    say: "R",
    back: "←",
    skip: "→",
    remove: "Delete",
    undo: "U",
    leave: "Esc",
  },
  opening: "De microfoon wordt gevraagd…",
  ready:
    "Spreek zoals tegen iemand naast je, een handbreedte van de microfoon. Gebruik je een schermlezer, zet dan een koptelefoon op: anders wordt die mee opgenomen.",
  recording: "Neemt op. Zeg het en stop dan.",
  taken: (seconds: string) =>
    `Opgenomen: ${seconds}. Beluister het, bewaar het of neem opnieuw op.`,
  told: {
    kept: "Bewaard.",
    "not-kept":
      "Deze browser kan het niet bewaren: het blijft tot je de pagina sluit. Sla je stem voor die tijd op in een bestand.",
    removed: "Gewist. “Ongedaan maken” haalt het terug.",
    undone: "Ongedaan gemaakt.",
    "run-on": "Er loopt een sessie. Opnemen kan pas als die voorbij is.",
    "no-sound": "Er kon geen geluid worden afgespeeld.",
  },
};

/** Why there is nothing to keep of what was recorded. */
export const unusable = {
  "too-quiet":
    "Te zacht om te gebruiken. Kom dichter bij de microfoon of zet hem harder, en neem opnieuw op.",
  clipped:
    "Te hard voor de microfoon: het kraakt. Ga iets achteruit of zet hem zachter, en neem opnieuw op.",
  noise:
    "Er komen geen woorden boven het geluid in de ruimte uit. Kom dichterbij of zoek een stillere plek, en neem opnieuw op.",
  "too-short": "Te kort om het te kunnen zijn. Druk, spreek, en druk weer als je gesproken hebt.",
  "too-long": (lasts: string, most: string) =>
    `Het duurt ${lasts} en er is ruimte voor ${most}. Zeg het wat vlotter, en neem opnieuw op.`,
};

export const microphone = {
  denied:
    "De microfoon mag hier niet gebruikt worden. Sta hem voor deze pagina toe in de instellingen van de browser en druk opnieuw.",
  none: "Er is geen microfoon gevonden. Sluit er een aan en druk opnieuw.",
  busy: "De microfoon is niet te krijgen: misschien gebruikt een ander programma hem. Sluit dat en druk opnieuw.",
  unable: "Deze browser kan op deze pagina niet opnemen.",
};

/** Why a voice's file was refused; `name` is the file's own. */
export const noPack = {
  foreign: (name: string) =>
    `${name} is geen stem die door Tankside is opgeslagen. Er is niets veranderd.`,
  "other-version": (name: string) =>
    `${name} is opgeslagen door een nieuwere Tankside, en deze kan het niet lezen. Er is niets veranderd.`,
  damaged: (name: string) =>
    `${name} is beschadigd: er ontbreekt iets of er is iets anders geworden. Er is niets veranderd.`,
  "too-large": (name: string) =>
    `${name} bevat meer dan een stem kan bevatten. Er is niets veranderd.`,
  "other-language": (name: string, language: string) =>
    `${name} spreekt een andere taal (${language}). Er is niets veranderd.`,
  "other-sound": (name: string, file: string) =>
    `${file} in ${name} is geen gewone WAV van 24 kHz, 16 bits, één kanaal. Er is niets veranderd.`,
};
