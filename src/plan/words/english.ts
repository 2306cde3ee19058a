// The development's words where no others are given: English, with its figures.
// Alone, because the first screen has them from the start; the other languages are fetched.
import { writingIn } from "../../units/writing.ts";
import { first } from "./en/first.ts";
import type { PlanWords } from "./words.ts";

export const english: PlanWords = { ...first, writes: writingIn("en") };
