// A zip's bytes in, the checksum that its table of contents states for each file out. The library that
// unpacks does not compare them, and a changed sample would go unheard of.

const ENTRY = 0x02014b50;
const END = 0x06054b50;
const END_BYTES = 22;

/** CRC-32 by file name; null where there is no whole table of contents. */
export function zipSums(bytes: Uint8Array): ReadonlyMap<string, number> | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOf(view);
  if (end === null) return null;
  const sums = new Map<string, number>();
  let at = view.getUint32(end + 16, true);
  for (let left = view.getUint16(end + 10, true); left > 0; left -= 1) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== ENTRY) return null;
    const name = view.getUint16(at + 28, true);
    const rest = view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    const text = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + name));
    sums.set(text, view.getUint32(at + 16, true));
    at += 46 + name + rest;
  }
  return sums;
}

/** The record at the end, which a comment of up to 64 KiB may follow. */
function endOf(view: DataView): number | null {
  const last = view.byteLength - END_BYTES;
  for (let at = last; at >= Math.max(0, last - 0xffff); at -= 1) {
    if (view.getUint32(at, true) === END) return at;
  }
  return null;
}

const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let sum = byte;
  for (let bit = 0; bit < 8; bit += 1) sum = sum & 1 ? 0xedb88320 ^ (sum >>> 1) : sum >>> 1;
  return sum;
});

/** CRC-32 as zips use it. */
export function sumOf(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) sum = (table[(sum ^ byte) & 0xff] ?? 0) ^ (sum >>> 8);
  return (sum ^ 0xffffffff) >>> 0;
}
