// What of a run can be felt and read besides heard: two switches, and the signals to try out on the skin.
import { useId } from "preact/hooks";
import { type Pulses, pulsesOf } from "../live/pulses.ts";
import type { ToneName } from "../tones/designs.ts";
import { lateWords } from "./language.ts";
import type { SensesChoice } from "./senses.ts";
import "./senses.css";

interface AlsoFeltProps {
  readonly senses: SensesChoice;
  /** Null where the browser can make nothing vibrate. */
  readonly vibrate: ((pulses: Pulses) => void) | null;
}

const signals = ["pour-in", "agitate", "rest", "pour-out"] as const satisfies readonly ToneName[];

export function AlsoFelt({ senses, vibrate }: AlsoFeltProps) {
  const words = lateWords.value.senses;
  const { vibrates, captions } = senses.now.value;
  return (
    <section class="also-felt">
      <h2>{words.also}</h2>
      <Switch
        name={words.vibrates}
        hint={vibrate === null ? words.noMotor : words.vibratesHint}
        on={vibrates && vibrate !== null}
        able={vibrate !== null}
        turn={(on) => senses.change({ vibrates: on })}
      />
      {vibrate !== null && vibrates && (
        <fieldset class="feel">
          <legend>{words.feel}</legend>
          {signals.map((tone) => (
            <button key={tone} type="button" onClick={() => vibrate(pulsesOf(tone))}>
              {lateWords.value.runDeeds[tone]}
            </button>
          ))}
        </fieldset>
      )}
      <Switch
        name={words.captions}
        hint={words.captionsHint}
        on={captions}
        turn={(on) => senses.change({ captions: on })}
      />
    </section>
  );
}

interface SwitchProps {
  readonly name: string;
  readonly hint: string;
  readonly on: boolean;
  readonly able?: boolean;
  readonly turn: (on: boolean) => void;
}

function Switch({ name, hint, on, able = true, turn }: SwitchProps) {
  const described = useId();
  return (
    <>
      <label>
        <input
          type="checkbox"
          checked={on}
          disabled={!able}
          aria-describedby={described}
          onChange={(event) => turn(event.currentTarget.checked)}
        />
        {name}
      </label>
      <p class="hint" id={described}>
        {hint}
      </p>
    </>
  );
}
