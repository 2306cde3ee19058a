// What is known of a run without anyone writing it: the films, the bath, the end, and every press.
import { bottledBaths, bottleNamed } from "../logbook/draws.ts";
import type { RunRecord } from "../logbook/run-record.ts";
import { bathName } from "./field-names.ts";
import { lateWords } from "./language.ts";
import {
  developerLine,
  developmentLine,
  endingLine,
  filmLines,
  otherwiseLines,
  pressLines,
} from "./write-up-model.ts";

export function Facts({ run }: { readonly run: RunRecord }) {
  const otherwise = otherwiseLines(run);
  const facts: readonly (readonly [string, readonly string[]])[] = [
    [lateWords.value.write.films, filmLines(run)],
    [lateWords.value.write.developer, [developerLine(run)]],
    ...bottleLines(run),
    [lateWords.value.write.developed, [developmentLine(run)]],
    [lateWords.value.write.ended, [endingLine(run)]],
    ...(otherwise.length === 0 ? [] : [[lateWords.value.otherwise.title, otherwise] as const]),
  ];
  return (
    <dl class="facts">
      {facts.map(([name, lines]) => (
        <div key={name}>
          <dt>{name}</dt>
          {lines.map((line, i) => (
            <dd key={`${i} ${line}`}>{line}</dd>
          ))}
        </div>
      ))}
    </dl>
  );
}

/** The bottles that it was poured from, a line each; nothing where there were none. */
function bottleLines({ worksheet }: RunRecord): readonly (readonly [string, readonly string[]])[] {
  const lines = bottledBaths(worksheet).map(
    (bath) => `${bathName(bath)}: ${bottleNamed(worksheet, bath)}`,
  );
  return lines.length === 0 ? [] : [[lateWords.value.shelf.poursFrom, lines]];
}

export function Presses({ run }: { readonly run: RunRecord }) {
  if (run.presses.length === 0) return null;
  return (
    <details class="presses">
      <summary>{lateWords.value.write.presses(run.presses.length)}</summary>
      <table class="schedule">
        <thead>
          <tr>
            <th scope="col">{lateWords.value.write.step}</th>
            <th scope="col">{lateWords.value.write.at}</th>
            <th scope="col">{lateWords.value.write.after}</th>
          </tr>
        </thead>
        <tbody>
          {pressLines(run).map(({ step, at, after }, i) => (
            <tr key={`${i} ${step}`}>
              <th scope="row">{step}</th>
              <td>{at}</td>
              <td>{after ?? "—"}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
