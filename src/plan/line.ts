// A line of the working and a warning, as every topic of the plan hands them in.
// Apart from plan.ts, which gathers them: the topics must not know who asks.

/** What a line or a warning is about: the question that it stands beneath. */
export type Topic = "time" | "mix" | "mixing" | "tempering" | "contrast" | "hands" | "baths";

/** One step of the arithmetic, fit to read aloud to a class. */
export interface WorkingLine {
  readonly label: string;
  readonly expression: string;
  readonly result: string;
}

export interface Warning {
  readonly id: string;
  readonly severity: "stop" | "caution" | "note";
  readonly text: string;
}

export type About<T> = T & { readonly about: Topic };

/** Lines or warnings, all about one thing. */
export function about<T>(topic: Topic, all: readonly T[]): readonly About<T>[] {
  return all.map((one) => ({ ...one, about: topic }));
}
