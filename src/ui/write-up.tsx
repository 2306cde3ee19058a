// Write up: the runs that were kept, newest first, with room for what came of each. Nothing is decided
// here: the acts stand in write-up-state.ts, what is said of a run in write-up-model.ts.
import type { ComponentType } from "preact";
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Keeping } from "../logbook/keeping.ts";
import type { RunRecord } from "../logbook/run-record.ts";
import { KeptHere } from "./kept-here.tsx";
import { LookAtNegatives } from "./negatives.tsx";
import type { PlaceProps } from "./place.ts";
import { Facts, Presses } from "./write-up-facts.tsx";
import { dayAndTime, titleOf } from "./write-up-model.ts";
import { openWriteUp, type WriteUp, type WriteUpPorts } from "./write-up-state.ts";
import "./write-up.css";
import { lateWords } from "./language.ts";

interface WriteUpPlacePorts extends WriteUpPorts {
  readonly keeping: Keeping;
  /** The shelf of bottles, fetched when its fold is opened. */
  readonly Shelf: ComponentType;
}

export function writeUpWith(ports: WriteUpPlacePorts): ComponentType<PlaceProps> {
  return function WriteUpPlace() {
    const writeUp = useMemo(() => openWriteUp(ports), []);
    useLayoutEffect(() => keepOnLeaving(writeUp.keepNow), [writeUp]);
    const found = writeUp.found.value;
    if (found === null) return <p role="status">{lateWords.value.write.onItsWay}</p>;
    const { runs } = found;
    return (
      <>
        <p>{lateWords.value.write.lead}</p>
        <ShelfFold Shelf={ports.Shelf} />
        {found.kind === "refused" && <p class="not-kept">{lateWords.value.write.refused}</p>}
        {found.kind === "found" && found.onlyHere.length > 0 && (
          <p class="not-kept">{lateWords.value.write.onlyHere(found.onlyHere.length)}</p>
        )}
        {runs.length > 0 && <KeptHere keeping={ports.keeping} beside="the records" />}
        {runs.length > 0 && (
          <div class="run-tools">
            <button type="button" onClick={writeUp.saveAll}>
              {lateWords.value.write.saveAll}
            </button>
          </div>
        )}
        <Notice writeUp={writeUp} />
        {runs.length === 0 && found.kind === "found" && (
          <p>
            {lateWords.value.write.empty}{" "}
            <a href="#lights-out">{lateWords.value.write.toLightsOut}</a>
          </p>
        )}
        {runs.map((run) => (
          <Run key={run.id} run={run} writeUp={writeUp} />
        ))}
        {found.kind === "found" && found.unread > 0 && (
          <p>{lateWords.value.write.unread(found.unread)}</p>
        )}
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
function keepOnLeaving(keepNow: () => void): () => void {
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

/** What came of the last act, and the way back from it, where the press that took a run out goes on. */
function Notice({ writeUp }: { readonly writeUp: WriteUp }) {
  const count = writeUp.taken.value.length;
  const undo = useRef<HTMLButtonElement>(null);
  const before = useRef(count);
  useEffect(() => {
    if (count > before.current) undo.current?.focus();
    before.current = count;
  }, [count]);
  return (
    <div class="run-notice">
      <p role="status">{writeUp.notice.value}</p>
      {count > 0 && (
        <button ref={undo} type="button" onClick={writeUp.undo}>
          {lateWords.value.write.undo}
        </button>
      )}
    </div>
  );
}

interface RunProps {
  readonly run: RunRecord;
  readonly writeUp: WriteUp;
}

function Run({ run, writeUp }: RunProps) {
  const { id } = run;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (writeUp.returned.value === id) heading.current?.focus();
  }, [writeUp, id]);
  const begun = dayAndTime(run.begunAt);
  const of = <span class="unseen">{lateWords.value.write.of(titleOf(run), begun)}</span>;
  return (
    <article class="run" aria-labelledby={`title-${id}`}>
      <header>
        <h2 id={`title-${id}`} ref={heading} tabIndex={-1}>
          {titleOf(run)}
        </h2>
        <p class="begun">
          <time dateTime={new Date(run.begunAt).toISOString()}>{begun}</time>
        </p>
      </header>
      <div class="given">
        <Facts run={run} />
        <Presses run={run} />
        <LookAtNegatives seen={run.negatives} see={(seen) => writeUp.see(id, seen)} />
        <Note run={run} writeUp={writeUp} />
        <div class="run-tools">
          <button type="button" onClick={() => writeUp.again(id)}>
            {lateWords.value.write.again}
            {of}
          </button>
          <button type="button" class="plain" onClick={() => writeUp.takeOut(id)}>
            {lateWords.value.write.takeOut}
            {of}
          </button>
        </div>
      </div>
    </article>
  );
}

function Note({ run, writeUp }: RunProps) {
  const { id, note } = run;
  const state = writeUp.notes.value[id];
  return (
    <div class="note">
      <label for={`note-${id}`}>{lateWords.value.write.note}</label>
      <p id={`hint-${id}`} class="hint">
        {lateWords.value.write.noteHint}
      </p>
      <textarea
        id={`note-${id}`}
        rows={3}
        aria-describedby={`hint-${id}`}
        value={note}
        onInput={(event) => writeUp.type(id, event.currentTarget.value)}
        onBlur={writeUp.keepNow}
      />
      <p role="status">
        {state === "kept" && lateWords.value.write.noteKept}
        {state === "refused" && lateWords.value.write.noteNotKept}
      </p>
    </div>
  );
}
