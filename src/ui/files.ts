// Files out of the page and into it, in a browser: what is saved goes to wherever downloads go, what is opened is
// chosen by the person.

/** @param content a blob says itself of what type it is. */
export function saveFile(name: string, content: string | Uint8Array<ArrayBuffer> | Blob): void {
  const type = typeof content !== "string" ? "application/zip" : textType(name);
  const blob = content instanceof Blob ? content : new Blob([content], { type });
  const url = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  // The download has the blob by then; freed at once, some browsers save nothing.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

const textType = (name: string) =>
  name.endsWith(".csv") ? "text/csv;charset=utf-8" : "application/json";

export function chooseFile(accept: string): Promise<File | null> {
  const chooser = Object.assign(document.createElement("input"), { type: "file", accept });
  return new Promise((resolve) => {
    chooser.addEventListener("change", () => resolve(chooser.files?.[0] ?? null));
    chooser.addEventListener("cancel", () => resolve(null));
    chooser.click();
  });
}
