// The words of what comes up in the middle of a run, of a run that was left, and of what went otherwise than
// planned. Times and temperatures come ready written.

export const midRun = {
  more: "Mehr",
  wrong: "Etwas stimmt nicht",
  takeBack: "Zurücknehmen",
  hush: "Still",
  speak: "Sprechen",
  poured: "Erst jetzt eingefüllt",
  emptied: "Jetzt leer",
  /** To the other way, by which is gone now. */
  way: { room: "In die Tasche", pocket: "Auf den Lautsprecher" },
  silent: "Kein Ton",
  silentHint: "Irgendwo drücken, und es ist wieder zu hören. Die Uhr in der Dose läuft weiter.",
  notKept:
    "Dieser Browser bewahrt von diesem Durchgang nichts auf. Auf dieser Seite bleiben: Ist sie zu, findet er sich nicht wieder.",
};

export const leftRun = {
  title: (when: string) => `Ein Durchgang vom ${when} wurde nie beendet`,
  hint: "Die Seite ging mittendrin zu. Es kann dort weitergehen, wo er jetzt wäre.",
  goOn: "Damit weitermachen",
  drop: "Abschließen",
  dropped: "Abgeschlossen. Was getan wurde, steht unter „Aufschreiben“.",
};

export const otherwise = {
  title: "Was anders kam",
  /** Each stands behind the name of its bath. */
  pouredLate: (time: string) => `${time} zu spät eingefüllt`,
  emptiedLate: (time: string) => `${time} zu spät leer`,
  emptiedEarly: (time: string) => `${time} zu früh leer`,
  read: (temperature: string, time: string) =>
    `${temperature} in der Dose, ${time} nach dem Drücken`,
  developed: (real: string, planned: string) => `${real} entwickelt; geplant waren ${planned}.`,
  lost: {
    closed: (time: string) => `${time} lang nicht zu hören: Die Seite war zu.`,
    frozen: (time: string) => `${time} lang nicht zu hören: Die Seite stand still.`,
    asleep: (time: string) => `${time} lang nicht zu hören: Das Gerät schlief.`,
    silent: (time: string) => `${time} lang nicht zu hören: Der Ton stand still.`,
  },
  /** What was told of as wrong. */
  wrong: {
    eye: "Ein Spritzer ging ins Auge.",
    light: "Ein Licht ging an.",
    bath: "Ein falsches Bad kam hinein.",
    leak: "Der Deckel leckte.",
    clock: "Die Zeit war verloren.",
  },
  clockSet: (time: string) => `Die Uhr des Geräts wurde um ${time} verstellt.`,
};
