// Every place of a JSON value, and the value with something else there: for tests that break worksheets.

type Step = string | number;
export type Place = readonly Step[];

/** Every place inside a value, objects and lists themselves included; the whole is not among them. */
export function placesIn(value: unknown, at: Place = []): readonly Place[] {
  if (typeof value !== "object" || value === null) return [];
  const steps: readonly (readonly [Step, unknown])[] = Array.isArray(value)
    ? value.map((item, index) => [index, item] as const)
    : Object.entries(value);
  return steps.flatMap(([step, inner]) => [[...at, step], ...placesIn(inner, [...at, step])]);
}

/** A copy with another value at a place; `undefined` takes the field away. */
export function withAt(value: unknown, [step, ...rest]: Place, other: unknown): unknown {
  if (step === undefined) return other;
  if (Array.isArray(value)) {
    return value.map((item, index) => (index === step ? withAt(item, rest, other) : item));
  }
  const { [step]: held, ...others } = value as { [name: string]: unknown };
  const inner = withAt(held, rest, other);
  return inner === undefined ? others : { ...(value as object), [step]: inner };
}

/** `developer.leaflet[1].time` */
export function written(place: Place): string {
  return place
    .map((step) => (typeof step === "number" ? `[${step}]` : `.${step}`))
    .join("")
    .slice(1);
}
