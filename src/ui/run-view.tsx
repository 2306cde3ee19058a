// The run's screen: the next thing to do across the whole of it, and the whole of it one control.
// In a dark section every pixel is black, the pointer too; what can be pressed is still there.
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { KnockPort } from "../live/knock-port.ts";
import type { Probe } from "../live/probe.ts";
import type { Runs, Session } from "../live/runs.ts";
import { lateWords } from "./language.ts";
import { type After, useLooks } from "./looks.ts";
import type { Pedals } from "./pedals.ts";
import { useRunInput } from "./run-input.ts";
import { type Offers, offersOf, type RunScreen, runScreenOf, turnsIn } from "./run-model.ts";
import { Shown } from "./run-shown.tsx";
import { RunTools } from "./run-tools.tsx";
import { Captions, darkAhead, Region, WithinRun } from "./said-beside.tsx";
import type { SensesChoice } from "./senses.ts";

export interface RunViewPorts {
  readonly runs: Pick<Runs, "leave" | "wake" | "go">;
  readonly pedals: Pedals;
  /** Null where the browser knows of no such thing. */
  readonly probe: Probe | null;
  readonly knocks: KnockPort;
  readonly senses: SensesChoice;
  /** Ends the run and shows its record; of a rehearsal, what to practise. */
  readonly toWriteUp: () => void;
  /** Keeps the screen from sleeping, or lets it; in the dark it is let. */
  readonly keepAwake: (on: boolean) => void;
  readonly after: After;
}

interface Props {
  readonly session: Session;
  readonly ports: RunViewPorts;
}

export function RunView({ session, ports }: Props) {
  const { kind, dark, offers } = useSeen(session, ports, () => standingOf(session));
  const view = useRef<HTMLDivElement>(null);
  const rehearses = session.rehearsal !== undefined;
  const wake = useMemo(() => () => void ports.runs.wake(), [ports]);
  useRunInput(session, ports.pedals.all, wake);

  useEffect(() => {
    view.current?.querySelector<HTMLElement>(".guided-press")?.focus();
  }, []);
  useEffect(() => followLength(view.current?.querySelector(".guided-stage") ?? null), []);
  useEffect(() => {
    ports.keepAwake(!dark);
    return () => ports.keepAwake(false);
  }, [dark, ports]);

  return (
    <div
      ref={view}
      class={dark ? "guided dark" : "guided"}
      role="dialog"
      aria-label={rehearses ? lateWords.value.rehearse.title : lateWords.value.duringRun.name}
    >
      {session.speaks === "reader" && (
        <Region
          session={session}
          instead={session.sounding ? null : lateWords.value.midRun.silent}
        />
      )}
      <div class="guided-stage">
        {/* Over what is shown, not around it: a control whose name counts seconds would be read out by the second. */}
        <button type="button" class="guided-press" aria-label={lateWords.value.duringRun.press} />
        {!dark && <Now session={session} ports={ports} />}
      </div>
      {!dark && <Told session={session} />}
      {kind === "over" && (
        <p class="guided-over">
          <button type="button" ref={whenOver} onClick={ports.toWriteUp}>
            {rehearses ? lateWords.value.rehearse.back : lateWords.value.duringRun.toWriteUp}
          </button>
        </p>
      )}
      <WithinRun.Provider value={true}>
        <RunTools session={session} ports={ports} screen={{ kind, dark }} offers={offers} />
      </WithinRun.Provider>
    </div>
  );
}

/** Marks a stage whose content is longer than itself, for as long as it is: a finger has to move that. */
function followLength(stage: HTMLElement | null): (() => void) | undefined {
  if (stage === null) return;
  const sizes = new ResizeObserver(() =>
    stage.toggleAttribute("data-longer", stage.scrollHeight > stage.clientHeight + 1),
  );
  for (const each of [stage, ...stage.children]) sizes.observe(each);
  return () => sizes.disconnect();
}

/** Apart from all around it, since it is drawn anew every second. */
function Now({ session, ports }: Props) {
  const screen = useSeen(session, ports, () => screenOf(session));
  const { captions } = ports.senses.now.value;
  if (!session.sounding) {
    return (
      <div class="guided-shown">
        <Silent screen={screen} />
      </div>
    );
  }
  return (
    <div class={captions ? "guided-shown captioned" : "guided-shown"}>
      {captions && <Captions session={session} />}
      <Shown
        screen={screen}
        spoken={session.timeline.voice.language}
        rehearses={session.rehearsal !== undefined}
      />
      {captions && screen.kind === "waiting" && <Ahead session={session} />}
    </div>
  );
}

/** Nothing is left to press for but this: the hand is led to it. */
const whenOver = (button: HTMLButtonElement | null) => button?.focus();

/** Where nothing can be heard, the screen says so, and what the clock says: it goes on. */
function Silent({ screen }: { readonly screen: RunScreen }) {
  return (
    <span class="guided-waiting">
      <span class="guided-next">{lateWords.value.midRun.silent}</span>
      <span class="guided-then">{lateWords.value.midRun.silentHint}</span>
      {screen.kind === "timed" && (
        <span class="guided-label">
          {screen.title} · {screen.left} {screen.leftLabel}
        </span>
      )}
    </span>
  );
}

/** What the dark will say, to be read before it. */
function Ahead({ session }: { readonly session: Session }) {
  const position = session.run.position();
  const lines = position.kind === "waiting" ? darkAhead(session.timeline, position.next.id) : [];
  if (lines.length === 0) return null;
  return (
    <span class="guided-said guided-ahead">
      <b>{lateWords.value.senses.darkAhead}</b>
      <span lang={session.timeline.voice.language}>
        {lines.map((line) => (
          <span key={line}>{line} </span>
        ))}
      </span>
    </span>
  );
}

function Told({ session }: { readonly session: Session }) {
  const told = [
    ...(session.tookOver ? [lateWords.value.duringRun.tookOver] : []),
    ...(session.kept ? [] : [lateWords.value.midRun.notKept]),
  ];
  return (
    <>
      {told.map((text) => (
        <p key={text} class="guided-told">
          {text}
        </p>
      ))}
    </>
  );
}

const screenOf = ({ run, worksheet }: Session): RunScreen =>
  runScreenOf(run.position(), worksheet.tank.method);

/** What of it is not counted by the second. */
interface Standing extends Pick<RunScreen, "kind" | "dark"> {
  readonly offers: Offers;
}

function standingOf(session: Session): Standing {
  const { kind, dark } = screenOf(session);
  return { kind, dark, offers: offersOf(session.run) };
}

/** Something of the run as of now, drawn anew only when it has changed. */
function useSeen<Of>(session: Session, { after }: RunViewPorts, read: () => Of): Of {
  const [seen, setSeen] = useState(read);
  const show = () =>
    setSeen((before) => {
      const now = read();
      return JSON.stringify(now) === JSON.stringify(before) ? before : now;
    });
  useLooks(after, () => 1000 * turnsIn(session.run.position()), show, [session]);
  const inForce = lateWords.value;
  useEffect(show, [inForce, session]);
  return seen;
}
