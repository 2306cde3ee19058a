// The words of the house's lists, and of what stands at Gullrock Light, in Italian.

export const room = {
  title: "Gli elenchi della stanza",
  lead: "Aprire, chiudere, e dove va l’esaurito: scritti dalla casa, per la casa.",
  lists: {
    opening: "Aprire la stanza",
    closing: "Chiudere la stanza",
    waste: "Dove va l’esaurito",
  },
  invite: {
    opening:
      "Non c’è ancora scritto niente. Che cosa si accende, si controlla e si prepara prima che qualcuno cominci?",
    closing:
      "Non c’è ancora scritto niente. Che cosa si lava, si spegne e si chiude prima di uscire?",
    waste:
      "Non c’è ancora scritto niente. Quale recipiente riceve che cosa, e chi lo porta via? Decidono le regole del posto e le schede dei produttori.",
  },
  edit: "Scrivi questo elenco",
  hint: "Una riga per ogni punto.",
  keep: "Conserva l’elenco",
  cancel: "Lascia stare",
  reset: "Togli tutti i segni",
  print: "Stampa gli elenchi",
  demo: "Compila con gli elenchi di Gullrock Light",
  kept: "L’elenco è conservato.",
  notKept: "Questo browser non ha voluto conservarlo: si perde quando chiudi la pagina.",
  ticked: (done: number, all: number) => `${done} su ${all} fatti`,
};

export const gullrockRoom = {
  bottles: {
    stock: "Kelp MQ stock",
    stop: "Arresto, brocca marrone",
    fixer: "Fissaggio B",
    powder: "polvere per 1 l",
    concentrate: "concentrato",
  },
  opening: [
    "Ventola accesa, tenda abbassata",
    "Campana del segnale da nebbia sganciata",
    "Lato bagnato: bagnomaria pieno, asciugamani pronti",
    "Cartello della porta girato su BUIO",
  ],
  closing: [
    "Bagni ancora buoni nelle loro bottiglie, pellicole annotate",
    "Bacinelle e cilindri sciacquati e capovolti",
    "Rubinetti, ventola e stufa spenti",
    "Chiave al gancio nella stanza della lampada",
  ],
  waste: [
    "Fissaggio esaurito: tanica blu vicino alla porta, con la data d’inizio",
    "Rivelatore esaurito: tanica grigia; la guardiana porta a terra tutte e due",
  ],
};
