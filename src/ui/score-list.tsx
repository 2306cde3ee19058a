// The score as a list: when, what the hands do, what is said; and what was left unsaid, with its reason.
import { type ReadonlySignal, useComputed } from "@preact/signals";
import type { Section } from "../timeline/score.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { lateWords } from "./language.ts";
import { type Entry, entryAt } from "./score-entries.ts";

interface ListProps {
  readonly section: Section;
  readonly entries: readonly Entry[];
  /** Language of what is said, as a tag. */
  readonly spoken: string;
  readonly elapsed: ReadonlySignal<number | null>;
  /** Hears the section from there on; null where that is not offered. */
  readonly hearFrom: ((seconds: number) => void) | null;
}

export function ScoreList({ section, entries, spoken, elapsed, hearFrom }: ListProps) {
  const present = useComputed(() =>
    elapsed.value === null ? -1 : entryAt(entries, elapsed.value),
  ).value;
  const timed = section.seconds > 0;
  return (
    <>
      <ol class={timed ? "entries timed" : "entries"} aria-label={lateWords.value.walk.inWords}>
        {entries.map((entry, i) => (
          <li key={entry.at} aria-current={i === present ? "time" : undefined}>
            {timed && <span class="when">{writeClockTime(entry.at)}</span>}
            <span class="what">
              {entry.hands && <b>{entry.hands}</b>}
              {entry.says.map((says) => (
                <q key={says} lang={spoken}>
                  {says}
                </q>
              ))}
            </span>
            {hearFrom && (
              <button type="button" class="plain" onClick={() => hearFrom(entry.at)}>
                {lateWords.value.walk.hearFrom}
                <span class="unseen"> {lateWords.value.walk.from(writeClockTime(entry.at))}</span>
              </button>
            )}
          </li>
        ))}
      </ol>
      {section.left.length > 0 && (
        <details>
          <summary>{lateWords.value.walk.left(section.left.length)}</summary>
          <p>{lateWords.value.walk.leftWhy}</p>
          <ul>
            {section.left.map(({ wanted, why }, i) => (
              <li key={`${i} ${wanted}`} lang={spoken}>
                <q>{wanted}</q> {why}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
