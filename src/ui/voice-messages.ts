// Why something about a voice could not be, in the words of the language in force.
import type { WhyNot } from "../voice/own-clip.ts";
import type { WhyNoPack } from "../voice/own-pack.ts";
import { fixed, language, lateWords } from "./language.ts";

/** Always a tenth. */
export const tenths = (seconds: number): string => `${fixed(seconds, 1)}\u00a0s`;

export function whyUnusable(why: WhyNot): string {
  const { unusable } = lateWords.value;
  return why.kind === "too-long"
    ? unusable[why.kind](tenths(why.lasts), tenths(why.most))
    : unusable[why.kind];
}

/** @param name the file's. */
export function whyNoPack(name: string, why: WhyNoPack): string {
  const { noPack } = lateWords.value;
  switch (why.kind) {
    case "other-language":
      return noPack[why.kind](name, nameOfLanguage(why.language));
    case "other-sound":
      return noPack[why.kind](name, why.file);
    default:
      return noPack[why.kind](name);
  }
}

/** As the page's language calls it; a tag that is none stands as it is. */
function nameOfLanguage(tag: string): string {
  try {
    return new Intl.DisplayNames(language.value, { type: "language" }).of(tag) ?? tag;
  } catch {
    return tag;
  }
}
