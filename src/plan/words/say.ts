// The shape of a sentence with gaps, for every catalogue of words. Type alone.

/**
 * A sentence of named slots. Those named in the first place come ready written in the language's own
 * figures, units included: "20.5 °C", "9:30", "120 ml", a whole sum, a person's own label. The second
 * place holds what a wording may hang on: a `count` for the plural, or a yes or no.
 */
export type Say<Texts extends string = never, Hangs = unknown> = (
  slots: { readonly [slot in Texts]: string } & Hangs,
) => string;

/** Of what is counted, as a number, rounded as it is written. */
export interface Count {
  readonly count: number;
}
