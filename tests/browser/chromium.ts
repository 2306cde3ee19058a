// A Chromium of this machine, driven headless, with sound running in real time and no device needed.
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { type Browser, chromium } from "playwright-core";

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"];

export function chromiumPath(): string {
  const folders = (process.env.PATH ?? "").split(delimiter);
  const named = process.env.CHROME_PATH;
  const found = [
    ...(named === undefined ? [] : [named]),
    ...names.flatMap((name) => folders.map((folder) => join(folder, name))),
  ].find((path) => existsSync(path));
  if (found === undefined) throw new Error("No Chromium was found; set CHROME_PATH to one.");
  return found;
}

export const flags = [
  "--headless=new",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--autoplay-policy=no-user-gesture-required",
  // The address bar's own pages: nobody sees them, and each window would spend 1.7 s of a core on them.
  "--disable-features=WebUIOmniboxPopup,WebUIOmniboxAimPopup",
];

/** @param more flags of its own for a test that wants them. */
export function launchChromium(more: readonly string[] = []): Promise<Browser> {
  return chromium.launch({
    executablePath: chromiumPath(),
    args: [...flags, ...more],
    // Muted counts as silent, and a silent page is slowed.
    ignoreDefaultArgs: ["--mute-audio"],
  });
}
