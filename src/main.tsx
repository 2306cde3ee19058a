// Wires the page to the world: storage, files, timers, the address bar. Nothing is decided here.
import { signal } from "@preact/signals";
import { render } from "preact";
import { worksheetStore } from "./logbook/worksheet-store.ts";
import { Frame } from "./ui/frame.tsx";
import { placeAt } from "./ui/place.ts";
import { openWorkOut } from "./ui/work-out-state.ts";
import "./ui/paper.css";
import "./ui/frame.css";
import "./ui/work-out.css";
import "./ui/field.css";
import "./ui/answer.css";

const workOut = await openWorkOut({
  store: worksheetStore(),
  saveFile,
  after(ms, act) {
    const timer = setTimeout(act, ms);
    return () => clearTimeout(timer);
  },
});

const place = signal(placeAt(location.hash) ?? "work-out");
window.addEventListener("hashchange", () => {
  const next = placeAt(location.hash);
  // Any other hash, as the skip link's, leaves the place as it is, and the address says so.
  if (next === null) history.replaceState(null, "", `#${place.value}`);
  else place.value = next;
});
window.addEventListener("pagehide", workOut.keepNow);
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "hidden") workOut.keepNow();
});

const root = document.getElementById("tankside");
if (!root) throw new Error("the page has no place to show anything in");
render(
  <Frame
    place={place}
    workOut={workOut}
    hearAPour={() => Promise.reject(new Error("no sound is wired to the page"))}
    fetches={{
      "walk-through": async () => (await import("./ui/walk-through.tsx")).WalkThrough,
      "lights-out": async () => (await import("./ui/lights-out.tsx")).LightsOut,
      "write-up": async () => (await import("./ui/write-up.tsx")).WriteUp,
    }}
  />,
  root,
);

function saveFile(name: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  // The download has the blob by then; freed at once, some browsers save nothing.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
