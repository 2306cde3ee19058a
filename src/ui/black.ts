// The page black from edge to edge, and how light comes back: never by itself, and never at once. The black itself
// is a rule in the head of index.html, since a page that is opened again in the dark is black before it can run.
import { effect, type ReadonlySignal } from "@preact/signals";
import type { Session } from "../live/runs.ts";

/** The light takes so long, ms; the rule in the head says the same. */
const FADE = 2000;

const page = () => document.documentElement;
let callOff = () => {};

export const isBlack = (): boolean => page().classList.contains("black");

/** Whether the run that is on is in the dark, where it stands. */
function isInTheDark(session: Pick<Session, "run">): boolean {
  const position = session.run.position();
  return position.section?.dark ?? false;
}

/** Black while a run is in the dark, whatever place is shown; a run that was left there leaves it black. */
export function followDark(current: ReadonlySignal<Session | null>): () => void {
  let led = false;
  return effect(() => {
    const session = current.value;
    if (session === null) {
      if (led) lightByPress();
    } else if (isInTheDark(session)) goBlack();
    else comeToLight();
    led = session !== null;
  });
}

function goBlack(): void {
  callOff();
  page().classList.remove("lighting");
  page().classList.add("black");
  for (const bar of bars()) {
    bar.dataset.lit ??= bar.content;
    bar.content = "#000000";
  }
}

function comeToLight(): void {
  if (!isBlack()) return;
  callOff();
  page().classList.replace("black", "lighting");
  const timer = setTimeout(() => {
    page().classList.remove("lighting");
    for (const bar of bars()) bar.content = bar.dataset.lit ?? bar.content;
  }, FADE);
  callOff = () => clearTimeout(timer);
}

/** Where no run leads out of the dark any more: the next press does, since someone made it. */
export function lightByPress(): void {
  if (!isBlack()) return;
  callOff();
  const over = new AbortController();
  const pressed = (event: Event) => {
    // Of a key that is still held from before, nobody meant anything.
    if (event instanceof KeyboardEvent && event.repeat) return;
    over.abort();
    comeToLight();
  };
  for (const kind of ["pointerdown", "keydown", "click"])
    window.addEventListener(kind, pressed, { signal: over.signal, capture: true });
  callOff = () => over.abort();
}

/** What colours the browser's own bars. */
const bars = () => document.querySelectorAll<HTMLMetaElement>('meta[name="theme-color"]');
