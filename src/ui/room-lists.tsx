// The room's lists: opening and closing, ticked off, and where spent chemistry goes. What stands in them is the
// house's own; where nothing does, it is invited.
import { useEffect, useId, useRef, useState } from "preact/hooks";
import { type RoomLists as Lists, type RoomListId, roomListIds } from "../logbook/room-store.ts";
import { gullrockLists } from "./demo-shelf.ts";
import { lateWords, words } from "./language.ts";
import { printOut } from "./print-out.ts";
import type { Room } from "./room-state.ts";

interface RoomListsProps {
  readonly room: Room;
  readonly print: () => void;
}

export function RoomLists({ room, print }: RoomListsProps) {
  const say = lateWords.value.room;
  const lists = room.lists.value;
  return (
    <section class="room" aria-label={say.title}>
      <h2>{say.title}</h2>
      <p>{say.lead}</p>
      {lists !== null && <AllLists lists={lists} room={room} print={print} />}
    </section>
  );
}

function AllLists({ lists, room, print }: RoomListsProps & { readonly lists: Lists }) {
  const say = lateWords.value.room;
  const empty = roomListIds.every((id) => lists[id].length === 0);
  const ticked = roomListIds.some((id) => lists[id].some(({ done }) => done));
  return (
    <>
      {roomListIds.map((id) => (
        <RoomList key={id} id={id} lists={lists} room={room} />
      ))}
      <Told room={room} />
      <div class="run-tools">
        {ticked && (
          <button type="button" onClick={() => void room.reset()}>
            {say.reset}
          </button>
        )}
        {empty ? (
          <button type="button" onClick={() => void room.fill(gullrockLists())}>
            {say.demo}
          </button>
        ) : (
          <button type="button" onClick={() => printOut(<ListSheet lists={lists} />, print)}>
            {say.print}
          </button>
        )}
      </div>
    </>
  );
}

/** What came of the last act, and the way back from it where it took something away: the press goes on there. */
function Told({ room }: { readonly room: Room }) {
  const say = lateWords.value.room;
  const tells = {
    kept: say.kept,
    "not kept": say.notKept,
    undone: words.value.notices.undone,
  };
  const told = room.told.value;
  const back = room.back.value;
  const said = useRef<HTMLParagraphElement>(null);
  const undo = useRef<HTMLButtonElement>(null);
  const before = useRef(back);
  useEffect(() => {
    if (back !== null && back !== before.current) undo.current?.focus();
    else if (back === null && before.current !== null) said.current?.focus();
    before.current = back;
  }, [back]);
  return (
    <div class="run-notice">
      <p ref={said} role="status" tabIndex={-1}>
        {told && tells[told]}
      </p>
      {back !== null && (
        <button ref={undo} type="button" onClick={() => void room.undo()}>
          {lateWords.value.write.undo}
        </button>
      )}
    </div>
  );
}

interface RoomListProps {
  readonly id: RoomListId;
  readonly lists: Lists;
  readonly room: Room;
}

function RoomList({ id, lists, room }: RoomListProps) {
  const say = lateWords.value.room;
  const [text, setText] = useState<string | null>(null);
  const field = useId();
  const lines = lists[id];
  const done = lines.filter((line) => line.done).length;
  const title = say.lists[id];
  if (text !== null) {
    return (
      <form
        class="note"
        onSubmit={(event) => {
          event.preventDefault();
          void room.write(id, text);
          setText(null);
        }}
      >
        <label for={field}>{title}</label>
        <p class="hint" id={`${field}-hint`}>
          {say.hint}
        </p>
        <textarea
          id={field}
          rows={Math.max(4, lines.length + 1)}
          aria-describedby={`${field}-hint`}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
        <div class="run-tools">
          <button type="submit">{say.keep}</button>
          <button type="button" class="plain" onClick={() => setText(null)}>
            {say.cancel}
          </button>
        </div>
      </form>
    );
  }
  return (
    <section aria-label={title}>
      <h3>{title}</h3>
      {lines.length === 0 ? (
        <p>{say.invite[id]}</p>
      ) : id === "waste" ? (
        <ul class="causes">
          {lines.map((line, at) => (
            <li key={`${at} ${line.text}`}>{line.text}</li>
          ))}
        </ul>
      ) : (
        <>
          <ul class="ticks">
            {lines.map((line, at) => (
              <li key={`${at} ${line.text}`}>
                <label class="tick">
                  <input
                    type="checkbox"
                    checked={line.done}
                    onChange={() => void room.tick(id, at)}
                  />
                  {line.text}
                </label>
              </li>
            ))}
          </ul>
          <p class="hint">{say.ticked(done, lines.length)}</p>
        </>
      )}
      <button
        type="button"
        class="plain"
        onClick={() => setText(lines.map((line) => line.text).join("\n"))}
      >
        {say.edit}
        <span class="unseen">: {title}</span>
      </button>
    </section>
  );
}

/** On paper nothing is ticked yet: it hangs by the door. */
function ListSheet({ lists }: { readonly lists: Lists }) {
  const say = lateWords.value.room;
  return (
    <div class="list-sheet">
      {roomListIds.map(
        (id) =>
          lists[id].length > 0 && (
            <section key={id}>
              <h2>{say.lists[id]}</h2>
              <ul>
                {lists[id].map((line, at) => (
                  <li key={`${at} ${line.text}`}>
                    {id === "waste" ? "" : "☐ "}
                    {line.text}
                  </li>
                ))}
              </ul>
            </section>
          ),
      )}
    </div>
  );
}
