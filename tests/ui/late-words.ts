// For tests that show what comes behind the first screen: its words are there before anything else is.
import { withLateWords } from "../../src/ui/language.ts";

await withLateWords(Promise.resolve());
