// How much is said in a run, from all to tones alone.

export type Detail = "full" | "brief" | "tones";

/** From one detail to the next; after the least, all again. */
export const lessThan: { readonly [detail in Detail]: Detail } = {
  full: "brief",
  brief: "tones",
  tones: "full",
};
