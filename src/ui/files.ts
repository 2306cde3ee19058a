// Files out of the page and into it, in a browser: what is saved goes to wherever downloads go, what is opened is
// chosen by the person.

export function saveFile(name: string, content: string | Uint8Array<ArrayBuffer>): void {
  const type = typeof content === "string" ? "application/json" : "application/zip";
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  // The download has the blob by then; freed at once, some browsers save nothing.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

export function chooseFile(accept: string): Promise<File | null> {
  const chooser = Object.assign(document.createElement("input"), { type: "file", accept });
  return new Promise((resolve) => {
    chooser.addEventListener("change", () => resolve(chooser.files?.[0] ?? null));
    chooser.addEventListener("cancel", () => resolve(null));
    chooser.click();
  });
}
