// Test films and their contrast, lines and warnings, in German.
import type { ContrastWords } from "../contrast-words.ts";

const start = (fog: string, log: string, fromFirst: boolean) =>
  `0,1 über dem Grundschleier (${fog}) liegt bei log H ${log}${fromFirst ? " ab der ersten Stufe" : ""}`;

export const contrast: ContrastWords = {
  test: ({ number, time }) => `Test ${number}, ${time}`,
  wedge: ({ fog, log, rise, sum, fromFirst }) =>
    `${start(fog, log, fromFirst)}; 1,3 weiter ist die Dichte um ${rise} höher: ${sum}`,
  wedgeWithSpeed: ({ fog, log, rise, sum, speed, degrees, fromFirst }) =>
    `${start(fog, log, fromFirst)}; 1,3 weiter ist die Dichte um ${rise} höher; Empfindlichkeit ${speed}, das sind ${degrees}: ${sum}`,
  wedgeNotIso: ({ fog, log, rise, sum, fromFirst }) =>
    `${start(fog, log, fromFirst)}; 1,3 weiter ist die Dichte um ${rise} höher; das ist nicht der Kontrast, für den ISO 6 eine Empfindlichkeit angibt, 0,80 ± 0,05: ${sum}`,
  gradient: ({ gradient }) => `Gradient ${gradient}`,
  growth: "Zunahme",
  minutes: "Minuten",
  growthSum: ({ sum, points, misfit }) =>
    `${sum}, durch ${points} gelegt; im Mittel ${misfit} daneben`,
  point: ({ gradient, time }) => `${gradient} bei ${time}`,
  range: ({ from, to }) => `von ${from} bis ${to}`,
  contrast: "Kontrast",
  stopLess: "Eine Blende weniger",
  stopMore: "Eine Blende mehr",
  timeSum: ({ gradient, sum }) => `Gradient ${gradient}: ${sum}`,
  change: ({ percent, less }) => `${percent} % ${less ? "kürzer" : "länger"}`,
  warnings: {
    unfit: {
      "too-few":
        "Der Kontrast ist nur von einer einzigen Zeit bekannt. Ein zweiter Testfilm, halb oder doppelt so lang entwickelt, zeigt, wie er zunimmt.",
      "one-time":
        "Alle Testfilme wurden gleich lang entwickelt. Noch einer, halb oder doppelt so lang entwickelt, zeigt, wie der Kontrast zunimmt.",
      contradictory:
        "Die Tests passen nicht dazu, wie Kontrast zunimmt: Längeres Entwickeln brachte nicht mehr davon. Vielleicht sind Filme vertauscht oder ist eine Zahl falsch abgelesen.",
      straight:
        "Der Kontrast nahm so schnell zu wie die Zeit. So zeigt sich keine Grenze, und es lässt sich keine Kurve ziehen. Ein Test mit längerer Zeit würde sie finden.",
    },
    wedgeUnread: ({ test, why }) => `${test}: Der Keil ergibt keinen Gradienten, denn ${why}.`,
    wedge: {
      "too-few": "er hat zu wenige Stufen",
      falls:
        "seine Dichten nehmen irgendwo ab; sie gehören von der am wenigsten zur am stärksten belichteten Stufe",
      "starts-above":
        "schon seine erste Stufe liegt mehr als 0,10 über dem Grundschleier, der Empfindlichkeitspunkt also davor",
      "never-reaches": "keine Stufe kommt auf 0,10 über dem Grundschleier",
      "too-short":
        "er endet, bevor die log. Belichtung 1,30 über dem Empfindlichkeitspunkt erreicht ist",
    },
    beyondLimit: ({ gradient, limit }) =>
      `Keine Zeit ergibt einen Gradienten von ${gradient}: Nach diesen Tests wächst er nie über ${limit} hinaus. Ein anderer Entwickler oder eine andere Verdünnung schafft es vielleicht.`,
    outsideTests: ({ gradient, time, from, to }) =>
      `Ein Gradient von ${gradient} bräuchte ${time}. Das liegt außerhalb der getesteten Zeiten (${from} bis ${to}), wo die Kurve nur geschätzt ist. Dort erst einen Film testen, bevor man sich darauf verlässt.`,
  },
};
