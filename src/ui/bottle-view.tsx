// One bottle of the shelf: how it stands, what can be done with it, and its history, each line of which can be
// taken back. What an act comes to is decided elsewhere.
import { useRef, useState } from "preact/hooks";
import type { Act, Bottle } from "../logbook/bottle.ts";
import { type BottleState, holds } from "../logbook/bottle-state.ts";
import { FixerLife } from "./fixer-life.tsx";
import { lateWords } from "./language.ts";
import { ActForm, ContentsForm } from "./shelf-forms.tsx";
import {
  dayText,
  dueLine,
  entryLine,
  filmsLines,
  leftLine,
  mixedLine,
  standsLine,
  whatLine,
} from "./shelf-model.ts";
import { Notice } from "./shelf-notice.tsx";
import type { Shelf } from "./shelf-state.ts";
import type { FormAct } from "./shelf-texts.ts";

interface BottleProps {
  readonly bottle: Bottle;
  readonly state: BottleState;
  readonly shelf: Shelf;
}

interface BottleViewProps extends BottleProps {
  /** Whether what came of an act on it is told here. */
  readonly tells: boolean;
}

export function BottleView({ bottle, state, shelf, tells }: BottleViewProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  const [open, setOpen] = useState<FormAct | "corrected" | null>(null);
  const { id, contents } = state;
  const say = lateWords.value.shelf;
  const removal = bottle.entries.find((it) => it.kind === "removed" && holds(bottle, it.id));
  const title = (act: FormAct | "corrected") => `${say.acts[act]}${say.of(contents.name)}`;
  const correct = (next: typeof contents) =>
    shelf.act(id, { kind: "corrected", contents: next }, shelf.today(), next.by);
  return (
    <article class="run bottle" aria-labelledby={`bottle-${id}`}>
      <header>
        <h2 id={`bottle-${id}`} ref={heading} tabIndex={-1}>
          {contents.name}
        </h2>
      </header>
      <div class="given">
        <BottleFacts state={state} today={shelf.today()} />
        {contents.kind === "fixer" && <FixerLife state={state} />}
        <div class="run-tools">
          {removal && (
            <button type="button" onClick={() => void shelf.undo(id, removal.id)}>
              {say.redo}
              <span class="unseen">{say.of(contents.name)}</span>
            </button>
          )}
          {actsFor(state).map((act) => (
            <button
              key={act}
              type="button"
              aria-expanded={isWritten(act) ? open === act : undefined}
              onClick={() => {
                if (isWritten(act)) setOpen(open === act ? null : act);
                else void shelf.act(id, { kind: act } as Act, shelf.today());
              }}
            >
              {say.acts[act]}
              <span class="unseen">{say.of(contents.name)}</span>
            </button>
          ))}
        </div>
        {open === "corrected" && (
          <ContentsForm
            key={open}
            title={title(open)}
            today={shelf.today()}
            was={contents}
            send={correct}
            leave={() => setOpen(null)}
          />
        )}
        {open !== null && open !== "corrected" && (
          <ActForm
            key={open}
            act={open}
            title={title(open)}
            today={shelf.today()}
            send={(act, on, by) => shelf.act(id, act, on, by)}
            leave={() => setOpen(null)}
          />
        )}
        {tells && <Notice shelf={shelf} here={shelf.last.value?.bottle === id} heading={heading} />}
        <History bottle={bottle} state={state} shelf={shelf} />
      </div>
    </article>
  );
}

/** A correction and a deletion want no day of their own. */
const isWritten = (act: FormAct | "corrected"): boolean => act !== "removed";

function actsFor({ contents, stands, saidOpened, removed }: BottleState) {
  if (removed) return [];
  const away = stands === "poured away";
  const acts: readonly (FormAct | "corrected" | false)[] = [
    !away && "films",
    !away && contents.kind === "fixer" && "tested",
    !away && !saidOpened && "opened",
    !away && "taken",
    !away && "added",
    stands === "on the shelf" && "set-aside",
    stands === "set aside" && "taken-up",
    !away && "poured-away",
    "corrected",
    "removed",
  ];
  return acts.filter((act) => act !== false);
}

function BottleFacts({ state, today }: { readonly state: BottleState; readonly today: string }) {
  const say = lateWords.value.shelf.facts;
  const stands = standsLine(state);
  const facts: readonly (readonly [string, readonly string[]])[] = [
    ...(stands === null ? [] : [[say.stands, [stands]] as const]),
    [say.what, [whatLine(state)]],
    [say.mixed, [mixedLine(state)]],
    [say.left, [leftLine(state)]],
    [say.films, filmsLines(state)],
    [say.due, [dueLine(state, today)]],
  ];
  return (
    <dl class="facts">
      {facts.map(([name, lines]) => (
        <div key={name}>
          <dt>{name}</dt>
          {lines.map((line) => (
            <dd key={line}>{line}</dd>
          ))}
        </div>
      ))}
    </dl>
  );
}

function History({ bottle, state, shelf }: BottleProps) {
  const say = lateWords.value.shelf;
  const lines = bottle.entries.flatMap((entry, at) => {
    const line = entryLine(entry);
    return line === null ? [] : [{ entry, line, first: at === 0, holds: holds(bottle, entry.id) }];
  });
  return (
    <details class="more presses">
      <summary>
        {say.history(lines.length)}
        <span class="unseen">{say.of(state.contents.name)}</span>
      </summary>
      <ol class="history">
        {lines.map(({ entry, line, first, holds }) => (
          <li key={entry.id}>
            <p>
              {dayText(entry.on)}: {holds ? line : <s>{line}</s>}
              {entry.by && `, ${say.by(entry.by)}`}
              {!holds && ` (${say.takenBack})`}
            </p>
            {!first && (
              <button
                type="button"
                class="plain"
                onClick={() => void (holds ? shelf.undo : shelf.redo)(bottle.id, entry.id)}
              >
                {holds ? say.undo : say.redo}
                <span class="unseen">{say.of(`${state.contents.name}: ${line}`)}</span>
              </button>
            )}
          </li>
        ))}
      </ol>
    </details>
  );
}
