// The Italian words of what is heard before a run: the test with the tap running, and headphones that play late.

export const hearFirst = {
  title: "Prima ascolta",
  how: "Apri il rubinetto come lo terrai, e mettiti dove lavorerai. Lascia scorrere l’acqua mentre ascolti.",
  ask: "Hai sentito tutto, con l’acqua che scorre?",
  play: "Ascolta la prova",
  playAgain: "Ascoltala di nuovo",
  playHint: "qualche suono e una frase, forti come durante lo sviluppo",
  playing: "Si sente ora…",
  listen: "Ascolta ora, con l’acqua che scorre.",
  failed:
    "La prova non si è potuta ascoltare. La rete serve una volta sola, la prima, per la voce.",
  heard: "L’ho sentito",
  notHeard: "Non l’ho sentito",
  good: "Bene. Durante lo sviluppo suonerà altrettanto forte.",
  mend: "Allora di solito è una di queste cose; poi ascolta di nuovo:",
  advice: [
    "Il volume: alzalo a mano, sul dispositivo e sull’altoparlante o sulle cuffie.",
    "Il silenzioso: alcuni dispositivi hanno un interruttore di lato, o una modalità senza suono.",
    "Dove va il suono: forse è collegato un altoparlante in un’altra stanza, o un paio di cuffie in un cassetto.",
    "L’acqua: un filo più sottile, il dispositivo più vicino, o le cuffie.",
  ],
  begin: "Comincia senza averlo sentito",
  beginHint: "per chi sente i suoni sul corpo, o legge le parole",
};

export const tapAlong = {
  ask: "Cuffie senza filo?",
  why: "Suonano in ritardo, spesso di un quarto di secondo, e con loro arriva tardi il suono per svuotare. Batti a tempo con qualche colpo, e tutto ciò che suona durante lo sviluppo partirà prima di altrettanto.",
  kept: (delay: string) => `Su questo dispositivo parte ${delay} prima.`,
  noneKept: "Su questo dispositivo niente parte prima.",
  notKept: "Questo browser non lo terrà tra una visita e l’altra.",
  measure: "Misura battendo a tempo",
  none: "Nessun ritardo",
  name: "Di quanto suonano in ritardo le cuffie",
  advice: "Metti le cuffie. Tre colpi e una pausa, di continuo, per venti secondi.",
  start: "Premi per sentire i colpi",
  fetching: "Si caricano i colpi…",
  tap: "Batti qui a ogni colpo",
  tapHint: "o premi la barra spaziatrice; nelle pause no",
  taps: (count: number) => `Battute: ${count}`,
  failed:
    "I colpi non si sono potuti ascoltare. La rete serve una volta sola, la prima. Premi per riprovare.",
  late: (delay: string) => `${delay} di ritardo`,
  notLate: "Nessun ritardo che conti",
  sure: (apart: string) => `Metà delle battute sta entro ${apart} da lì.`,
  keep: (delay: string) => `Tieni ${delay}`,
  keepNone: "Lascia senza ritardo",
  again: "Di nuovo",
  leave: "Esci",
  refused: {
    few: "Troppo poche battute per dirlo. Di nuovo: una battuta a ogni colpo.",
    uneven: "Le battute sono troppo sparse per dirlo. Di nuovo: prima prendi il tempo, poi batti.",
    unclear: "Va bene per due ritardi. Di nuovo: tre battute, e nessuna nella pausa.",
    far: "È più di un secondo, più di quanto si possa rimediare. Vanno bene cuffie con il filo, o l’altoparlante del dispositivo.",
  },
};

export const byEar = {
  open: "Calcolare a orecchio",
  name: "Calcolare a orecchio",
  hint: "Qualsiasi tasto o tocco prende ciò che viene offerto, o va avanti. Su e giù portano da un campo all’altro, sinistra e destra scorrono i valori da scegliere, Invio ne prende uno; le cifre e le lettere di un nome entrano come le batti, Invio le fissa, C o F, M o O in quella unità, una virgola separa i ricambi di un lavaggio, uno spazio i gradini di un cuneo, Backspace ne toglie una, Esc chiude.",
  end: "Tutto insieme",
  previous: "Precedente",
  next: "Seguente",
  close: "Chiudi",
  notHeard: "Non è stato possibile prendere la voce. Cerca una rete e premi di nuovo.",
};
