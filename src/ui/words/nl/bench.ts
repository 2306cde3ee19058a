// The words of what is measured and reckoned at the bench: a leaflet pasted, water mixed and tempered,
// hands timed, tanks kept.

export const paste = {
  more: "Tabel uit de bijsluiter plakken",
  label: "De rijen zoals ze in de bijsluiter staan",
  why: "Eén rij per regel: een temperatuur en een tijd, in °C of °F, met tabs, komma’s of spaties. Geldt de rij voor een bepaalde belichtingsindex, zet die dan achter EI. Kopjes worden overgeslagen.",
  fill: "Deze rijen invullen",
  nothing: "Er staat nog geen rij in.",
  fault: (line: number, text: string, may: string) =>
    `Regel ${line}: “${text}” kan hier niet. Hier past: ${may}.`,
  filled: (rows: number) =>
    rows === 1
      ? "1 rij uit de bijsluiter is ingevuld. “Ongedaan maken” haalt de andere terug."
      : `${rows} rijen uit de bijsluiter zijn ingevuld. “Ongedaan maken” haalt de andere terug.`,
};

export const mixing = {
  take: "Giet bij elkaar",
  stock: (volume: string) => `${volume} stock`,
  cold: (volume: string) => `${volume} koud`,
  hot: (volume: string) => `${volume} warm`,
};

export const tempering = {
  sink: "Aflezen bij de spoelbak",
  sinkHint: "grote knoppen, en één druk legt de tijd vast",
  title: "De ontwikkelaar in zijn waterbad",
  noTarget: "Vul eerst in wat hij moet worden.",
  hindered: (field: string) => `Verbeter eerst “${field}”, of vul het in.`,
  afresh:
    "Opnieuw begonnen: bij de metingen die hier stonden hoorde geen tijdstip. “Ongedaan maken” haalt ze terug.",
};

export const hands = {
  measure: "Tijd opnemen",
  /** Read on from that, by those who listen to the page. */
  of: (label: string) => `: ${label}`,
  kept: (label: string, seconds: string) => `${label}: ${seconds}, de middelste van drie.`,
};

export const tanks = {
  choose: "Bewaarde tanks",
  none: "kies er een",
  keep: "Deze tank bewaren",
  forget: "Vergeten",
  isKept: (label: string) => `“${label}” is bewaard, met zijn tijden.`,
  taken: (label: string) => `“${label}” is ingevuld. “Ongedaan maken” haalt de vorige tank terug.`,
  forgotten: (label: string) => `“${label}” wordt niet meer bewaard.`,
  bringBack: (label: string) => `“${label}” terughalen`,
  needsName: "Geef de tank eerst een naam; daaronder wordt hij bewaard.",
  notKept:
    "Deze browser onthoudt geen tanks tot de volgende keer. Sla in plaats daarvan de werkkaart op in een bestand.",
};

export const latePart = {
  notFetched: "Dit deel kon niet worden opgehaald.",
};
