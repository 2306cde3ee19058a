// Where a talk stands and the worksheet in, what is said next out: line by line, each with what a press does while
// it is told and in the pause behind it. Apart from what an act does (by-ear-model.ts).
import type { Plan } from "../plan/plan.ts";
import { answersSaid } from "./by-ear-answers.ts";
import { echoOf, unitSaid } from "./by-ear-echo.ts";
import type { EarField, Gate, Saying } from "./by-ear-field.ts";
import { firstFields, restOfFields } from "./by-ear-fields.ts";
import {
  choiceSaid,
  choosable,
  nameSaid,
  otherUnits,
  rangeSaid,
  valueSaid,
} from "./by-ear-said.ts";
import { plainLetters, signsFor } from "./by-ear-signs.ts";
import { type Draft, isFilled } from "./draft.ts";
import { asideOf } from "./fields.ts";
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
  /** In by a gate. */
  | { readonly kind: "more" }
  | { readonly kind: "type"; readonly sign: string }
  /** `unit`: in another one than a number alone has. */
  | { readonly kind: "set"; readonly unit?: string }
  /** Leaves a number empty, which is as it usually is, or leaves it out. */
  | { readonly kind: "empty" }
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

/** A field to be asked, a gate that more of them lie behind, or what it all comes to. */
export type Stop = EarField | Gate | "end";

export const isField = (stop: Stop | undefined): stop is EarField =>
  stop !== undefined && stop !== "end" && "path" in stop;

/** Which gate it is; null where it is none. */
export const gateOf = (stop: Stop | undefined): string | null =>
  stop !== undefined && stop !== "end" && "gate" in stop ? stop.gate : null;

/** What any session is worked out from, what that comes to; then what most leave, and what it comes to with that. */
export function stopsOf(draft: Draft): readonly Stop[] {
  const known = stopsFound.get(draft);
  if (known !== undefined) return known;
  const stops: readonly Stop[] = [...firstFields(draft), "end", ...restOfFields(draft), "end"];
  stopsFound.set(draft, stops);
  return stops;
}

/** They are asked for several times a press, of some hundred fields each time. */
const stopsFound = new WeakMap<Draft, readonly Stop[]>();

/** The stop before or behind one; what lies behind a gate is passed by while nothing of it is filled in. */
export function neighbour(at: number, by: 1 | -1, draft: Draft): number {
  const stops = stopsOf(draft);
  const [here, next] = [stops[at], stops[at + by]];
  const gate = by === 1 ? gateOf(here) : isField(next) ? (next.behind ?? null) : null;
  if (gate === null || (isField(here) && here.behind === gate)) return at + by;
  const group = stops.filter((stop) => isField(stop)).filter(({ behind }) => behind === gate);
  if (group.some(({ path }) => isFilled(draft, path))) return at + by;
  return at + by * (group.length + 1);
}

/** The first stop behind what is asked of everybody. */
export const restAt = (draft: Draft): number => stopsOf(draft).indexOf("end") + 1;

/** The field that a talk is at; null at an end. */
export function fieldOf(talk: Talk, draft: Draft): EarField | null {
  const stop = stopsOf(draft)[talk.at];
  return isField(stop) ? stop : null;
}

const line = (key: string, offers: Act | null = null): Line => ({ says: [{ key }], offers });

/**
 * The lines of where a talk stands, in order.
 * @param letters what is told of a name to be given: the script's, which has their names.
 */
export function linesOf(
  talk: Talk,
  draft: Draft,
  plan: Plan | null,
  letters: readonly string[] = plainLetters,
): readonly Line[] {
  const answer = talk.answer.length === 0 ? [] : [{ says: talk.answer, offers: null }];
  const stop = stopsOf(draft)[talk.at];
  if (stop === undefined || stop === "end") return [...answer, ...endLines(talk, draft, plan)];
  if (!isField(stop))
    return [...answer, { says: [stop.says, { key: "ear.rest" }], offers: { kind: "more" } }];
  const field = stop;
  if (talk.typed !== null) return [...answer, ...signLines(field, draft, talk.typed, letters)];
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

function signLines(
  field: EarField,
  draft: Draft,
  typed: string,
  letters: readonly string[],
): readonly Line[] {
  const isName = field.takes.kind === "text";
  const signs = signsFor(field, typed, letters).map((sign) => ({
    says: echoOf(sign, field.takes),
    offers: { kind: "type", sign } as const,
  }));
  const leave = line("ear.leave", { kind: "leave" });
  if (typed === "") {
    const emptied = emptiedOf(field);
    const empty: Line = { says: [choiceSaid(emptied ?? "")], offers: { kind: "empty" } };
    const first = line(isName ? "ear.letters" : "ear.digits");
    return [first, ...(emptied === null ? [] : [empty]), ...signs, leave];
  }
  const others = otherUnits(field, draft).map((unit): Line => {
    return { says: [unitSaid(unit), { key: "ear.set" }], offers: { kind: "set", unit } };
  });
  return [
    line("ear.set", { kind: "set" }),
    ...others,
    ...signs,
    line("ear.delete", { kind: "delete" }),
    leave,
  ];
}

/** What a number is said to be once it is left empty; null where it may not be. */
function emptiedOf({ takes }: EarField): "usual" | "unused" | null {
  if (takes.kind === "counts" || takes.kind === "clock") return "unused";
  if (takes.kind === "number" && takes.usual !== undefined) return "usual";
  return (takes.kind === "number" || takes.kind === "text") && takes.optional ? "unused" : null;
}

function endLines({ at }: Talk, draft: Draft, plan: Plan | null): readonly Line[] {
  const rest = at < restAt(draft) ? [line("ear.rest", { kind: "rest" })] : [];
  const again = line("ear.again", { kind: "again" });
  if (plan === null) return [...hindrance(draft), ...rest, again];
  const stopped = plan.warnings.some(({ severity }) => severity === "stop");
  return [
    ...answersSaid(draft, plan).map((says): Line => ({ says, offers: null })),
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
  const to = stopsOf(draft).findIndex((stop) => isField(stop) && paths.includes(stop.path));
  const field = stopsOf(draft)[to];
  if (!isField(field)) return [line("ear.none")];
  return [
    line("ear.none"),
    { says: [...nameSaid(field), ...valueSaid(field, draft)], offers: null },
    line("ear.change", { kind: "go", to }),
  ];
}
