// A newer version that waits, in; one line in the masthead out, with the press that takes it. Over a run it is
// neither shown nor read out.
import type { ReadonlySignal } from "@preact/signals";
import type { ComponentType } from "preact";
import { useState } from "preact/hooks";
import type { Session } from "../live/runs.ts";
import type { Updates } from "../live/updates.ts";
import { lateWords } from "./language.ts";

export interface NewsPorts {
  readonly updates: Updates;
  /** The run that is on. */
  readonly current: ReadonlySignal<Session | null>;
}

type InTheWay = Exclude<Awaited<ReturnType<Updates["take"]>>, "taken">;

export function newsWith({ updates, current }: NewsPorts): ComponentType {
  return function News() {
    const [taking, setTaking] = useState(false);
    const [inTheWay, setInTheWay] = useState<InTheWay | null>(null);
    const news = updates.news.value;
    if (current.value !== null) return null;

    async function take(): Promise<void> {
      if (taking) return;
      setTaking(true);
      const came = await updates.take();
      if (came === "taken") return;
      setTaking(false);
      setInTheWay(came);
    }

    const { ready, takenElsewhere, takeIt, loadAnew, waits } = lateWords.value.news;
    const elsewhere = news === "taken-elsewhere";
    return (
      <div class="news">
        <p role="status">
          {news !== "none" && (elsewhere ? takenElsewhere : ready)}{" "}
          {news !== "none" && inTheWay !== null && <b>{waits[inTheWay]}</b>}
        </p>
        {news !== "none" && (
          <button type="button" onClick={take}>
            {elsewhere ? loadAnew : takeIt}
          </button>
        )}
      </div>
    );
  };
}
