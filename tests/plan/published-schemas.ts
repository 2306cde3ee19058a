// The JSON Schemas that the project publishes, made from the valibot schemas; the test keeps them so.
import { toJsonSchema } from "@valibot/to-json-schema";
import type { GenericSchema } from "valibot";
import { worksheetSchema } from "../../src/plan/worksheet-schema.ts";
import { timelineSchema } from "../../src/timeline/score-schema.ts";

/** `check` is a rule in code: JSON Schema cannot say it, and its pattern says most of it. */
function published(schema: GenericSchema, file: string, title: string): object {
  const { $schema, ...rest } = toJsonSchema(schema, {
    target: "draft-2020-12",
    ignoreActions: ["check"],
  });
  return { $schema, $id: file, title, ...rest };
}

export const schemas = {
  "worksheet.schema.json": published(
    worksheetSchema,
    "worksheet.schema.json",
    "Tankside worksheet",
  ),
  "timeline.schema.json": published(timelineSchema, "timeline.schema.json", "Tankside timeline"),
} as const;

export function fileText(schema: object): string {
  return `${JSON.stringify(schema, null, 2)}\n`;
}
