// A disk that is full from the so-many-th write on, as a browser tells of it: the write fails and takes its
// transaction with it.
import { IDBObjectStore } from "fake-indexeddb";
import { vi } from "vitest";

/** @returns how many writes there were. */
export function fullAfter(writes: number): () => number {
  const put = IDBObjectStore.prototype.put;
  let count = 0;
  vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(function (
    this: IDBObjectStore,
    ...args: Parameters<typeof put>
  ) {
    count += 1;
    if (count > writes) throw new DOMException("The disk is full.", "QuotaExceededError");
    return put.apply(this, args);
  });
  return () => count;
}

/** The page dies in the so-many-th write: its transaction never ends, which is to say that it is undone. */
export function diesAt(writes: number): void {
  const put = IDBObjectStore.prototype.put;
  let count = 0;
  vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(function (
    this: IDBObjectStore,
    ...args: Parameters<typeof put>
  ) {
    count += 1;
    const request = put.apply(this, args);
    if (count === writes) this.transaction.abort();
    return request;
  });
}

/** The same at the so-many-th change of any kind, things that are taken out as well. @returns how many there were. */
export function abortsAt(changes: number): () => number {
  let count = 0;
  for (const act of ["put", "delete"] as const) {
    const does = IDBObjectStore.prototype[act] as (...args: unknown[]) => unknown;
    vi.spyOn(IDBObjectStore.prototype, act).mockImplementation(function (
      this: IDBObjectStore,
      ...args: unknown[]
    ) {
      count += 1;
      const request = does.apply(this, args);
      if (count === changes) this.transaction.abort();
      return request as never;
    });
  }
  return () => count;
}
