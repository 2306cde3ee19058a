// The baths around the developer, in the order of the process: whether each is used, for how long,
// and what is rarer under a disclosure of its own.
import { useComputed } from "@preact/signals";
import { type BathFacts, processBaths } from "../trade/baths.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { bathInUse } from "./candidate.ts";
import { Choice, Field } from "./field.tsx";
import { bathName } from "./field-names.ts";
import { agitationParts } from "./fields.ts";
import { withLateWords, words } from "./language.ts";
import { late } from "./late.tsx";
import { More } from "./more.tsx";
import { useWorkOut } from "./work-out-context.ts";

const BottleFor = late(async () => (await withLateWords(import("./bottle-for.tsx"))).BottleFor);

export function BathRows() {
  const workOut = useWorkOut();
  const process = useComputed(() => workOut.draft.value.process ?? "").value;
  const baths = (processBaths[process] ?? []).filter((bath) => bath.seconds !== null);
  return (
    <ul class="baths">
      {baths.map((bath) => (
        <BathRow key={bath.id} bath={bath} />
      ))}
    </ul>
  );
}

/** What a bath may have beside its time: how its fields' paths begin. */
const rarer = [
  "temperature",
  "agitation",
  "afterwards",
  "fills",
  "carryOver",
  "flow",
  "thiosulfate",
  "clearing",
  "films",
  "kept",
] as const;

function BathRow({ bath }: { readonly bath: BathFacts }) {
  const workOut = useWorkOut();
  const used = useComputed(() => bathInUse(workOut.draft.value, bath.id)).value;
  const start = `baths.${bath.id}`;
  return (
    <li>
      <fieldset class="row">
        <legend>{bathName(bath.id)}</legend>
        <div class="fields">
          <div class="field">
            <label class="tick">
              <input
                type="checkbox"
                checked={used}
                onChange={(event) =>
                  workOut.type(`${start}.use`, event.currentTarget.checked ? "yes" : "no")
                }
              />
              {words.value.fields["baths.*.use"].label}
            </label>
          </div>
          {used && (
            <Field
              path={`${start}.time`}
              otherwise={words.value.answers.otherwise(writeClockTime(bath.seconds ?? 0))}
            />
          )}
          {used && (
            <More
              summary={words.value.more.bath(bath.id)}
              holds={rarer.map((part) => `${start}.${part}`)}
            >
              <div class="fields">
                <Field path={`${start}.temperature`} />
                <Choice path={`${start}.afterwards`} width="middling" />
                {bath.id === "wash" && <Field path={`${start}.fills`} width="middling" />}
              </div>
              {bath.id === "wash" && <Exchange start={start} />}
              {bath.id === "fixer" && <ClearingTest start={start} />}
              {!bath.water && <Capacity start={start} />}
              <p>{words.value.more.ownAgitation}</p>
              <div class="fields">
                {agitationParts.map((part) => (
                  <Field key={part} path={`${start}.agitation.${part}`} />
                ))}
              </div>
            </More>
          )}
        </div>
        {used && !bath.water && <BottleFor bath={bath.id} />}
      </fieldset>
    </li>
  );
}

interface Start {
  /** Where the bath's paths begin: `"baths.wash"`. */
  readonly start: string;
}

/** What was carried into the wash, and how the water runs. */
function Exchange({ start }: Start) {
  return (
    <div class="fields">
      <Field path={`${start}.carryOver`} />
      <Field path={`${start}.flow`} />
      <Field path={`${start}.thiosulfate`} />
    </div>
  );
}

function ClearingTest({ start }: Start) {
  return (
    <div class="fields">
      <Field path={`${start}.clearing.time`} />
      <Field path={`${start}.clearing.fresh`} />
      <Choice path={`${start}.clearing.times`} width="middling" />
    </div>
  );
}

function Capacity({ start }: Start) {
  return (
    <div class="fields">
      <Field path={`${start}.filmsPerLitre`} />
      <Field path={`${start}.filmsBefore`} />
      <Field path={`${start}.kept`} />
    </div>
  );
}
