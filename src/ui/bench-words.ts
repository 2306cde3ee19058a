// Every word of what is measured and reckoned at the bench, in one place and as data: leaflet pasted,
// water mixed and tempered, hands timed, test films, fixer, wash and capacity. Beside words.ts, which
// has the rest of Work out.
import type { FieldPattern } from "./fields.ts";
import type { FieldWords } from "./words.ts";

export const pasteWords = {
  more: "Paste the leaflet’s table",
  label: "The rows as they stand in the leaflet",
  why: "A line a row: a temperature and a time, in °C or °F, with tabs, commas or spaces. A rating behind EI, if the row is for one. Headings are passed over.",
  fill: "Fill in these rows",
  nothing: "There is no row in it yet.",
  fault: (line: number, text: string, may: string) =>
    `Line ${line}: “${text}” cannot be used. It may hold ${may}.`,
  filled: (rows: number) =>
    rows === 1
      ? "1 row of the leaflet is filled in. Undo brings the others back."
      : `${rows} rows of the leaflet are filled in. Undo brings the others back.`,
};

export const benchQuestions = {
  warmth: "How does it come to temperature?",
  contrast: "What did your test films show?",
};

export const benchMore = {
  inTank: "Readings in the tank while it develops",
  capacity: "How much it serves; replenisher",
  mixing: "Mix it to a temperature from two taps",
  tempering: "Stand it in a water bath, and read the thermometer",
  contrast: "Gradients, or a step wedge’s densities",
  measured: "Your own times, as measured",
};

export const mixingWords = {
  take: "Pour together",
  stock: "of stock",
  cold: "cold",
  hot: "hot",
};

export const temperingWords = {
  sink: "Read at the sink",
  sinkHint: "big keys, and a press stamps the time",
  title: "The developer in its bath",
  noTarget: "Say first what it shall come to.",
  hindered: (field: string) => `“${field}” wants mending or filling in first.`,
  afresh: "Begun afresh: the readings that stood there had no time of day. Undo brings them back.",
};

export const handsWords = {
  measure: "Time it",
  kept: (label: string, seconds: string) => `${label}: ${seconds}, the middle of three.`,
};

export const tankWords = {
  choose: "Kept tanks",
  none: "choose one",
  keep: "Keep this tank",
  forget: "Forget it",
  isKept: (label: string) => `“${label}” is kept with its times.`,
  taken: (label: string) => `“${label}” is filled in. Undo brings the last tank back.`,
  forgotten: (label: string) =>
    `“${label}” is no longer kept. Its times still stand here: keep it again to undo that.`,
  needsName: "Give the tank a name first; it is kept under that.",
  notKept: "This browser will not keep tanks between visits. Save the worksheet to a file instead.",
};

export const lateWords = {
  notFetched: "This part could not be fetched.",
};

const bathWords = {
  "baths.*.clearing.time": {
    label: "A snip clears in",
    why: "A snip of undeveloped film in the fixer, in the light, until it is clear. Gives the fixer’s time where none is written.",
  },
  "baths.*.clearing.fresh": {
    label: "When fresh, in",
    why: "What the same test took in the fresh bath. At twice that the fixer is spent.",
  },
  "baths.*.clearing.times": { label: "Fix for" },
  "baths.*.carryOver": {
    label: "Stays behind at each emptying",
    why: "Liquid left in tank, reels and film. Pour it out as you always do, then weigh the tank: a gram is a millilitre.",
  },
  "baths.*.flow": {
    label: "Running water, a minute",
    why: "How much runs through in a minute: hold a graduate under the hose for ten seconds, times six.",
  },
  "baths.*.thiosulfate": {
    label: "Thiosulfate in the fixer, g/l",
    why: "Empty means 108, a plain fixer of 240 g of crystals a litre.",
  },
  "baths.*.filmsPerLitre": {
    label: "Films a litre serves",
    why: "In films of 80 square inches, from the maker’s sheet.",
  },
  "baths.*.filmsBefore": { label: "Films through it before" },
  "baths.*.kept": { label: "How much there is", why: "Empty means as much as covers the film." },
} as const;

export const benchFieldWords: Partial<Record<FieldPattern, FieldWords>> = {
  ...bathWords,
  "developer.soughtTime": {
    label: "Which temperature would give",
    why: "A time you would like. The leaflet is asked which temperature gives it, and which gives the least, 5:00.",
  },
  "developer.readings[].at": {
    label: "At",
    why: "On the developer’s own clock. The readings take the place of the drift and move the end.",
  },
  "developer.readings[].temperature": { label: "In the tank" },
  "developer.filmsPerLitre": bathWords["baths.*.filmsPerLitre"],
  "developer.kept": bathWords["baths.*.kept"],
  "developer.replenishPerFilm": { label: "Replenisher for each film" },
  "tank.label": {
    label: "Name of this tank",
    why: "Such as “two-reel steel”. Its volume and your times with it are kept under this name.",
  },
  "tank.measured.pourIn": { label: "Pouring in took, s" },
  "tank.measured.pourOut": { label: "Pouring out took, s" },
  "tank.measured.perInversion": { label: "Over and back took, s" },
  "mixing.target": { label: "The mix shall have" },
  "mixing.stock": { label: "The stock has" },
  "mixing.cold": { label: "The cold tap" },
  "mixing.hot": { label: "The hot tap" },
  "mixing.mark": {
    label: "Marks of the graduate",
    why: "From one mark to the next. Empty means 5 ml, or a quarter of a fluid ounce.",
  },
  "tempering.target": { label: "It shall come to" },
  "tempering.bath": {
    label: "The water bath has",
    why: "With it two readings will do; without it three. Stir it, and read it with the same thermometer.",
  },
  "tempering.bathVolume": { label: "Water in the bath", why: "For the ice, if ice is needed." },
  "tempering.readings[].at": {
    label: "At",
    why: "On a clock of its own that starts with the first reading, such as 3:30.",
  },
  "tempering.readings[].temperature": { label: "In the developer" },
  "tempering.began": { label: "Time of day at 0:00" },
  "contrast.tests[].time": { label: "Developed for" },
  "contrast.tests[].gradient": {
    label: "Mean gradient",
    why: "Density gained over log exposure, as your densitometer or a step wedge gave it.",
  },
  "contrast.tests[].densities": {
    label: "Or the wedge’s densities",
    why: "Base and fog included, the least exposed step first, parted by spaces.",
  },
  "contrast.tests[].baseFog": {
    label: "Base and fog",
    why: "The density of film that was developed and never exposed.",
  },
  "contrast.wanted": {
    label: "Gradient wanted",
    why: "Empty means 0.615, which is 0.80 over 1.30 as ISO 6 has it.",
  },
  "contrast.stepLog": {
    label: "Log exposure a step",
    why: "0.15 for half stops, 0.30 for whole ones.",
  },
  "contrast.firstLog": {
    label: "Log exposure of the first step",
    why: "log10 of lux seconds, if you know it: then a speed follows.",
  },
};

export const benchChoices = {
  "baths.*.clearing.times": {
    "": "twice as long, as usual",
    "2": "twice as long",
    "3": "three times as long",
  },
};
