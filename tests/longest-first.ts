// The order in which test files begin: those that last longest first, so that no worker waits for another at the
// end; a fresh clone remembers no times, and would go by the files' sizes. Those that have a page come together, behind
// the others: a worker goes on with a file of its own kind alone, and another starts anew and reads every module again.
import { readFileSync } from "node:fs";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** The long ones, longest first. */
const long = [
  "run",
  "recovery",
  "everyone",
  "whole-session",
  "pocket",
  "gaps",
  "page",
  "updates",
  "rehearsal",
  "dark",
  "own-voice",
  "bench",
  "knocks",
  "write-up",
].map((name) => `tests/browser/${name}.test.ts`);

const place = ({ moduleId }: TestSpecification): number => {
  const at = long.findIndex((name) => moduleId.endsWith(name));
  return at < 0 ? long.length : at;
};

const hasPage = ({ moduleId }: TestSpecification): boolean =>
  readFileSync(moduleId, "utf8").startsWith("// @vitest-environment happy-dom");

export default class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = (await super.sort(files)).toSorted((a, b) => place(a) - place(b));
    return [...sorted.filter((file) => !hasPage(file)), ...sorted.filter(hasPage)];
  }
}
