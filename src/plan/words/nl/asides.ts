// The words of the questions beside the development in Dutch, gathered.
import type { AsideSentences } from "../words.ts";
import { contrast } from "./contrast.ts";
import { mixing, tempering } from "./warmth.ts";

export const asides: AsideSentences = { mixing, tempering, contrast };
