// Every field of the worksheet that a person can fill in, by the pattern of its path, with what it
// holds. Data alone: the model reads by it, the words and the screen are keyed by it.

export type FieldKind =
  | "text"
  | "temperature"
  | "volume"
  | "time"
  | "seconds"
  | "minutes"
  | "number"
  | "signed"
  | "numbers"
  | "counts"
  | "per-cent"
  | "dilution"
  | "size"
  | "choice"
  | "number-choice"
  | "use";

export const agitationParts = ["first", "every", "for", "perInversion", "taps"] as const;

/** `[]` stands for a row's place, `*` for a bath's id. `use` has no field of its own: it becomes `skip`. */
export const fieldKinds = {
  title: "text",
  language: "text",
  process: "text",
  "films[].label": "text",
  "films[].size": "size",
  "films[].count": "number",
  "films[].boxSpeed": "number",
  "films[].exposureIndex": "number",
  "developer.label": "text",
  "developer.dilution": "dilution",
  "developer.leaflet[].temperature": "temperature",
  "developer.leaflet[].time": "time",
  "developer.leaflet[].exposureIndex": "number",
  "developer.temperature": "temperature",
  "developer.soughtTime": "time",
  "developer.readings[].at": "time",
  "developer.readings[].temperature": "temperature",
  "developer.perDegree": "number",
  "developer.perStop.pull": "per-cent",
  "developer.perStop.push": "per-cent",
  "developer.stockPerFilm": "volume",
  "developer.filmsBefore": "number",
  "developer.perFilmBefore": "per-cent",
  "developer.filmsPerLitre": "number",
  "developer.kept": "volume",
  "developer.replenishPerFilm": "volume",
  "developer.bottle": "text",
  "tank.label": "text",
  "tank.method": "choice",
  "tank.volume": "volume",
  "tank.pourIn": "seconds",
  "tank.pourOut": "seconds",
  "tank.handover": "seconds",
  "tank.timeFactor": "number",
  "tank.room": "temperature",
  "tank.halfway": "minutes",
  "tank.measured.pourIn": "numbers",
  "tank.measured.pourOut": "numbers",
  "tank.measured.perInversion": "numbers",
  "mixing.target": "temperature",
  "mixing.stock": "temperature",
  "mixing.cold": "temperature",
  "mixing.hot": "temperature",
  "mixing.mark": "volume",
  "tempering.target": "temperature",
  "tempering.bath": "temperature",
  "tempering.bathVolume": "volume",
  "tempering.readings[].at": "time",
  "tempering.readings[].temperature": "temperature",
  "tempering.began": "text",
  "agitation.first": "seconds",
  "agitation.every": "seconds",
  "agitation.for": "seconds",
  "agitation.perInversion": "seconds",
  "agitation.taps": "number",
  "clock.starts": "choice",
  "clock.ends": "choice",
  darkWait: "time",
  loading: "choice",
  "baths.*.use": "use",
  "baths.*.time": "time",
  "baths.*.temperature": "temperature",
  "baths.*.agitation.first": "seconds",
  "baths.*.agitation.every": "seconds",
  "baths.*.agitation.for": "seconds",
  "baths.*.agitation.perInversion": "seconds",
  "baths.*.agitation.taps": "number",
  "baths.*.afterwards": "choice",
  "baths.*.fills": "counts",
  "baths.*.carryOver": "volume",
  "baths.*.flow": "volume",
  "baths.*.thiosulfate": "number",
  "baths.*.clearing.time": "time",
  "baths.*.clearing.fresh": "time",
  "baths.*.clearing.times": "number-choice",
  "baths.*.filmsPerLitre": "number",
  "baths.*.filmsBefore": "number",
  "baths.*.kept": "volume",
  "baths.*.bottle": "text",
  "contrast.tests[].time": "time",
  "contrast.tests[].gradient": "number",
  "contrast.tests[].densities": "numbers",
  "contrast.tests[].baseFog": "number",
  "contrast.wanted": "number",
  "contrast.stepLog": "number",
  "contrast.firstLog": "signed",
  "voice.detail": "choice",
  "voice.rate": "number",
} as const satisfies Record<string, FieldKind>;

export type FieldPattern = keyof typeof fieldKinds;

/** The pattern of a path such as `"developer.leaflet[1].time"`; null where no field has it. */
export function patternOf(path: string): FieldPattern | null {
  const pattern = path.replace(/\[\d+\]/g, "[]").replace(/^baths\.[^.]+/, "baths.*");
  return Object.hasOwn(fieldKinds, pattern) ? (pattern as FieldPattern) : null;
}

export function kindOf(path: string): FieldKind | null {
  const pattern = patternOf(path);
  return pattern && fieldKinds[pattern];
}

/** Offered as suggestions; any size that the reader takes can be typed. */
export const commonSizes: readonly string[] = ["135-36", "135-24", "120", "220", "4x5in", "8x10in"];

/** The lists that take rows, and a row's own parts. */
export const rowParts = {
  films: ["label", "size", "count", "boxSpeed", "exposureIndex"],
  "developer.leaflet": ["temperature", "time", "exposureIndex"],
  "developer.readings": ["at", "temperature"],
  "tempering.readings": ["at", "temperature"],
  "contrast.tests": ["time", "gradient", "densities", "baseFog"],
} as const;

export type RowList = keyof typeof rowParts;
export const rowLists = Object.keys(rowParts) as readonly RowList[];

/** The lists that may be empty, and are then not there. */
export function isOptional(list: RowList): boolean {
  return list !== "films" && list !== "developer.leaflet";
}

/** Questions beside the development: while one is half answered, the rest stands without it. */
const asides = ["mixing", "tempering", "contrast"] as const;

export type Aside = (typeof asides)[number];

/** The aside that a path belongs to; null for all that the development needs. */
export function asideOf(path: string): Aside | null {
  return asides.find((aside) => path === aside || path.startsWith(`${aside}.`)) ?? null;
}

export function isRowList(path: string): path is RowList {
  return Object.hasOwn(rowParts, path);
}

/** Fields that may be empty until another one is filled in: where they are wanted, the reason is told. */
export const wantedByOthers: readonly FieldPattern[] = [
  "films[].boxSpeed",
  "tank.room",
  "tank.halfway",
  "baths.*.carryOver",
  "baths.*.filmsPerLitre",
  "developer.filmsPerLitre",
  "contrast.stepLog",
  "contrast.tests[].gradient",
  "contrast.tests[].baseFog",
  "tempering.bath",
];

/** Which list and row a path stands in, or null. */
export function rowOf(path: string): { readonly list: RowList; readonly at: number } | null {
  const [, list, at] = /^([\w.]+)\[(\d+)\]/.exec(path) ?? [];
  return list !== undefined && isRowList(list) ? { list, at: Number(at) } : null;
}
