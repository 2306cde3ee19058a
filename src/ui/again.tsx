// "Do this again": asks for the one thing that is another today, the developer's temperature, and hands the
// worksheet of today over.
import { useId, useRef, useState } from "preact/hooks";
import { bottledBaths } from "../logbook/draws.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { filledFrom, worksheetOfToday } from "./do-again.ts";
import { mayOf, withNames } from "./field-names.ts";
import { lateWords, words, writing } from "./language.ts";
import { readField } from "./read-field.ts";
import type { Shelf } from "./shelf-state.ts";

interface AgainProps {
  readonly worksheet: Worksheet;
  readonly bottles: () => Promise<Shelf>;
  /** Fills in Work out with a worksheet, and goes there. */
  readonly useWorksheet: (worksheet: Worksheet) => void;
  readonly leave: () => void;
}

export function Again({ worksheet, bottles, useWorksheet, leave }: AgainProps) {
  const id = useId();
  const [typed, setTyped] = useState("");
  const [fault, setFault] = useState("");
  const filling = useRef(false);
  const said = lateWords.value.again;
  const was = worksheet.developer.temperature;

  function make(): void {
    const read = readField("temperature", typed, "c" in was ? "c" : "f");
    if (read.kind === "unread") {
      refuse(read.may);
      return;
    }
    const today = worksheetOfToday(worksheet, read.value as typeof was);
    if (today.kind === "worksheet") void use(today.worksheet);
    else refuse(today.faults[0]?.may ?? "");
  }

  async function use(today: Worksheet): Promise<void> {
    if (filling.current) return;
    filling.current = true;
    useWorksheet(await filled(today));
    filling.current = false;
  }

  async function filled(today: Worksheet): Promise<Worksheet> {
    if (bottledBaths(today).length === 0) return today;
    try {
      const shelf = await bottles();
      // A run that has just ended may still be writing on it.
      await shelf.lookAgain();
      return filledFrom(today, shelf.states.value);
    } catch {
      // Nobody is kept from their worksheet by a shelf that cannot be fetched.
      return today;
    }
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
