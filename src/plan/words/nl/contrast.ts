// Test films and their contrast, lines and warnings, in Dutch.
import type { ContrastWords } from "../contrast-words.ts";

const start = (fog: string, log: string, fromFirst: boolean) =>
  `0,1 boven de grondsluier (${fog}) ligt bij log H ${log}${fromFirst ? " vanaf de eerste trap" : ""}`;

export const contrast: ContrastWords = {
  test: ({ number, time }) => `Test ${number}, ${time}`,
  wedge: ({ fog, log, rise, sum, fromFirst }) =>
    `${start(fog, log, fromFirst)}; 1,3 verder is de dichtheid ${rise} hoger: ${sum}`,
  wedgeWithSpeed: ({ fog, log, rise, sum, speed, degrees, fromFirst }) =>
    `${start(fog, log, fromFirst)}; 1,3 verder is de dichtheid ${rise} hoger; gevoeligheid ${speed}, dat is ${degrees}: ${sum}`,
  wedgeNotIso: ({ fog, log, rise, sum, fromFirst }) =>
    `${start(fog, log, fromFirst)}; 1,3 verder is de dichtheid ${rise} hoger; dat is niet het contrast waarbij ISO 6 een gevoeligheid opgeeft, 0,80 ± 0,05: ${sum}`,
  gradient: ({ gradient }) => `gradiënt ${gradient}`,
  growth: "Toename",
  minutes: "minuten",
  growthSum: ({ sum, points, misfit }) =>
    `${sum}, getrokken door ${points}; gemiddeld ${misfit} ernaast`,
  point: ({ gradient, time }) => `${gradient} bij ${time}`,
  range: ({ from, to }) => `van ${from} tot ${to}`,
  contrast: "Contrast",
  stopLess: "Eén stop minder",
  stopMore: "Eén stop meer",
  timeSum: ({ gradient, sum }) => `gradiënt ${gradient}: ${sum}`,
  change: ({ percent, less }) => `${percent}% ${less ? "korter" : "langer"}`,
  warnings: {
    unfit: {
      "too-few":
        "Het contrast is maar van één tijd bekend. Een tweede testfilm, half of dubbel zo lang ontwikkeld, laat zien hoe het toeneemt.",
      "one-time":
        "Alle testfilms zijn even lang ontwikkeld. Nog een, half of dubbel zo lang ontwikkeld, laat zien hoe het contrast toeneemt.",
      contradictory:
        "De tests kloppen niet met hoe contrast toeneemt: langer ontwikkelen gaf niet meer contrast. Kijk of er films verwisseld zijn of een getal verkeerd is gelezen.",
      straight:
        "Het contrast nam even snel toe als de tijd. Zo is er geen grens te zien en valt er geen kromme te trekken. Een test met een langere tijd vindt die wel.",
    },
    wedgeUnread: ({ test, why }) => `${test}: de wig geeft geen gradiënt, want ${why}.`,
    wedge: {
      "too-few": "hij heeft te weinig trappen",
      falls:
        "de dichtheden nemen ergens af; ze horen van de minst naar de meest belichte trap te lopen",
      "starts-above":
        "de eerste trap ligt al meer dan 0,10 boven de grondsluier, dus het gevoeligheidspunt ligt ervoor",
      "never-reaches": "geen enkele trap komt op 0,10 boven de grondsluier",
      "too-short": "hij houdt op voordat de log. belichting 1,30 voorbij het gevoeligheidspunt is",
    },
    beyondLimit: ({ gradient, limit }) =>
      `Geen enkele tijd geeft een gradiënt van ${gradient}: volgens deze tests komt hij nooit boven ${limit}. Met een andere ontwikkelaar of verdunning lukt het misschien wel.`,
    outsideTests: ({ gradient, time, from, to }) =>
      `Een gradiënt van ${gradient} zou ${time} vragen. Dat ligt buiten de geteste tijden (${from} tot ${to}), waar de kromme een schatting is. Test daar eerst een film voordat je erop vertrouwt.`,
  },
};
