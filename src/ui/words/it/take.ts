// The words of taking a session along, of a worksheet that comes with a link, and of a class that starts together.

export const take = {
  title: "Da portare con sé",
  lead: "Tutta la sessione in file: da ascoltare su qualsiasi lettore, da leggere, da passare ad altri. Si fanno su questo dispositivo e non si invia nulla. Parla la voce inclusa, o la tua dove l’hai registrata.",
  notDevice:
    "La voce di questo dispositivo, scelta qui, non si può mettere in un file: lì parla al suo posto quella inclusa.",
  track: "La traccia",
  waits: "Dove si dovrebbe premere",
  /** Each with what a plain player makes of it. */
  kinds: {
    pass: "Prosegue da sola dopo un’attesa",
    stay: "Aspetta, sui lettori che sanno ripetere un capitolo",
  },
  kindsHow: {
    pass: "Un file non si può premere. Avvisa mezzo minuto e dieci secondi prima di proseguire; chi ha bisogno di più tempo mette in pausa il lettore.",
    stay: "Ogni attesa è un capitolo a sé e, in un file WAV, un ciclo. La maggior parte dei lettori non ripete nulla da sola: prosegue dopo l’attesa e non lo dice. Metti in pausa il lettore a ogni attesa, o fagli ripetere quel capitolo.",
  },
  gap: "Secondi di attesa",
  gapMay: (most: string) => `Può contenere secondi interi da 0 a ${most}.`,
  sizes:
    "Un file MP3 occupa mezzo megabyte al minuto, uno WAV tre. Entrambi contengono un capitolo per passo, e le parole.",
  makes: {
    mp3: "Fai un file MP3",
    wav: "Fai un file WAV",
    vtt: "Sottotitoli, WebVTT",
    srt: "Sottotitoli, SubRip",
    ssml: "Il testo parlato, SSML",
    txt: "Tutto come testo, 40 colonne",
    ics: "Voce per un calendario",
  },
  making: (share: string) => `In corso: ${share}`,
  cancel: "Annulla",
  cancelled: "Annullato. Non è stato salvato nulla.",
  saved: (name: string) => `Salvato come ${name}.`,
  failed: "Qui non si è potuto fare.",
  tooLong: "È più lungo di quanto possa essere un file così: circa un giorno.",
  texts: "Da leggere, e per altri programmi",
  plannedFor: "Un giorno e un’ora per farlo",
  planned: "Giorno e ora",
  wantsTime: "Scegli prima il giorno e l’ora.",
  isPast: "Quell’ora è passata. Scegline una che deve venire.",
  link: "Come collegamento",
  linkLead:
    "Il collegamento contiene tutta la scheda, con il titolo e i nomi delle pellicole: chi lo ha può leggerli. Non passa per alcun server e si apre senza rete su un dispositivo che ha già aperto Tankside.",
  together: "Una classe comincia insieme, nel giorno e all’ora di sopra",
  togetherHow:
    "Ogni telefono apre il collegamento, usa la scheda e preme «Tutto pronto» in «Spegni la luce»; in quel minuto il suo primo passo comincia da solo. Gli orologi dei telefoni differiscono, di solito fino a uno o due secondi.",
  copy: "Copia il collegamento",
  copied: "Copiato.",
  notCopied: "Non si è potuto copiare. Eccolo intero:",
  share: "Passa il collegamento",
  code: "Il collegamento come codice per una fotocamera",
  codeTooLong:
    "Questa scheda è troppo lunga per un codice che una fotocamera possa leggere. Il collegamento la contiene comunque.",
  linkTooLong:
    "Questa scheda è troppo lunga per un collegamento. Salvala invece in un file, in «Calcola».",
};

export const brought = {
  title: "Con il collegamento è arrivata una scheda",
  named: (title: string) => `Si chiama ${title}.`,
  starts: (time: string) => `La sua classe comincia alle ${time}.`,
  keeps: "La tua resta com’è finché non usi questa; dopo, Annulla la riporta.",
  use: "Usa questa scheda",
  leave: "Lasciala",
  broken:
    "Il collegamento è tagliato, è stato cambiato per strada o è di un’altra versione. Qui non è cambiato nulla.",
  /** What a notice calls it. */
  name: "La scheda del collegamento",
};

export const classStart = {
  title: "Una classe comincia insieme",
  at: (time: string) => `Comincia alle ${time}.`,
  left: (clock: string) => `mancano ${clock}`,
  ready: "Tutto pronto",
  notReady: "Non ancora",
  putAside: "Non aspettare la classe",
  waits: "Il primo passo comincia da solo. Lascia questa pagina aperta e in vista.",
  clocks:
    "Gli orologi dei telefoni differiscono, di solito fino a uno o due secondi: vale quello di ciascuno.",
  passed: "Quell’ora è passata. Comincia come al solito.",
  stopFirst: "Prima guarda lo stop qui sopra e accettalo.",
};
