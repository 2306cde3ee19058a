// Fingers and keys anywhere on the page in, contacts of the run's one grammar out. The screen has nothing to
// hit: wherever it is pressed, it is pressed.
import type { ReadonlySignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { isLearned, type Pedal, pressedByPedal } from "../live/pedal.ts";
import type { Session } from "../live/runs.ts";
import { isArrow, isPress } from "./press-events.ts";
import { openToolTouches } from "./tool-touches.ts";

/** Seconds on the steady clock at which an event happened: a busy page hears of it late. */
const when = (event: Event): number => event.timeStamp / 1000;

/** What is worked by itself: a small control, a field, the way out. */
const onTool = (event: Event): boolean => within(event, ".guided-tools, .guided-over") !== null;

const controlOf = (event: Event): Element | null => within(event, "button, summary, label, input");

const within = ({ target }: Event, selector: string): Element | null =>
  target instanceof Element ? target.closest(selector) : null;

/**
 * @param pedals keys that are a press wherever they come from.
 * @param wake in place of a press, where nothing can be heard.
 */
export function useRunInput(
  session: Session,
  pedals: ReadonlySignal<readonly Pedal[]>,
  wake: () => void,
): void {
  const { presser, guide, sounding } = session;
  useEffect(() => {
    const down = new Set<string>();
    const touches = openToolTouches();

    function begins(id: string, event: Event): void {
      if (!sounding) {
        wake();
        return;
      }
      down.add(id);
      presser.down(id, when(event));
    }
    function ends(id: string, event: Event): void {
      if (down.delete(id)) presser.up(id, when(event));
    }
    function calledOff(id: string, event: Event): void {
      if (down.delete(id)) presser.cancel(id, when(event));
    }

    const pointer = (event: PointerEvent) => `pointer ${event.pointerId}`;
    function pointerDown(event: PointerEvent): void {
      if (onTool(event)) touches.down(controlOf(event), when(event));
      else if (event.button === 0) begins(pointer(event), event);
    }
    function pointerUp(event: PointerEvent): void {
      if (onTool(event)) touches.up(controlOf(event), when(event));
      ends(pointer(event), event);
    }
    const pointerCancel = (event: PointerEvent) => calledOff(pointer(event), event);

    const key = (event: KeyboardEvent) => `key ${event.code || event.key}`;
    function byPedal(kind: "down" | "up", event: KeyboardEvent): boolean {
      if (event.ctrlKey || event.altKey || event.metaKey) return false;
      const { code, key, repeat } = event;
      const moment = { kind, code, key, repeat, at: when(event) } as const;
      if (!isLearned(pedals.value, event)) return false;
      event.preventDefault();
      if (sounding) pressedByPedal(pedals.value, presser, moment);
      else if (kind === "down") wake();
      return true;
    }
    function keyDown(event: KeyboardEvent): void {
      if (byPedal("down", event)) return;
      // A key that is held on a small control would work it thirty times a second.
      if (event.repeat && event.key === "Enter" && onTool(event)) event.preventDefault();
      if (event.key === "Backspace" && !onTool(event) && !event.repeat) {
        event.preventDefault();
        guide.takeBack();
      } else if (isArrow(event) && guide.step(event.key === "ArrowUp" ? 1 : -1)) {
        event.preventDefault();
      } else if (isPress(event)) {
        // Prevented, so that the focused control is not pressed a second time by the same key.
        event.preventDefault();
        begins(key(event), event);
      }
    }
    function keyUp(event: KeyboardEvent): void {
      if (byPedal("up", event)) return;
      if (down.has(key(event))) event.preventDefault();
      ends(key(event), event);
    }
    /** Before the control itself hears of it. */
    function onlyOnce(event: MouseEvent): void {
      if (event.detail === 0 || !onTool(event)) return;
      if (touches.counts(when(event), within(event, ".guided-more") !== null)) return;
      event.preventDefault();
      event.stopPropagation();
    }
    // A press that came from neither finger nor key: assistive technology acts by click alone.
    function click(event: MouseEvent): void {
      if (event.detail !== 0 || onTool(event)) return;
      if (sounding) presser.tap(when(event));
      else wake();
    }
    // What goes down here and comes up elsewhere never comes up for the page.
    const blur = (event: Event) => {
      for (const id of [...down]) calledOff(id, event);
    };

    const over = new AbortController();
    const { signal } = over;
    window.addEventListener("pointerdown", pointerDown, { signal });
    window.addEventListener("pointerup", pointerUp, { signal });
    window.addEventListener("pointercancel", pointerCancel, { signal });
    window.addEventListener("keydown", keyDown, { signal });
    window.addEventListener("keyup", keyUp, { signal });
    window.addEventListener("click", onlyOnce, { signal, capture: true });
    window.addEventListener("click", click, { signal });
    window.addEventListener("blur", blur, { signal });
    return () => over.abort();
  }, [presser, guide, sounding, pedals, wake]);
}
