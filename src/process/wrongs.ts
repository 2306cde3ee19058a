// What goes wrong in a run that calls for a calm word, the worst harm first: one list for the ear and the record.
export const wrongs = ["eye", "light", "bath", "leak", "clock"] as const;
export type Wrong = (typeof wrongs)[number];
