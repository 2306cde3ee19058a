// A run that never ended, left too long ago to go on by itself: go on with it, or close it.
import { useEffect, useState } from "preact/hooks";
import type { Runs, Unfinished } from "../live/runs.ts";
import { lateWords } from "./language.ts";
import { dayAndTime } from "./write-up-model.ts";

interface LeftRunProps {
  readonly runs: Pick<Runs, "unfinished" | "goOnWithUnfinished" | "dropUnfinished">;
}

type Left = Unfinished | "none" | "dropped" | "elsewhere";

export function LeftRun({ runs }: LeftRunProps) {
  const [left, setLeft] = useState<Left>("none");
  useEffect(() => {
    void runs.unfinished().then((found) => setLeft(found ?? "none"));
  }, [runs]);
  const { leftRun, beforeRun } = lateWords.value;
  switch (left) {
    case "none":
      return null;
    case "dropped":
      return <p role="status">{leftRun.dropped}</p>;
    case "elsewhere":
      return <p role="status">{beforeRun.elsewhere}</p>;
    default:
      return (
        <section class="stops" aria-label={leftRun.title(dayAndTime(left.begunAt))}>
          <h2>{leftRun.title(dayAndTime(left.begunAt))}</h2>
          <p>{leftRun.hint}</p>
          <p class="choices">
            <button type="button" onClick={() => void goOn()}>
              {leftRun.goOn}
            </button>
            <button type="button" onClick={() => void drop()}>
              {leftRun.drop}
            </button>
          </p>
        </section>
      );
  }

  async function goOn(): Promise<void> {
    const how = await runs.goOnWithUnfinished();
    setLeft(how === "elsewhere" ? "elsewhere" : "none");
  }

  async function drop(): Promise<void> {
    const how = await runs.dropUnfinished();
    setLeft(how === "gone" ? "none" : how);
  }
}
