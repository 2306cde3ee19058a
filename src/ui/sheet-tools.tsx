// What is done to the worksheet as a whole: saved, opened, started afresh, undone; and the notice
// that says what came of it. A file may also be dropped anywhere on the page.
import { useEffect, useRef, useState } from "preact/hooks";
import { FieldLinks } from "./answer-parts.tsx";
import { words } from "./language.ts";
import { useWorkOut } from "./work-out-context.ts";

/** A worksheet is a few kB; what is bigger than this is some other file, bytes. */
const BIGGEST = 1_000_000;

export function SheetTools() {
  const workOut = useWorkOut();
  const chooser = useRef<HTMLInputElement>(null);

  async function open(file: File | undefined): Promise<void> {
    if (!file) return;
    try {
      if (file.size > BIGGEST) workOut.refuseFile();
      else workOut.open(file.name, await file.text());
    } catch {
      // A folder, or a file that went away meanwhile.
      workOut.refuseFile();
    }
  }
  const dragging = useDroppedFile(open);

  return (
    <fieldset class="tools">
      <legend class="unseen">{words.value.sheet.tools}</legend>
      <button type="button" onClick={workOut.save}>
        {words.value.sheet.save}
      </button>
      <button type="button" onClick={() => chooser.current?.click()}>
        {words.value.sheet.open}
      </button>
      <input
        ref={chooser}
        type="file"
        accept=".json,application/json"
        hidden
        aria-label={words.value.sheet.open}
        onChange={(event) => {
          const input = event.currentTarget;
          open(input.files?.[0]);
          // So that the same file, mended, can be chosen again.
          input.value = "";
        }}
      />
      <button type="button" onClick={() => workOut.startDemo("gullrock")}>
        {words.value.sheet.demo}
      </button>
      <button type="button" onClick={() => workOut.startDemo("foghorn")}>
        {words.value.sheet.demoPushed}
      </button>
      <button type="button" onClick={workOut.startEmpty}>
        {words.value.sheet.empty}
      </button>
      <button type="button" disabled={!workOut.canUndo.value} onClick={workOut.undo}>
        {words.value.sheet.undo}
      </button>
      {workOut.canRedo.value && (
        <button type="button" onClick={workOut.redo}>
          {words.value.sheet.redo}
        </button>
      )}
      {dragging && <p class="dropping">{words.value.sheet.dropHere}</p>}
    </fieldset>
  );
}

export function NoticeLine() {
  const notice = useWorkOut().notice.value;
  return (
    <div class="notice" role="status">
      {notice && (
        <>
          <p>{notice.says}</p>
          {notice.lines.length > 0 && (
            <ul>
              {notice.lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          )}
          {notice.fields.length > 0 && <FieldLinks paths={notice.fields} />}
        </>
      )}
    </div>
  );
}

/** Whether a file is held over the page; hands it over when it is let go. */
function useDroppedFile(open: (file: File | undefined) => void): boolean {
  const [dragging, setDragging] = useState(false);
  const latest = useRef(open);
  latest.current = open;
  useEffect(() => {
    const carriesFile = (event: DragEvent) => event.dataTransfer?.types.includes("Files") === true;
    const over = (event: DragEvent) => {
      if (!carriesFile(event)) return;
      event.preventDefault();
      setDragging(true);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setDragging(false);
    };
    const drop = (event: DragEvent) => {
      if (!carriesFile(event)) return;
      // Else the browser leaves the page for the file.
      event.preventDefault();
      setDragging(false);
      latest.current(event.dataTransfer?.files[0]);
    };
    window.addEventListener("dragover", over);
    window.addEventListener("dragleave", leave);
    window.addEventListener("drop", drop);
    return () => {
      window.removeEventListener("dragover", over);
      window.removeEventListener("dragleave", leave);
      window.removeEventListener("drop", drop);
    };
  }, []);
  return dragging;
}
