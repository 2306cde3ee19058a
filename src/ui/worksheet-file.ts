// The worksheet as the file that leaves the program: its text and its name. Reading one back is the
// plan's own business.
import type { Worksheet } from "../plan/worksheet.ts";

export function textOfFile(worksheet: Worksheet): string {
  return `${JSON.stringify(worksheet, null, 2)}\n`;
}

/** `"gullrock-light-thursday.json"`: letters and digits of any script, nothing a file system minds. */
export function fileName(worksheet: Worksheet, ending = "json"): string {
  const name = (worksheet.title ?? "")
    .normalize("NFC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "")
    .slice(0, 60);
  return `${name === "" ? "worksheet" : name}.${ending}`;
}
