// A store's answer in, the same answer or a rejection out: some browsers never answer at all, and a page
// must not wait for them.

/** ms; for a store of small things. */
export const PATIENCE = 3000;

/** @param patience ms. Rejects where the store has not answered by then. */
export function soon<T>(answer: Promise<T>, patience = PATIENCE): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error("no answer from the store")), patience);
    answer.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}
