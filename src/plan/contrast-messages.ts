// Every warning about test films and their contrast: its name, how grave it is, its figures.
// Apart from the code that finds them, so that each can be read and tested in any language's words.
import type { ContrastFault } from "../trade/contrast.ts";
import type { WedgeFault } from "../trade/sensitometry.ts";
import type { Warning } from "./line.ts";
import type { AsideWords } from "./words/words.ts";

export function contrastUnfit({ contrast }: AsideWords, why: ContrastFault): Warning {
  return caution(`contrast-${why}`, contrast.warnings.unfit[why]);
}

export function wedgeUnread(
  { contrast: { warnings } }: AsideWords,
  test: string,
  why: WedgeFault,
): Warning {
  return caution("wedge-unread", warnings.wedgeUnread({ test, why: warnings.wedge[why] }));
}

export function beyondLimit({ contrast }: AsideWords, gradient: string, limit: string): Warning {
  return caution("contrast-beyond-limit", contrast.warnings.beyondLimit({ gradient, limit }));
}

export function outsideTests(
  { contrast }: AsideWords,
  gradient: string,
  time: string,
  [from, to]: readonly [string, string],
): Warning {
  const text = contrast.warnings.outsideTests({ gradient, time, from, to });
  return caution("contrast-outside-tests", text);
}

function caution(id: string, text: string): Warning {
  return { id, severity: "caution", text };
}
