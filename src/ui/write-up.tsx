// Write up: the runs that were kept, newest first, with room for what came of each. Nothing is decided
// here: the acts stand in write-up-state.ts, what is said of a run in write-up-model.ts.
import { signal } from "@preact/signals";
import type { ComponentType } from "preact";
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import type { RunRecord } from "../logbook/run-record.ts";
import type { RunStore } from "../logbook/run-store.ts";
import { KeptHere } from "./kept-here.tsx";
import { lateWords } from "./language.ts";
import { OverTime } from "./over-time.tsx";
import type { PlaceProps } from "./place.ts";
import { SideBySide } from "./side-by-side.tsx";
import type { FilePorts } from "./taking-in.ts";
import type { Done } from "./write-up-done.ts";
import { FileTools } from "./write-up-files.tsx";
import { Filters } from "./write-up-filters.tsx";
import { Run, type RunPorts } from "./write-up-run.tsx";
import { openWriteUp, PAGE, type WriteUp, type WriteUpPorts } from "./write-up-state.ts";
import "./curve.css";
import "./write-up.css";

export interface WriteUpPlacePorts extends Omit<WriteUpPorts, "done">, FilePorts, RunPorts {
  readonly store: RunStore;
  /** The shelf of bottles, fetched when its fold is opened. */
  readonly Shelf: ComponentType;
}

export function writeUpWith(ports: WriteUpPlacePorts): ComponentType<PlaceProps> {
  const done = signal<readonly Done[]>([]);
  return function WriteUpPlace() {
    const writeUp = useMemo(() => openWriteUp({ ...ports, done }), []);
    useLayoutEffect(() => keepOnLeaving(writeUp.keepNow), [writeUp]);
    /** Once there was something to find among, what is looked for stays where it was. */
    const looking = useRef(false);
    const found = writeUp.found.value;
    if (found === null) return <p role="status">{lateWords.value.write.onItsWay}</p>;
    const some = found.lines.length > 0;
    looking.current ||= found.lines.length > 1;
    const { write } = lateWords.value;
    return (
      <>
        <p>{write.lead}</p>
        <ShelfFold Shelf={ports.Shelf} />
        {found.kind === "refused" && <p class="not-kept">{write.refused}</p>}
        {found.kind === "found" && found.onlyHere.length > 0 && (
          <p class="not-kept">{write.onlyHere(found.onlyHere.length)}</p>
        )}
        {some && <KeptHere keeping={ports.keeping} beside="the records" />}
        <FileTools ports={ports} writeUp={writeUp} some={some} />
        <Notice writeUp={writeUp} />
        {!some && found.kind === "found" && (
          <p>
            {write.empty} <a href="#lights-out">{write.toLightsOut}</a>
          </p>
        )}
        {!writeUp.whole.value && <p role="status">{write.onItsWay}</p>}
        {writeUp.whole.value && some && looking.current && <Filters writeUp={writeUp} />}
        {writeUp.whole.value && some && <OverTime lines={writeUp.matches.value} />}
        <Runs writeUp={writeUp} ports={ports} />
        {found.kind === "found" && found.unread > 0 && <p>{write.unread(found.unread)}</p>}
      </>
    );
  };
}

function ShelfFold({ Shelf }: Pick<WriteUpPlacePorts, "Shelf">) {
  const [opened, setOpened] = useState(false);
  return (
    <details class="more shelf" onToggle={(event) => event.currentTarget.open && setOpened(true)}>
      <summary>{lateWords.value.shelf.title}</summary>
      {opened && <Shelf />}
    </details>
  );
}

/** When the place is left, and when the page is. */
function keepOnLeaving(keepNow: () => unknown): () => void {
  const hidden = () => {
    if (document.visibilityState === "hidden") keepNow();
  };
  window.addEventListener("pagehide", keepNow);
  document.addEventListener("visibilitychange", hidden);
  return () => {
    window.removeEventListener("pagehide", keepNow);
    document.removeEventListener("visibilitychange", hidden);
    keepNow();
  };
}

/**
 * What came of the last act, and the way back from it, where the press that did it goes on. It stays for as long as
 * there is a way back.
 */
function Notice({ writeUp }: { readonly writeUp: WriteUp }) {
  const count = writeUp.done.value.length;
  const said = useRef<HTMLParagraphElement>(null);
  const undo = useRef<HTMLButtonElement>(null);
  const before = useRef(count);
  useEffect(() => {
    if (count > before.current) undo.current?.focus();
    // The button has gone from under the press.
    else if (count < before.current && isFocusLost()) said.current?.focus();
    before.current = count;
  }, [count]);
  return (
    <div class="run-notice">
      <p ref={said} role="status" tabIndex={-1}>
        {writeUp.notice.value}
      </p>
      {count > 0 && (
        <button ref={undo} type="button" onClick={() => void writeUp.undo()}>
          {lateWords.value.write.undo}
        </button>
      )}
    </div>
  );
}

const isFocusLost = (): boolean =>
  document.activeElement === null || document.activeElement === document.body;

interface RunsProps {
  readonly writeUp: WriteUp;
  readonly ports: RunPorts;
}

/** The runs themselves, as many as are asked for, and the two that are compared. */
function Runs({ writeUp, ports }: RunsProps) {
  const [compared, setCompared] = useState<readonly RunRecord[]>([]);
  const { beside, find } = lateWords.value;
  const hidden = writeUp.hidden.value;
  const lines = writeUp.found.value?.lines ?? [];
  const [a, b] = compared.filter((run) => lines.some(({ id }) => id === run.id));

  function compare(run: RunRecord): void {
    const others = compared.filter(({ id }) => id !== run.id);
    setCompared(others.length < compared.length ? others : [...compared.slice(-1), run]);
  }

  return (
    <>
      {a !== undefined && b === undefined && <p role="status">{beside.hint}</p>}
      {a !== undefined && b !== undefined && (
        <SideBySide key={`${a.id} ${b.id}`} pair={[a, b]} leave={() => setCompared([])} />
      )}
      {writeUp.shown.value.map((run) => (
        <Run
          key={run.id}
          run={run}
          writeUp={writeUp}
          ports={ports}
          compared={compared.some(({ id }) => id === run.id)}
          compare={() => compare(run)}
        />
      ))}
      {hidden > 0 && (
        <button type="button" onClick={writeUp.more}>
          {find.more(Math.min(PAGE, hidden))}
        </button>
      )}
    </>
  );
}
