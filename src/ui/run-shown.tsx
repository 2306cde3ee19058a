// What the run's screen says, as large as the time left to read it is short. A screen as data in.
import { lateWords } from "./language.ts";
import type { RunScreen } from "./run-model.ts";

interface ShownProps {
  readonly screen: RunScreen;
  /** Language of the voice, as a tag: in it steps are named, and it is written out what was said. */
  readonly spoken: string;
  readonly rehearses: boolean;
}

export function Shown({ screen, spoken, rehearses }: ShownProps) {
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
          <span class="guided-then">
            {(rehearses ? lateWords.value.rehearse : lateWords.value.duringRun).overHint}
          </span>
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
