// The words of the house's lists, and of what stands at Gullrock Light, in Dutch.

export const room = {
  title: "De lijsten van de ruimte",
  lead: "Openen, sluiten, en waar het verbruikte heen gaat: door het huis geschreven, voor het huis.",
  lists: {
    opening: "De ruimte openen",
    closing: "De ruimte sluiten",
    waste: "Waar het verbruikte heen gaat",
  },
  invite: {
    opening:
      "Er staat nog niets. Wat wordt er aangezet, nagekeken en klaargelegd voordat iemand begint?",
    closing: "Er staat nog niets. Wat wordt er gespoeld, uitgezet en afgesloten voor je weggaat?",
    waste:
      "Er staat nog niets. Welk vat krijgt wat, en wie haalt het op? De plaatselijke regels en de bladen van de fabrikanten beslissen.",
  },
  edit: "Deze lijst schrijven",
  hint: "Een regel voor elk punt.",
  keep: "Lijst bewaren",
  cancel: "Laat maar",
  reset: "Alle vinkjes weghalen",
  print: "Lijsten afdrukken",
  demo: "De lijsten van Gullrock Light invullen",
  kept: "De lijst is bewaard.",
  notKept: "Deze browser wilde haar niet bewaren: ze verdwijnt als je de pagina sluit.",
  ticked: (done: number, all: number) => `${done} van ${all} gedaan`,
};

export const gullrockRoom = {
  bottles: {
    stock: "Kelp MQ voorraad",
    stop: "Stopbad, bruine kan",
    fixer: "Fixeer B",
    powder: "poeder voor 1 l",
    concentrate: "concentraat",
  },
  opening: [
    "Ventilator aan, rolgordijn neer",
    "Bel van het mistsein losgehaakt",
    "Natte kant: waterbad vol, handdoeken klaar",
    "Deurkaart op DONKER gedraaid",
  ],
  closing: [
    "Bruikbare baden terug in hun flessen, films opgeschreven",
    "Schalen en maatglazen gespoeld, ondersteboven",
    "Kranen, ventilator en kachel uit",
    "Sleutel aan de haak in de lampkamer",
  ],
  waste: [
    "Verbruikt fixeer: blauw vat bij de deur, met de begindatum erop",
    "Verbruikte ontwikkelaar: grijs vat; de wachter brengt beide aan wal",
  ],
};
