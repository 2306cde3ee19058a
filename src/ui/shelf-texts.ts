// What was typed about a bottle in, its contents or an act with it out, or what is wrong by field; and the way
// back from contents to text. Apart from the form, so that it is tested without a screen.
import { type Act, bottleKinds, bottleStates, type Contents } from "../logbook/bottle.ts";
import {
  type Day,
  isDay,
  isSpan,
  type Keeps,
  keepings,
  longest,
  type Span,
  spanUnits,
} from "../trade/keeping.ts";
import type { Volume } from "../units/volume.ts";
import { mayOf } from "./field-names.ts";
import type { FieldKind } from "./fields.ts";
import { lateWords, typedFigure, words, writing } from "./language.ts";
import { readField } from "./read-field.ts";

export type Texts = { readonly [field: string]: string };
export type Faults = { readonly [field: string]: string };

type Read<Value> =
  | { readonly kind: "read"; readonly value: Value }
  | { readonly kind: "faults"; readonly faults: Faults };

/** Reads fields of a form one after another, and gathers what is wrong with them. */
function reader(texts: Texts) {
  const faults: Record<string, string> = {};
  const typed = (field: string) => (texts[field] ?? "").trim();
  function value<Value>(field: string, kind: FieldKind): Value | undefined {
    if (typed(field) === "") return undefined;
    const reading = readField(kind, typed(field), kind === "volume" ? "ml" : "");
    if (reading.kind === "read") return reading.value as Value;
    faults[field] = words.value.faults.holds(typed(field), mayOf(reading.may));
    return undefined;
  }
  function wanted<Value>(field: string, read: Value | undefined, otherwise: Value): Value {
    if (read === undefined) faults[field] ??= lateWords.value.bottleForm.wanted;
    return read ?? otherwise;
  }
  function above0(field: string, kind: FieldKind): number | undefined {
    const number = value<number>(field, kind);
    if (number === undefined || number > 0) return number;
    faults[field] = lateWords.value.bottleForm.wanted;
    return undefined;
  }
  function allowed<Value>(field: string, read: Value, is: (it: Value) => boolean, may: string) {
    if (is(read)) return read;
    faults[field] = words.value.faults.holds(typed(field), may);
    return undefined;
  }
  /** No bottle holds nothing, and nothing is not poured. */
  function poured(field: string): Volume {
    const volume = value<Volume>(field, "volume");
    const some = volume !== undefined && ("ml" in volume ? volume.ml : volume.flOz) > 0;
    return wanted(field, some ? volume : undefined, { ml: 1 });
  }
  const text = (field: string) => (typed(field) === "" ? undefined : typed(field));
  const day = (field: string): Day => {
    const given = typed(field);
    return wanted(field, isDay(given) ? given : undefined, "");
  };
  const done = <Value>(read: Value): Read<Value> =>
    Object.keys(faults).length > 0 ? { kind: "faults", faults } : { kind: "read", value: read };
  return { value, wanted, above0, allowed, poured, text, day, done };
}

/** Leaves out what is not there. */
function given<Fields extends object>(fields: Fields) {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [Key in keyof Fields]?: Exclude<Fields[Key], undefined>;
  };
}

export function readContents(texts: Texts): Read<Contents> {
  const { value, wanted, above0, allowed, poured, text, day, done } = reader(texts);
  const span = (of: (typeof keepings)[number]): Span | undefined => {
    const count = value<number>(of, "number");
    const unit = spanUnits.find((it) => it === texts[`${of}Unit`]) ?? "months";
    if (count === undefined) return undefined;
    const most = writing.value.number(longest[unit]);
    return allowed(of, { count, unit }, isSpan, lateWords.value.bottleForm.spanMay(most));
  };
  const keeps: Keeps = given({ full: span("full"), half: span("half"), opened: span("opened") });
  return done({
    name: wanted("name", text("name"), ""),
    kind: bottleKinds.find((it) => it === texts.kind) ?? "developer",
    state: bottleStates.find((it) => it === texts.state) ?? "working",
    mixedOn: day("mixedOn"),
    volume: poured("volume"),
    keeps,
    ...given({
      strength: value<string>("strength", "dilution"),
      by: text("by"),
      from: text("from"),
      filmsPerLitre: above0("filmsPerLitre", "number"),
      addPerFilm: above0("addPerFilm", "per-cent"),
      hazards: text("hazards"),
    }),
  });
}

/** As a person would have typed it. */
export function textsOf(contents: Contents): Texts {
  const { keeps } = contents;
  const spans = keepings.flatMap((of) => {
    const span = keeps[of];
    return span
      ? [
          [of, typedFigure(span.count)],
          [`${of}Unit`, span.unit],
        ]
      : [];
  });
  return {
    name: contents.name,
    kind: contents.kind,
    state: contents.state,
    mixedOn: contents.mixedOn,
    volume: writing.value.volume(contents.volume),
    strength: contents.strength ?? "",
    by: contents.by ?? "",
    from: contents.from ?? "",
    filmsPerLitre: contents.filmsPerLitre === undefined ? "" : typedFigure(contents.filmsPerLitre),
    addPerFilm:
      contents.addPerFilm === undefined ? "" : writing.value.number(contents.addPerFilm * 100, 6),
    hazards: contents.hazards ?? "",
    ...Object.fromEntries(spans),
  };
}

/** Acts that a form is filled in for; a correction has the whole of the contents. */
export type FormAct = Exclude<Act["kind"], "mixed" | "corrected" | "drawn" | "undone" | "redone">;

export function readAct(
  kind: FormAct,
  texts: Texts,
): Read<{ readonly act: Act; readonly on: Day }> {
  const { value, wanted, above0, poured, text, day, done } = reader(texts);
  const on = day("on");
  switch (kind) {
    case "films": {
      const size = wanted("size", value<string>("size", "size"), "");
      const count = wanted("count", above0("count", "number"), 1);
      return done({ on, act: { kind, films: [{ size, count }] } });
    }
    case "taken":
    case "added":
      return done({ on, act: { kind, volume: poured("volume") } });
    case "tested": {
      const seconds = wanted("time", above0("time", "seconds"), 1);
      return done({ on, act: { kind, seconds, film: text("film") ?? "" } });
    }
    case "opened":
    case "set-aside":
    case "taken-up":
    case "poured-away":
    case "removed":
      return done({ on, act: { kind } });
  }
}
