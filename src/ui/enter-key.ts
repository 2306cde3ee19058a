// Enter where nothing is chosen does the one thing that the open place is for, if it has one: whoever has one key
// only, or finds no button, gets from place to place by it. A place marks its control with `data-enter`.

/** What takes the key itself. */
const takesKeys = "a, button, input, select, textarea, summary, [role=dialog]";

/** @returns what ends it. */
export function followEnter(): () => void {
  function pressed(event: KeyboardEvent): void {
    if (event.key !== "Enter" || event.repeat || event.defaultPrevented) return;
    if (event.ctrlKey || event.altKey || event.metaKey || event.shiftKey) return;
    // Over everything: a run, or a sheet.
    if (document.querySelector('[role="dialog"], dialog[open]') !== null) return;
    if (event.target instanceof Element && event.target.closest(takesKeys) !== null) return;
    document.querySelector<HTMLButtonElement>("main [data-enter]:not([disabled])")?.click();
  }
  window.addEventListener("keydown", pressed);
  return () => window.removeEventListener("keydown", pressed);
}
