// What is begun at most once for a page, for whoever wires its parts.

/** Begun at the first call; what failed is begun anew at the next. */
export function once<T>(begin: () => Promise<T>): () => Promise<T> {
  let begun: Promise<T> | null = null;
  return () => {
    begun ??= begin().catch((error: unknown) => {
      begun = null;
      throw error;
    });
    return begun;
  };
}
