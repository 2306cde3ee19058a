// Buttons that each make one kind of file, how far the one being made is, and what came of it. One is made at a
// time; another press waits until it is saved or cancelled.
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { Worksheet } from "../plan/worksheet.ts";
import type { FileKind, FileWish } from "../track/files.ts";
import { lateWords } from "./language.ts";
import type { TakePorts } from "./take-port.ts";
import { fileName } from "./worksheet-file.ts";

interface MakeFilesProps {
  readonly ports: Pick<TakePorts, "make" | "saveFile">;
  readonly worksheet: Worksheet;
  /** Null where something is still wanting. */
  readonly wish: Omit<FileWish, "kind"> | null;
  readonly kinds: readonly FileKind[];
  /** What is wanting, in words. */
  readonly wants?: string | null;
}

type State =
  | { readonly kind: "idle" }
  | { readonly kind: "making"; readonly what: FileKind; readonly done: number }
  | { readonly kind: "saved"; readonly name: string }
  | { readonly kind: "too-long" | "cancelled" | "failed" };

export function MakeFiles({ ports, worksheet, wish, kinds, wants }: MakeFilesProps) {
  const [state, setState] = useState<State>({ kind: "idle" });
  const cancel = useRef(() => {});
  // The place is left: nothing is saved behind anyone's back.
  useLayoutEffect(() => () => cancel.current(), []);
  const { take } = lateWords.value;
  const isMaking = state.kind === "making";

  async function make(what: FileKind): Promise<void> {
    if (wish === null || isMaking) return;
    let off = false;
    const callOff = () => {
      off = true;
      setState({ kind: "cancelled" });
    };
    cancel.current = callOff;
    setState({ kind: "making", what, done: 0 });
    try {
      const making = await ports.make(worksheet, { ...wish, kind: what }, (done) => {
        if (!off) setState({ kind: "making", what, done });
      });
      cancel.current = () => {
        callOff();
        making.cancel();
      };
      if (off) making.cancel();
      const file = await making.file;
      if (off) return;
      if (file === "too-long") setState({ kind: "too-long" });
      else {
        const name = fileName(worksheet, what);
        ports.saveFile(name, file);
        setState({ kind: "saved", name });
      }
    } catch {
      if (!off) setState({ kind: "failed" });
    } finally {
      cancel.current = () => {};
    }
  }

  return (
    <div class="make">
      <div class="makes">
        {kinds.map((kind) => (
          <button
            key={kind}
            type="button"
            aria-disabled={wish === null || isMaking}
            onClick={() => make(kind)}
          >
            {take.makes[kind]}
          </button>
        ))}
        {isMaking && (
          <button type="button" onClick={() => cancel.current()}>
            {take.cancel}
          </button>
        )}
      </div>
      {isMaking && <progress value={state.done} aria-label={take.makes[state.what]} />}
      <p role="status">{state.kind === "idle" ? wants : said(state)}</p>
    </div>
  );
}

/** In tenths, so that who listens to the page is not told of every piece. */
function said(state: Exclude<State, { kind: "idle" }>): string {
  const { take } = lateWords.value;
  switch (state.kind) {
    case "making":
      return take.making(`${Math.floor(state.done * 10) * 10}\u00a0%`);
    case "saved":
      return take.saved(state.name);
    case "too-long":
      return take.tooLong;
    case "cancelled":
      return take.cancelled;
    case "failed":
      return take.failed;
  }
}
