// Mixing and tempering, lines and warnings, in Dutch.
import type { MixingWords, TemperingWords } from "../warmth-words.ts";

export const mixing: MixingWords = {
  water: "Water erbij",
  waterSum: ({ total, target, weight, stock, at, stockWeight, sum }) =>
    `${total} bij ${target} weegt ${weight}, ${stock} stock bij ${at} ongeveer ${stockWeight}: ${sum}`,
  hot: "Uit de warme kraan",
  cold: "Uit de koude kraan",
  pourSum: ({ sum, at, density }) => `${sum}; bij ${at} weegt een ml ${density}`,
  marks: "Op hele streepjes",
  marksSum: ({ stock, cold, hot, whole, dilution }) =>
    `${stock} stock, ${cold} koud en ${hot} warm geven ${whole} (${dilution})`,
  warnings: {
    nothingToMix:
      "De ontwikkelaar wordt onverdund gebruikt, dus er is geen water om hem mee op te warmen. Zet hem in een waterbad.",
    outOfReach: ({ target, coldest, warmest }) =>
      `Met deze stock en deze kranen is ${target} niet te mengen: je komt uit op ${coldest} tot ${warmest}. Koel of verwarm eerst de stock, neem ijswater, of meng wat het dichtst in de buurt komt en zet dat in een waterbad.`,
    oneTap: ({ temperature }) =>
      `Beide kranen geven dezelfde temperatuur, dus het mengsel wordt ${temperature}, hoeveel je ook van elk neemt.`,
    noWater:
      "Water is vloeibaar van 0 tot 100 °C (32 tot 212 °F): een van de temperaturen om te mengen ligt daarbuiten.",
    marksTooCoarse: ({ mark, dilution }) =>
      `Streepjes van ${mark} zijn te grof voor dit mengsel: het wordt dan ${dilution}. Meet de stock af in een kleinere maatcilinder.`,
    lessThanAMark: ({ mark }) =>
      `Streepjes van ${mark} zijn te grof voor dit mengsel: de stock komt nog niet tot een half streepje. Meet hem af in een kleinere maatcilinder.`,
  },
};

export const tempering: TemperingWords = {
  thermometer: "Thermometer",
  reading: ({ at, temperature }) => `${at} ${temperature}`,
  readings: ({ count }) => (count === 1 ? "1 meting" : `${count} metingen`),
  goes: "Verloop",
  minutes: "minuten",
  goesSum: ({ sum, room, halfway, from, to, misfit }) =>
    `${sum}, elke ${halfway} min de helft dichter bij ${room}; het kan blijven staan tussen ${from} en ${to}; de metingen liggen er gemiddeld ${misfit} naast`,
  settles: ({ temperature }) => `blijft staan op ${temperature}`,
  reached: ({ temperature }) => `Op ${temperature}`,
  reachedSum: ({ sum, range }) =>
    `${sum} op de klok van de metingen; wat de thermometer openlaat: ${range}`,
  orNever: ({ soonest }) => `op zijn vroegst ${soonest}, of nooit`,
  range: ({ from, to }) => `${from} tot ${to}`,
  onTheWall: ({ time }) => `op de klok aan de muur is het dan ${time}`,
  about: ({ time }) => `ongeveer ${time}`,
  muchLater: "veel later",
  bathFor: ({ count }) => (count === 1 ? "Bad voor 1 minuut" : `Bad voor ${count} minuten`),
  ice: "IJs daarvoor",
  iceSum: ({ water, from, to, sum }) => `${water} water van ${from} naar ${to}: ${sum}`,
  asItIs: "Of zoals hij is",
  asItIsSum: ({ temperature, time }) =>
    `bij ${temperature}, het laatst gemeten, heeft deze film ${time} nodig`,
  beyond: ({ by }) => `dat ligt ${by} buiten de rijen van de bijsluiter`,
  readAgain: "meet nog één keer voordat je hem gebruikt",
  guess: ({ time }) => `${time}, een schatting`,
  warnings: {
    atTarget: ({ target }) =>
      `De ontwikkelaar is ${target}, zo nauwkeurig als een thermometer dat aangeeft. Haal hem uit het waterbad, of breng het waterbad op dezelfde temperatuur.`,
    unfit: {
      "too-few":
        "Te weinig metingen om te zeggen wanneer het zover is: twee als de temperatuur van het waterbad bekend is, anders drie. Roer, en meet over twee minuten opnieuw.",
      "too-close":
        "De metingen liggen minder dan een minuut uit elkaar. Meet over twee of drie minuten opnieuw.",
      still:
        "De metingen verschillen niet meer dan een thermometer kan aangeven, dus er valt geen tijd te noemen. Wacht, roer en meet opnieuw; of het waterbad heeft gedaan wat het kan.",
      noisy:
        "De metingen springen meer heen en weer dan een thermometer doet. Roer voor elke meting, houd de thermometer vrij van de wand en laat weg wat verkeerd is afgelezen.",
      contradictory:
        "De metingen passen niet bij één waterbad: ze keren om of gaan ervan weg. Is er ijs of water bij gedaan, of is er een verkeerd afgelezen? Begin opnieuw met de laatste.",
    },
    movesAway: ({ target }) =>
      `De ontwikkelaar is ${target} al voorbij en gaat er verder vandaan. Haal hem uit dit waterbad.`,
    neverReaches: ({ target, settles }) =>
      `In dit waterbad komt de ontwikkelaar nooit op ${target}: hij blijft staan rond ${settles}. Ververs het water van het waterbad, of ontwikkel bij de temperatuur die hij heeft, met de tijd die daarbij staat.`,
    askIce:
      "Vul in hoe warm het waterbad is en hoeveel water erin zit, dan wordt het ijs ervoor uitgerekend.",
    mayNotReach: ({ target }) =>
      `Uit deze metingen is niet te zien of de ontwikkelaar in dit waterbad wel op ${target} komt. Meet over twee of drie minuten opnieuw, of ververs nu het water.`,
    takesLong: ({ target, wait }) =>
      `Het duurt nog ongeveer ${wait} tot ${target}. Met een waterbad dat er verder vandaan ligt gaat het sneller; of ontwikkel bij de temperatuur die hij heeft, met de tijd die daarbij staat.`,
    wait: ({ target, wait, range }) =>
      `Wacht nog ongeveer ${wait} tot ${target} (${range}), meet dan nog één keer en haal hem uit het waterbad.`,
  },
};
