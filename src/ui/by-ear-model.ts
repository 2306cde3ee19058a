// Work out by ear, as a talk: where it stands and what was done in, what is said next and what becomes of the
// worksheet out. Said line by line; a press takes the offer being told, as in a run, and a key does the same.
// Pure: the sheet over it (by-ear.tsx) speaks the lines and waits between them.
import type { Plan } from "../plan/plan.ts";
import {
  type EarField,
  earFields,
  echoOf,
  rangeSaid,
  type Saying,
  timeSaid,
  valueSaid,
} from "./by-ear-fields.ts";
import type { Draft } from "./draft.ts";
import { kindOf } from "./fields.ts";
import { readDraft, typedInto } from "./work-out-model.ts";

export interface Talk {
  /** Which field; one past the last is the end. */
  readonly at: number;
  /** Digits so far, while a number is being given; else null. */
  readonly typed: string | null;
  /** Said before all else: what came of the last act. */
  readonly answer: readonly Saying[];
}

export const startOfTalk: Talk = { at: 0, typed: null, answer: [] };

export type Act =
  | { readonly kind: "next" | "previous" | "again" | "change" | "set" | "delete" | "leave" | "run" }
  | { readonly kind: "type"; readonly sign: string };

/** Said in one go; `offers` is what a press does while it is told and in the pause behind it. */
export interface Line {
  readonly says: readonly Saying[];
  readonly offers: Act | null;
}

const line = (key: string, offers: Act | null = null): Line => ({ says: [{ key }], offers });

/** The lines of where a talk stands, in order. */
export function linesOf(talk: Talk, draft: Draft, plan: Plan | null): readonly Line[] {
  const answer = talk.answer.length === 0 ? [] : [{ says: talk.answer, offers: null }];
  const field = earFields[talk.at];
  if (field === undefined) return [...answer, ...endLines(plan)];
  if (talk.typed !== null) return [...answer, ...digitLines(field, talk.typed)];
  return [
    ...answer,
    { says: [{ key: `ear.${field.name}` }, ...valueSaid(field, draft)], offers: null },
    line("ear.change", { kind: "change" }),
    { says: [{ key: `ear.sets.${field.sets}` }, ...rangeSaid(field, draft)], offers: null },
  ];
}

/** What goes on by itself once the lines are over; null where it waits. */
export function thenOf(talk: Talk): Act | null {
  if (talk.typed !== null) return { kind: "change" };
  return talk.at < earFields.length ? { kind: "next" } : null;
}

function digitLines(field: EarField, typed: string): readonly Line[] {
  const parting = kindOf(field.path) === "time" ? ":" : ".";
  const signs = [..."1234567890", ...(typed === "" || typed.includes(parting) ? [] : [parting])];
  const digits = signs.map((sign) => ({
    says: echoOf(sign),
    offers: { kind: "type", sign } as const,
  }));
  const more = typed === "" ? [] : [line("ear.set", { kind: "set" })];
  const less = typed === "" ? [] : [line("ear.delete", { kind: "delete" })];
  return [
    ...(typed === "" ? [line("ear.digits")] : []),
    ...more,
    ...digits,
    ...less,
    line("ear.leave", { kind: "leave" }),
  ];
}

function endLines(plan: Plan | null): readonly Line[] {
  if (plan === null) return [line("ear.none"), line("ear.again", { kind: "again" })];
  const stopped = plan.warnings.some(({ severity }) => severity === "stop");
  return [
    { says: [{ key: "ear.time" }, ...timeSaid(plan.developmentSeconds)], offers: null },
    ...(stopped ? [line("ear.stop")] : []),
    line("ear.run", { kind: "run" }),
    line("ear.again", { kind: "again" }),
  ];
}

export interface Acted {
  readonly talk: Talk;
  /** The worksheet as it becomes; null where it stays. */
  readonly draft: Draft | null;
}

/** Digits are enough for any number: more are not taken. */
const LONGEST = 7;

export function acted(talk: Talk, act: Act, draft: Draft): Acted {
  const field = earFields[talk.at];
  const stay = (changes: Partial<Talk>): Acted => ({
    talk: { ...talk, answer: [], ...changes },
    draft: null,
  });
  switch (act.kind) {
    case "next":
      return stay({ at: Math.min(earFields.length, talk.at + 1), typed: null });
    case "previous":
      return stay({ at: Math.max(0, talk.at - 1), typed: null });
    case "again":
      return stay(startOfTalk);
    case "change":
      return stay({ typed: field === undefined ? null : (talk.typed ?? "") });
    case "leave":
      return stay({ typed: null });
    case "type": {
      const before = talk.typed ?? "";
      if (field === undefined || before.length >= LONGEST) return stay({});
      // Echoed whole where there is something to lose track of.
      const typed = before + act.sign;
      return stay({ typed, answer: echoOf(typed) });
    }
    case "delete": {
      const typed = (talk.typed ?? "").slice(0, -1);
      return stay({ typed, answer: [{ key: "ear.deleted" }, ...echoOf(typed)] });
    }
    case "set":
      return field === undefined || !talk.typed ? stay({}) : taken(talk, field, draft);
    case "run":
      return stay({});
  }
}

/** The number as the page would read it, or a refusal that leaves the field as it was. */
function taken(talk: Talk, field: EarField, draft: Draft): Acted {
  const typed = talk.typed ?? "";
  const bare = kindOf(field.path) === "time" && !typed.includes(":");
  const next = typedInto(draft, field.path, bare ? `${typed} min` : typed);
  const { faults, wanting } = readDraft(next);
  if (field.path in faults || wanting.includes(field.path)) {
    const answer = [{ key: "ear.refused" }, ...rangeSaid(field, draft)];
    return { talk: { ...talk, typed: "", answer }, draft: null };
  }
  const answer = [{ key: "ear.taken" }];
  return { talk: { ...talk, typed: null, answer }, draft: next };
}
