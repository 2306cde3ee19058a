// What can be asked of a run beside its one press: where are we, say less, leave. Below the rest and
// small, since nobody with wet hands should meet them by chance.
import { useState } from "preact/hooks";
import type { Detail, Session } from "../live/runs.ts";
import { lateWords } from "./language.ts";
import type { RunScreen } from "./run-model.ts";
import type { RunViewPorts } from "./run-view.tsx";

/** From one detail to the next; after the least, all again. */
const less: { readonly [detail in Detail]: Detail } = {
  full: "brief",
  brief: "tones",
  tones: "full",
};

interface RunToolsProps {
  readonly session: Session;
  readonly ports: RunViewPorts;
  readonly kind: RunScreen["kind"];
}

export function RunTools({ session, ports, kind }: RunToolsProps) {
  const [leaving, setLeaving] = useState(false);
  return (
    <div class="guided-tools">
      {leaving ? (
        <>
          <p>
            {kind === "timed"
              ? lateWords.value.duringRun.leaveTimed
              : lateWords.value.duringRun.leaveWaiting}
          </p>
          <button type="button" onClick={ports.leave}>
            {lateWords.value.duringRun.leave}
          </button>
          <button type="button" onClick={() => setLeaving(false)}>
            {lateWords.value.duringRun.stay}
          </button>
        </>
      ) : (
        <>
          <button type="button" onClick={() => session.run.where()}>
            {lateWords.value.duringRun.where}
          </button>
          {kind !== "over" && (
            <button type="button" onClick={() => ports.say(less[session.detail])}>
              {lateWords.value.duringRun.say[session.detail]}
            </button>
          )}
          <button
            type="button"
            onClick={() => (kind === "over" ? ports.leave() : setLeaving(true))}
          >
            {lateWords.value.duringRun.leave}
          </button>
        </>
      )}
    </div>
  );
}
