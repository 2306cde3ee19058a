// The two lists of the worksheet that grow: films, and rows of the leaflet. Taking a row out is
// answered with undo, and the keyboard is left where the next act would be.
import { useComputed } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";
import { rowCount } from "./draft.ts";
import { isOptional, type RowList, rowParts } from "./fields.ts";
import { words } from "./language.ts";
import { useWorkOut } from "./work-out-context.ts";

interface RowsProps {
  readonly list: RowList;
  /** The fields of one row, given where its paths begin: `"films[0]"`. */
  readonly children: (start: string) => ComponentChildren;
}

export function Rows({ list, children }: RowsProps) {
  const workOut = useWorkOut();
  const count = useComputed(() => rowCount(workOut.draft.value, list)).value;
  const add = useRef<HTMLButtonElement>(null);
  const fault = useComputed(() => workOut.reading.value.faults[list]).value;
  const called = words.value.rows[list];
  return (
    <div class="rows">
      {Array.from({ length: count }, (_, at) => (
        // A row is known by its place: its texts move with it when another is taken out.
        <fieldset key={`${list}[${at}]`} class="row">
          <legend>{called.one(at + 1)}</legend>
          <div class="fields">
            {children(`${list}[${at}]`)}
            {(count > 1 || isOptional(list)) && (
              <div class="field">
                <button
                  type="button"
                  class="plain out"
                  onClick={() => {
                    workOut.removeRow(list, at);
                    add.current?.focus();
                  }}
                >
                  {words.value.rows.remove}
                  <span class="unseen"> {called.one(at + 1)}</span>
                </button>
              </div>
            )}
          </div>
        </fieldset>
      ))}
      {fault && <p class="fault">{fault}</p>}
      <button
        type="button"
        class="plain"
        ref={add}
        onClick={() => {
          workOut.addRow(list, count);
          // The new row is drawn after this handler; a frame later its first field is there.
          requestAnimationFrame(() =>
            document.getElementById(`${list}[${count}].${rowParts[list][0]}`)?.focus(),
          );
        }}
      >
        {called.add}
      </button>
    </div>
  );
}
