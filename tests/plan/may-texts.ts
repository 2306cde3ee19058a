// Every text by which the checker says what may stand in a field, taken from where it stands: the schema,
// the readers, the rules between fields. What a language's table has to hold, and a list to begin it with.
import { type GenericSchema, getDescription } from "valibot";
import { crossMay, fileMay, leafletMay } from "../../src/plan/mays.ts";
import { nested, shapedAs, shapes } from "../../src/plan/words/fault-words.ts";
import { worksheetSchema } from "../../src/plan/worksheet-schema.ts";
import { clockTimeMay, timeOfDayMay, typedTimeMay } from "../../src/units/clock-time.ts";
import { filmSizeMay } from "../../src/units/film-size.ts";
import { dilutionMay } from "../../src/units/parts.ts";
import { typedTemperatureMay } from "../../src/units/temperature.ts";
import { typedVolumeMay } from "../../src/units/volume.ts";

interface Walked {
  readonly wrapped?: GenericSchema;
  readonly item?: GenericSchema;
  readonly options?: readonly (GenericSchema | string | number)[];
  readonly entries?: { readonly [name: string]: GenericSchema };
}

/** The description of a schema and of all that is in it. */
function described(schema: GenericSchema): readonly string[] {
  const { wrapped, item, options = [], entries = {} } = schema as unknown as Walked;
  const inner = [wrapped, item, ...options, ...Object.values(entries)].filter(
    (each): each is GenericSchema => typeof each === "object",
  );
  const own = getDescription(schema);
  return [...(own === undefined ? [] : [own]), ...inner.flatMap(described)];
}

const readers: readonly string[] = [
  clockTimeMay,
  timeOfDayMay,
  typedTimeMay,
  filmSizeMay,
  dilutionMay,
  typedTemperatureMay,
  typedVolumeMay,
];

const constant = [fileMay, crossMay, leafletMay]
  .flatMap((each): string[] => Object.values(each))
  .filter((text) => !shapes.includes(text));

/** As the checker says them, whole. */
export const wholeTexts: readonly string[] = [
  ...new Set([...described(worksheetSchema), ...readers, ...constant]),
];

/** What a table holds: the shapes, with their gaps, and all that stands in them or by itself. */
export const mayTexts: readonly string[] = [
  ...new Set([...shapes, ...wholeTexts.flatMap(partsOf)]),
];

function partsOf(text: string): readonly string[] {
  const shaped = shapedAs(text);
  if (shaped === null) return [text];
  return nested.flatMap((slot) => {
    const inner = shaped.slots[slot];
    return inner === undefined ? [] : partsOf(inner);
  });
}
