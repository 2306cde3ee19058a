// Bytes in, text that JSON can hold out, and back. In parts, since neither calls nor strings may be of any length.

const PART = 0x8000 - (0x8000 % 3);

export function toBase64(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += PART)
    text += btoa(String.fromCharCode(...bytes.subarray(at, at + PART)));
  return text;
}

/** null where it is none. */
export function fromBase64(text: string): Uint8Array<ArrayBuffer> | null {
  try {
    return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
  } catch {
    return null;
  }
}
