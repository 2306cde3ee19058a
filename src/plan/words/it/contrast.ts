// Test films and their contrast, lines and warnings, in Italian.
import type { ContrastWords } from "../contrast-words.ts";

const start = (fog: string, log: string, fromFirst: boolean) =>
  `0,1 sopra base e velo (${fog}) si ha a log H ${log}${fromFirst ? " dal primo gradino" : ""}`;

const rises = (rise: string) => `1,3 più avanti la densità è salita di ${rise}`;

export const contrast: ContrastWords = {
  test: ({ number, time }) => `Prova ${number}, ${time}`,
  wedge: ({ fog, log, rise, sum, fromFirst }) =>
    `${start(fog, log, fromFirst)}; ${rises(rise)}: ${sum}`,
  wedgeWithSpeed: ({ fog, log, rise, sum, speed, degrees, fromFirst }) =>
    `${start(fog, log, fromFirst)}; ${rises(rise)}; sensibilità ${speed}, cioè ${degrees}: ${sum}`,
  wedgeNotIso: ({ fog, log, rise, sum, fromFirst }) =>
    `${start(fog, log, fromFirst)}; ${rises(rise)}; non è il contrasto a cui la ISO 6 dichiara una sensibilità, 0,80 ± 0,05: ${sum}`,
  gradient: ({ gradient }) => `gradiente ${gradient}`,
  growth: "Crescita",
  minutes: "minuti",
  growthSum: ({ sum, points, misfit }) =>
    `${sum}, tracciata per ${points}; in media se ne scosta di ${misfit}`,
  point: ({ gradient, time }) => `${gradient} a ${time}`,
  range: ({ from, to }) => `da ${from} a ${to}`,
  contrast: "Contrasto",
  stopLess: "Uno stop in meno",
  stopMore: "Uno stop in più",
  timeSum: ({ gradient, sum }) => `gradiente ${gradient}: ${sum}`,
  change: ({ percent, less }) => `${percent}% in ${less ? "meno" : "più"}`,
  warnings: {
    unfit: {
      "too-few":
        "Il contrasto si conosce per un tempo solo. Una seconda pellicola di prova, a metà o al doppio del tempo, mostra come cresce.",
      "one-time":
        "Tutte le pellicole di prova sono sviluppate per lo stesso tempo. Una in più, a metà o al doppio, mostra come cresce il contrasto.",
      contradictory:
        "Le prove non vanno d’accordo con il modo in cui cresce il contrasto: uno sviluppo più lungo non ne ha dato di più. Vedi se hai scambiato due pellicole o letto male una cifra.",
      straight:
        "Il contrasto è cresciuto di pari passo con il tempo: non si vede un limite e non si può ricavarne una legge. Una prova con un tempo più lungo lo troverebbe.",
    },
    wedgeUnread: ({ test, why }) => `${test}: dal cuneo non si ricava un gradiente, perché ${why}.`,
    wedge: {
      "too-few": "ha troppo pochi gradini",
      falls: "in qualche punto le densità calano; vanno dal gradino meno esposto al più esposto",
      "starts-above":
        "il suo primo gradino è già più di 0,10 sopra base e velo, quindi il punto di sensibilità sta prima",
      "never-reaches": "nessun gradino arriva a 0,10 sopra base e velo",
      "too-short": "finisce prima di un log H di 1,30 oltre il punto di sensibilità",
    },
    beyondLimit: ({ gradient, limit }) =>
      `Nessun tempo dà un gradiente di ${gradient}: secondo queste prove non cresce mai oltre ${limit}. Forse ci arriva un altro rivelatore, o un’altra diluizione.`,
    outsideTests: ({ gradient, time, from, to }) =>
      `Per un gradiente di ${gradient} ci vorrebbe ${time}, fuori dai tempi provati (da ${from} a ${to}), dove la curva è una supposizione. Fai lì una prova prima di fidartene.`,
  },
};
