// The words of what is measured and reckoned at the bench, in Italian: a leaflet pasted, water mixed and
// tempered, hands timed, tanks kept.

export const paste = {
  more: "Incolla la tabella del foglietto",
  label: "Le righe come stanno nel foglietto",
  why: "In ogni riga una temperatura e un tempo, in °C o °F, con tabulazioni, virgole o spazi. Dietro a EI un indice di esposizione, se la riga vale per quello. I titoli si saltano.",
  fill: "Inserisci queste righe",
  nothing: "Non c’è ancora nessuna riga.",
  fault: (line: number, text: string, may: string) =>
    `Riga ${line}: «${text}» non va bene. Ci va: ${may}.`,
  filled: (rows: number) =>
    rows === 1
      ? "È inserita 1 riga del foglietto. Annulla riporta le altre."
      : `Sono inserite ${rows} righe del foglietto. Annulla riporta le altre.`,
};

export const mixing = {
  take: "Versa insieme",
  stock: (volume: string) => `${volume} di stock`,
  cold: (volume: string) => `${volume} d’acqua fredda`,
  hot: (volume: string) => `${volume} d’acqua calda`,
};

export const tempering = {
  sink: "Leggi al lavandino",
  sinkHint: "tasti grandi, e quando premi si segna l’ora",
  title: "Il rivelatore a bagnomaria",
  noTarget: "Scrivi prima a che temperatura deve arrivare.",
  hindered: (field: string) => `Prima c’è da correggere o riempire «${field}».`,
  afresh:
    "Si ricomincia: le letture che c’erano non avevano un’ora del giorno. Annulla le riporta.",
};

export const hands = {
  measure: "Misura",
  /** Read on from that, by those who listen to the page. */
  of: (label: string) => `: ${label}`,
  kept: (label: string, seconds: string) => `${label}: ${seconds}, il valore di mezzo fra tre.`,
};

export const tanks = {
  choose: "Tank conservate",
  none: "scegline una",
  keep: "Conserva questa tank",
  forget: "Dimenticala",
  isKept: (label: string) => `«${label}» è conservata con i suoi tempi.`,
  taken: (label: string) => `«${label}» è inserita. Annulla riporta la tank di prima.`,
  forgotten: (label: string) => `«${label}» non è più conservata.`,
  bringBack: (label: string) => `Riprendi «${label}»`,
  needsName: "Prima dai un nome alla tank: si conserva sotto quello.",
  notKept:
    "Questo browser non conserva le tank da una visita all’altra. Salva invece la scheda in un file.",
};

export const latePart = {
  notFetched: "Questa parte non si è potuta caricare.",
};
