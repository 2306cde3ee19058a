import { expect, test } from "vitest";
import { readWorksheetText } from "../../src/plan/read-worksheet.ts";
import { demos } from "../../src/ui/demo.ts";
import { fileName, textOfFile } from "../../src/ui/worksheet-file.ts";

test("a file read back is the worksheet that was saved", () => {
  expect(readWorksheetText(textOfFile(demos.gullrock))).toEqual({
    kind: "worksheet",
    worksheet: demos.gullrock,
  });
});

test("a file is named after the worksheet, in letters that every file system takes", () => {
  const named = (title: string) => fileName({ ...demos.gullrock, title });
  expect(named("Gullrock Light, Thursday evening")).toBe("gullrock-light-thursday-evening.json");
  expect(named("Übung 3: N+1 / N−1")).toBe("übung-3-n-1-n-1.json");
  expect(named("../..")).toBe("worksheet.json");
  expect(named("x".repeat(500)).length).toBeLessThan(80);
});
