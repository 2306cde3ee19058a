// What can be told and asked of a run beside its one press: late hands, where are we, hush, say less, leave.
// Below the rest, since nobody with wet hands should meet them by chance; what is offered now comes first.
import { useState } from "preact/hooks";
import { lessThan } from "../live/detail.ts";
import type { Way } from "../live/journal.ts";
import { isLearned } from "../live/pedal.ts";
import type { Session } from "../live/runs.ts";
import { KnockSwitch } from "./knock-switch.tsx";
import { lateWords } from "./language.ts";
import { Reading } from "./reading.tsx";
import type { Offers, RunScreen } from "./run-model.ts";
import type { RunViewPorts } from "./run-view.tsx";

interface RunToolsProps {
  readonly session: Session;
  readonly ports: RunViewPorts;
  readonly screen: Pick<RunScreen, "kind" | "dark">;
  readonly offers: Offers;
}

const other: { readonly [way in Way]: Way } = { room: "pocket", pocket: "room" };

export function RunTools({ session, ports, screen, offers }: RunToolsProps) {
  const [leaving, setLeaving] = useState(false);
  const { kind, dark } = screen;
  const { run, guide, hushed, detail, way, ways } = session;
  const { midRun, duringRun } = lateWords.value;
  const now = () => performance.now() / 1000;
  if (leaving) {
    return (
      <div class="guided-tools">
        <p>{kind === "timed" ? duringRun.leaveTimed : duringRun.leaveWaiting}</p>
        <button type="button" onClick={ports.runs.leave}>
          {duringRun.leave}
        </button>
        <button type="button" onClick={() => setLeaving(false)}>
          {duringRun.stay}
        </button>
      </div>
    );
  }
  return (
    <div class="guided-tools">
      {offers.takeBack && (
        <button type="button" onClick={guide.takeBack}>
          {midRun.takeBack}
        </button>
      )}
      {offers.emptied && (
        <button type="button" onClick={() => run.emptied(now())}>
          {midRun.emptied}
        </button>
      )}
      {offers.poured && (
        <button type="button" onClick={() => run.poured(now())}>
          {midRun.poured}
        </button>
      )}
      <button type="button" onClick={() => run.where()}>
        {duringRun.where}
      </button>
      {kind !== "over" && (
        <>
          {!dark && (
            <button type="button" onClick={guide.wrong}>
              {midRun.wrong}
            </button>
          )}
          <button type="button" onClick={guide.hushOrSpeak}>
            {hushed ? midRun.speak : midRun.hush}
          </button>
          <button type="button" onClick={() => run.sayAt(lessThan[detail])}>
            {duringRun.say[detail]}
          </button>
        </>
      )}
      <button
        type="button"
        onClick={() => (kind === "over" || run.rehearses ? ports.runs.leave() : setLeaving(true))}
      >
        {duringRun.leave}
      </button>
      {!dark && kind !== "over" && (
        <details class="guided-more">
          <summary>{midRun.more}</summary>
          {ways.includes(other[way]) && (
            <button type="button" onClick={() => void ports.runs.go(other[way])}>
              {midRun.way[way]}
            </button>
          )}
          {!run.rehearses && (
            <Reading
              run={run}
              like={session.worksheet.developer.temperature}
              probe={ports.probe}
              after={ports.after}
              passes={(event) => isLearned(ports.pedals.all.value, event)}
            />
          )}
          <KnockSwitch knocks={ports.knocks} />
        </details>
      )}
    </div>
  );
}
