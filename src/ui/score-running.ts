// The run that is on, as signals for whoever shows its score: which step it is at, and how far in it.
import { type ReadonlySignal, useComputed, useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import type { Session } from "../live/runs.ts";
import { showing } from "./score-hearing.ts";

interface Running {
  /** The step's place in the timeline; −1 where no run is on. */
  readonly at: ReadonlySignal<number>;
  /** Seconds into the step while its clock runs, else null. */
  readonly elapsed: ReadonlySignal<number | null>;
}

export function useRunning(session: Session | null): Running {
  const position = useSignal(session?.run.position() ?? null);
  useEffect(() => {
    position.value = session?.run.position() ?? null;
    if (session === null) return;
    return showing(() => {
      position.value = session.run.position();
    });
  }, [session, position]);
  const at = useComputed(() => {
    const section = position.value?.section?.id;
    return session?.timeline.sections.findIndex(({ id }) => id === section) ?? -1;
  });
  const elapsed = useComputed(() =>
    position.value?.kind === "timed" ? position.value.elapsed : null,
  );
  return { at, elapsed };
}
