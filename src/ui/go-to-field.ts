// Brings a field under the keyboard, wherever it stands: the one place where the page is reached into.

/** Opens the disclosures around the field, and focuses it; does nothing where there is none. */
export function goToField(path: string): void {
  // A list without rows has no field of its own; the first thing inside it will do.
  const field =
    document.getElementById(path) ??
    document.querySelector<HTMLElement>(`[id^="${CSS.escape(path)}"]`);
  for (let around = field?.parentElement; around; around = around.parentElement) {
    if (around instanceof HTMLDetailsElement) around.open = true;
  }
  field?.focus();
}
