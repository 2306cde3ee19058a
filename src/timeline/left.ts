// Why a wish found no room, in words for the person who reads the timeline.
import type { Window } from "./choose.ts";
import type { Quiet } from "./quiet.ts";

export function whyLeft(window: Window, quiet: Quiet): string {
  const shortest = window.wordings.at(-1);
  if (shortest === undefined) return "The voice pack does not hold these words.";
  const length = shortest.seconds.toFixed(1);
  const room = window.latestEnd - window.earliest;
  if (room < shortest.seconds) {
    return `There are ${Math.max(room, 0).toFixed(1)} s for it, and its shortest form lasts ${length} s.`;
  }
  const free = quiet.nextFree(window.earliest, shortest.seconds);
  if (free + shortest.seconds > window.latestEnd) {
    return `The moments' own tones leave no ${length} s free in its time.`;
  }
  return "Something that matters more is said in its time.";
}
