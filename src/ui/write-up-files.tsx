// All that is kept to a file, and a file in, with what it would do told before it is done.
import { useEffect, useMemo, useRef } from "preact/hooks";
import { lateWords } from "./language.ts";
import { type FilePorts, type Files, openFiles } from "./taking-in.ts";
import type { WriteUp } from "./write-up-state.ts";

interface FileToolsProps {
  readonly ports: FilePorts;
  readonly writeUp: WriteUp;
  /** Whether there is a run. */
  readonly some: boolean;
}

export function FileTools({ ports, writeUp, some }: FileToolsProps) {
  const files = useMemo(() => openFiles(ports, writeUp), [ports, writeUp]);
  const { everything, write } = lateWords.value;
  return (
    <section class="files" aria-label={write.saveAll}>
      <div class="run-tools">
        <button type="button" onClick={files.saveAll}>
          {write.saveAll}
        </button>
        {some && (
          <button type="button" onClick={files.saveTable}>
            {everything.table}
          </button>
        )}
        <button type="button" onClick={files.choose}>
          {everything.choose}
        </button>
      </div>
      <p class="hint">{everything.hint}</p>
      <Asked files={files} />
    </section>
  );
}

function Asked({ files }: { readonly files: Files }) {
  const offer = files.offer.value;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (offer !== null) heading.current?.focus();
  }, [offer]);
  if (offer === null) return null;
  const said = lateWords.value.everything;
  return (
    <div class="asked">
      <h2 ref={heading} tabIndex={-1}>
        {said.offer(offer.name)}
      </h2>
      <p>{said.rule}</p>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">{said.kind}</th>
            <th scope="col">{said.adds}</th>
            <th scope="col">{said.replaces}</th>
            <th scope="col">{said.skips}</th>
          </tr>
        </thead>
        <tbody>
          {offer.counts.map(({ shelf, adds, replaces, skips }) => (
            <tr key={shelf}>
              <th scope="row">{said.kinds[shelf]}</th>
              <td>{adds}</td>
              <td>{replaces}</td>
              <td>{skips}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <div class="run-tools">
        <button type="button" onClick={files.takeIn}>
          {said.take}
        </button>
        <button type="button" onClick={files.leave}>
          {said.leave}
        </button>
      </div>
    </div>
  );
}
