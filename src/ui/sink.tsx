// The thermometer read at the sink: half degrees by huge keys, and one that stamps what is shown. When
// it was pressed, and what follows from the readings, is the caller's business.
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import { writeClockTime } from "../units/clock-time.ts";
import type { Temperature } from "../units/temperature.ts";
import { lateWords, writing } from "./language.ts";
import { type SinkKey, sinkAt, touch } from "./sink-model.ts";
import { isOnOther, pressOf, WetDialog } from "./wet-dialog.tsx";

interface Reading {
  /** s since the clock that the readings are told by began. */
  readonly at: number;
  readonly temperature: Temperature;
}

interface SinkProps {
  readonly title: string;
  /** Its unit is that of every key; shown first, as it is. */
  readonly like: Temperature;
  readonly readings: readonly Reading[];
  /** What the readings come to, as of now; empty where there is nothing to say. */
  readonly says: string;
  /** Called as the finger comes down. */
  readonly stamp: (temperature: Temperature) => void;
  readonly takeBack: () => void;
  readonly leave: () => void;
}

const keysOf: { readonly [key: string]: SinkKey } = {
  ArrowUp: "more",
  ArrowDown: "less",
  PageUp: "much-more",
  PageDown: "much-less",
  Enter: "read",
  " ": "read",
};

export function Sink({ title, like, readings, says, stamp, takeBack, leave }: SinkProps) {
  const [sink, setSink] = useState(() => sinkAt(like));
  // Two presses may come before the screen is drawn anew.
  const latest = useRef(sink);
  const main = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => main.current?.focus(), []);

  function press(key: SinkKey, event: Event): void {
    const { sink, read } = touch(latest.current, key, event.timeStamp);
    latest.current = sink;
    setSink(sink);
    if (read !== null) stamp(read);
  }
  function back(): void {
    if (readings.length > 0) takeBack();
    // The next key is to be a reading, not the same button again.
    main.current?.focus();
  }

  const shown = writing.value.temperature(sink.shown);
  return (
    <WetDialog
      label={title}
      leave={leave}
      keys={(event) => {
        if (event.key === "Backspace") {
          if (!event.repeat) back();
          return true;
        }
        const key = keysOf[event.key];
        if (key === undefined) return false;
        if (key === "read") {
          // Held down, a key would stamp again and again.
          if (event.repeat) return true;
          if (isOnOther(event, main.current)) return false;
        }
        press(key, event);
        return true;
      }}
    >
      <div class="wet-sink">
        <h2 class="wet-title">{title}</h2>
        <p class="wet-figure">
          <span class="unseen">{lateWords.value.sink.shown} </span>
          <output>{shown}</output>
        </p>
        <div class="wet-steps">
          {(["less", "more"] as const).map((key) => (
            <button
              key={key}
              type="button"
              // The focus stays where Enter stamps.
              onMouseDown={(event) => event.preventDefault()}
              {...pressOf((event) => press(key, event))}
            >
              {lateWords.value.sink[key]}
            </button>
          ))}
        </div>
        <button
          type="button"
          class="wet-first wet-read"
          ref={main}
          {...pressOf((event) => press("read", event))}
        >
          {lateWords.value.sink.read(shown.replace(" ", "\u00a0"))}
        </button>
        <p class="wet-says" aria-live="polite">
          {says}
        </p>
        {readings.length === 0 ? (
          <p class="wet-readings">{lateWords.value.sink.noReadings}</p>
        ) : (
          <ol class="wet-readings" aria-label={lateWords.value.sink.readings}>
            {readings.map(({ at, temperature }, index) => (
              <li key={index}>
                {lateWords.value.sink.reading(
                  writeClockTime(at),
                  writing.value.temperature(temperature),
                )}
              </li>
            ))}
          </ol>
        )}
      </div>
      <div class="wet-tools">
        <button type="button" aria-disabled={readings.length === 0} onClick={back}>
          {lateWords.value.sink.takeBack}
        </button>
        <button type="button" onClick={leave}>
          {lateWords.value.sink.done}
        </button>
      </div>
    </WetDialog>
  );
}
