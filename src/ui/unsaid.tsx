// What the voice will leave out of the session on the page, and why: compiled behind the page whenever its
// worksheet has changed and typing rests.
import type { ReadonlySignal } from "@preact/signals";
import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { Runs } from "../live/runs.ts";
import type { Timeline } from "../timeline/score.ts";
import { lateWords } from "./language.ts";
import { LeftList } from "./left-list.tsx";
import { useWorkOut } from "./work-out-context.ts";

interface UnsaidPorts {
  readonly compile: Runs["compile"];
  /** Who speaks: another takes another time for the same words. */
  readonly speaker: ReadonlySignal<unknown>;
  /** Calls once, so many ms from now; returns the way to call it off. */
  readonly after: (ms: number, act: () => void) => () => void;
}

/** ms; compiling takes a few of them, but no key should wait for it. */
const REST = 400;

export function unsaidWith({ compile, speaker, after }: UnsaidPorts): ComponentType {
  return function Unsaid() {
    const workOut = useWorkOut();
    const [worksheet, plan] = [workOut.worksheet.value, workOut.plan.value];
    const who = speaker.value;
    const [timeline, setTimeline] = useState<Timeline | null>(null);
    useEffect(() => {
      if (worksheet === null || plan === null) {
        setTimeline(null);
        return;
      }
      let wanted = true;
      const callOff = after(REST, () => {
        compile(worksheet, plan).then(
          (compiled) => wanted && setTimeline(compiled),
          // Without its sounds nothing can be said of it; Walk through and Lights out tell that.
          () => {},
        );
      });
      return () => {
        wanted = false;
        callOff();
      };
    }, [worksheet, plan, who]);
    if (timeline === null) return null;
    const { sections, voice } = timeline;
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
