// What the drawings of curves show and say, in French. Numbers come ready written, with their units.

/** `"2 lignes"`; the singular below two. */
const counted = (count: number, one: string, many: string) => `${count} ${count < 2 ? one : many}`;

const temperatureIn = (unit: string) => `température, ${unit}`;

export const curve = {
  picture: (title: string, says: string) => `${title}. ${says}`,
};

export const leafletCurve = {
  title: "Temps de développement selon la température",
  across: temperatureIn,
  up: "temps",
  leaflet: "notice",
  thisFilm: "ce film",
  outOfLine: "à l’écart",
  at: (time: string, temperature: string) => `${time} à ${temperature}`,
  least: (time: string) => `${time}, le minimum`,
  rows: (count: number) => `${counted(count, "ligne", "lignes")} de la notice`,
  from: (rows: string, cold: string, warm: string) => `${rows}, de ${cold} jusqu’à ${warm}.`,
  alone: (row: string, at: string) => `${row} : ${at}.`,
  odd: (count: number) =>
    `${counted(count, "ligne s’écarte", "lignes s’écartent")} de ce que disent les autres.`,
  times: (factor: string) => `Ce film demande ${factor} fois le temps de la notice.`,
  today: (at: string) => `Aujourd’hui : ${at}.`,
  beyond: "C’est au-delà des lignes de la notice.",
  sought: (at: string) => `Cherché : ${at}.`,
};

export const temperingCurve = {
  title: "Température selon le temps",
  across: "depuis le premier relevé",
  up: temperatureIn,
  wanted: (temperature: string) => `${temperature}, voulu`,
  settles: "se stabilise ici",
  between: (from: string, to: string) => `de ${from} à ${to}`,
  since: (from: string) => `à partir de ${from}`,
  none: "Pas encore de relevé.",
  one: (temperature: string) => `Un seul relevé : ${temperature}.`,
  readings: (count: number, first: string, last: string, time: string) =>
    `${counted(count, "relevé", "relevés")}, de ${first} à ${last} en ${time}.`,
  reaches: (temperature: string, at: string, when: string) =>
    `Il est à ${temperature} après ${at}, sans doute ${when}.`,
  settling: (from: string, to: string) => `Il se stabilise entre ${from} et ${to}.`,
};

export const contrastCurve = {
  title: "Contraste selon le temps de développement",
  across: "temps de développement",
  up: "gradient moyen",
  at: (gradient: string, time: string) => `${gradient} en ${time}`,
  limit: (gradient: string) => `${gradient}, la limite`,
  tests: (count: number) => counted(count, "essai", "essais"),
  from: (tests: string, first: string, last: string) => `${tests}, de ${first} jusqu’à ${last}.`,
  alone: (tests: string, only: string) => `${tests} : ${only}.`,
  none: "Pas encore d’essai.",
  wanted: (at: string) => `Voulu : ${at}.`,
  beyond: "C’est au-delà des temps essayés.",
  most: (gradient: string) => `Aucun temps ne dépasse ${gradient}.`,
};

export const wedgeCurve = {
  title: "Densité selon l’exposition",
  across: "log d’exposition, lux-secondes",
  fromFirst: "log d’exposition depuis la première plage",
  up: "densité",
  speed: "point de sensibilité",
  speeds: "points de sensibilité",
  span: (length: string) => `sur ${length}`,
  films: (count: number) => `${counted(count, "film d’essai", "films d’essai")}.`,
  rises: (label: string, low: string, high: string) => `${label} : densité de ${low} à ${high}.`,
  speedPoint: (label: string, at: string) => `Point de sensibilité de ${label} à ${at}.`,
};
