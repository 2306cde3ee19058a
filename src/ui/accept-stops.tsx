// What the plan says must not be run as it is, and the mark by which a person goes on all the same.
import type { Warning } from "../plan/line.ts";
import { lateWords, words } from "./language.ts";

interface AcceptStopsProps {
  readonly stops: readonly Pick<Warning, "text">[];
  readonly accepted: boolean;
  readonly accept: (accepted: boolean) => void;
}

export function AcceptStops({ stops, accepted, accept }: AcceptStopsProps) {
  if (stops.length === 0) return null;
  return (
    <section class="stops" aria-label={lateWords.value.beforeRun.stops}>
      <h2>{lateWords.value.beforeRun.stops}</h2>
      {stops.map(({ text }) => (
        <p key={text}>
          <b>{words.value.answers.severity.stop}.</b> {text}
        </p>
      ))}
      <label>
        <input
          type="checkbox"
          checked={accepted}
          onChange={(event) => accept(event.currentTarget.checked)}
        />
        {lateWords.value.beforeRun.accept}
      </label>
    </section>
  );
}
