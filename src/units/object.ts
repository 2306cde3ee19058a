// Anything read from outside in, whether it is an object with named fields out. Alone, because the checker
// of worksheets, the stores and the reader of voices all begin with this question.

export interface Fields {
  readonly [name: string]: unknown;
}

/** Neither null nor a list. */
export function isObject(value: unknown): value is Fields {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
