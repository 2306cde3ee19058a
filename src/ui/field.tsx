// The controls of the worksheet, each by its path: what was typed, its label, and beside it in words
// how it was understood or what is wrong. They hold nothing themselves.
import { useComputed } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { wordsOf } from "./field-names.ts";
import { type FieldPattern, kindOf, patternOf } from "./fields.ts";
import { words } from "./language.ts";
import { useWorkOut } from "./work-out-context.ts";

export interface FieldProps {
  readonly path: string;
  readonly width?: "short" | "middling" | "long";
  /** Id of a list of suggestions. */
  readonly list?: string;
  /** What holds where the field is left empty; shown while it is. */
  readonly otherwise?: string;
}

/** A line to write on. */
export function Field({ path, width = "short", list, otherwise }: FieldProps) {
  const workOut = useWorkOut();
  const text = useComputed(() => workOut.draft.value[path] ?? "").value;
  const { fault, meaning } = useRemarks(path);
  const { label, why } = wordsOf(path);
  const left = text.trim() === "" ? otherwise : undefined;
  const kind = kindOf(path);
  const digits = kind === "number" || kind === "per-cent" || kind === "seconds";
  return (
    <div class={`field ${width}`}>
      <label for={path}>{label}</label>
      <input
        id={path}
        type="text"
        inputMode={digits ? "decimal" : "text"}
        autoComplete="off"
        spellcheck={false}
        list={list}
        value={text}
        aria-invalid={fault !== null}
        aria-describedby={describedBy(path, { hint: left, meaning, fault })}
        onInput={(event) => workOut.type(path, event.currentTarget.value)}
        onBlur={workOut.leave}
      />
      <Why path={path} why={why}>
        {left && (
          <p class="hint" id={`${path}:hint`}>
            {left}
          </p>
        )}
        <Remarks path={path} fault={fault} meaning={meaning} />
      </Why>
    </div>
  );
}

/** One of a few, in a drop-down list. */
export function Choice({ path, width = "long" }: Pick<FieldProps, "path" | "width">) {
  const workOut = useWorkOut();
  const chosen = useComputed(() => workOut.draft.value[path] ?? "").value;
  const { fault } = useRemarks(path);
  const { label, why } = wordsOf(path);
  return (
    <div class={`field ${width}`}>
      <label for={path}>{label}</label>
      <select
        id={path}
        value={chosen}
        aria-invalid={fault !== null}
        aria-describedby={describedBy(path, { fault })}
        onChange={(event) => workOut.type(path, event.currentTarget.value)}
        onBlur={workOut.leave}
      >
        {optionsOf(path).map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
      <Why path={path} why={why}>
        <Remarks path={path} fault={fault} meaning={null} />
      </Why>
    </div>
  );
}

/** One of two or three, all of them in view. */
export function Radios({ path }: { readonly path: string }) {
  const workOut = useWorkOut();
  const chosen = useComputed(() => workOut.draft.value[path] ?? "").value;
  return (
    <fieldset class="radios" id={path} tabIndex={-1}>
      <legend>{wordsOf(path).label}</legend>
      {optionsOf(path).map(([value, words]) => (
        <label key={value}>
          <input
            type="radio"
            name={path}
            value={value}
            checked={value === chosen}
            onChange={() => workOut.type(path, value)}
          />
          {words}
        </label>
      ))}
    </fieldset>
  );
}

interface RemarksProps {
  readonly path: string;
  readonly fault: string | null;
  readonly meaning: string | null;
}

function Remarks({ path, fault, meaning }: RemarksProps) {
  return (
    <>
      {meaning && (
        <p class="meaning" id={`${path}:meaning`}>
          {meaning}
        </p>
      )}
      {fault && (
        <p class="fault" id={`${path}:fault`}>
          {fault}
        </p>
      )}
    </>
  );
}

interface WhyProps {
  readonly path: string;
  readonly why: string | undefined;
  readonly children: ComponentChildren;
}

/**
 * What is said of a field, beneath it, with the reason it is asked for one press away: on the label's
 * line for the eye, after the field for the keyboard.
 */
function Why({ path, why, children }: WhyProps) {
  const [asked, setAsked] = useState(false);
  return (
    <>
      {why && (
        <button
          type="button"
          class="plain why"
          aria-expanded={asked}
          aria-controls={`${path}:why`}
          onClick={() => setAsked(!asked)}
        >
          {words.value.faults.why}
          <span class="unseen"> {wordsOf(path).label}</span>
        </button>
      )}
      <div class="remarks">
        {children}
        {why && (
          <p class="reason" id={`${path}:why`} hidden={!asked}>
            {why}
          </p>
        )}
      </div>
    </>
  );
}

/** The fault waits while its field is still being typed into; the meaning never does. */
function useRemarks(path: string): Omit<RemarksProps, "path"> {
  const workOut = useWorkOut();
  const fault = useComputed(() =>
    workOut.typing.value === path ? null : (workOut.reading.value.faults[path] ?? null),
  ).value;
  const meaning = useComputed(() => workOut.reading.value.meanings[path] ?? null).value;
  return { fault, meaning };
}

function describedBy(
  path: string,
  parts: { readonly [part: string]: string | null | undefined },
): string | undefined {
  const ids = Object.entries(parts).flatMap(([part, text]) => (text ? [`${path}:${part}`] : []));
  return ids.length > 0 ? ids.join(" ") : undefined;
}

/** Values as they are written, each with its words; none where the field is no choice. */
export function optionsOf(path: string): readonly (readonly [string, string])[] {
  const options: { readonly [pattern in FieldPattern]?: { readonly [value: string]: string } } =
    words.value.choices;
  return Object.entries(options[patternOf(path) ?? "title"] ?? {});
}
