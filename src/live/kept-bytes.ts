// A file's path and what it was made of in, its bytes out: kept with the browser between visits, so that
// a large file is fetched once, and anew only when it was made of something else.

const shelf = "tankside-voices";

/** @throws where it is not kept and cannot be fetched. */
export async function keptBytes(
  path: string,
  made: string,
  fetchBytes: (path: string) => Promise<Uint8Array<ArrayBuffer>>,
): Promise<Uint8Array<ArrayBuffer>> {
  // Where a browser has no such store, or refuses it, the file is fetched at every visit.
  const cache = await globalThis.caches?.open(shelf).catch(() => undefined);
  const address = (version: string) => new URL(`${path}?${version}`, document.baseURI).href;
  const kept = await cache?.match(address(made)).catch(() => undefined);
  if (kept !== undefined) return new Uint8Array(await kept.arrayBuffer());
  const bytes = await fetchBytes(path);
  await cache
    ?.delete(address(""), { ignoreSearch: true })
    .then(() => cache.put(address(made), new Response(bytes)))
    .catch(() => {});
  return bytes;
}
