// A number in, the digits a person reads out. Alone, so that every line of working rounds alike.

export type WriteNumber = (value: number, decimals?: number) => string;

/**
 * At most so many decimals, rounded half up on the number's own digits, no trailing zeros, and a true
 * minus sign. From 10^15 on three digits and a power of ten: that many digits nobody reads.
 */
export function writeNumber(value: number, decimals = 2): string {
  const size = Math.abs(value);
  if (size >= 1e15) return `${value < 0 ? "−" : ""}${writeHuge(size)}`;
  const scale = 10 ** decimals;
  // A ten-thousandth of the last digit, so that 0.285 kept as 0.28499… is still written 0.29.
  const rounded = Math.floor(size * scale + 0.5 + 1e-4) / scale;
  const digits = rounded.toFixed(decimals);
  const plain = digits.includes(".") ? digits.replace(/\.?0+$/, "") : digits;
  return value < 0 && rounded > 0 ? `−${plain}` : plain;
}

function writeHuge(size: number): string {
  if (size === Number.POSITIVE_INFINITY) return "∞";
  const [digits, power] = size.toExponential(2).split("e+");
  return `${Number(digits)} × 10^${power}`;
}
