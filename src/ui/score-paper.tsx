// The whole score for the wall: every step beneath the other, and what its signs mean.
import { signal } from "@preact/signals";
import type { Worksheet } from "../plan/worksheet.ts";
import type { Timeline } from "../timeline/score.ts";
import { ScoreKey } from "./score-key.tsx";
import { ScorePicture } from "./score-picture.tsx";

interface PaperProps {
  readonly timeline: Timeline;
  readonly worksheet: Worksheet;
}

/** Nothing sounds on paper. */
const silent = signal<number | null>(null);

export function ScorePaper({ timeline, worksheet }: PaperProps) {
  return (
    <div class="score-paper">
      {worksheet.title && <p>{worksheet.title}</p>}
      {timeline.sections.map((section, i) => (
        <section key={section.id}>
          <h2 lang={timeline.voice.language}>
            {i + 1} {section.title}
          </h2>
          <ScorePicture section={section} method={worksheet.tank.method} elapsed={silent} />
        </section>
      ))}
      <ScoreKey open />
    </div>
  );
}
