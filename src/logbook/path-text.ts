// A checker's finding in, the place that it is about out, as a person would find it: `runs[2].presses[0].at`.
import type { BaseIssue } from "valibot";

/** Empty where it is about the whole. */
export function pathText({ path }: BaseIssue<unknown>): string {
  return joined((path ?? []).map(({ key }) => key));
}

export function joined(steps: readonly unknown[]): string {
  return steps
    .map((step) => (typeof step === "number" ? `[${step}]` : `.${String(step).slice(0, 60)}`))
    .join("")
    .replace(/^\./, "");
}
