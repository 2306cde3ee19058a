// Sentences that found no room, each with its reason.
import type { Left } from "../timeline/score.ts";

/** @param spoken the language in which they would have been said. */
export function LeftList({ left, spoken }: { left: readonly Left[]; spoken: string }) {
  return (
    <ul>
      {left.map(({ wanted, why }, i) => (
        <li key={`${i} ${wanted}`} lang={spoken}>
          <q>{wanted}</q> {why}
        </li>
      ))}
    </ul>
  );
}
