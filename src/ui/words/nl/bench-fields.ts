// What the fields of the bench are called, by the pattern of their paths, and why they are asked.

const bathFields = {
  "baths.*.clearing.time": {
    label: "Filmsnipper helder na",
    why: "Leg een snipper onontwikkelde film bij licht in het fixeer, tot hij helder is. Daaruit volgt de fixeertijd als er geen is ingevuld.",
  },
  "baths.*.clearing.fresh": {
    label: "In vers fixeer na",
    why: "Hoe lang dezelfde proef in het verse bad duurde. Bij het dubbele daarvan is het fixeer uitgewerkt.",
  },
  "baths.*.clearing.times": { label: "Fixeren" },
  "baths.*.carryOver": {
    label: "Blijft achter na uitgieten",
    why: "Vloeistof die in tank, spiralen en film blijft hangen. Giet uit zoals je altijd doet en weeg dan de tank: een gram is een milliliter.",
  },
  "baths.*.flow": {
    label: "Stromend water per minuut",
    why: "Hoeveel er in een minuut doorstroomt: houd een maatcilinder tien seconden onder de slang en neem dat keer zes.",
  },
  "baths.*.thiosulfate": {
    label: "Thiosulfaat in het fixeer, g/l",
    why: "Leeg geldt 108, een gewoon fixeer van 240 g kristallen per liter.",
  },
  "baths.*.filmsPerLitre": {
    label: "Films per liter",
    why: "In films van 80 vierkante inch (516 cm²), volgens de fabrikant.",
  },
  "baths.*.filmsBefore": { label: "Films die er al door zijn" },
  "baths.*.bottle": { label: "Fles van de plank" },
  "baths.*.kept": {
    label: "Hoeveel er is",
    why: "Leeg geldt zoveel als de film bedekt.",
  },
};

export const benchFields = {
  ...bathFields,
  process: { label: "Proces" },
  "developer.soughtTime": {
    label: "Temperatuur gezocht voor",
    why: "Een tijd die je graag zou hebben. Uit de bijsluiter volgt welke temperatuur daarbij hoort, en welke bij de kortste verstandige tijd, 5:00.",
  },
  "developer.readings[].at": {
    label: "Tijd",
    why: "Op de klok van de ontwikkelaar zelf. De metingen komen in de plaats van het berekende verloop en verschuiven het einde.",
  },
  "developer.readings[].temperature": { label: "In de tank" },
  "developer.filmsPerLitre": bathFields["baths.*.filmsPerLitre"],
  "developer.kept": bathFields["baths.*.kept"],
  "developer.bottle": bathFields["baths.*.bottle"],
  "developer.replenishPerFilm": { label: "Regenerator per film" },
  "tank.label": {
    label: "Naam van deze tank",
    why: "Bijvoorbeeld “staal, twee spiralen”. Onder die naam worden het volume en je eigen tijden ermee bewaard.",
  },
  "tank.measured.pourIn": { label: "Ingieten duurde, s" },
  "tank.measured.pourOut": { label: "Uitgieten duurde, s" },
  "tank.measured.perInversion": { label: "Heen en terug duurde, s" },
  "mixing.target": { label: "Mengsel moet worden" },
  "mixing.stock": { label: "Stock is nu" },
  "mixing.cold": { label: "Koude kraan" },
  "mixing.hot": { label: "Warme kraan" },
  "mixing.mark": {
    label: "Maatstreepjes",
    why: "Op de maatcilinder, van het ene streepje tot het volgende. Leeg geldt 5 ml, of een kwart fluid ounce.",
  },
  "tempering.target": { label: "Moet worden" },
  "tempering.bath": {
    label: "Waterbad is nu",
    why: "Hiermee zijn twee metingen genoeg, zonder dit drie. Roer het water om en meet met dezelfde thermometer.",
  },
  "tempering.bathVolume": { label: "Water in het bad", why: "Voor het ijs, als er ijs nodig is." },
  "tempering.readings[].at": {
    label: "Tijd",
    why: "Op een eigen klok, die met de eerste meting begint, bijvoorbeeld 3:30.",
  },
  "tempering.readings[].temperature": { label: "In de ontwikkelaar" },
  "tempering.began": { label: "Hoe laat het was bij 0:00" },
  "contrast.tests[].time": { label: "Ontwikkeld" },
  "contrast.tests[].gradient": {
    label: "Gemiddelde gradiënt",
    why: "Toename van de dichtheid gedeeld door die van de log. belichting, zoals de densitometer of een grijswig die gaf.",
  },
  "contrast.tests[].densities": {
    label: "Of de dichtheden van de wig",
    why: "Met de grondsluier erbij, de minst belichte trap eerst, met spaties ertussen.",
  },
  "contrast.tests[].baseFog": {
    label: "Grondsluier",
    why: "Drager en sluier samen: de dichtheid van film die wel ontwikkeld is, maar nooit belicht.",
  },
  "contrast.wanted": {
    label: "Gewenste gradiënt",
    why: "Leeg geldt 0,615, dat is 0,80 gedeeld door 1,30 zoals in ISO 6.",
  },
  "contrast.stepLog": {
    label: "Log. belichting per trap",
    why: "0,15 voor halve stops, 0,30 voor hele.",
  },
  "contrast.firstLog": {
    label: "Log. belichting van de eerste trap",
    why: "log10 van de luxseconden, als je die weet: dan volgt er een gevoeligheid uit.",
  },
};
