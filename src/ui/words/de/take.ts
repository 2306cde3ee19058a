// The words of taking a session along, of a worksheet that comes with a link, and of a class that starts together.

export const take = {
  title: "Zum Mitnehmen",
  lead: "Der ganze Durchgang als Dateien: zum Anhören auf jedem Abspieler, zum Lesen, zum Weitergeben. Sie entstehen auf diesem Gerät, und nichts wird gesendet. Es spricht die mitgelieferte Stimme, oder die eigene, wo sie aufgenommen ist.",
  notDevice:
    "Die hier gewählte Stimme des Geräts lässt sich nicht in eine Datei bringen: dort spricht die mitgelieferte an ihrer Stelle.",
  track: "Die Tonspur",
  waits: "Wo gedrückt würde",
  /** Each with what a plain player makes of it. */
  kinds: {
    pass: "Nach einer Wartezeit geht es von selbst weiter",
    stay: "Es wartet, auf Abspielern, die ein Kapitel wiederholen können",
  },
  kindsHow: {
    pass: "Eine Datei lässt sich nicht drücken. Eine halbe Minute und zehn Sekunden vorher sagt sie, dass es weitergeht; wer länger braucht, hält den Abspieler an.",
    stay: "Jede Wartezeit ist ein eigenes Kapitel und in einer WAV-Datei eine Schleife. Die meisten Abspieler wiederholen nichts von selbst: Sie gehen nach der Wartezeit weiter und sagen es nicht. Den Abspieler dort anhalten oder das Kapitel wiederholen lassen.",
  },
  gap: "Sekunden Wartezeit",
  gapMay: (most: string) => `Möglich sind ganze Sekunden von 0 bis ${most}.`,
  sizes:
    "Eine MP3-Datei braucht ein halbes Megabyte je Minute, eine WAV-Datei drei. Beide enthalten ein Kapitel je Schritt und die Worte.",
  makes: {
    mp3: "MP3-Datei machen",
    wav: "WAV-Datei machen",
    vtt: "Untertitel, WebVTT",
    srt: "Untertitel, SubRip",
    ssml: "Der gesprochene Text, SSML",
    txt: "Alles als Text, 40 Spalten",
    ics: "Eintrag für den Kalender",
  },
  making: (share: string) => `In Arbeit: ${share}`,
  cancel: "Abbrechen",
  cancelled: "Abgebrochen. Nichts wurde gespeichert.",
  saved: (name: string) => `Gespeichert als ${name}.`,
  failed: "Das ließ sich hier nicht machen.",
  tooLong: "Das ist länger, als so eine Datei sein kann: etwa ein Tag.",
  texts: "Zum Lesen und für andere Programme",
  plannedFor: "Tag und Uhrzeit dafür",
  planned: "Tag und Uhrzeit",
  wantsTime: "Zuerst Tag und Uhrzeit wählen.",
  isPast: "Diese Zeit ist vorbei. Eine spätere wählen.",
  link: "Als Link",
  linkLead:
    "Der Link enthält das ganze Arbeitsblatt mit seinem Titel und den Namen der Filme: Wer den Link hat, kann sie lesen. Er geht über keinen Server und öffnet sich ohne Netz auf jedem Gerät, auf dem Tankside schon einmal offen war.",
  together: "Ein Kurs fängt zusammen an, zu Tag und Uhrzeit oben",
  togetherHow:
    "Jedes Telefon öffnet den Link, übernimmt das Arbeitsblatt und drückt unter „Licht aus“ auf „Ich bin bereit“; zu dieser Minute beginnt sein erster Schritt von selbst. Die Uhren von Telefonen gehen verschieden, gewöhnlich um bis zu ein, zwei Sekunden.",
  copy: "Link kopieren",
  copied: "Kopiert.",
  notCopied: "Er ließ sich nicht kopieren. Hier steht er ganz:",
  share: "Link weitergeben",
  code: "Der Link als Code für eine Kamera",
  codeTooLong:
    "Dieses Arbeitsblatt ist zu lang für einen Code, den eine Kamera lesen kann. Der Link enthält es trotzdem.",
  linkTooLong:
    "Dieses Arbeitsblatt ist zu lang für einen Link. Stattdessen unter „Ausrechnen“ als Datei speichern.",
};

export const brought = {
  title: "Mit dem Link kam ein Arbeitsblatt",
  named: (title: string) => `Es heißt ${title}.`,
  starts: (time: string) => `Sein Kurs beginnt um ${time}.`,
  keeps:
    "Das eigene bleibt, wie es ist, bis dieses übernommen wird; danach holt „Rückgängig“ es zurück.",
  use: "Dieses Arbeitsblatt übernehmen",
  leave: "Nicht übernehmen",
  broken:
    "Der Link ist abgeschnitten, wurde unterwegs verändert oder hat eine andere Version. Hier hat sich nichts geändert.",
  /** What a notice calls it. */
  name: "Das Arbeitsblatt aus dem Link",
};

export const classStart = {
  title: "Ein Kurs fängt zusammen an",
  at: (time: string) => `Es beginnt um ${time}.`,
  left: (clock: string) => `noch ${clock}`,
  ready: "Ich bin bereit",
  notReady: "Doch nicht bereit",
  putAside: "Nicht auf den Kurs warten",
  waits: "Der erste Schritt beginnt von selbst. Diese Seite offen und im Blick lassen.",
  clocks:
    "Die Uhren von Telefonen gehen verschieden, gewöhnlich um bis zu ein, zwei Sekunden: Es gilt die des eigenen.",
  passed: "Diese Zeit ist vorbei. Wie sonst beginnen.",
  stopFirst: "Zuerst den Halt oben ansehen und annehmen.",
};
