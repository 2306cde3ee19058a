// The thermometer by Bluetooth: connecting it, how it stands in words, letting it go. Apart from a reading that
// is typed in, because it is best connected before the hands are wet.
import type { Probe, ProbeState } from "../live/probe.ts";
import type { Temperature } from "../units/temperature.ts";
import { lateWords, writing } from "./language.ts";
import { useToldRole } from "./said-beside.tsx";
import "./hands.css";

interface ProbeConnectionProps {
  readonly probe: Probe;
  /** Its readings are shown in the unit of this one. */
  readonly like: Temperature;
}

export function ProbeConnection({ probe, like }: ProbeConnectionProps) {
  const state = probe.state.value;
  const { connect, disconnect, hint } = lateWords.value.reading;
  const isOn = state.kind === "on" || state.kind === "lost";
  return (
    <div class="probe">
      {/* What it reads changes every second or two: it is there to be read, and is not read out. */}
      <p>{isOn ? state.kind === "on" && stateOf(state, like) : hint}</p>
      <p role={useToldRole()}>{state.kind !== "on" && stateOf(state, like)}</p>
      <button
        type="button"
        class="probe-act"
        aria-disabled={state.kind === "connecting"}
        onClick={() => {
          if (isOn) probe.disconnect();
          else void probe.connect();
        }}
      >
        {isOn ? disconnect : connect}
      </button>
    </div>
  );
}

function stateOf(state: ProbeState, like: Temperature): string {
  const words = lateWords.value.reading;
  switch (state.kind) {
    case "off":
      return "";
    case "connecting":
      return words.connecting;
    case "refused":
      return words.refused[state.why];
    case "on": {
      const name = state.name || words.nameless;
      if (state.celsius === null) return words.nothingYet(name);
      return words[state.isInTank ? "on" : "out"](name, writing.value.tenths(like, state.celsius));
    }
    case "lost": {
      const lost = words.lost(state.name || words.nameless);
      return state.celsius === null
        ? lost
        : `${lost} ${words.last(writing.value.tenths(like, state.celsius))}`;
    }
  }
}
