// What a track does where a run would wait for a press: chosen, with what a plain player makes of it.
import { useState } from "preact/hooks";
import { longestGap, type WaitKind, waitKinds } from "../track/track.ts";
import { lateWords } from "./language.ts";

interface WaitsProps {
  readonly waits: WaitKind;
  /** Seconds; null where what is typed is none. */
  readonly gap: number | null;
  readonly choose: (waits: WaitKind) => void;
  readonly type: (gap: number | null) => void;
}

export function Waits({ waits, gap, choose, type }: WaitsProps) {
  const [typed, setTyped] = useState(String(gap ?? ""));
  const { take } = lateWords.value;
  return (
    <>
      <fieldset>
        <legend>{take.waits}</legend>
        {waitKinds.map((kind) => (
          <label key={kind}>
            <input
              type="radio"
              name="track-waits"
              checked={kind === waits}
              aria-describedby={`waits-${kind}`}
              onChange={() => choose(kind)}
            />
            {take.kinds[kind]}
          </label>
        ))}
      </fieldset>
      {waitKinds.map((kind) => (
        <p key={kind} id={`waits-${kind}`} hidden={kind !== waits}>
          {take.kindsHow[kind]}
        </p>
      ))}
      <label class="planned">
        {take.gap}
        <input
          inputMode="numeric"
          value={typed}
          aria-invalid={gap === null}
          aria-describedby="gap-may"
          onInput={(event) => {
            const text = event.currentTarget.value;
            setTyped(text);
            type(secondsOf(text));
          }}
        />
      </label>
      <p id="gap-may" role="status">
        {gap === null && take.gapMay(String(longestGap))}
      </p>
    </>
  );
}

function secondsOf(text: string): number | null {
  const seconds = /^\s*\d+\s*$/.test(text) ? Number(text) : Number.NaN;
  return seconds <= longestGap ? seconds : null;
}
