// The run's screen: the next thing to do across the whole of it, and the whole of it one control.
// In a dark section every pixel is black, the pointer too; what can be pressed is still there.
import { useEffect, useRef, useState } from "preact/hooks";
import type { Detail, Session } from "../live/runs.ts";
import { lateWords } from "./language.ts";
import { isPress } from "./press-events.ts";
import { type RunScreen, runScreenOf } from "./run-model.ts";
import { RunTools } from "./run-tools.tsx";

export interface RunViewPorts {
  /** How much is said in what is left. */
  readonly say: (detail: Detail) => void;
  /** Ends the run that is on; the record stays. */
  readonly leave: () => void;
  /** Ends the run and shows its record. */
  readonly toWriteUp: () => void;
  /** Keeps the screen from sleeping, or lets it; in the dark it is let. */
  readonly keepAwake: (on: boolean) => void;
  /** Calls back a few times a second, for what is shown only. */
  readonly often: (show: () => void) => () => void;
}

interface Props {
  readonly session: Session;
  readonly ports: RunViewPorts;
}

export function RunView({ session, ports }: Props) {
  const screen = useScreen(session, ports);
  const view = useRef<HTMLDivElement>(null);
  const { run } = session;
  const dark = screen.dark;

  useEffect(() => {
    view.current?.querySelector<HTMLElement>(".guided-press")?.focus();
  }, []);
  useEffect(() => {
    ports.keepAwake(!dark);
    document.documentElement.classList.toggle("black", dark);
    return () => {
      ports.keepAwake(false);
      document.documentElement.classList.remove("black");
    };
  }, [dark, ports]);
  useEffect(() => {
    function keyDown(event: KeyboardEvent): void {
      if (!isPress(event)) return;
      // Prevented, so that the focused control is not pressed a second time by the same key.
      event.preventDefault();
      run.press(ago(event));
    }
    const keyUp = (event: KeyboardEvent) => {
      if (isPress(event)) event.preventDefault();
    };
    window.addEventListener("keydown", keyDown);
    window.addEventListener("keyup", keyUp);
    return () => {
      window.removeEventListener("keydown", keyDown);
      window.removeEventListener("keyup", keyUp);
    };
  }, [run]);

  return (
    <div
      ref={view}
      class={dark ? "guided dark" : "guided"}
      role="dialog"
      aria-label={lateWords.value.duringRun.name}
    >
      <button
        type="button"
        class="guided-press"
        aria-label={dark ? lateWords.value.duringRun.press : undefined}
        onPointerDown={(event) => {
          if (event.isPrimary && event.button === 0) run.press(ago(event));
        }}
        // A press that came from neither finger nor key: assistive technology acts by click alone.
        onClick={(event) => {
          if (event.detail === 0) run.press();
        }}
      >
        {!dark && (
          <>
            <Shown screen={screen} spoken={session.timeline.voice.language} />
            <span class="unseen">{lateWords.value.duringRun.press}</span>
          </>
        )}
      </button>
      {session.tookOver && !dark && <p class="guided-told">{lateWords.value.duringRun.tookOver}</p>}
      {screen.kind === "over" && (
        <p class="guided-over">
          <button type="button" onClick={ports.toWriteUp}>
            {lateWords.value.duringRun.toWriteUp}
          </button>
        </p>
      )}
      <RunTools session={session} ports={ports} kind={screen.kind} />
    </div>
  );
}

/** Seconds since an event happened, which a busy page hears of late. */
const ago = (event: Event): number => Math.max(0, performance.now() - event.timeStamp) / 1000;

/** The screen as of now, drawn anew only when something on it has changed. */
function useScreen(session: Session, ports: RunViewPorts): RunScreen {
  const read = () => runScreenOf(session.run.position(), session.worksheet.tank.method);
  const [screen, setScreen] = useState(read);
  useEffect(
    () =>
      ports.often(() =>
        setScreen((before) => {
          const now = read();
          return JSON.stringify(now) === JSON.stringify(before) ? before : now;
        }),
      ),
    [session, ports],
  );
  const inForce = lateWords.value;
  useEffect(() => setScreen(read), [inForce]);
  return screen;
}

interface ShownProps {
  readonly screen: RunScreen;
  /** Language of the voice, as a tag: in it steps are named, and it is written out what was said. */
  readonly spoken: string;
}

function Shown({ screen, spoken }: ShownProps) {
  switch (screen.kind) {
    case "timed":
      return (
        <span class="guided-timed">
          <span class="guided-now">
            <span lang={spoken}>{screen.title}</span>
            {screen.now !== null && ` · ${lateWords.value.duringRun.now(screen.now)}`}
          </span>
          {screen.next !== null && (
            <span class="guided-next">
              {screen.next}{" "}
              <span class="guided-in">{lateWords.value.duringRun.in(screen.nextIn)}</span>
            </span>
          )}
          <span class="guided-left" style={{ "--digits": screen.left.length }}>
            {screen.left}
          </span>
          <span class="guided-label">{screen.leftLabel}</span>
          <span class="guided-then">{screen.after}</span>
        </span>
      );
    case "waiting":
      return (
        <span class="guided-waiting">
          {screen.title !== null && (
            <span class="guided-now" lang={spoken}>
              {screen.title}
            </span>
          )}
          <Said lines={screen.says} spoken={spoken} />
          <span class="guided-next">{lateWords.value.duringRun.waiting}</span>
          <span class="guided-then">{lateWords.value.duringRun.waitingFor(screen.next)}</span>
        </span>
      );
    case "over":
      return (
        <span class="guided-waiting">
          <Said lines={screen.says} spoken={spoken} />
          <span class="guided-next">{lateWords.value.duringRun.over}</span>
          <span class="guided-then">{lateWords.value.duringRun.overHint}</span>
        </span>
      );
  }
}

interface SaidProps {
  readonly lines: readonly string[];
  readonly spoken: string;
}

const Said = ({ lines, spoken }: SaidProps) => (
  <span class="guided-said" lang={spoken}>
    {lines.map((line) => (
      <span key={line}>{line} </span>
    ))}
  </span>
);
