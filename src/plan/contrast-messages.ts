// Every warning about test films and their contrast: what is the matter, what would do.
// Apart from the code that finds them, so that they are read, translated and tested as words.
import type { ContrastFault } from "../trade/contrast.ts";
import type { WedgeFault } from "../trade/sensitometry.ts";
import type { Warning } from "./line.ts";

const unfitWords: { readonly [why in ContrastFault]: string } = {
  "too-few":
    "Contrast is known from one time only. A second test film, at half or twice the time, shows how it grows.",
  "one-time":
    "All test films were developed for the same time. One more, at half or twice the time, shows how contrast grows.",
  contradictory:
    "The tests contradict the way contrast grows: longer development gave no more of it. Look for films interchanged or a figure misread.",
  straight:
    "Contrast grew as fast as the time, so no limit shows and no law can be drawn. A test at a longer time would find it.",
};

export function contrastUnfit(why: ContrastFault): Warning {
  return caution(`contrast-${why}`, unfitWords[why]);
}

const wedgeWords: { readonly [why in WedgeFault]: string } = {
  "too-few": "it has too few steps",
  falls: "its densities fall somewhere; they run from the least exposed step to the most",
  "starts-above":
    "its first step is already more than 0.10 above base and fog, so the speed point lies before it",
  "never-reaches": "no step comes to 0.10 above base and fog",
  "too-short": "it ends before log exposure 1.30 beyond the speed point",
};

export function wedgeUnread(test: string, why: WedgeFault): Warning {
  return caution("wedge-unread", `${test}: the wedge gives no gradient, since ${wedgeWords[why]}.`);
}

export function beyondLimit(gradient: string, limit: string): Warning {
  return caution(
    "contrast-beyond-limit",
    `No time gives a gradient of ${gradient}: by these tests it never grows beyond ${limit}. Another developer or dilution might.`,
  );
}

export function outsideTests(
  gradient: string,
  time: string,
  tested: readonly [string, string],
): Warning {
  return caution(
    "contrast-outside-tests",
    `A gradient of ${gradient} would take ${time}, outside the times tested (${tested[0]} to ${tested[1]}), where the curve is a guess. Test a film there before you trust it.`,
  );
}

function caution(id: string, text: string): Warning {
  return { id, severity: "caution", text };
}
