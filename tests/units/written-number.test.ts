import { expect, test } from "vitest";
import { writeNumber } from "../../src/units/written-number.ts";

test.each([
  [100, 0, "100"],
  [100, 2, "100"],
  [0.285, 2, "0.29"],
  [569.21, 1, "569.2"],
  [150.04, 1, "150"],
  [-5.5, 2, "−5.5"],
  [-0.001, 2, "0"],
  [1.5e22, 1, "1.5 × 10^22"],
  [-2e15, 2, "−2 × 10^15"],
  [Number.POSITIVE_INFINITY, 1, "∞"],
])("%d to %d decimals is written %s", (value, decimals, written) => {
  expect(writeNumber(value, decimals)).toBe(written);
});
