// Numbers and texts in, the bytes that file formats want of them out, both ways round.

/** Unsigned, most significant byte first. */
export function bigEndian(value: number, bytes: 1 | 2 | 3 | 4): Uint8Array {
  return Uint8Array.from({ length: bytes }, (_, i) => (value / 256 ** (bytes - 1 - i)) & 255);
}

/** Unsigned, least significant byte first. */
export const littleEndian = (value: number, bytes: 2 | 4): Uint8Array =>
  bigEndian(value, bytes).reverse();

export const latin = (text: string): Uint8Array =>
  Uint8Array.from(text, (letter) => letter.charCodeAt(0));

export function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** UTF-16 behind the mark of its byte order, as old players and new ones read it. */
export function utf16(text: string): Uint8Array {
  const units = Array.from({ length: text.length }, (_, i) => littleEndian(text.charCodeAt(i), 2));
  return joined([Uint8Array.of(0xff, 0xfe), ...units]);
}

/** UTF-8, without the browser's or Node's own coder: these stages know of neither. */
export function utf8(text: string): Uint8Array {
  const bytes: number[] = [];
  for (const letter of text) {
    const point = letter.codePointAt(0) ?? 0;
    // Half a letter has no bytes of its own.
    const code = point >= 0xd800 && point <= 0xdfff ? 0xfffd : point;
    const tail = (shift: number) => 0x80 | ((code >> shift) & 0x3f);
    if (code < 0x80) bytes.push(code);
    else if (code < 0x800) bytes.push(0xc0 | (code >> 6), tail(0));
    else if (code < 0x10000) bytes.push(0xe0 | (code >> 12), tail(6), tail(0));
    else bytes.push(0xf0 | (code >> 18), tail(12), tail(6), tail(0));
  }
  return Uint8Array.from(bytes);
}
