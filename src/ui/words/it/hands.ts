// The words for what the hands use beside the one press, in Italian: a thermometer, a pedal, a knock.

export const reading = {
  name: "Termometro",
  typed: "Temperatura nella tank",
  taken: (temperature: string) => `Segnato: ${temperature}.`,
  range: (least: string, most: string) =>
    `Un rivelatore nella tank sta tra ${least} e ${most}. Non è cambiato niente.`,
  connect: "Collega un termometro",
  hint: "Se ha il Bluetooth, sposta la fine da solo. Non è mai necessario.",
  connecting: "Si cerca un termometro…",
  disconnect: "Scollegalo",
  nameless: "Termometro",
  on: (name: string, temperature: string) => `${name}: ${temperature}.`,
  nothingYet: (name: string) => `${name}: collegato, ancora nessuna lettura.`,
  out: (name: string, temperature: string) =>
    `${name}: ${temperature}. Sembra fuori dalla tank, perciò non se ne tiene conto.`,
  lost: (name: string) => `${name}: collegamento perso, lo si sta cercando.`,
  last: (temperature: string) => `Ultima lettura: ${temperature}.`,
  refused: {
    none: "Non è stato scelto nessun termometro. Accendilo, avvicinalo, poi premi di nuovo.",
    denied:
      "Qui non è permesso usare il Bluetooth. Consentilo nelle impostazioni, poi premi di nuovo.",
    unreachable:
      "Il termometro non ha risposto. Avvicinalo o scollegalo da un altro dispositivo, poi premi di nuovo.",
    unfit: "Questo non dà una temperatura che qui si possa leggere.",
    unable: "Questo browser non può usare il Bluetooth in questa pagina.",
  },
};

export const pedal = {
  name: "Voltapagine, pedale o altro pulsante",
  hint: "Tutto ciò che manda tasti a questo dispositivo può valere come pressione durante lo sviluppo. Si impara premendolo.",
  learn: "Imparane uno",
  capture:
    "Premilo adesso: una volta brevemente, poi ancora una per un secondo. Il tasto Esc annulla.",
  again: "Ricevuto. Adesso ancora una volta, per un secondo.",
  calledOff: "Non è stato imparato niente.",
  nothing: "Non è arrivato nessun tasto. È acceso, e abbinato a questo dispositivo?",
  learnt: "Imparato.",
  notKept: "Questo browser non può conservarlo: vale finché la pagina non viene chiusa.",
  known: "Imparati finora",
  holds: (key: string) => `${key}: si può premere e tenere premuto`,
  taps: (key: string) => `${key}: si può premere, non tenere premuto`,
  keyboard:
    "Durante lo sviluppo questi tasti valgono da qualunque parte arrivino, anche da una tastiera.",
  refused: {
    moves: "Tab ed Esc restano quello che sono: servono a chi si muove con i tasti.",
    modifier: "Questo tasto da solo non vuol dire niente, perciò non può valere come pressione.",
    nameless: "Questo tasto non ha un nome da cui riconoscerlo.",
  },
  try: "Prova",
  trying: "Premi come durante lo sviluppo. Il tasto Esc termina.",
  meanings: {
    once: "Una volta: va avanti, o dice dove siamo.",
    twice: "Due volte: dice dove siamo.",
    thrice: "Tre volte: fa tacere la voce, o la fa parlare di nuovo.",
    held: "Tenuto premuto: annulla, o propone che altro si può fare.",
  },
  tried: "La prova è finita.",
  forget: (key: string) => `Dimentica ${key}`,
  forgotten: "Dimenticato.",
  keys: { space: "Spazio", enter: "Invio", pageUp: "Pag su", pageDown: "Pag giù" },
};

export const knocks = {
  hear: "Ascolta i colpi sul tavolo (microfono)",
  hint: "Quello che sente non viene conservato e non lascia mai questo dispositivo. Non è mai necessario: premere fa lo stesso.",
};
