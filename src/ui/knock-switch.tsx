// Whether knocks on the bench are listened for: off until it is switched on, and why it cannot be in words.
import { useId } from "preact/hooks";
import type { KnockPort } from "../live/knock-port.ts";
import { lateWords } from "./language.ts";
import { useToldRole } from "./said-beside.tsx";
import "./hands.css";

interface KnockSwitchProps {
  readonly knocks: KnockPort;
}

export function KnockSwitch({ knocks }: KnockSwitchProps) {
  const hint = useId();
  const role = useToldRole();
  const state = knocks.on.value;
  const isOn = state === "on" || state === "asking";
  return (
    <div class="knocks">
      <label>
        <input
          type="checkbox"
          checked={isOn}
          aria-describedby={hint}
          onChange={(event) => {
            const wanted = event.currentTarget.checked;
            // It shows what is, not what was wanted: refused a second time, it would stay ticked.
            event.currentTarget.checked = isOn;
            knocks.turn(wanted);
          }}
        />
        {lateWords.value.knocks.hear}
      </label>
      <p class="hint" id={hint}>
        {lateWords.value.knocks.hint}
      </p>
      <p role={role}>{told(state)}</p>
    </div>
  );
}

function told(state: KnockPort["on"]["value"]): string {
  switch (state) {
    case "off":
    case "on":
      return "";
    case "asking":
      return lateWords.value.recording.opening;
    default:
      return lateWords.value.microphone[state];
  }
}
