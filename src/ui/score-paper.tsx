// The whole score for the wall: every step beneath the other, and what its signs mean.
import { signal } from "@preact/signals";
import type { Timeline } from "../timeline/score.ts";
import type { Method } from "../trade/method.ts";
import { ScoreKey } from "./score-key.tsx";
import { ScorePicture } from "./score-picture.tsx";

interface PaperProps {
  readonly timeline: Timeline;
  readonly method: Method;
}

/** Nothing sounds on paper. */
const silent = signal<number | null>(null);

export function ScorePaper({ timeline, method }: PaperProps) {
  return (
    <div class="score-paper">
      {timeline.sections.map((section, i) => (
        <section key={section.id}>
          <h2 lang={timeline.voice.language}>
            {i + 1} {section.title}
          </h2>
          <ScorePicture section={section} method={method} elapsed={silent} />
        </section>
      ))}
      <ScoreKey open />
    </div>
  );
}
