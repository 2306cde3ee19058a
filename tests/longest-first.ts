// The order in which test files begin: those that last longest first, so that no worker waits for another at the
// end. A fresh clone remembers no times, and would go by the files' sizes.
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

export default class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).toSorted((a, b) => place(a) - place(b));
  }
}
