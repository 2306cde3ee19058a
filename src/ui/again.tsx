// "Do this again": asks for the one thing that is another today, the developer's temperature, and hands the
// worksheet of today over.
import { useId, useState } from "preact/hooks";
import type { Worksheet } from "../plan/worksheet.ts";
import { worksheetOfToday } from "./do-again.ts";
import { mayOf, withNames } from "./field-names.ts";
import { lateWords, words, writing } from "./language.ts";
import { readField } from "./read-field.ts";

interface AgainProps {
  readonly worksheet: Worksheet;
  /** Fills in Work out with a worksheet, and goes there. */
  readonly useWorksheet: (worksheet: Worksheet) => void;
  readonly leave: () => void;
}

export function Again({ worksheet, useWorksheet, leave }: AgainProps) {
  const id = useId();
  const [typed, setTyped] = useState("");
  const [fault, setFault] = useState("");
  const said = lateWords.value.again;
  const was = worksheet.developer.temperature;

  function make(): void {
    const read = readField("temperature", typed, "c" in was ? "c" : "f");
    if (read.kind === "unread") {
      refuse(read.may);
      return;
    }
    const today = worksheetOfToday(worksheet, read.value as typeof was);
    if (today.kind === "worksheet") useWorksheet(today.worksheet);
    else refuse(today.faults[0]?.may ?? "");
  }

  function refuse(may: string): void {
    const { holds, needed } = words.value.faults;
    const typable = withNames(mayOf(may));
    setFault(typed.trim() === "" ? needed(typable) : holds(typed.trim(), typable));
  }

  return (
    <form
      class="again"
      onSubmit={(event) => {
        event.preventDefault();
        make();
      }}
    >
      <label for={id}>{said.asks}</label>
      <p id={`${id}-hint`} class="hint">
        {said.hint(writing.value.temperature(was))}
      </p>
      <input
        id={id}
        // biome-ignore lint/a11y/noAutofocus: it was asked for by the press before
        autoFocus
        value={typed}
        aria-describedby={`${id}-hint ${id}-fault`}
        aria-invalid={fault !== ""}
        onInput={(event) => setTyped(event.currentTarget.value)}
      />
      <p id={`${id}-fault`} role="status">
        {fault}
      </p>
      <div class="run-tools">
        <button type="submit">{said.make}</button>
        <button type="button" class="plain" onClick={leave}>
          {said.leave}
        </button>
      </div>
    </form>
  );
}
