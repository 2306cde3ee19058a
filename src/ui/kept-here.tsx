// What this browser makes of what it is given to keep, in plain words, where it matters: before a run, and
// beside the records of those that were. Nothing is shown where there is nothing to say.
import { useEffect, useState } from "preact/hooks";
import type { Keeping, Kept } from "../logbook/keeping.ts";
import "./kept-here.css";
import { lateWords } from "./language.ts";

interface KeptHereProps {
  readonly keeping: Pick<Keeping, "now">;
  readonly beside: "the first press" | "the records";
}

export function KeptHere({ keeping, beside }: KeptHereProps) {
  const [kept, setKept] = useState<Kept>("kept");
  useEffect(() => {
    let shown = true;
    void keeping.now().then((now) => shown && setKept(now));
    return () => {
      shown = false;
    };
  }, [keeping]);
  const said = beside === "the first press" ? beforeRun(kept) : besideRecords(kept);
  if (said === null) return null;
  // What most browsers do is no warning.
  return <p class={kept === "may be cleared" ? undefined : "not-kept"}>{said}</p>;
}

function beforeRun(kept: Kept): string | null {
  switch (kept) {
    case "nothing is kept":
      return lateWords.value.keeping.nothing;
    case "no room":
      return lateWords.value.keeping.noRoom;
    case "may be cleared":
    case "kept":
      return null;
  }
}

function besideRecords(kept: Kept): string | null {
  switch (kept) {
    case "no room":
      return lateWords.value.keeping.noMoreRoom;
    case "may be cleared":
      return lateWords.value.keeping.mayBeCleared;
    // Write up says so itself, of each run.
    case "nothing is kept":
    case "kept":
      return null;
  }
}
