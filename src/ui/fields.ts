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
  | "counts"
  | "per-cent"
  | "dilution"
  | "size"
  | "choice"
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
  "developer.perDegree": "number",
  "developer.perStop.pull": "per-cent",
  "developer.perStop.push": "per-cent",
  "developer.stockPerFilm": "volume",
  "developer.filmsBefore": "number",
  "developer.perFilmBefore": "per-cent",
  "tank.method": "choice",
  "tank.volume": "volume",
  "tank.pourIn": "seconds",
  "tank.pourOut": "seconds",
  "tank.handover": "seconds",
  "tank.timeFactor": "number",
  "tank.room": "temperature",
  "tank.halfway": "minutes",
  "agitation.first": "seconds",
  "agitation.every": "seconds",
  "agitation.for": "seconds",
  "agitation.perInversion": "seconds",
  "agitation.taps": "number",
  "clock.starts": "choice",
  "clock.ends": "choice",
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

/** The lists that take rows, and a row's own parts. */
export const rowParts = {
  films: ["label", "size", "count", "boxSpeed", "exposureIndex"],
  "developer.leaflet": ["temperature", "time", "exposureIndex"],
} as const;

export type RowList = keyof typeof rowParts;
export const rowLists = Object.keys(rowParts) as readonly RowList[];

export function isRowList(path: string): path is RowList {
  return Object.hasOwn(rowParts, path);
}

/** Fields that may be empty until another one is filled in: where they are wanted, the reason is told. */
export const wantedByOthers: readonly FieldPattern[] = [
  "films[].boxSpeed",
  "tank.room",
  "tank.halfway",
];

/** Which list and row a path stands in, or null. */
export function rowOf(path: string): { readonly list: RowList; readonly at: number } | null {
  const [, list, at] = /^([\w.]+)\[(\d+)\]/.exec(path) ?? [];
  return list !== undefined && isRowList(list) ? { list, at: Number(at) } : null;
}
