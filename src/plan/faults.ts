// A schema and any value in, every fault of the value out, each with its place and what would do.
// Alone, because valibot's own issues stop at an object's first unknown field, take a list for an
// object, and know a missing field only by its parent.

import { distance } from "fastest-levenshtein";
import {
  type ArraySchema,
  type ExactOptionalSchema,
  type GenericSchema,
  getDescription,
  type ObjectEntries,
  type StrictObjectSchema,
  safeParse,
  type UnionSchema,
} from "valibot";
import { filled } from "../units/may.ts";
import { type Fields, isObject } from "../units/object.ts";
import { heldValue } from "./held-value.ts";
import { fileMay } from "./mays.ts";

export interface Fault {
  /** As `developer.leaflet[1].time`. */
  readonly path: string;
  /** What stands there, shortened; `nothing` where nothing does. */
  readonly holds: string;
  /** What may stand there, fit to follow "it may hold". */
  readonly may: string;
}

type Path = readonly (string | number)[];

/** The schemas that are walked into; all others are judged whole. */
type Walked =
  | StrictObjectSchema<ObjectEntries, undefined>
  | ArraySchema<GenericSchema, undefined>
  | UnionSchema<readonly StrictObjectSchema<ObjectEntries, undefined>[], undefined>
  | ExactOptionalSchema<GenericSchema, undefined>
  | { readonly type: "judged whole" };

export function faultOf(path: Path, value: unknown, may: string): Fault {
  return { path: pathText(path), holds: heldValue(value), may };
}

/** `developer.leaflet[1].time holds "9.30"; it may hold a clock time such as "9:30" or "1:02:00"` */
export function faultLine({ path, holds, may }: Fault): string {
  return `${path} holds ${holds}; it may hold ${may}`;
}

/** Every fault, in the schema's order; none where the value fits. */
export function faultsIn(schema: GenericSchema, value: unknown, path: Path = []): readonly Fault[] {
  // A schema's `type` says which of these it is; valibot types them too narrowly to be told apart.
  const walked = schema as unknown as Walked;
  switch (walked.type) {
    case "exact_optional":
      return faultsIn(walked.wrapped, value, path);
    case "strict_object":
      return isObject(value)
        ? fieldFaults(walked.entries, value, path)
        : [faultOf(path, value, mayHold(schema))];
    case "array":
      // A list of the wrong length is refused as it stands, so that a huge one costs nothing.
      return Array.isArray(value) && lengthFits(schema, value)
        ? Array.from(value).flatMap((item, index) => faultsIn(walked.item, item, [...path, index]))
        : [faultOf(path, value, mayHold(schema))];
    case "union":
      return unitFaults(schema, walked.options, value, path);
    default:
      return judged(schema, value, path);
  }
}

/** A field judged whole: the last rule that refuses it knows most about it, if it has words of its own. */
function judged(schema: GenericSchema, value: unknown, path: Path): readonly Fault[] {
  const { issues } = safeParse(schema, value, { message: mayHold(schema) });
  const last = issues?.at(-1);
  return last ? [faultOf(path, value, last.message)] : [];
}

function fieldFaults(entries: ObjectEntries, value: Fields, path: Path): readonly Fault[] {
  const known = Object.entries(entries).flatMap(([name, entry]) => {
    const schema = entry as GenericSchema;
    if (Object.hasOwn(value, name)) return faultsIn(schema, value[name], [...path, name]);
    return entry.type === "exact_optional"
      ? []
      : [faultOf([...path, name], undefined, mayHold(schema))];
  });
  return [...known, ...unknownFaults(Object.keys(entries), value, path)];
}

function unknownFaults(names: readonly string[], value: Fields, path: Path): readonly Fault[] {
  return Object.keys(value)
    .filter((name) => !names.includes(name))
    .map((name) => faultOf([...path, name], value[name], noSuchField(name, names)));
}

/** One of several objects told apart by their one field, as { c } and { f } are. */
function unitFaults(
  schema: GenericSchema,
  options: readonly StrictObjectSchema<ObjectEntries, undefined>[],
  value: unknown,
  path: Path,
): readonly Fault[] {
  const names = options.flatMap((option) => Object.keys(option.entries));
  if (isObject(value)) {
    const meant = options.filter((option) =>
      Object.keys(option.entries).some((name) => Object.hasOwn(value, name)),
    );
    const [only, another] = meant;
    if (only && !another) return fieldFaults(only.entries, value, path);
    const unknown = unknownFaults(names, value, path);
    if (!only && unknown.length > 0) return unknown;
  }
  return [faultOf(path, value, mayHold(schema))];
}

/** "Did you mean" is asked where a third of the letters or fewer would have to change. */
function noSuchField(name: string, names: readonly string[]): string {
  const typed = name.slice(0, 40).toLowerCase();
  const lettersOff = (real: string) => distance(typed, real.toLowerCase());
  const [near = ""] = [...names].sort((a, b) => lettersOff(a) - lettersOff(b));
  const asked = near !== "" && lettersOff(near) <= near.length / 3;
  return asked
    ? filled(fileMay.meant, { name: near })
    : filled(fileMay.noSuchField, { names: names.map((it) => `"${it}"`).join(", ") });
}

/** The schema's own rules of length, run on the list alone. */
function lengthFits(schema: GenericSchema, items: readonly unknown[]): boolean {
  const rules = "pipe" in schema && Array.isArray(schema.pipe) ? schema.pipe : [];
  return rules.every(({ type, requirement }) => {
    if (type === "min_length") return items.length >= requirement;
    return type !== "max_length" || items.length <= requirement;
  });
}

function mayHold(schema: GenericSchema): string {
  const wrapped = schema as unknown as Walked;
  const described = wrapped.type === "exact_optional" ? wrapped.wrapped : schema;
  return getDescription(described) ?? described.expects;
}

/** `developer.leaflet[1].time`; a name that is no plain word is quoted, as in `["a b"]`. */
function pathText(path: Path): string {
  const text = path.map((step) => {
    if (typeof step === "number") return `[${step}]`;
    return /^[\p{L}\p{N}_$-]{1,60}$/u.test(step) ? `.${step}` : `[${heldValue(step)}]`;
  });
  return text.join("").replace(/^\./, "") || "worksheet";
}
