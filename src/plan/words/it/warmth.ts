// Mixing and tempering, lines and warnings, in Italian.
import type { MixingWords, TemperingWords } from "../warmth-words.ts";

export const mixing: MixingWords = {
  water: "Acqua da aggiungere",
  waterSum: ({ total, target, weight, stock, at, stockWeight, sum }) =>
    `${total} a ${target} pesano ${weight}, ${stock} di stock a ${at} circa ${stockWeight}: ${sum}`,
  hot: "Dal rubinetto caldo",
  cold: "Dal rubinetto freddo",
  pourSum: ({ sum, at, density }) => `${sum}; a ${at} un ml pesa ${density}`,
  marks: "Alle tacche",
  marksSum: ({ stock, cold, hot, whole, dilution }) =>
    `${stock} di stock, ${cold} d’acqua fredda, ${hot} d’acqua calda danno ${whole} di soluzione ${dilution}`,
  warnings: {
    nothingToMix:
      "Il rivelatore si usa come stock, quindi non c’è acqua con cui scaldarlo. Mettilo a bagnomaria.",
    outOfReach: ({ target, coldest, warmest }) =>
      `Con questo stock e questi rubinetti non si arriva a ${target}: si può avere da ${coldest} a ${warmest}. Prima raffredda o scalda lo stock, prendi acqua e ghiaccio, oppure prepara la miscela più vicina e mettila a bagnomaria.`,
    oneTap: ({ temperature }) =>
      `I due rubinetti danno la stessa temperatura, quindi la miscela avrà ${temperature} comunque li mescoli.`,
    noWater:
      "L’acqua è liquida da 0 a 100 °C (da 32 a 212 °F): una delle temperature per la miscela è fuori.",
    marksTooCoarse: ({ mark, dilution }) =>
      `Tacche di ${mark} sono troppo larghe per questa miscela: ne fanno una ${dilution}. Misura lo stock in un cilindro più piccolo.`,
    lessThanAMark: ({ mark }) =>
      `Tacche di ${mark} sono troppo larghe per questa miscela: lo stock non arriva a mezza tacca. Misura lo stock in un cilindro più piccolo.`,
  },
};

export const tempering: TemperingWords = {
  thermometer: "Termometro",
  reading: ({ at, temperature }) => `${at} ${temperature}`,
  readings: ({ count }) => (count === 1 ? "1 lettura" : `${count} letture`),
  goes: "Va così",
  minutes: "minuti",
  goesSum: ({ sum, room, halfway, from, to, misfit }) =>
    `${sum}, metà strada verso ${room} ogni ${halfway} min; può fermarsi tra ${from} e ${to}; in media le letture se ne scostano di ${misfit}`,
  settles: ({ temperature }) => `si ferma a ${temperature}`,
  reached: ({ temperature }) => `A ${temperature}`,
  reachedSum: ({ sum, range }) =>
    `${sum} sul cronometro delle letture; il margine del termometro: ${range}`,
  orNever: ({ soonest }) => `non prima di ${soonest}, o mai`,
  range: ({ from, to }) => `da ${from} a ${to}`,
  onTheWall: ({ time }) => `sull’orologio al muro: ${time}`,
  about: ({ time }) => `circa ${time}`,
  muchLater: "molto più tardi",
  bathFor: ({ count }) =>
    count === 1 ? "Bagnomaria per 1 minuto" : `Bagnomaria per ${count} minuti`,
  ice: "Il ghiaccio che serve",
  iceSum: ({ water, from, to, sum }) => `${water} d’acqua da ${from} a ${to}: ${sum}`,
  asItIs: "Oppure così com’è",
  asItIsSum: ({ temperature, time }) =>
    `a ${temperature}, come nell’ultima lettura, per questa pellicola ci vuole ${time}`,
  beyond: ({ by }) => `è ${by} oltre le righe del foglietto`,
  readAgain: "leggi un’altra volta prima di usarlo",
  guess: ({ time }) => `${time}, una supposizione`,
  warnings: {
    atTarget: ({ target }) =>
      `Il rivelatore è a ${target}, per quanto può dire un termometro. Toglilo dal bagnomaria, o porta il bagnomaria alla stessa temperatura.`,
    unfit: {
      "too-few":
        "Troppo poche letture per dire quando: due se si conosce la temperatura del bagnomaria, altrimenti tre. Mescola, e leggi di nuovo fra due minuti.",
      "too-close": "Le letture distano meno di un minuto. Leggi di nuovo fra due o tre minuti.",
      still:
        "Le letture cambiano meno di quanto un termometro possa mostrare, quindi non si può dire un tempo. Aspetta, mescola, leggi di nuovo; o forse il bagnomaria ha già fatto quello che poteva.",
      noisy:
        "Le letture saltano avanti e indietro più di quanto faccia un termometro. Mescola prima di ognuna, tieni il termometro lontano dalla parete, e lascia fuori quelle lette male.",
      contradictory:
        "Le letture non vanno come in un solo bagnomaria: tornano indietro, o se ne allontanano. Hai aggiunto acqua o ghiaccio, o ne hai letta male una? Ricomincia dall’ultima.",
    },
    movesAway: ({ target }) =>
      `Il rivelatore ha passato ${target} e se ne allontana. Toglilo da questo bagnomaria.`,
    neverReaches: ({ target, settles }) =>
      `In questo bagnomaria il rivelatore non arriva mai a ${target}: si ferma intorno a ${settles}. Cambia l’acqua del bagnomaria, o sviluppa alla temperatura che ha per il tempo indicato.`,
    askIce:
      "Scrivi la temperatura del bagnomaria e quanta acqua contiene, e si calcola il ghiaccio che serve.",
    mayNotReach: ({ target }) =>
      `Queste letture non dicono se in questo bagnomaria il rivelatore arriva davvero a ${target}. Leggi di nuovo fra due o tre minuti, o cambia subito l’acqua del bagnomaria.`,
    takesLong: ({ target, wait }) =>
      `Per arrivare a ${target} ci vuole ancora circa ${wait}. Un bagnomaria con una temperatura più lontana fa prima; oppure sviluppa alla temperatura che ha per il tempo indicato.`,
    wait: ({ target, wait, range }) =>
      `Aspetta ancora circa ${wait} per ${target} (${range}), poi leggi un’altra volta e togli il rivelatore dal bagnomaria.`,
  },
};
