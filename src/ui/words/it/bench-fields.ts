// What the fields of the bench are called in Italian, by the pattern of their paths, and why they are asked.

const bathFields = {
  "baths.*.clearing.time": {
    label: "Si chiarifica in",
    why: "Un pezzetto di pellicola non sviluppata nel fissaggio, alla luce, finché è trasparente. Dà il tempo di fissaggio dove non ne è scritto nessuno.",
  },
  "baths.*.clearing.fresh": {
    label: "A bagno fresco, in",
    why: "Il tempo della stessa prova nel bagno fresco. Quando ci vuole il doppio, il fissaggio è esaurito.",
  },
  "baths.*.clearing.times": { label: "Fissa per" },
  "baths.*.carryOver": {
    label: "Resta dentro ogni volta",
    why: "Il liquido che rimane in tank, spirali e pellicola a ogni svuotamento. Svuota come fai sempre, poi pesa la tank: un grammo è un millilitro.",
  },
  "baths.*.flow": {
    label: "Acqua corrente, al minuto",
    why: "Quanta ne scorre in un minuto: tieni un cilindro graduato sotto il tubo per dieci secondi, poi moltiplica per sei.",
  },
  "baths.*.thiosulfate": {
    label: "Tiosolfato nel fissaggio, g/l",
    why: "Se resta vuoto vale 108: un fissaggio semplice con 240 g di cristalli per litro.",
  },
  "baths.*.filmsPerLitre": {
    label: "Pellicole per litro",
    why: "In pellicole da 80 pollici quadrati, dalla scheda tecnica del produttore.",
  },
  "baths.*.filmsBefore": { label: "Pellicole già trattate" },
  "baths.*.bottle": { label: "Bottiglia dello scaffale" },
  "baths.*.kept": {
    label: "Quanto ce n’è",
    why: "Se resta vuoto vale quanto basta a coprire la pellicola.",
  },
};

export const benchFields = {
  ...bathFields,
  process: { label: "Procedimento" },
  "developer.soughtTime": {
    label: "Quale temperatura darebbe",
    why: "Un tempo che ti andrebbe bene. Si cerca nel foglietto quale temperatura lo dà, e quale dà il minimo, 5:00.",
  },
  "developer.readings[].at": {
    label: "Quando",
    why: "Sul cronometro del rivelatore. Le letture prendono il posto della deriva e spostano la fine.",
  },
  "developer.readings[].temperature": { label: "Nella tank" },
  "developer.filmsPerLitre": bathFields["baths.*.filmsPerLitre"],
  "developer.kept": bathFields["baths.*.kept"],
  "developer.bottle": bathFields["baths.*.bottle"],
  "developer.replenishPerFilm": { label: "Rigeneratore per pellicola" },
  "tank.label": {
    label: "Nome di questa tank",
    why: "Per esempio «acciaio, due spirali». Il volume e i tuoi tempi con questa tank si conservano sotto il nome.",
  },
  "tank.measured.pourIn": { label: "Riempita in, s" },
  "tank.measured.pourOut": { label: "Svuotata in, s" },
  "tank.measured.perInversion": { label: "Capovolta e tornata in, s" },
  "mixing.target": { label: "La miscela deve avere" },
  "mixing.stock": { label: "Lo stock ha" },
  "mixing.cold": { label: "Acqua fredda" },
  "mixing.hot": { label: "Acqua calda" },
  "mixing.mark": {
    label: "Tacche del cilindro",
    why: "Da una tacca del cilindro graduato alla seguente. Se resta vuoto vale 5 ml, o un quarto di oncia fluida.",
  },
  "tempering.target": { label: "Deve arrivare a" },
  "tempering.bath": {
    label: "Il bagnomaria ha",
    why: "Se lo sai bastano due letture; altrimenti ne servono tre. Mescola l’acqua e leggila con lo stesso termometro.",
  },
  "tempering.bathVolume": { label: "Acqua del bagnomaria", why: "Per il ghiaccio, se ne serve." },
  "tempering.readings[].at": {
    label: "Quando",
    why: "Su un cronometro a parte che parte con la prima lettura, per esempio 3:30.",
  },
  "tempering.readings[].temperature": { label: "Nel rivelatore" },
  "tempering.began": { label: "Che ora era a 0:00" },
  "contrast.tests[].time": { label: "Sviluppata per" },
  "contrast.tests[].gradient": {
    label: "Gradiente medio",
    why: "La densità guadagnata rispetto al logaritmo dell’esposizione, come l’ha data il densitometro o un cuneo a gradini.",
  },
  "contrast.tests[].densities": {
    label: "O le densità del cuneo",
    why: "Con base e velo, prima il gradino meno esposto, separate da spazi.",
  },
  "contrast.tests[].baseFog": {
    label: "Base e velo",
    why: "La densità della pellicola sviluppata ma mai esposta.",
  },
  "contrast.wanted": {
    label: "Gradiente voluto",
    why: "Se resta vuoto vale 0,615, cioè 0,80 su 1,30 come vuole la ISO 6.",
  },
  "contrast.stepLog": {
    label: "Log H per gradino",
    why: "Il logaritmo dell’esposizione da un gradino all’altro: 0,15 per mezzi stop, 0,30 per stop interi.",
  },
  "contrast.firstLog": {
    label: "Log H del primo gradino",
    why: "log10 dei lux per secondo, se lo conosci: allora se ne ricava una sensibilità.",
  },
};
