// The sheet over everything for whatever is done with wet hands: it takes keys and fingers as they come
// down. Apart from what is shown on it, because the sink and the measuring of hands both stand on it.
import type { ComponentChildren } from "preact";
import { useEffect, useLayoutEffect, useRef } from "preact/hooks";
import "./wet.css";

/** Whether a key was meant for another control than the main one. */
export function isOnOther(event: KeyboardEvent, main: HTMLElement | null): boolean {
  const control = event.target instanceof Element ? event.target.closest("button, a") : null;
  return control !== null && control !== main;
}

/** What makes a button take a press as the finger comes down, and once. */
export function pressOf(press: (event: Event) => void) {
  return {
    onPointerDown(event: PointerEvent) {
      if (event.isPrimary && event.button === 0) press(event);
    },
    // A press that came from neither finger nor key: assistive technology acts by click alone.
    onClick(event: MouseEvent) {
      if (event.detail === 0) press(event);
    },
  };
}

interface WetDialogProps {
  readonly label: string;
  readonly leave: () => void;
  /** Takes a key, or returns false to leave it to the browser. Escape is taken already. */
  readonly keys: (event: KeyboardEvent) => boolean;
  readonly children: ComponentChildren;
}

/** A sheet over everything, open as long as it is there. Focus goes back to where it was before. */
export function WetDialog({ label, leave, keys, children }: WetDialogProps) {
  const sheet = useRef<HTMLDialogElement>(null);
  const latest = useRef({ leave, keys });
  latest.current = { leave, keys };
  const gone = useRef(false);

  useLayoutEffect(() => {
    const opener = document.activeElement;
    const it = sheet.current;
    // An older browser has no such sheet: there it is open all the same, and lies above by its style.
    if (typeof it?.showModal === "function") it.showModal();
    else it?.setAttribute("open", "");
    return () => {
      gone.current = true;
      if (typeof it?.close === "function") it.close();
      if (opener instanceof HTMLElement) opener.focus();
    };
  }, []);

  useEffect(() => {
    // A key whose coming down was taken is taken until it is up: some browsers press by its coming up.
    const held = new Set<string>();
    function keyDown(event: KeyboardEvent): void {
      if (event.ctrlKey || event.altKey || event.metaKey) return;
      if (event.key === "Escape") latest.current.leave();
      else if (!latest.current.keys(event)) return;
      held.add(event.key);
      event.preventDefault();
    }
    function keyUp(event: KeyboardEvent): void {
      if (held.delete(event.key)) event.preventDefault();
    }
    window.addEventListener("keydown", keyDown);
    window.addEventListener("keyup", keyUp);
    return () => {
      window.removeEventListener("keydown", keyDown);
      window.removeEventListener("keyup", keyUp);
    };
  }, []);

  return (
    <dialog
      ref={sheet}
      class="wet"
      aria-label={label}
      onCancel={(event) => {
        event.preventDefault();
        leave();
      }}
      onClose={() => {
        if (!gone.current) leave();
      }}
    >
      {children}
    </dialog>
  );
}
