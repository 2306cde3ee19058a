// The development's words in Dutch, gathered.
import type { FirstSentences } from "../words.ts";
import { baths, capacity, fixer, hands, wash } from "./baths.ts";
import { mays } from "./mays.ts";
import { mix, time } from "./time.ts";
import { warnings } from "./warnings.ts";

export const first: FirstSentences = {
  time,
  mix,
  hands,
  baths,
  fixer,
  wash,
  capacity,
  warnings,
  mays,
};
