// What is in a bottle, and what was done with it, written down: two forms that read what was typed only when it
// is sent, and go to the first field at fault.
import { Fragment } from "preact";
import { useRef, useState } from "preact/hooks";
import { type Act, bottleKinds, bottleStates, type Contents } from "../logbook/bottle.ts";
import { type Day, keepings, spanUnits } from "../trade/keeping.ts";
import { bathName } from "./field-names.ts";
import { lateWords } from "./language.ts";
import { Line, Pick } from "./shelf-field.tsx";
import type { ShelfRefusal } from "./shelf-state.ts";
import {
  type Faults,
  type FormAct,
  readAct,
  readContents,
  type Texts,
  textsOf,
} from "./shelf-texts.ts";

/** Held while it is typed; `send` resolves with why it was not taken, or null. */
function useForm(start: Texts) {
  const [texts, setTexts] = useState(start);
  const [faults, setFaults] = useState<Faults>({});
  const [refusal, setRefusal] = useState<ShelfRefusal | null>(null);
  const element = useRef<HTMLFormElement>(null);
  return {
    form: {
      texts,
      faults,
      type: (field: string, text: string) => setTexts((was) => ({ ...was, [field]: text })),
    },
    refusal,
    element,
    texts,
    fault(next: Faults): void {
      setFaults(next);
      setRefusal(null);
      setTimeout(() => {
        element.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      });
    },
    refuse(next: ShelfRefusal | null): void {
      setFaults({});
      setRefusal(next);
    },
  };
}

function Refused({ why }: { readonly why: ShelfRefusal | null }) {
  const { refusals, notKept } = lateWords.value.shelf;
  const says = why === null ? "" : why === "not-kept" ? notKept : refusals[why];
  return (
    <p role="alert" class={says === "" ? undefined : "fault"}>
      {says}
    </p>
  );
}

interface ContentsFormProps {
  readonly title: string;
  readonly today: Day;
  /** What is corrected; null for a new bottle. */
  readonly was: Contents | null;
  readonly send: (contents: Contents) => Promise<ShelfRefusal | null>;
  readonly leave: () => void;
}

export function ContentsForm({ title, today, was, send, leave }: ContentsFormProps) {
  const say = lateWords.value.bottleForm;
  const start: Texts = was ? textsOf(was) : { kind: "developer", state: "working", mixedOn: today };
  const { form, texts, refusal, element, fault, refuse } = useForm(start);
  async function submit(event: Event): Promise<void> {
    event.preventDefault();
    const read = readContents(texts);
    if (read.kind === "faults") return fault(read.faults);
    const why = await send(read.value);
    refuse(why);
    if (why === null) leave();
  }
  const line = { form };
  return (
    <form ref={element} class="shelf-form" aria-label={title} autocomplete="off" onSubmit={submit}>
      <div class="fields">
        <Line {...line} field="name" label={say.name} />
        <Pick
          {...line}
          field="kind"
          label={say.kind}
          options={bottleKinds.map((kind) => [kind, bathName(kind)])}
        />
        <Pick
          {...line}
          field="state"
          label={say.state}
          options={bottleStates.map((state) => [state, lateWords.value.shelf.states[state]])}
        />
        <Line {...line} field="strength" label={say.strength} width="short" />
        <Line {...line} field="volume" label={say.volume} width="short" />
        <Line {...line} field="mixedOn" label={say.mixedOn} kind="date" />
        <Line {...line} field="by" label={say.by} width="short" />
        <Line {...line} field="from" label={say.from} />
      </div>
      <fieldset>
        <legend>{say.keeps}</legend>
        <div class="fields">
          {keepings.map((of) => (
            <Fragment key={of}>
              <Line {...line} field={of} label={say[of]} width="short" />
              <Pick
                form={{ ...form, texts: { [`${of}Unit`]: "months", ...texts } }}
                field={`${of}Unit`}
                label={`${say.unit} (${say[of]})`}
                options={spanUnits.map((unit) => [unit, say.units[unit]])}
              />
            </Fragment>
          ))}
        </div>
      </fieldset>
      <div class="fields">
        <Line {...line} field="filmsPerLitre" label={say.filmsPerLitre} hint={say.filmsHint} />
        {texts.kind === "developer" && <Line {...line} field="addPerFilm" label={say.addPerFilm} />}
        <Line
          {...line}
          field="hazards"
          label={say.hazards}
          kind="lines"
          hint={say.hazardsHint}
          width="long"
        />
      </div>
      <Refused why={refusal} />
      <div class="run-tools">
        <button type="submit">{was ? say.correct : say.add}</button>
        <button type="button" class="plain" onClick={leave}>
          {say.cancel}
        </button>
      </div>
    </form>
  );
}

interface ActFormProps {
  readonly act: FormAct;
  readonly title: string;
  readonly today: Day;
  readonly send: (act: Act, on: Day, by: string) => Promise<ShelfRefusal | null>;
  readonly leave: () => void;
}

const sizes = ["135-36", "135-24", "120", "220", "4x5in", "8x10in"];

export function ActForm({ act, title, today, send, leave }: ActFormProps) {
  const say = lateWords.value.bottleForm;
  const { form, texts, refusal, element, fault, refuse } = useForm({ on: today, count: "1" });
  async function submit(event: Event): Promise<void> {
    event.preventDefault();
    const read = readAct(act, texts);
    if (read.kind === "faults") return fault(read.faults);
    const why = await send(read.value.act, read.value.on, (texts.by ?? "").trim());
    refuse(why);
    if (why === null) leave();
  }
  return (
    <form ref={element} class="shelf-form" aria-label={title} autocomplete="off" onSubmit={submit}>
      <h3>{title}</h3>
      {act === "tested" && <p>{say.freshFirst}</p>}
      <div class="fields">
        {act === "films" && (
          <>
            <Line form={form} field="size" label={say.size} width="short" list={sizes} />
            <Line form={form} field="count" label={say.count} width="short" />
          </>
        )}
        {(act === "taken" || act === "added") && (
          <Line form={form} field="volume" label={say.volume} width="short" />
        )}
        {act === "tested" && (
          <>
            <Line form={form} field="time" label={say.time} width="short" />
            <Line form={form} field="film" label={say.film} />
          </>
        )}
        <Line form={form} field="on" label={say.on} kind="date" />
        <Line form={form} field="by" label={say.by} width="short" />
      </div>
      <Refused why={refusal} />
      <div class="run-tools">
        <button type="submit">{say.writeDown}</button>
        <button type="button" class="plain" onClick={leave}>
          {say.cancel}
        </button>
      </div>
    </form>
  );
}
