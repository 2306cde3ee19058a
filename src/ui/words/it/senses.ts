// The words of how a run reaches a person (heard, read out, felt, read), and of the statement on accessibility.

export const senses = {
  title: "Chi parla?",
  why: "Due voci si coprirebbero, perciò ce n’è una. Si può cambiare qui prima di ogni sessione.",
  hear: "Ascolta la domanda",
  hearHint: "o rispondi subito: tasti 1, 2 e 3",
  notHeard: "Non è stato possibile caricare la voce. La prima volta serve la rete.",
  names: {
    program: "Parla il programma",
    reader: "Parla il mio lettore di schermo",
    tones: "Solo i segnali",
  },
  hints: {
    program:
      "Quello che c’è da dire viene solo da questa pagina; durante la sessione non dà nulla da dire al lettore di schermo.",
    reader:
      "Durante la sessione le parole arrivano al loro momento, come testo, al lettore di schermo; i segnali restano.",
    tones: "La sessione dà i suoi segnali e non dice nulla finché non glielo chiedi.",
  },
  change: "Cambia",
  also: "Da sentire sulla pelle e da leggere",
  vibrates: "Vibra a ogni segnale",
  vibratesHint:
    "Anche al buio. Porta il dispositivo addosso e prova qui: da questa pagina non si può sapere se ha un motore.",
  noMotor: "Questo browser non può far vibrare un dispositivo.",
  feel: "Senti i segnali",
  captions: "Scrivi quello che si dice",
  captionsHint:
    "In grande sullo schermo della sessione finché c’è luce. Quello che si dirà al buio compare prima che la luce si spenga.",
  darkAhead: "Al buio si dirà:",
  /** The two halves of a turn, as large as the beat is short. */
  turns: { over: "Andata", back: "Ritorno" },
};

export const statement = {
  built: (standard: string, point: string) =>
    `Tankside è fatto secondo le ${standard}: il livello AA per intero, e il livello AAA tranne che per una cosa, il tempo (${point}).`,
  time: "L’orologio di una tank non si può fermare né allungare. In cambio:",
  instead: [
    "Ogni momento viene annunciato, contato e poi suonato, e si può anche sentire sulla pelle e leggere.",
    "Fra i passi a tempo la sessione aspetta la tua pressione, quanto vuoi.",
    "Una pressione si può annullare per tre secondi, e un ritardo si può dire: il resto viene ricalcolato.",
    "Quanto dura il versare e quanto piano parla la voce lo decidi tu.",
  ],
  ways: "Una sessione si può fare a orecchio, con il lettore di schermo, con i segnali, con la vibrazione o, finché c’è luce, leggendo; con un tasto, un dito o un pedale. Tutto ciò che si tiene premuto o si preme due o tre volte ha anche un pulsante suo.",
  measured:
    "A ogni modifica i test misurano: testo su fondo a 7 a 1 o meglio, su tutte e due le carte; pulsanti della sessione di almeno 88 pixel; pagine larghe 320 pixel senza scorrimento laterale; testo spaziato; colori forzati; e che axe-core non trovi nulla in nessun luogo.",
  limits:
    "Limiti noti: un lettore di schermo tiene il suo passo e può parlare ancora quando arriva un segnale; in tasca, a dispositivo bloccato, non ha nulla da leggere e si sentono solo i segnali.",
  trials:
    "Non ci sono state prove con persone cieche, sorde o che lavorano con una mano. Quello che c’è qui segue le norme ed è offerto alla prova.",
};
