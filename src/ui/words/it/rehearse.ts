// The Italian words of the rehearsal with water. What the voice says stands in audio-scripts/.

export const rehearse = {
  title: "Prova con l’acqua",
  lead: "Tutto lo sviluppo a orecchio, alla luce: acqua in ogni recipiente e una pellicola che non conta più. Versare, svuotare e agitare durano come sempre; solo le pause si accorciano.",
  press:
    "Premi quando cominci a versare e quando cominci a svuotare; se vuoi, anche quando cominci ad agitare. Alla fine senti che cosa vale la pena di ripassare.",
  keeps:
    "Tra gli sviluppi non ne resta nulla, e nessun bagno invecchia. Finisce quando si chiude la pagina.",
  rests: "Pause",
  /** What is left of a rest. */
  factors: {
    whole: "intere",
    half: "la metà",
    quarter: "un quarto",
    least: "brevi quanto permettono le parole",
  },
  why: "Dire perché prima di ogni bagno, e come a ogni passo del caricamento",
  begin: "Comincia la prova",
  beginHint: (clock: string) => `${clock} di orologio`,
  overHint: "Quello che vale la pena di ripassare è in «Ripassa», con i secondi.",
  back: "Torna a «Ripassa»",
  found: "L’ultima prova",
  unmarked: "Nessuna pressione al versare: non c’è niente da confrontare.",
  well: (n: number, of: number, seconds: string) =>
    `${n} momenti su ${of} sono riusciti: entro ${seconds}.`,
  practise: "Da ripassare, prima il più importante",
  all: "Tutti gli scarti",
  late: (seconds: string) => `${seconds} in ritardo`,
  early: (seconds: string) => `${seconds} in anticipo`,
  missed: "non premuto",
};
