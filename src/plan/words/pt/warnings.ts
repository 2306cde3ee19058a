// The warnings about time, mix, hands, baths and voice, in Portuguese.
import type { WarningWords } from "../warning-words.ts";

/** Behind a difference: `"3 °C acima da linha"`. */
const side = (warmer: boolean) => (warmer ? "acima" : "abaixo");

export const warnings: WarningWords = {
  extrapolated: ({ by, row, bath, warmer, tooFar }) =>
    `O revelador está ${by} ${side(warmer)} da linha mais próxima do folheto (${row}), ${
      tooFar
        ? "tão longe das linhas que o tempo não merece confiança"
        : "e o tempo segue uma inclinação que aí não se conhece"
    }. Aproxime-o de ${row}, ou junte a linha do folheto para ${bath}.`,
  driftExtrapolated: ({ end, by, row, bath, warmer }) =>
    `No fim, o tanque terá derivado para ${end}, ${by} ${side(warmer)} da linha mais próxima do folheto (${row}): a última parte do tempo segue uma inclinação que aí não se conhece. Ponha o tanque em água a ${bath}.`,
  readingExtrapolated: ({ reading, by, row, warmer }) =>
    `No tanque leram-se ${reading}, ${by} ${side(warmer)} da linha mais próxima do folheto (${row}): essa parte do tempo segue uma inclinação que aí não se conhece.`,
  tooCold: ({ bath }) =>
    `O revelador está a ${bath}. Abaixo de 15,6 °C (60 °F), um revelador com hidroquinona perde força depressa, e mais tempo não a compensa. Aqueça o banho.`,
  tooWarm: ({ bath }) =>
    `O revelador está a ${bath}. Acima de 26,7 °C (80 °F), a gelatina amolece e o tempo é curto de mais para se cumprir bem. Arrefeça o banho.`,
  shortDevelopment: ({ time, least }) =>
    `A revelação demora ${time}. Em menos de ${least}, as partes molhadas primeiro ficam visivelmente mais densas. Uma diluição mais fraca ou um banho mais frio demoram mais.`,
  leastAt: ({ least, temperature }) => `Segundo este folheto, demora ${least} a ${temperature}.`,
  rowOutOfLine: ({ time, temperature, expected }) =>
    `Uma linha do folheto destoa das outras: ${time} a ${temperature}, quando elas apontam para cerca de ${expected}. Veja-a de novo: um algarismo lê-se mal num instante.`,
  soughtNowhere: ({ time }) =>
    `Não se pode indicar uma temperatura para ${time}: os tempos do folheto não descem sempre à medida que aquece.`,
  soughtBeyond: ({ time, temperature, by }) =>
    `${time} saía a ${temperature}, mas isso fica ${by} fora das linhas do folheto, onde não se conhece a inclinação.`,
  readingsPastEnd: ({ done, read }) =>
    `Pelas leituras no tanque, a revelação ficou pronta aos ${done}, antes da leitura aos ${read}. Um pouco a mais faz pouco mal: despeje já e anote.`,
  longerThanADay: ({ hours }) =>
    `A revelação dá ${hours} e fica cortada em 24:00:00, que não é o que saiu das contas. Procure um engano nas linhas do folheto, nas temperaturas ou nos índices de exposição.`,
  hours: ({ count }) => (count === 1 ? "1 hora" : `${count} horas`),
  moreHours: ({ count }) => (count === 1 ? "mais de 1 hora" : `mais de ${count} horas`),
  mixedRatings: ({ films, first }) =>
    `Os filmes não têm o mesmo índice de exposição: ${films}. Cada um precisa do seu tempo, e um tempo intermédio não serve a nenhum; este plano é só para «${first}». Revele os outros à parte.`,
  ratedFilm: ({ film, rating }) => `«${film}» a ${rating}`,
  ratedFilmOfSpeed: ({ film, rating, box }) => `«${film}» a ${rating} (ISO da caixa ${box})`,
  unratedFilm: ({ film }) => `«${film}» sem sensibilidade indicada`,
  leafletBackwards: ({ warmer, colder }) =>
    `Os tempos do folheto encurtam quando arrefece: ${warmer}, mas ${colder}. Um banho mais frio trabalha mais devagar: um destes dois tempos foi mal lido. Corrija essa linha.`,
  stockShort: ({ tank, dilution, stock, needed, films, wanted, served }) =>
    `${tank} de ${dilution} têm ${stock} de solução-mãe, mas são precisos ${needed} para ${films} de 80 pol²: o revelador esgotava-se antes de o filme estar pronto. Com ${wanted} no tanque já chegava; ${tank} dão para ${served} de 80 pol².`,
  bathTooShort: ({ bath, time, pouring, least }) =>
    `${bath}: em ${time}, tinha de começar a despejar antes de o tanque estar cheio, porque encher e despejar levam ${pouring} desse tempo. Dê-lhe ${least} ou mais, encha mais depressa, ou conte o tempo com o tanque cheio.`,
  temperatureStep: ({ bath, temperature, by, most, warmer }) =>
    `${bath}: está a ${temperature}, ${by} ${side(warmer)} do revelador. Um salto de mais de ${most} pode enrugar a gelatina. Aproxime as temperaturas dos banhos.`,
  languageUnavailable: ({ language }) =>
    `Ainda não há voz para a língua «${language}», por isso a voz fala inglês.`,
  fixerSpent: ({ times }) =>
    `O fixador leva ${times} vezes o tempo que levava em novo para clarear o filme; ao dobro está esgotado, e o filme fixado nele não dura. Entregue-o para recuperar a prata e prepare fixador novo.`,
  clearedQuicker:
    "O pedaço clareou mais depressa do que no fixador novo, e isso não pode ser. Estava mais quente, era outro filme, ou leu-se mal um dos tempos?",
  fixerShort: ({ given, asked, twice }) =>
    `O fixador tem ${given}, mas ${twice ? "o dobro" : "o triplo"} do tempo de clareamento são ${asked}. Dê-lhe pelo menos isso, ou deixe o tempo dele vazio.`,
  washShort: ({ left, limit, cure }) =>
    `Só por diluição, esta lavagem deixa ${left} de tiossulfato no filme, mais do que os ${limit} que podem ficar. ${cure}`,
  moreChanges: ({ count }) =>
    count === 1 ? "É precisa 1 muda de água." : `São precisas ${count} mudas de água.`,
  moreRunning: ({ time }) => `Deixe correr a água durante ${time}.`,
  pastCapacity: ({ bath, before, now, all, developer }) =>
    `${bath}: ${before} antes e ${now} agora, quando só dá para ${all} de 80 pol². ${
      developer
        ? "Esgotava-se antes de o filme estar pronto. Use solução nova, ou menos filmes."
        : "A contagem não é prova: ensaie num pedaço de filme e, se falhar, prepare novo."
    }`,
  replenishedTwice:
    "Pede-se mais tempo por cada filme anterior, e reforçador também. A solução reforçada mantém o seu tempo: basta uma das duas coisas.",
  unevenHands: ({ what, spread, median }) =>
    `${what}: os tempos variam ${spread} à volta de ${median}. Treine com água: conta mais a regularidade do que a rapidez.`,
  notAsMeasured: ({ what, used, median }) =>
    `${what}: as contas usam ${used}, mas as suas mãos levaram ${median}.`,
};
