// What is asked of how negatives look, what it was, and what to change.

export const negatives = {
  name: "Come sono i negativi?",
  hint: "Tienili asciutti contro una luce, non contro il sole. Rispondi quello che vedi: sotto sta che cosa è stato e che cosa cambiare.",
  density: "Contro la luce sono",
  densities: {
    clear: "chiari come vetro",
    thin: "sottili e piatti",
    good: "buoni",
    dense: "densi e scuri",
  },
  edge: "I numeri sul bordo",
  edges: {
    none: "non ci sono",
    faint: "sono deboli",
    usual: "sono come al solito",
    heavy: "sono grossi e neri",
  },
  mark: "E c’è",
  marks: {
    milky: "un velo lattiginoso",
    purple: "una tinta viola o blu",
    drying: "aloni o colature di gocce asciutte",
    grey: "un grigio uniforme, anche tra le immagini",
    streaks: "strisce dalle perforazioni",
    spots: "macchioline tonde e chiare",
    moons: "mezzelune, scure o chiare",
    patches: "una zona mai sviluppata",
  },
  unsaid: "non detto",
  mend: "Si può ancora rimediare.",
  change: "Da cambiare:",
  causes: {
    well: {
      was: "Esposto bene e sviluppato bene.",
      change: "niente. Rifallo come sta scritto qui.",
    },
    "not-exposed": {
      was: "Il bordo ha i suoi numeri, quindi il rivelatore ha lavorato: su questa pellicola non è arrivata nessuna immagine.",
      change: "controlla che la pellicola avanzi nella fotocamera e che l’otturatore si apra.",
    },
    "not-developed": {
      was: "Nemmeno i numeri sono venuti: il rivelatore era esaurito o mancava, o il fissaggio è venuto prima.",
      change:
        "numera i recipienti nel loro ordine e prova alla luce una goccia di rivelatore su un ritaglio di pellicola: deve scurirsi.",
    },
    "under-exposed": {
      was: "I numeri sono forti, quindi non è stato lo sviluppo: troppo poca luce è arrivata alla pellicola. Un tempo più lungo non ridà le ombre.",
      change: "misura con un indice più basso.",
    },
    "under-developed": {
      was: "Anche i numeri sono deboli: sviluppo scarso. Troppo breve, freddo, debole o esaurito.",
      change:
        "leggi il termometro nella tank all’inizio e alla fine, controlla la diluizione e aggiungi da un decimo a un quinto del tempo.",
    },
    "over-exposed": {
      was: "I numeri sono come al solito, quindi è stata l’esposizione: troppa luce.",
      change: "misura con un indice più alto, o controlla obiettivo ed esposimetro.",
    },
    "over-developed": {
      was: "Anche i numeri sono grossi: sviluppo eccessivo. Troppo lungo, caldo, forte o agitato.",
      change: "controlla temperatura e diluizione, e togli da un decimo a un quinto del tempo.",
    },
    "clear-either": {
      was: "Senza i numeri non si può dire: non esposta o non sviluppata.",
      change: "guarda il bordo. Con i numeri è stata la fotocamera, senza il rivelatore.",
    },
    "thin-either": {
      was: "Senza i numeri non si può dire: poca luce o poco sviluppo.",
      change: "guarda il bordo. Numeri deboli indicano lo sviluppo, numeri forti l’esposizione.",
    },
    "dense-either": {
      was: "Senza i numeri non si può dire: troppa luce o troppo sviluppo.",
      change:
        "guarda il bordo di questa pellicola o della prossima. Numeri grossi indicano lo sviluppo.",
    },
    milky: {
      was: "Non è fissata fino in fondo.",
      change:
        "di nuovo, alla luce, in fissaggio fresco per il doppio del tempo di chiarificazione, e rilava. Prova il fissaggio prima della prossima pellicola.",
    },
    purple: {
      was: "È rimasto del colorante; con alcune pellicole un po’ è normale.",
      change:
        "fissa un po’ di più in fissaggio fresco e lava più a lungo, con acqua non troppo fredda.",
    },
    drying: {
      was: "Le gocce si sono asciugate dov’erano.",
      change:
        "rilavala e passala in un imbibente in acqua dolce o distillata. Appendila lontano dalla polvere.",
    },
    grey: {
      was: "Le è arrivata luce fuori dalla fotocamera, o una chimica vecchia l’ha velata.",
      change:
        "aspetta di più al buio e cerca le fughe di luce, tasta l’asse e la chiusura del coperchio, e usa rivelatore fresco.",
    },
    streaks: {
      was: "Mossa troppo forte, o sempre allo stesso modo.",
      change: "capovolgi con più dolcezza, con un quarto di giro in mezzo.",
    },
    spots: {
      was: "Vi erano attaccate bolle d’aria.",
      change: "batti bene la tank dopo ogni agitazione e versa con continuità.",
    },
    moons: {
      was: "È stata piegata nel caricarla.",
      change: "carica senza forzare, su una spirale asciutta; se s’inceppa, torna di un giro.",
    },
    patches: {
      was: "Due giri si toccavano sulla spirale e nulla li ha raggiunti.",
      change:
        "senti i due bordi di ogni giro mentre carichi; esercitati alla luce con una pellicola vecchia.",
    },
  },
};
