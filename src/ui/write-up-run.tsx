// One run of Write up: what is known of it by itself, and what the person adds to it.
import { useEffect, useRef, useState } from "preact/hooks";
import type { Dictation } from "../live/dictation.ts";
import type { RunRecord } from "../logbook/run-record.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { Again } from "./again.tsx";
import { Dictate } from "./dictate.tsx";
import { lateWords } from "./language.ts";
import { LookAtNegatives } from "./negatives.tsx";
import { type PicturePorts, Pictures } from "./pictures.tsx";
import type { Shelf } from "./shelf-state.ts";
import { ChooseStars } from "./stars.tsx";
import { Facts, Presses } from "./write-up-facts.tsx";
import { dayAndTime, titleOf } from "./write-up-model.ts";
import type { WriteUp } from "./write-up-state.ts";

export interface RunPorts extends PicturePorts {
  /** null where the browser has none. */
  readonly dictation: Dictation | null;
  /** Fetches the shelf of bottles. */
  readonly bottles: () => Promise<Shelf>;
  /** Fills in Work out with a worksheet, and goes there. */
  readonly useWorksheet: (worksheet: Worksheet) => void;
}

interface RunProps {
  readonly run: RunRecord;
  readonly writeUp: WriteUp;
  readonly ports: RunPorts;
  readonly compared: boolean;
  readonly compare: () => void;
}

export function Run({ run, writeUp, ports, compared, compare }: RunProps) {
  const { id } = run;
  const heading = useRef<HTMLHeadingElement>(null);
  const [again, setAgain] = useState(false);
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
        <ChooseStars stars={run.stars} say={(stars) => writeUp.judge(id, { stars })} />
        <LookAtNegatives
          seen={run.negatives}
          see={(negatives) => writeUp.judge(id, { negatives })}
        />
        <Pictures run={id} ports={ports} writeUp={writeUp} />
        <Note run={run} writeUp={writeUp} dictation={ports.dictation} />
        <div class="run-tools">
          <button type="button" aria-expanded={again} onClick={() => setAgain(!again)}>
            {lateWords.value.write.again}
            {of}
          </button>
          <button type="button" aria-pressed={compared} onClick={compare}>
            {compared ? lateWords.value.beside.chosen : lateWords.value.beside.choose}
            {of}
          </button>
          <button type="button" class="plain" onClick={() => void writeUp.takeOut(id)}>
            {lateWords.value.write.takeOut}
            {of}
          </button>
        </div>
        {again && (
          <Again
            worksheet={run.worksheet}
            bottles={ports.bottles}
            useWorksheet={ports.useWorksheet}
            leave={() => setAgain(false)}
          />
        )}
      </div>
    </article>
  );
}

interface NoteProps {
  readonly run: RunRecord;
  readonly writeUp: WriteUp;
  readonly dictation: Dictation | null;
}

function Note({ run: { id, note }, writeUp, dictation }: NoteProps) {
  const state = writeUp.notes.value[id];
  const { write, keeping } = lateWords.value;
  return (
    <div class="note">
      <label for={`note-${id}`}>{write.note}</label>
      <p id={`hint-${id}`} class="hint">
        {write.noteHint}
      </p>
      <textarea
        id={`note-${id}`}
        rows={3}
        aria-describedby={`hint-${id}`}
        value={note}
        onInput={(event) => writeUp.type(id, event.currentTarget.value)}
        onBlur={writeUp.keepNow}
      />
      {dictation !== null && (
        <Dictate
          dictation={dictation}
          heard={(words) => writeUp.type(id, note.trim() === "" ? words : `${note} ${words}`)}
        />
      )}
      <p role="status">
        {state === "kept" && write.noteKept}
        {state === "refused" && write.noteNotKept}
        {state === "no room" && `${write.noteNotKept} ${keeping.noMoreRoom}`}
      </p>
    </div>
  );
}
