// The words of the shelf of bottles, in German.

export const shelf = {
  title: "Das Regal mit den Flaschen",
  poursFrom: "Flaschen",
  lead: "Was angesetzt, geöffnet und verbraucht wurde. Ein Durchgang, der aus einer Flasche gegossen wird, schreibt seine Filme hier selbst auf.",
  looking: "Im Regal wird nachgesehen …",
  refused:
    "Dieser Browser behält zwischen Besuchen nichts, also kann nichts in diesem Regal stehen.",
  unread: (count: number) =>
    count === 1
      ? "Eine weitere Flasche stammt von einer anderen Fassung und kann nicht gezeigt werden. Sie bleibt, wie sie ist."
      : `${count} weitere Flaschen stammen von einer anderen Fassung und können nicht gezeigt werden. Sie bleiben, wie sie sind.`,
  empty: "Noch steht nichts darin.",
  demo: "Die Flaschen von Gullrock Light hineinstellen",
  add: "Flasche dazustellen",
  poured: (count: number) => `Weggegossen: ${count}`,
  removed: (count: number) => `Gelöscht: ${count}`,
  states: { working: "Arbeitslösung", stock: "Vorratslösung, wird verdünnt" },
  facts: {
    what: "Was es ist",
    mixed: "Angesetzt",
    left: "Noch da",
    films: "Filme hindurch",
    due: "Fällig",
    stands: "Wo sie ist",
  },
  by: (initials: string) => `von ${initials}`,
  from: (what: string) => `aus ${what}`,
  outOf: (some: string, all: string) => `${some} von ${all}`,
  films: (films: string, sizes: string) => `${films} (${sizes})`,
  counted: (films: string) => `der Rest zählt als ${films}`,
  dueBy: {
    full: (since: string) => `angesetzt am ${since}`,
    half: (since: string) => `halb voll oder weniger seit ${since}`,
    opened: (since: string) => `geöffnet am ${since}`,
  },
  past: "über der Zeit",
  notSaid: "nicht angegeben",
  aside: "beiseitegestellt, nicht benutzen",
  awaySince: (day: string) => `weggegossen am ${day}`,
  history: (count: number) => (count === 1 ? "Verlauf: 1 Eintrag" : `Verlauf: ${count} Einträge`),
  told: {
    mixed: (volume: string) => `angesetzt, ${volume}`,
    corrected: "berichtigt",
    films: (films: string) => `Filme hindurch: ${films}`,
    drawn: (bath: string, films: string) => `ein Durchgang, ${bath}: ${films}`,
    took: (bath: string, volume: string) => `ein Durchgang, ${bath}: ${volume} verbraucht`,
    taken: (volume: string) => `${volume} abgegossen`,
    added: (volume: string) => `${volume} nachgefüllt`,
    tested: (time: string, film: string) => `geklärt in ${time}: ${film}`,
    opened: "geöffnet",
    "set-aside": "beiseitegestellt",
    "taken-up": "wieder im Regal",
    "poured-away": "weggegossen",
    removed: "gelöscht",
  },
  takenBack: "zurückgenommen",
  acts: {
    films: "Filme hindurch",
    tested: "Klärprobe",
    opened: "Geöffnet",
    taken: "Etwas abgegossen",
    added: "Etwas nachgefüllt",
    "set-aside": "Beiseitestellen",
    "taken-up": "Wieder ins Regal",
    "poured-away": "Weggegossen",
    corrected: "Berichtigen",
    removed: "Löschen",
  },
  undo: "Zurücknehmen",
  redo: "Wieder gelten lassen",
  undoLast: "Rückgängig",
  of: (name: string) => ` (${name})`,
  kept: (name: string) => `„${name}“: aufgeschrieben.`,
  taken: (name: string) => `„${name}“: zurückgenommen.`,
  notKept: "Dieser Browser wollte es nicht behalten. Nichts hat sich geändert.",
  refusals: {
    "more-than-left": "So viel ist nicht mehr darin.",
    "opened-already": "Sie wurde schon geöffnet.",
    "poured-away": "Sie wurde weggegossen. Das zuerst zurücknehmen.",
    "before-mixed": "Sie wurde erst nach diesem Tag angesetzt.",
    "name-taken": "Eine andere Flasche im Regal heißt so. Zwei gleiche werden verwechselt.",
  },
};

export const pick = {
  none: "keine",
  taken: (name: string) =>
    `Aus dem Regal eingetragen: ${name}. Rückgängig holt zurück, was dort stand.`,
  putBack: "Die Flasche ist zurückgestellt. Was sie eintrug, steht noch da.",
  gone: (name: string) =>
    `In diesem Regal steht keine Flasche „${name}“. Ein Durchgang wird nirgends aufgeschrieben.`,
  mixed: (day: string, days: string) => `angesetzt am ${day}, vor ${days}`,
  days: (count: number) => (count === 1 ? "1 Tag" : `${count} Tagen`),
  past: (day: string) =>
    `Sie war am ${day} fällig. Frisch ansetzen, oder zuerst eine Probe machen.`,
  aside: "Sie ist beiseitegestellt: nicht benutzen.",
  little: (left: string, wanted: string) =>
    `Es sind ${left} darin; dieser Durchgang braucht ${wanted}.`,
  spent: "Nach ihrer Klärprobe ist sie erschöpft.",
  again: "Eintragen, wie sie jetzt steht",
};
