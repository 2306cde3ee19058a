// The controls of the shelf's forms: a label, a line or a list, and what is wrong beneath. They hold nothing
// themselves; apart from the worksheet's, which go by the paths of one worksheet.
import { useId } from "preact/hooks";
import type { Faults, Texts } from "./shelf-texts.ts";

interface Form {
  readonly texts: Texts;
  readonly faults: Faults;
  readonly type: (field: string, text: string) => void;
}

/** A worksheet's own bound for what something is called. */
const longest = 200;

interface LineProps {
  readonly form: Form;
  readonly field: string;
  readonly label: string;
  readonly kind?: "text" | "date" | "lines";
  readonly hint?: string;
  readonly width?: "short" | "middling" | "long";
  readonly list?: readonly string[];
}

export function Line({
  form,
  field,
  label,
  kind = "text",
  hint,
  width = "middling",
  list,
}: LineProps) {
  const id = useId();
  const fault = form.faults[field];
  const said = [...(hint ? [`${id}-hint`] : []), ...(fault ? [`${id}-fault`] : [])].join(" ");
  const shared = {
    id,
    value: form.texts[field] ?? "",
    "aria-invalid": fault !== undefined,
    "aria-describedby": said || undefined,
  };
  const typed = (event: { readonly currentTarget: { readonly value: string } }) =>
    form.type(field, event.currentTarget.value);
  return (
    <div class={`field ${width}`}>
      <label for={id}>{label}</label>
      {kind === "lines" ? (
        <textarea {...shared} rows={3} onInput={typed} />
      ) : (
        <input
          {...shared}
          type={kind}
          maxLength={longest}
          autoComplete="off"
          list={list && `${id}-list`}
          onInput={typed}
        />
      )}
      <div class="remarks">
        {hint && (
          <p class="hint" id={`${id}-hint`}>
            {hint}
          </p>
        )}
        {fault && (
          <p class="fault" id={`${id}-fault`}>
            {fault}
          </p>
        )}
        {list && (
          <datalist id={`${id}-list`}>
            {list.map((it) => (
              <option key={it} value={it} />
            ))}
          </datalist>
        )}
      </div>
    </div>
  );
}

interface PickProps {
  readonly form: Form;
  readonly field: string;
  readonly label: string;
  readonly options: readonly (readonly [string, string])[];
}

export function Pick({ form, field, label, options }: PickProps) {
  const id = useId();
  return (
    <div class="field middling">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={form.texts[field] ?? ""}
        onChange={(event) => form.type(field, event.currentTarget.value)}
      >
        {options.map(([value, said]) => (
          <option key={value} value={value}>
            {said}
          </option>
        ))}
      </select>
    </div>
  );
}
