// What the voice will leave out of the session on the page, and why: compiled behind the page whenever its
// worksheet has changed and typing rests.
import { useSignal, useSignalEffect } from "@preact/signals";
import type { ComponentType } from "preact";
import type { Runs } from "../live/runs.ts";
import type { Timeline } from "../timeline/score.ts";
import { lateWords } from "./language.ts";
import { LeftList } from "./left-list.tsx";
import { useWorkOut } from "./work-out-context.ts";

interface UnsaidPorts {
  readonly compile: Runs["compile"];
  /** Calls once, so many ms from now; returns the way to call it off. */
  readonly after: (ms: number, act: () => void) => () => void;
}

/** ms; compiling takes a few of them, but no key should wait for it. */
const REST = 400;

export function unsaidWith({ compile, after }: UnsaidPorts): ComponentType {
  return function Unsaid() {
    const { worksheet, plan } = useWorkOut();
    const timeline = useSignal<Timeline | null>(null);
    useSignalEffect(() => {
      const [sheet, its] = [worksheet.value, plan.value];
      if (sheet === null || its === null) {
        timeline.value = null;
        return;
      }
      let wanted = true;
      const callOff = after(REST, () => {
        compile(sheet, its).then(
          (compiled) => {
            if (wanted) timeline.value = compiled;
          },
          // Without its sounds nothing can be said of it; Walk through and Lights out tell that.
          () => {},
        );
      });
      return () => {
        wanted = false;
        callOff();
      };
    });
    if (timeline.value === null) return null;
    const { sections, voice } = timeline.value;
    const some = sections.filter(({ left }) => left.length > 0);
    const count = some.reduce((sum, { left }) => sum + left.length, 0);
    const { walk } = lateWords.value;
    if (count === 0) return <p class="unsaid">{walk.nothingLeft}</p>;
    return (
      <details class="unsaid">
        <summary>{walk.left(count)}</summary>
        <p>{walk.leftWhy}</p>
        {some.map(({ id, title, left }) => (
          <section key={id}>
            <h3 lang={voice.language}>{title}</h3>
            <LeftList left={left} spoken={voice.language} />
          </section>
        ))}
      </details>
    );
  };
}
