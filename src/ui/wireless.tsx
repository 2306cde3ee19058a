// Headphones that play late: by how much everything is sent ahead on this device, the way to measure it, and the
// way back to none.
import { useState } from "preact/hooks";
import type { DelayStore } from "../logbook/delay-store.ts";
import type { Language } from "../units/language.ts";
import { lateWords } from "./language.ts";
import { hundredths, TapAlong, type TapAlongPorts } from "./tap-along.tsx";

interface WirelessProps extends TapAlongPorts {
  /** The voice's: its sounds are fetched with it. */
  readonly language: Language;
  readonly delays: DelayStore;
}

export function Wireless({ language, delays, ...ports }: WirelessProps) {
  const [kept, setKept] = useState(delays.load);
  const [willKeep, setWillKeep] = useState(true);
  const [measuring, setMeasuring] = useState(false);

  function keep(delay: number): void {
    setWillKeep(delays.keep(delay));
    setKept(delay);
    setMeasuring(false);
  }

  const words = lateWords.value.tapAlong;
  return (
    <details class="wireless">
      <summary>{words.ask}</summary>
      <p>{words.why}</p>
      <p role="status">
        {kept > 0 ? words.kept(hundredths(kept)) : words.noneKept}
        {!willKeep && ` ${words.notKept}`}
      </p>
      <div class="hear-answers">
        <button type="button" onClick={() => setMeasuring(true)}>
          {words.measure}
        </button>
        <button type="button" aria-disabled={kept === 0} onClick={() => kept > 0 && keep(0)}>
          {words.none}
        </button>
      </div>
      {measuring && (
        <TapAlong {...ports} language={language} keep={keep} leave={() => setMeasuring(false)} />
      )}
    </details>
  );
}
