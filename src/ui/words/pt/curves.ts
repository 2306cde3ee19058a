// What the drawings of curves show and say, in Portuguese. Numbers come ready written, with their units.

/** `"2 linhas"`. */
const counted = (count: number, one: string, many: string) =>
  `${count} ${count === 1 ? one : many}`;

/** `"temperatura, °F"`. */
const temperatureIn = (unit: string) => `temperatura, ${unit}`;

export const curve = {
  picture: (title: string, says: string) => `${title}. ${says}`,
};

export const leafletCurve = {
  title: "Tempo de revelação segundo a temperatura",
  across: temperatureIn,
  up: "tempo",
  leaflet: "folheto",
  thisFilm: "este filme",
  outOfLine: "fora da linha",
  at: (time: string, temperature: string) => `${time} a ${temperature}`,
  least: (time: string) => `${time}, o mínimo`,
  rows: (count: number) => `${counted(count, "linha", "linhas")} do folheto`,
  from: (rows: string, cold: string, warm: string) => `${rows}, de ${cold} até ${warm}.`,
  alone: (row: string, at: string) => `${row}: ${at}.`,
  odd: (count: number) => `${counted(count, "linha destoa", "linhas destoam")} das outras.`,
  times: (factor: string) => `Este filme leva ${factor} vezes o tempo do folheto.`,
  today: (at: string) => `Hoje: ${at}.`,
  beyond: "Isso fica fora das linhas do folheto.",
  sought: (at: string) => `Pedido: ${at}.`,
};

export const temperingCurve = {
  title: "Temperatura ao longo do tempo",
  across: "desde a primeira leitura",
  up: temperatureIn,
  wanted: (temperature: string) => `meta: ${temperature}`,
  settles: "estabiliza aqui",
  between: (from: string, to: string) => `entre ${from} e ${to}`,
  since: (from: string) => `a partir de ${from}`,
  none: "Ainda nenhuma leitura.",
  one: (temperature: string) => `Uma leitura: ${temperature}.`,
  readings: (count: number, first: string, last: string, time: string) =>
    `${count} leituras, de ${first} até ${last} em ${time}.`,
  reaches: (temperature: string, at: string, when: string) =>
    `Está a ${temperature} ao fim de ${at}, provavelmente ${when}.`,
  settling: (from: string, to: string) => `Estabiliza entre ${from} e ${to}.`,
};

export const contrastCurve = {
  title: "Contraste segundo o tempo de revelação",
  across: "tempo de revelação",
  up: "gradiente médio",
  at: (gradient: string, time: string) => `${gradient} com ${time}`,
  limit: (gradient: string) => `${gradient}, o limite`,
  tests: (count: number) => counted(count, "ensaio", "ensaios"),
  from: (tests: string, first: string, last: string) => `${tests}, de ${first} até ${last}.`,
  alone: (tests: string, only: string) => `${tests}: ${only}.`,
  none: "Ainda nenhum ensaio.",
  wanted: (at: string) => `Desejado: ${at}.`,
  beyond: "Isso fica fora dos tempos ensaiados.",
  most: (gradient: string) => `Nenhum tempo passa de ${gradient}.`,
};

export const wedgeCurve = {
  title: "Densidade segundo a exposição",
  across: "log da exposição, lux-segundos",
  fromFirst: "log da exposição desde o primeiro degrau",
  up: "densidade",
  speed: "ponto de sensibilidade",
  speeds: "pontos de sensibilidade",
  span: (length: string) => `ao longo de ${length}`,
  films: (count: number) => `${counted(count, "filme de ensaio", "filmes de ensaio")}.`,
  rises: (label: string, low: string, high: string) => `${label}: densidade de ${low} até ${high}.`,
  speedPoint: (label: string, at: string) => `Ponto de sensibilidade de ${label} em ${at}.`,
};
