// What a field may hold, by the checker's English. The checker speaks English itself, so nothing stands here;
// another language holds every text of tests/plan/mays.txt.
import type { Mays } from "../words.ts";

export const mays: Mays = {};
