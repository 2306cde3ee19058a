// Mixing and tempering, lines and warnings, in Portuguese.
import type { MixingWords, TemperingWords } from "../warmth-words.ts";

export const mixing: MixingWords = {
  water: "Água a juntar",
  waterSum: ({ total, target, weight, stock, at, stockWeight, sum }) =>
    `${total} a ${target} pesam ${weight}; ${stock} de solução-mãe a ${at}, cerca de ${stockWeight}: ${sum}`,
  hot: "Da torneira quente",
  cold: "Da torneira fria",
  pourSum: ({ sum, at, density }) => `${sum}; a ${at}, um ml pesa ${density}`,
  marks: "Até aos traços",
  marksSum: ({ stock, cold, hot, whole, dilution }) =>
    `${stock} de solução-mãe, ${cold} de fria e ${hot} de quente fazem ${whole} de ${dilution}`,
  warnings: {
    nothingToMix:
      "O revelador usa-se sem diluir, por isso não há água para o aquecer. Ponha-o em banho-maria.",
    outOfReach: ({ target, coldest, warmest }) =>
      `Com esta solução-mãe e estas torneiras não se consegue misturar a ${target}: só de ${coldest} a ${warmest}. Arrefeça ou aqueça primeiro a solução-mãe, use água com gelo, ou misture o mais perto possível e ponha em banho-maria.`,
    oneTap: ({ temperature }) =>
      `As duas torneiras correm à mesma temperatura: a mistura fica a ${temperature}, seja qual for a parte de cada uma.`,
    noWater:
      "A água é líquida de 0 a 100 °C (32 a 212 °F): uma das temperaturas da mistura está fora disso.",
    marksTooCoarse: ({ mark, dilution }) =>
      `Traços de ${mark} são largos de mais para esta mistura: fazem dela ${dilution}. Meça a solução-mãe numa proveta mais pequena.`,
    lessThanAMark: ({ mark }) =>
      `Traços de ${mark} são largos de mais para esta mistura: a solução-mãe não chega a meio traço. Meça-a numa proveta mais pequena.`,
  },
};

const muchLater = "mais de um dia";

/** `"cerca de 11:20"`. */
const about = (time: string) => (time === muchLater ? time : `cerca de ${time}`);

export const tempering: TemperingWords = {
  thermometer: "Termómetro",
  reading: ({ at, temperature }) => `${at} ${temperature}`,
  readings: ({ count }) => (count === 1 ? "1 leitura" : `${count} leituras`),
  goes: "Evolução",
  minutes: "minutos",
  goesSum: ({ sum, room, halfway, from, to, misfit }) =>
    `${sum}, a meio caminho de ${room} a cada ${halfway} min; pode estabilizar entre ${from} e ${to}; as leituras desviam-se disto ${misfit} em média`,
  settles: ({ temperature }) => `estabiliza a ${temperature}`,
  reached: ({ temperature }) => `A ${temperature}`,
  reachedSum: ({ sum, range }) =>
    `${sum} no relógio das leituras; o que o termómetro deixa em aberto: ${range}`,
  orNever: ({ soonest }) => `no mínimo ${soonest}, ou nunca`,
  range: ({ from, to }) => `entre ${from} e ${to}`,
  onTheWall: ({ time }) => `no relógio de parede, ${time}`,
  about: ({ time }) => about(time),
  muchLater,
  bathFor: ({ count }) =>
    count === 1 ? "Banho-maria para 1 minuto" : `Banho-maria para ${count} minutos`,
  ice: "Gelo para isso",
  iceSum: ({ water, from, to, sum }) => `${water} de água, de ${from} para ${to}: ${sum}`,
  asItIs: "Ou tal como está",
  asItIsSum: ({ temperature, time }) =>
    `a ${temperature}, como na última leitura, este filme leva ${time}`,
  beyond: ({ by }) => `fica ${by} fora das linhas do folheto`,
  readAgain: "leia mais uma vez antes de o usar",
  guess: ({ time }) => `${time}, um palpite`,
  warnings: {
    atTarget: ({ target }) =>
      `O revelador está a ${target}, tanto quanto um termómetro sabe dizer. Tire-o do banho-maria, ou leve o banho-maria a essa temperatura.`,
    unfit: {
      "too-few":
        "Faltam leituras para dizer quando: duas, se souber a temperatura do banho-maria; sem ela, três. Mexa, e leia de novo daqui a dois minutos.",
      "too-close": "Entre as leituras há menos de um minuto. Leia de novo daqui a dois ou três.",
      still:
        "As leituras não mudam mais do que um termómetro consegue mostrar, e assim não se pode dizer um tempo. Espere, mexa, leia de novo; ou então o banho-maria já fez o que podia.",
      noisy:
        "As leituras saltam para cá e para lá mais do que um termómetro salta. Mexa antes de cada uma, mantenha o termómetro afastado da parede, e tire as que foram mal lidas.",
      contradictory:
        "As leituras não seguem o caminho de um só banho: voltam para trás, ou afastam-se dele. Juntou-se gelo ou água, ou leu-se mal uma delas? Recomece a partir da última.",
    },
    movesAway: ({ target }) =>
      `O revelador já passou os ${target} e está a afastar-se. Tire-o deste banho-maria.`,
    neverReaches: ({ target, settles }) =>
      `Neste banho-maria, o revelador nunca chega a ${target}: estabiliza perto de ${settles}. Mude a água do banho-maria, ou revele à temperatura a que está, com o tempo dado.`,
    askIce:
      "Diga a que temperatura está o banho-maria e quanta água leva, e calcula-se o gelo para isso.",
    mayNotReach: ({ target }) =>
      `Por estas leituras não se sabe sequer se o revelador chega a ${target} neste banho-maria. Leia de novo daqui a dois ou três minutos, ou mude já a água do banho-maria.`,
    takesLong: ({ target, wait }) =>
      `Ainda demora ${about(wait)} até chegar a ${target}. Um banho-maria com mais diferença chega lá mais depressa; ou revele à temperatura a que está, com o tempo dado.`,
    wait: ({ target, wait, range }) =>
      `Espere ainda ${about(wait)} pelos ${target} (${range}), leia então mais uma vez, e tire-o do banho-maria.`,
  },
};
