// What a person's own hands take, measured by pressing along three times; three times in seconds out.
// Past 200 lines because the press, the clock and the result are one screen.
import type { Ref } from "preact";
import { useEffect, useId, useLayoutEffect, useRef, useState } from "preact/hooks";
import { isUneven, type Pace, paceOf } from "../trade/hands.ts";
import { fixed, lateWords } from "./language.ts";
import {
  again,
  isFresh,
  type Measured,
  type PressAlong as Pressed,
  press,
  type Stage,
  stageOf,
  startOf,
  takeBack,
  tenths,
  timesOf,
  turns,
} from "./press-along-model.ts";
import { isOnOther, pressOf, WetDialog } from "./wet-dialog.tsx";

interface PressAlongProps {
  readonly what: Measured;
  /** ms, never going back. */
  readonly now: () => number;
  /** Three times in seconds, to a tenth. */
  readonly keep: (times: readonly number[]) => void;
  readonly leave: () => void;
  /** Calls back several times a second, for the running time alone; at every frame if not given. */
  readonly often?: (show: () => void) => () => void;
}

export function PressAlong({ what, now, keep, leave, often = everyFrame }: PressAlongProps) {
  const [along, setAlong] = useState(() => startOf(what));
  const main = useRef<HTMLButtonElement>(null);
  const stage = stageOf(along);
  const done = stage.kind === "done";
  const toMain = () => main.current?.focus();
  useLayoutEffect(toMain, [done]);

  const pressAt = (at: number) => setAlong((it) => press(it, at));
  function change(act: (it: Pressed, at: number) => Pressed): void {
    const at = now();
    setAlong((it) => act(it, at));
    // The next key is to be a press, not the same button again.
    toMain();
  }

  return (
    <WetDialog
      label={lateWords.value.pressAlong.name[what]}
      leave={leave}
      keys={(event) => {
        if (event.key !== "Enter" && event.key !== " ") return false;
        // Held down, a key would press whatever comes next under it.
        if (event.repeat) return true;
        if (done || isOnOther(event, main.current)) return false;
        pressAt(now() - ago(event));
        return true;
      }}
    >
      {done ? (
        <Result
          along={along}
          keep={(times) => isFresh(along, now()) && keep(times)}
          again={() => change(again)}
          main={main}
        />
      ) : (
        <PressTarget
          what={what}
          stage={stage}
          press={(since) => pressAt(now() - since)}
          main={main}
          now={now}
          often={often}
        />
      )}
      <Times along={along} />
      <div class="wet-tools">
        <button
          type="button"
          aria-disabled={along.presses.length === 0}
          onClick={() => change(takeBack)}
        >
          {lateWords.value.pressAlong.takeBack}
        </button>
        <button type="button" onClick={() => isFresh(along, now()) && leave()}>
          {lateWords.value.pressAlong.leave}
        </button>
      </div>
      <p class="unseen" role="status">
        {statusOf(what, stage, timesOf(along).at(-1) ?? null)}
      </p>
    </WetDialog>
  );
}

type TimePorts = Required<Pick<PressAlongProps, "now" | "often">>;

interface PressTargetProps extends TimePorts {
  readonly what: Measured;
  readonly stage: Exclude<Stage, { kind: "done" }>;
  /** Given the ms since the finger came down. */
  readonly press: (since: number) => void;
  readonly main: Ref<HTMLButtonElement>;
}

/** Nearly all of the screen, over what it shows. Its name is what to press for; the clock is for the eye alone. */
function PressTarget({ what, stage, press, main, now, often }: PressTargetProps) {
  const [next, advice] = [useId(), useId()];
  return (
    <div class="wet-stage">
      <button
        type="button"
        class="wet-press"
        ref={main}
        aria-labelledby={next}
        aria-describedby={advice}
        {...pressOf((event) => press(ago(event)))}
      />
      <div class="wet-shown">
        <span class="wet-advice" id={advice}>
          {lateWords.value.pressAlong.advice[what]}
        </span>
        <span class="wet-turn">{lateWords.value.pressAlong.turn(stage.turn, turns)}</span>
        <span class="wet-next" id={next}>
          {
            (stage.kind === "running"
              ? lateWords.value.pressAlong.end
              : lateWords.value.pressAlong.begin)[what]
          }
        </span>
        {stage.kind === "running" ? (
          <Running since={stage.since} now={now} often={often} />
        ) : (
          <Clock time={0} still />
        )}
      </div>
    </div>
  );
}

type RunningProps = TimePorts & { readonly since: number };

function Running({ since, now, often }: RunningProps) {
  const read = () => Math.max(0, tenths(now() - since));
  const [time, setTime] = useState(read);
  useEffect(() => often(() => setTime(read())), [since]);
  return <Clock time={time} />;
}

const Clock = ({ time, still = false }: { readonly time: number; readonly still?: boolean }) => {
  const text = seconds(time);
  const style = { "--signs": Math.max(text.length, seconds(10).length) };
  return (
    <span class={still ? "wet-clock still" : "wet-clock"} style={style} aria-hidden="true">
      {text}
    </span>
  );
};

interface ResultProps {
  readonly along: Pressed;
  readonly keep: (times: readonly number[]) => void;
  readonly again: () => void;
  readonly main: Ref<HTMLButtonElement>;
}

function Result({ along, keep, again, main }: ResultProps) {
  const times = timesOf(along);
  const pace = paceOf(times);
  if (pace === null) throw new Error("a result of no times");
  return (
    <div class="wet-result">
      <p class="wet-turn">{lateWords.value.pressAlong.measured[along.what]}</p>
      <p class="wet-next">{lateWords.value.pressAlong.median(seconds(pace.median))}</p>
      <p class="wet-spread">{spreadOf(pace)}</p>
      <div class="wet-keys">
        <button type="button" class="wet-first" ref={main} onClick={() => keep(times)}>
          {lateWords.value.pressAlong.keep(seconds(pace.median))}
        </button>
        <button type="button" onClick={again}>
          {lateWords.value.pressAlong.again}
        </button>
      </div>
    </div>
  );
}

/** Always a tenth: what was measured to a tenth is read as such. */
function seconds(time: number): string {
  return lateWords.value.pressAlong.seconds(fixed(time, 1));
}

function spreadOf(pace: Pace): string {
  const { alike, even, uneven } = lateWords.value.pressAlong;
  if (pace.spread < 0.05) return alike;
  // The unit stays on the line of its number.
  return (isUneven(pace) ? uneven : even)(seconds(pace.spread).replace(" ", "\u00a0"));
}

/** Told to those who listen to the page, after each press. */
function statusOf(what: Measured, stage: Stage, last: number | null): string {
  const { status } = lateWords.value.pressAlong;
  switch (stage.kind) {
    case "ready":
      return last === null ? "" : status.begin(seconds(last), what);
    case "running":
      return status.end(what);
    case "done":
      return last === null ? "" : status.done(seconds(last));
  }
}

/** A place for each of the three, so that nothing moves as they come. */
function Times({ along }: { readonly along: Pressed }) {
  const times = timesOf(along);
  return (
    <ol class="wet-times" aria-label={lateWords.value.pressAlong.times}>
      {Array.from({ length: turns }, (_, turn) => {
        const time = times[turn];
        return (
          <li key={turn}>{time === undefined ? lateWords.value.pressAlong.none : seconds(time)}</li>
        );
      })}
    </ol>
  );
}

function everyFrame(show: () => void): () => void {
  let frame = requestAnimationFrame(function next() {
    show();
    frame = requestAnimationFrame(next);
  });
  return () => cancelAnimationFrame(frame);
}

/** ms since an event happened, which a busy page hears of late. */
const ago = (event: Event): number => Math.max(0, performance.now() - event.timeStamp);
