// Walk through: the whole of a run with the lights on, step by step, seen, read and heard before it is
// done. Compiles the timeline through its port and shows it; nothing is worked out here.
import type { ComponentType } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { Runs, Session } from "../live/runs.ts";
import type { VoiceSounds } from "../live/voice-sounds.ts";
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import type { Timeline } from "../timeline/score.ts";
import type { PlaceProps } from "./place.ts";
import { lastRehearsal, Rehearse } from "./rehearse.tsx";
import { RunView, type RunViewPorts } from "./run-view.tsx";
import { Walk } from "./score-walk.tsx";
import type { TakeProps } from "./take-along.tsx";
import "./lights-out.css";
import "./score.css";
import "./walk-through.css";
import { AcceptStops } from "./accept-stops.tsx";
import { lateWords } from "./language.ts";

type Compiled =
  | { readonly kind: "on-its-way" }
  | { readonly kind: "failed" }
  | { readonly kind: "here"; readonly timeline: Timeline };

export interface WalkThroughPorts extends RunViewPorts {
  readonly runs: Runs;
  /** Asks the browser to print the page. */
  readonly print: () => void;
  /** Of the bundled voice: what is said beside the timeline. */
  readonly sounds: VoiceSounds;
  /** The session as files to take along, fetched when its fold is opened. */
  readonly TakeAlong?: ComponentType<TakeProps>;
}

export function walkThroughWith(ports: WalkThroughPorts): ComponentType<PlaceProps> {
  const { runs, print, sounds, TakeAlong } = ports;
  const last = lastRehearsal(runs);
  return function WalkThrough({ worksheet, plan }: PlaceProps) {
    const session = runs.current.value;
    const before = useRef<Session | null>(null);
    const hasEnded = session === null && before.current?.rehearsal !== undefined;
    useEffect(() => {
      before.current = session;
    });
    if (worksheet.value === null || plan.value === null) {
      return (
        <p>
          {lateWords.value.walk.noWorksheet}{" "}
          <a href="#work-out">{lateWords.value.walk.toWorkOut}</a>
        </p>
      );
    }
    const given = { runs, worksheet: worksheet.value, plan: plan.value };
    return (
      <>
        <Compiling {...given} print={print} sounds={sounds} />
        {session === null && TakeAlong && (
          <TakeFold TakeAlong={TakeAlong} worksheet={given.worksheet} plan={given.plan} />
        )}
        {session === null && <Rehearse {...given} last={last} hasEnded={hasEnded} />}
        {session?.rehearsal !== undefined && (
          <RunView key={session.id} session={session} ports={ports} />
        )}
      </>
    );
  };
}

interface TakeFoldProps extends TakeProps {
  readonly TakeAlong: ComponentType<TakeProps>;
  readonly plan: Plan;
}

/**
 * Begun as soon as someone seems to want it; from then on it stays, with what was typed and what is held ready. What must
 * not be run as it is goes along no more than it is run: not before that has been read.
 */
function TakeFold({ TakeAlong, worksheet, plan }: TakeFoldProps) {
  const [wanted, setWanted] = useState(false);
  const [accepted, setAccepted] = useState("");
  const want = () => setWanted(true);
  const stops = plan.warnings.filter(({ severity }) => severity === "stop");
  const asked = stops.map(({ text }) => text).join("\n");
  return (
    <details class="take-fold" onToggle={want}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: a summary is a control by itself */}
      <summary onPointerEnter={want} onFocus={want}>
        {lateWords.value.take.title}
      </summary>
      <AcceptStops
        stops={stops}
        accepted={accepted === asked}
        accept={(does) => setAccepted(does ? asked : "")}
      />
      {wanted && accepted === asked && <TakeAlong worksheet={worksheet} />}
    </details>
  );
}

interface CompilingProps {
  readonly runs: Runs;
  readonly print: () => void;
  readonly sounds: VoiceSounds;
  readonly worksheet: Worksheet;
  readonly plan: Plan;
}

function Compiling({ runs, print, sounds, worksheet, plan }: CompilingProps) {
  const [compiled, setCompiled] = useState<Compiled>({ kind: "on-its-way" });
  const [attempt, setAttempt] = useState(0);
  useEffect(() => {
    let wanted = true;
    const become = (next: Compiled) => {
      if (wanted) setCompiled(next);
    };
    become({ kind: "on-its-way" });
    runs.compile(worksheet, plan).then(
      (timeline) => become({ kind: "here", timeline }),
      () => become({ kind: "failed" }),
    );
    return () => {
      wanted = false;
    };
  }, [runs, worksheet, plan, attempt]);

  switch (compiled.kind) {
    case "on-its-way":
      return <p role="status">{lateWords.value.walk.onItsWay}</p>;
    case "failed":
      return (
        <div role="alert">
          <p>{lateWords.value.walk.failed}</p>
          <button type="button" onClick={() => setAttempt(attempt + 1)}>
            {lateWords.value.walk.again}
          </button>
        </div>
      );
    case "here":
      return (
        <>
          <Stops plan={plan} />
          <Walk {...{ runs, print, sounds, worksheet }} timeline={compiled.timeline} />
        </>
      );
  }
}

function Stops({ plan }: { readonly plan: Plan }) {
  const stops = plan.warnings.filter((warning) => warning.severity === "stop");
  if (stops.length === 0) return null;
  return (
    <div class="stops">
      <ul class="warnings" aria-label={lateWords.value.walk.stops}>
        {stops.map(({ id, text }) => (
          <li key={id + text} class="stop">
            <b>{lateWords.value.walk.stop}.</b> {text}
          </li>
        ))}
      </ul>
      <p>{lateWords.value.walk.stopsAfter}</p>
    </div>
  );
}
