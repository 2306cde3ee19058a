// What came of the last act on the shelf, and the way back from it: beside its bottle, so that whoever wrote
// something down stays there; above all bottles where its own has gone from the list.
import { useEffect, useRef } from "preact/hooks";
import { lateWords } from "./language.ts";
import type { Shelf } from "./shelf-state.ts";

interface NoticeProps {
  readonly shelf: Shelf;
  /** Whether it is told here; what listens for it stands there before. */
  readonly here: boolean;
  /** Where to go once what was pressed is gone. */
  readonly heading?: { readonly current: HTMLElement | null };
}

export function Notice({ shelf, here, heading }: NoticeProps) {
  const last = here ? shelf.last.value : null;
  const undo = useRef<HTMLButtonElement>(null);
  const before = useRef<typeof last>(null);
  useEffect(() => {
    if (last !== null && last !== before.current) {
      if (last.entry !== null) undo.current?.focus();
      else if (document.activeElement === document.body) heading?.current?.focus();
    }
    before.current = last;
  }, [last, heading]);
  return (
    <div class="run-notice">
      <p role="status">{here && shelf.notice.value}</p>
      {last?.entry && (
        <button
          ref={undo}
          type="button"
          onClick={() => void shelf.undo(last.bottle, last.entry ?? "")}
        >
          {lateWords.value.shelf.undoLast}
        </button>
      )}
    </div>
  );
}
