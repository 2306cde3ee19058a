// Why a wish found no room, in words for the person who reads the timeline, in the script's language.
import type { Script } from "../script/script.ts";
import type { Window } from "./choose.ts";
import type { Quiet } from "./quiet.ts";

export function whyLeft(window: Window, quiet: Quiet, script: Script): string {
  const tenths = new Intl.NumberFormat(script.source.language, {
    minimumFractionDigits: 1,
    maximumFractionDigits: 1,
  });
  const shortest = window.wordings.at(-1);
  if (shortest === undefined) return script.write("no-words");
  const length = tenths.format(shortest.seconds);
  const room = window.latestEnd - window.earliest;
  if (room < shortest.seconds) {
    return script.write("no-time", { room: tenths.format(Math.max(room, 0)), length });
  }
  const free = quiet.nextFree(window.earliest, shortest.seconds);
  if (free + shortest.seconds > window.latestEnd) return script.write("no-silence", { length });
  return script.write("outweighed");
}
