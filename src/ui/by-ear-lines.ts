// Where a talk stands and the worksheet in, what is said next out: line by line, each with what a press does while
// it is told and in the pause behind it. Apart from what an act does (by-ear-model.ts).
import type { Plan } from "../plan/plan.ts";
import { type EarField, firstFields, restOfFields, type Saying } from "./by-ear-fields.ts";
import {
  choiceSaid,
  choosable,
  echoOf,
  nameSaid,
  otherUnits,
  rangeSaid,
  timeSaid,
  unitSaid,
  valueSaid,
} from "./by-ear-said.ts";
import type { Draft } from "./draft.ts";
import { asideOf, kindOf } from "./fields.ts";
import { readDraft } from "./work-out-model.ts";

export interface Talk {
  /** Which stop. */
  readonly at: number;
  /** Digits so far, while a number is being given; else null. */
  readonly typed: string | null;
  /** Which value is told first, while one is being chosen; else null. */
  readonly from: number | null;
  /** Said before all else: what came of the last act. */
  readonly answer: readonly Saying[];
}

export type Act =
  | {
      readonly kind: "next" | "previous" | "again" | "change" | "delete" | "leave" | "run" | "rest";
    }
  | { readonly kind: "type"; readonly sign: string }
  /** `unit`: in another one than a number alone has. */
  | { readonly kind: "set"; readonly unit?: string }
  /** Leaves a number empty, which is as it usually is. */
  | { readonly kind: "usual" }
  /** Chooses a value by its place. */
  | { readonly kind: "take"; readonly value: number }
  /** To the value before or behind the one that is being told. */
  | { readonly kind: "step"; readonly by: 1 | -1; readonly told: number | null }
  | { readonly kind: "go"; readonly to: number };

/** Said in one go; `offers` is what a press does while it is told and in the pause behind it. */
export interface Line {
  readonly says: readonly Saying[];
  readonly offers: Act | null;
}

/** A field to be asked, or what it all comes to. */
export type Stop = EarField | "end";

/** What any session is worked out from, what that comes to; then what most leave, and what it comes to with that. */
export function stopsOf(draft: Draft): readonly Stop[] {
  return [...firstFields(draft), "end", ...restOfFields(draft), "end"];
}

/** The first stop behind what is asked of everybody. */
export const restAt = (draft: Draft): number => stopsOf(draft).indexOf("end") + 1;

/** The field that a talk is at; null at an end. */
export function fieldOf(talk: Talk, draft: Draft): EarField | null {
  const stop = stopsOf(draft)[talk.at];
  return stop === undefined || stop === "end" ? null : stop;
}

const line = (key: string, offers: Act | null = null): Line => ({ says: [{ key }], offers });

/** The lines of where a talk stands, in order. */
export function linesOf(talk: Talk, draft: Draft, plan: Plan | null): readonly Line[] {
  const answer = talk.answer.length === 0 ? [] : [{ says: talk.answer, offers: null }];
  const field = fieldOf(talk, draft);
  if (field === null) return [...answer, ...endLines(talk, draft, plan)];
  if (talk.typed !== null) return [...answer, ...digitLines(field, draft, talk.typed)];
  if (talk.from !== null) return [...answer, ...valueLines(field, talk.from)];
  const range = choosable(field).length > 0 ? [] : rangeSaid(field, draft);
  return [
    ...answer,
    { says: [...nameSaid(field), ...valueSaid(field, draft)], offers: null },
    line("ear.change", { kind: "change" }),
    { says: [...field.sets.map((what) => ({ key: `ear.sets.${what}` })), ...range], offers: null },
  ];
}

/** Every value, from one of them on, and the way to leave it. */
function valueLines(field: EarField, from: number): readonly Line[] {
  const values = choosable(field).map(
    ({ says }, value): Line => ({ says, offers: { kind: "take", value } }),
  );
  return [...values.slice(from), ...values.slice(0, from), line("ear.leave", { kind: "leave" })];
}

function digitLines(field: EarField, draft: Draft, typed: string): readonly Line[] {
  const parting = kindOf(field.path) === "time" ? ":" : ".";
  const isWhole = field.takes.kind === "rows";
  const parts = typed === "" || typed.includes(parting) || isWhole ? [] : [parting];
  const digits = [..."1234567890", ...parts].map((sign) => ({
    says: echoOf(sign),
    offers: { kind: "type", sign } as const,
  }));
  const leave = line("ear.leave", { kind: "leave" });
  if (typed === "") {
    const mayBeEmpty = field.takes.kind === "number" && field.takes.usual !== undefined;
    const usual: Line = { says: [choiceSaid("usual")], offers: { kind: "usual" } };
    return [line("ear.digits"), ...(mayBeEmpty ? [usual] : []), ...digits, leave];
  }
  const others = otherUnits(field, draft).map((unit): Line => {
    return { says: [unitSaid(unit), { key: "ear.set" }], offers: { kind: "set", unit } };
  });
  return [
    line("ear.set", { kind: "set" }),
    ...others,
    ...digits,
    line("ear.delete", { kind: "delete" }),
    leave,
  ];
}

function endLines({ at }: Talk, draft: Draft, plan: Plan | null): readonly Line[] {
  const rest = at < restAt(draft) ? [line("ear.rest", { kind: "rest" })] : [];
  const again = line("ear.again", { kind: "again" });
  if (plan === null) return [...hindrance(draft), ...rest, again];
  const stopped = plan.warnings.some(({ severity }) => severity === "stop");
  return [
    { says: [{ key: "ear.time" }, ...timeSaid(plan.developmentSeconds)], offers: null },
    ...(stopped ? [line("ear.stop")] : []),
    line("ear.run", { kind: "run" }),
    ...rest,
    again,
  ];
}

/** Why no time can be told, and the way to the first field that keeps it away. */
function hindrance(draft: Draft): readonly Line[] {
  const { faults, wanting } = readDraft(draft);
  const paths = [...Object.keys(faults), ...wanting].filter((path) => asideOf(path) === null);
  const to = stopsOf(draft).findIndex((stop) => stop !== "end" && paths.includes(stop.path));
  const field = stopsOf(draft)[to];
  const named = paths.some((path) => kindOf(path) === "text") ? [line("ear.names")] : [];
  if (field === undefined || field === "end") return [line("ear.none"), ...named];
  return [
    line("ear.none"),
    ...named,
    { says: [...nameSaid(field), ...valueSaid(field, draft)], offers: null },
    line("ear.change", { kind: "go", to }),
  ];
}
