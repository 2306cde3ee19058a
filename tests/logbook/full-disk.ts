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
