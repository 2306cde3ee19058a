// One of those who may speak, to be chosen: apart, because clips and voices of the device stand in
// different parts of one list.
import { useId } from "preact/hooks";

interface SpeakerRadioProps {
  /** Of radios that go together. */
  readonly group?: string;
  readonly name: string;
  readonly hint?: string;
  readonly isChosen: boolean;
  readonly able?: boolean;
  readonly choose: () => void;
}

export function SpeakerRadio({
  group = "who-speaks",
  name,
  hint,
  isChosen,
  able = true,
  choose,
}: SpeakerRadioProps) {
  const described = useId();
  return (
    <>
      <label>
        <input
          type="radio"
          name={group}
          checked={isChosen}
          disabled={!able}
          aria-describedby={hint && described}
          onChange={choose}
        />
        {name}
      </label>
      {hint && (
        <p class="hint" id={described}>
          {hint}
        </p>
      )}
    </>
  );
}
