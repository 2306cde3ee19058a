// What a section is called, in the language of its script.
import type { Step } from "../process/process.ts";
import type { Script } from "../script/script.ts";

export function titleOf(step: Step, script: Script): string {
  const { source } = script;
  const baths = [...new Set(step.stays.map((stay) => source.slots.bath?.[stay.bath] ?? stay.bath))];
  const name =
    baths.length === 0
      ? (source.titles[step.id.replace(/-\d+$/, "")] ?? step.id)
      : new Intl.ListFormat(source.language, { type: "conjunction" }).format(baths);
  return name.charAt(0).toLocaleUpperCase(source.language) + name.slice(1);
}
