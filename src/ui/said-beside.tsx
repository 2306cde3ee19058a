// A run's words for those who do not hear them from the page: as captions, or in the one live region that a
// screen reader listens to. Never in both voices: where the program speaks there is no region at all.
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { Session } from "../live/runs.ts";
import type { Timeline } from "../timeline/score.ts";
import { lateWords } from "./language.ts";

/** Within a run nothing but its own region is read out unasked. */
export const WithinRun = createContext(false);

/** The role of what tells how an act went: within a run it is there to be read, and says nothing by itself. */
export const useToldRole = (): "status" | undefined =>
  useContext(WithinRun) ? undefined : "status";

interface SaidProps {
  readonly session: Session;
}

/** What is said now and, while hands turn the tank, over and back. */
export function Captions({ session }: SaidProps) {
  const saying = session.saying.value;
  const turn = session.turn.value;
  return (
    <span class="guided-caption">
      {turn !== null && <b>{lateWords.value.senses.turns[turn]}</b>}{" "}
      {saying !== null && <span lang={session.timeline.voice.language}>{saying.says}</span>}
    </span>
  );
}

interface RegionProps extends SaidProps {
  /** Instead of the run's words, where it is not heard. */
  readonly instead: string | null;
}

/** For the screen reader that speaks in the program's place; in the dark as well, where nothing is seen of it. */
export function Region({ session, instead }: RegionProps) {
  const saying = session.saying.value;
  const text = (urgent: boolean) =>
    saying !== null &&
    saying.urgent === urgent && (
      <span key={saying.at} lang={session.timeline.voice.language}>
        {saying.says}
      </span>
    );
  return (
    <>
      <p class="unseen told-politely" aria-live="polite">
        {instead ?? text(false)}
      </p>
      <p class="unseen told-at-once" aria-live="assertive">
        {text(true)}
      </p>
    </>
  );
}

/** What will be said until light comes back, for those who can only read it before. */
export function darkAhead(timeline: Timeline, next: string): readonly string[] {
  const from = timeline.sections.findIndex(({ id }) => id === next);
  const rest = timeline.sections.slice(from);
  const lit = rest.findIndex(({ dark }) => !dark);
  const dark = lit < 0 ? rest : rest.slice(0, lit);
  return dark.flatMap(({ cues }) => cues.flatMap(({ says }) => (says === undefined ? [] : [says])));
}
