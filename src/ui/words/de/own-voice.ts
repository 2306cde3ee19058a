// The words of "Who speaks" and of the sheet on which a voice is recorded.
import type { LateWords } from "../words.ts";

export const speaker: LateWords["speaker"] = {
  who: "Wer auf diesem Gerät spricht",
  bundled: "Die Stimme von Tankside",
  own: (recorded, of) => `Meine eigene Stimme (${recorded} von ${of} aufgenommen)`,
  ownHint:
    "Die eigene Stimme spricht einen Satz, sobald er ganz aufgenommen ist; bis dahin spricht ihn die Stimme von Tankside.",
  /** What a saved voice is called within its file. */
  packName: "Meine eigene Stimme",
  record: "Eigene Stimme aufnehmen",
  goOn: "Weiter aufnehmen",
  export: "Stimme in Datei sichern",
  import: "Stimme aus Datei öffnen",
  removeAll: "Alle Aufnahmen löschen",
  undo: "Rückgängig",
  choiceNotKept:
    "Dieser Browser merkt sich die Wahl nicht: Sie gilt, bis die Seite geschlossen wird.",
  opening: "Die Ansagen werden geladen …",
  notOpened:
    "Die Ansagen ließen sich nicht laden. Ein Netz wird nur einmal gebraucht, beim ersten Mal.",
  saved: (name) => `Gesichert als ${name}.`,
  nothingToSave: "Noch ist nichts aufgenommen.",
  imported: (clips, unknown) =>
    clips === 1
      ? `1 Ansage ist übernommen. ${leftOut(unknown)}„Rückgängig“ nimmt sie wieder heraus.`
      : `${clips} Ansagen sind übernommen. ${leftOut(unknown)}„Rückgängig“ nimmt sie wieder heraus.`,
  removedAll: "Alle Aufnahmen sind gelöscht. „Rückgängig“ holt sie zurück.",
  undone: "Rückgängig gemacht.",
  notKept:
    "Dieser Browser behält das nur, bis die Seite geschlossen wird. Die Stimme vorher in eine Datei sichern.",
  notRead: "Was früher aufgenommen wurde, war in diesem Browser nicht zu lesen.",
};

function leftOut(unknown: readonly string[]): string {
  if (unknown.length === 0) return "";
  const named = unknown
    .slice(0, 3)
    .map((text) => `„${text}“`)
    .join(", ");
  return unknown.length <= 3
    ? `Ausgelassen, weil es hier nirgends gesagt wird: ${named}. `
    : `${unknown.length} sind ausgelassen, weil sie hier nirgends gesagt werden: ${named} und andere. `;
}

export const deviceVoice: LateWords["deviceVoice"] = {
  device: "Eine Stimme dieses Geräts",
  hint: "Sie spricht in ihrem eigenen Tempo und nur, solange diese Seite zu sehen ist. Fällt sie zweimal hintereinander aus, übernimmt die Stimme von Tankside. Die Töne hängen nie von ihr ab.",
  which: "Welche",
  measure: "Anhören und messen",
  measuring: "Ein paar Ansagen werden gesprochen und gemessen …",
  first: "Bevor sie durch einen Durchgang führen kann, muss sie angehört und gemessen werden.",
  runOn: "Ein Durchgang läuft. Messen geht erst, wenn er vorbei ist.",
  measured: (delay, letters) => `Beginnt nach ${delay}, spricht ${letters} Buchstaben je Sekunde.`,
  refused: {
    "never-starts":
      "Diese Stimme hat nicht innerhalb von 3 Sekunden zu sprechen begonnen und kann deshalb durch keinen Durchgang führen.",
    "never-ends":
      "Diese Stimme meldet nicht, wann sie fertig ist, und kann deshalb durch keinen Durchgang führen: Sie könnte noch reden, wenn es auf den Augenblick ankommt.",
    failed: "Diese Stimme konnte nicht sprechen.",
    "too-slow":
      "Diese Stimme braucht mehr als 10 Sekunden für einen Satz und kann deshalb durch keinen Durchgang führen.",
  },
};

export const recording: LateWords["recording"] = {
  name: "Eigene Stimme aufnehmen",
  progress: (recorded, of) => `${recorded} von ${of}`,
  recorded: "aufgenommen",
  forWorksheet: (recorded, of) =>
    recorded === of
      ? "Alle Ansagen zum eingetragenen Arbeitsblatt sind aufgenommen."
      : `Von den Ansagen zum eingetragenen Arbeitsblatt: ${recorded} von ${of}.`,
  say: "Bitte sprechen",
  isRecorded: "Diese Ansage ist aufgenommen.",
  level: "Pegel",
  levels: { none: "nichts zu hören", soft: "leise", good: "gut", loud: "sehr laut" },
  record: "Aufnehmen",
  stop: "Stopp",
  keep: "Behalten und weiter",
  again: "Neu aufnehmen",
  hear: "Anhören",
  sayIt: "Vorlesen",
  back: "Zurück",
  skip: "Weiter",
  remove: "Diese löschen",
  undo: "Rückgängig",
  leave: "Aufhören",
  keys: {
    press: "Leertaste",
    keep: "Eingabe",
    hear: "H",
    say: "R",
    back: "←",
    skip: "→",
    remove: "Entf",
    undo: "U",
    leave: "Esc",
  },
  opening: "Das Mikrofon wird angefragt …",
  ready:
    "Sprechen wie zu jemandem, der danebensteht, eine Handbreit vom Mikrofon entfernt. Wer einen Screenreader benutzt, trägt am besten Ohrhörer: Sonst ist auch der Screenreader auf der Aufnahme.",
  recording: "Aufnahme läuft. Sprechen, dann stoppen.",
  taken: (seconds) => `Aufgenommen: ${seconds}. Anhören, behalten oder neu aufnehmen.`,
  told: {
    kept: "Behalten.",
    "not-kept":
      "Dieser Browser behält die Aufnahme nur, bis die Seite geschlossen wird. Die Stimme vorher in eine Datei sichern.",
    removed: "Gelöscht. „Rückgängig“ holt die Aufnahme zurück.",
    undone: "Rückgängig gemacht.",
    "run-on": "Ein Durchgang läuft. Aufnehmen geht erst, wenn er vorbei ist.",
    "no-sound": "Hier ließ sich kein Ton abspielen.",
  },
};

/** Why there is nothing to keep of what was recorded. */
export const unusable: LateWords["unusable"] = {
  "too-quiet":
    "Zu leise. Näher ans Mikrofon gehen oder es empfindlicher stellen und neu aufnehmen.",
  clipped:
    "Zu laut für das Mikrofon: Es verzerrt. Etwas Abstand nehmen oder es weniger empfindlich stellen und neu aufnehmen.",
  noise:
    "Die Worte heben sich nicht von den Geräuschen im Raum ab. Näher herangehen oder einen ruhigeren Ort suchen und neu aufnehmen.",
  "too-short":
    "Zu kurz für diese Ansage. Drücken, sprechen und erst nach dem Sprechen wieder drücken.",
  "too-long": (lasts, most) =>
    `Das dauert ${lasts}, und Zeit ist für ${most}. Zügiger sprechen und neu aufnehmen.`,
};

export const microphone: LateWords["microphone"] = {
  denied:
    "Das Mikrofon darf hier nicht benutzt werden. Es in den Einstellungen des Browsers für diese Seite erlauben, dann noch einmal drücken.",
  none: "Kein Mikrofon gefunden. Eines anschließen, dann noch einmal drücken.",
  busy: "Das Mikrofon ist nicht zu bekommen: Vielleicht benutzt es gerade ein anderes Programm. Das schließen, dann noch einmal drücken.",
  unable: "Dieser Browser kann auf dieser Seite nicht aufnehmen.",
};

/** Why a voice's file was refused; `name` is the file's own. */
export const noPack: LateWords["noPack"] = {
  foreign: (name) =>
    `${name} ist keine Stimme, die Tankside gesichert hat. Hier hat sich nichts geändert.`,
  "other-version": (name) =>
    `${name} stammt von einer neueren Fassung von Tankside, die hier nicht zu lesen ist. Hier hat sich nichts geändert.`,
  damaged: (name) =>
    `${name} ist beschädigt: Etwas fehlt oder ist verändert. Hier hat sich nichts geändert.`,
  "too-large": (name) =>
    `${name} enthält mehr, als zu einer Stimme gehören kann. Hier hat sich nichts geändert.`,
  "other-language": (name, language) =>
    `${name} spricht eine andere Sprache (${language}). Hier hat sich nichts geändert.`,
  "other-sound": (name, file) =>
    `${file} in ${name} ist keine einfache WAV-Datei mit 24 kHz, 16 Bit und einem Kanal. Hier hat sich nichts geändert.`,
};
