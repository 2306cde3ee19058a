// Two runs beside each other: what differed first, then what was the same.
import { useEffect, useRef } from "preact/hooks";
import type { RunRecord } from "../logbook/run-record.ts";
import { lateWords } from "./language.ts";
import { type Pair, sideBySide } from "./side-by-side-model.ts";
import { dayAndTime, titleOf } from "./write-up-model.ts";

interface SideBySideProps {
  readonly pair: readonly [RunRecord, RunRecord];
  readonly leave: () => void;
}

export function SideBySide({ pair: [a, b], leave }: SideBySideProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const said = lateWords.value.beside;
  const { differed, same } = sideBySide(a, b);
  return (
    <section class="two-runs" aria-labelledby="side-by-side">
      <h2 id="side-by-side" ref={heading} tabIndex={-1}>
        {said.name}
      </h2>
      <Pairs caption={said.differed} pairs={differed} runs={[a, b]} />
      <Pairs caption={said.same} pairs={same} runs={[a, b]} />
      <button type="button" onClick={leave}>
        {said.leave}
      </button>
    </section>
  );
}

interface PairsProps {
  readonly caption: string;
  readonly pairs: readonly Pair[];
  readonly runs: readonly [RunRecord, RunRecord];
}

function Pairs({ caption, pairs, runs }: PairsProps) {
  if (pairs.length === 0) return null;
  return (
    <table class="figures pairs">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{lateWords.value.beside.what}</th>
          {runs.map((run, i) => (
            <th key={`${i} ${run.id}`} scope="col">
              {titleOf(run)}
              <span class="begun">{dayAndTime(run.begunAt)}</span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {pairs.map(({ name, a, b }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>{a || "—"}</td>
            <td>{b || "—"}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
