// The warnings about time, mix, hands, baths and voice, in Italian.
import type { WarningWords } from "../warning-words.ts";

const warmth = (warmer: boolean) => (warmer ? "più caldo" : "più freddo");

export const warnings: WarningWords = {
  extrapolated: ({ by, row, bath, warmer, tooFar }) =>
    `Il rivelatore è ${by} ${warmth(warmer)} della riga più vicina del foglietto (${row}), ${
      tooFar
        ? "così lontano dalle righe che del tempo non ci si può fidare"
        : "quindi il tempo segue un andamento che lì non si conosce"
    }. Portalo più vicino a ${row}, o aggiungi la riga del foglietto per ${bath}.`,
  driftExtrapolated: ({ end, by, row, bath, warmer }) =>
    `Alla fine la tank arriva a ${end}, ${by} ${warmer ? "sopra" : "sotto"} la riga più vicina del foglietto (${row}), quindi l’ultima parte del tempo segue un andamento che lì non si conosce. Tieni la tank in acqua a ${bath}.`,
  readingExtrapolated: ({ reading, by, row, warmer }) =>
    `Nella tank c’erano ${reading}, ${by} ${warmer ? "sopra" : "sotto"} la riga più vicina del foglietto (${row}), quindi quella parte del tempo segue un andamento che lì non si conosce.`,
  tooCold: ({ bath }) =>
    `Il rivelatore è a ${bath}. Sotto 15,6 °C (60 °F) un rivelatore all’idrochinone perde rapidamente forza, e più tempo non basta a compensare. Scalda il bagno.`,
  tooWarm: ({ bath }) =>
    `Il rivelatore è a ${bath}. Sopra 26,7 °C (80 °F) la gelatina si ammorbidisce e il tempo è troppo breve per rispettarlo bene. Raffredda il bagno.`,
  shortDevelopment: ({ time, least }) =>
    `Lo sviluppo dura ${time}. Sotto ${least} le parti bagnate per prime vengono visibilmente più dense. Con una diluizione più debole o un bagno più freddo ci vuole più tempo.`,
  leastAt: ({ least, temperature }) => `Secondo questo foglietto dura ${least} a ${temperature}.`,
  rowOutOfLine: ({ time, temperature, expected }) =>
    `Una riga del foglietto non concorda con le altre: ${time} a ${temperature}, dove le altre indicano circa ${expected}. Riguardala: una cifra si legge male in un attimo.`,
  soughtNowhere: ({ time }) =>
    `Per ${time} non si può dire nessuna temperatura: i tempi del foglietto non calano sempre quando fa più caldo.`,
  soughtBeyond: ({ time, temperature, by }) =>
    `${time} si avrebbe a ${temperature}, ma è ${by} oltre le righe del foglietto, dove l’andamento non si conosce.`,
  readingsPastEnd: ({ done, read }) =>
    `Secondo le letture nella tank lo sviluppo era finito a ${done}, prima della lettura a ${read}. Un po’ di più fa poco danno; svuota adesso e annotalo.`,
  longerThanADay: ({ hours }) =>
    `Il calcolo dà ${hours} di sviluppo, tagliate a 24:00:00, che non è il tempo calcolato. Cerca uno sbaglio nelle righe del foglietto, nelle temperature o nelle sensibilità.`,
  hours: ({ count }) => (count === 1 ? "1 ora" : `${count} ore`),
  moreHours: ({ count }) => `più di ${count} ore`,
  mixedRatings: ({ films, first }) =>
    `Le pellicole non sono esposte alla stessa sensibilità: ${films}. Ognuna vuole il suo tempo, e uno a metà strada non va bene per nessuna; questo piano è per la sola «${first}». Sviluppa le altre a parte.`,
  ratedFilm: ({ film, rating }) => `«${film}» a ${rating}`,
  ratedFilmOfSpeed: ({ film, rating, box }) => `«${film}» a ${rating} (nominale ${box})`,
  unratedFilm: ({ film }) => `«${film}» senza sensibilità`,
  leafletBackwards: ({ warmer, colder }) =>
    `Secondo il foglietto con il freddo i tempi si accorciano: ${warmer}, ma ${colder}. Un bagno più freddo lavora più piano, quindi una delle due righe è letta male. Correggi quella riga.`,
  stockShort: ({ tank, dilution, stock, needed, films, wanted, served }) =>
    `${tank} di soluzione ${dilution} contengono ${stock} di stock, ma per ${films} da 80 in² ne servono ${needed}: il rivelatore si esaurirebbe prima che la pellicola sia sviluppata. Basterebbe un volume di ${wanted} nella tank; ${tank} bastano per ${served} da 80 in².`,
  bathTooShort: ({ bath, time, pouring, least }) =>
    `${bath}: in ${time} si comincerebbe a svuotare prima che la tank sia piena, perché di quel tempo per riempire se ne va ${pouring}. Dagli ${least} o di più, versa più in fretta, o conta il tempo da quando la tank è piena.`,
  temperatureStep: ({ bath, temperature, by, most, warmer }) =>
    `${bath}: a ${temperature} è ${by} ${warmth(warmer)} del rivelatore. Un salto di più di ${most} può raggrinzire la gelatina. Avvicina le temperature dei bagni.`,
  languageUnavailable: ({ language }) =>
    `Per la lingua «${language}» non c’è ancora una voce, quindi la voce parla inglese.`,
  fixerSpent: ({ times }) =>
    `Per chiarificare il fissaggio ci mette ${times} volte il tempo di quando era fresco; al doppio è esaurito, e una pellicola fissata lì non dura. Consegnalo per il recupero dell’argento e preparane di fresco.`,
  clearedQuicker:
    "Il pezzetto si è chiarificato più in fretta che nel fissaggio fresco, e non può essere. Era più caldo, era un’altra pellicola, o uno dei due tempi è letto male?",
  fixerShort: ({ given, asked, twice }) =>
    `Il fissaggio ha ${given}, ma ${twice ? "il doppio" : "il triplo"} del tempo di chiarificazione è ${asked}. Dagli almeno quello, o lascia vuoto il suo tempo.`,
  washShort: ({ left, limit, cure }) =>
    `Per semplice diluizione questo lavaggio lascia sulla pellicola ${left} di tiosolfato, oltre il limite di ${limit}. ${cure}`,
  moreChanges: ({ count }) =>
    count === 1 ? "Ci vuole 1 ricambio d’acqua." : `Ci vogliono ${count} ricambi d’acqua.`,
  moreRunning: ({ time }) => `Lascia scorrere l’acqua per ${time}.`,
  pastCapacity: ({ bath, before, now, all, developer }) =>
    `${bath}: ${before} prima e ${now} adesso superano il massimo per cui basta, ${all} da 80 in². ${
      developer
        ? "Si esaurirebbe prima che la pellicola sia sviluppata. Prendine di fresco, o metti meno pellicole."
        : "Contare non è una prova: verificalo su un pezzetto di pellicola, e se non va preparane di fresco."
    }`,
  replenishedTwice:
    "Si chiede più tempo per ogni pellicola già trattata, e anche il rigeneratore. Un bagno rigenerato mantiene il suo tempo: basta una delle due cose.",
  unevenHands: ({ what, spread, median }) =>
    `${what}: i tempi misurati distano fra loro ${spread}, intorno a ${median}. Esercitati con l’acqua: la regolarità conta più della velocità.`,
  notAsMeasured: ({ what, used, median }) =>
    `${what}: il calcolo prende ${used}, ma le tue mani ci hanno messo ${median}.`,
};
