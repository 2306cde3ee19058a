// The shelf of bottles, as a fold of Write up: what stands on it, what can be put there, the labels and the
// room's lists. Nothing is decided here: the acts stand in shelf-state.ts.
import type { ComponentType } from "preact";
import { useState } from "preact/hooks";
import type { BottleState } from "../logbook/bottle-state.ts";
import { BottleView } from "./bottle-view.tsx";
import { gullrockBottles } from "./demo-shelf.ts";
import { BottleLabels } from "./labels.tsx";
import { lateWords } from "./language.ts";
import { RoomLists } from "./room-lists.tsx";
import type { Room } from "./room-state.ts";
import { ContentsForm } from "./shelf-forms.tsx";
import { Notice } from "./shelf-notice.tsx";
import type { Shelf } from "./shelf-state.ts";
import "./shelf.css";

export interface ShelfPlacePorts {
  readonly shelf: Shelf;
  readonly room: Room;
  readonly newId: () => string;
  readonly print: () => void;
}

export function shelfWith({ shelf, room, newId, print }: ShelfPlacePorts): ComponentType {
  return function ShelfPlace() {
    const say = lateWords.value.shelf;
    const [adding, setAdding] = useState(false);
    const states = shelf.states.value;
    const there = states.filter(({ removed }) => !removed);
    const standing = there.filter(({ stands }) => stands !== "poured away");
    const rest = (some: readonly BottleState[], title: (count: number) => string) =>
      some.length > 0 && (
        <details class="more">
          <summary>{title(some.length)}</summary>
          <Bottles states={some} shelf={shelf} />
        </details>
      );
    const looking = shelf.kept.value === "looking";
    return (
      <>
        <p>{say.lead}</p>
        {looking && <p role="status">{say.looking}</p>}
        {shelf.kept.value === "refused" && <p class="not-kept">{say.refused}</p>}
        <Notice shelf={shelf} here={!standing.some(({ id }) => id === shelf.last.value?.bottle)} />
        {!looking && standing.length === 0 && <p>{say.empty}</p>}
        <Bottles states={standing} shelf={shelf} tells />
        <div class="run-tools">
          <button type="button" aria-expanded={adding} onClick={() => setAdding(!adding)}>
            {say.add}
          </button>
          {!looking && there.length === 0 && (
            <button
              type="button"
              onClick={() => void shelf.fill(gullrockBottles(shelf.today(), Date.now(), newId))}
            >
              {say.demo}
            </button>
          )}
        </div>
        {adding && (
          <ContentsForm
            title={say.add}
            today={shelf.today()}
            was={null}
            send={shelf.mix}
            leave={() => setAdding(false)}
          />
        )}
        {standing.length > 0 && <BottleLabels states={standing} print={print} />}
        {rest(
          there.filter(({ stands }) => stands === "poured away"),
          say.poured,
        )}
        {rest(
          states.filter(({ removed }) => removed),
          say.removed,
        )}
        {shelf.unread.value > 0 && <p>{say.unread(shelf.unread.value)}</p>}
        <RoomLists room={room} print={print} />
      </>
    );
  };
}

interface BottlesProps {
  readonly states: readonly BottleState[];
  readonly shelf: Shelf;
  /** Whether what came of an act stands beside its bottle: not within a fold, which may be closed. */
  readonly tells?: boolean;
}

function Bottles({ states, shelf, tells = false }: BottlesProps) {
  return (
    <>
      {states.map((state) => {
        const bottle = shelf.bottles.value.find(({ id }) => id === state.id);
        return (
          bottle && (
            <BottleView key={state.id} bottle={bottle} state={state} shelf={shelf} tells={tells} />
          )
        );
      })}
    </>
  );
}
