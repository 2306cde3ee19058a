// A worksheet that came with the page's address: told of, and taken only when it is asked for, since a person's own
// stands on the page. One that cannot be used is told of by its fields, and changes nothing.
import type { ReadonlySignal, Signal } from "@preact/signals";
import type { ComponentType } from "preact";
import { useEffect, useMemo, useRef } from "preact/hooks";
import type { Session } from "../live/runs.ts";
import { readLink } from "../plan/worksheet-link.ts";
import type { Draft } from "./draft.ts";
import { lateWords } from "./language.ts";
import type { WorkOut } from "./work-out-state.ts";
import { dayAndTime } from "./write-up-model.ts";

interface BroughtPorts {
  /** The part of the address that came; null where none did, or it has been dealt with. */
  readonly brought: Signal<string | null>;
  /** ms since 1970 of the minute at which the class of the worksheet in use starts. */
  readonly classAt: Signal<number | null>;
  readonly workOut: Pick<WorkOut, "open" | "draft">;
  /** The run that is on: over one, nothing is asked. */
  readonly current: ReadonlySignal<Session | null>;
  readonly toWorkOut: () => void;
}

export function broughtWith(ports: BroughtPorts): ComponentType {
  const { brought, current } = ports;
  return function Brought() {
    const hash = brought.value;
    if (hash === null || current.value !== null) return null;
    return <Offer key={hash} hash={hash} {...ports} />;
  };
}

function Offer({ hash, brought, classAt, workOut, toWorkOut }: BroughtPorts & { hash: string }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const link = useMemo(() => readLink(hash), [hash]);
  const words = lateWords.value.brought;
  const usable = link.kind === "read" && link.reading.kind === "worksheet" ? link.reading : null;
  const title = usable?.worksheet.title;
  const startsAt = link.kind === "read" ? link.startsAt : null;

  function use(): void {
    const own = workOut.draft.value;
    if (link.kind === "read") workOut.open(title ?? words.name, link.text);
    if (usable !== null) goAlong(workOut.draft, own, classAt, startsAt);
    brought.value = null;
    toWorkOut();
  }
  useEffect(() => {
    // What is wrong with it is told by the notice that tells it of a file.
    if (link.kind === "read" && usable === null) use();
  }, []);

  return (
    <section class="brought" aria-labelledby="brought-title">
      <h2 id="brought-title" ref={heading} tabIndex={-1}>
        {words.title}
      </h2>
      {link.kind === "broken" && <p>{words.broken}</p>}
      {usable !== null && (
        <p>
          {title !== undefined && `${words.named(title)} `}
          {startsAt !== null && `${words.starts(dayAndTime(startsAt))} `}
          {words.keeps}
        </p>
      )}
      {usable !== null && (
        <button type="button" onClick={use}>
          {words.use}
        </button>
      )}
      <button
        type="button"
        onClick={() => {
          brought.value = null;
        }}
      >
        {words.leave}
      </button>
    </section>
  );
}

/**
 * The minute of the link goes when Undo brings one's own worksheet back, and comes again with Redo: no class starts on a
 * worksheet that is not its own.
 */
function goAlong(
  draft: WorkOut["draft"],
  own: Draft,
  classAt: Signal<number | null>,
  startsAt: number | null,
): void {
  const before = classAt.value;
  // As they stand before each step from one to the other, with what was typed into them.
  let [mine, came] = [own, draft.value];
  let isOwn = false;
  classAt.value = startsAt;
  draft.subscribe((now) => {
    if (!isOwn && now === mine) {
      isOwn = true;
      classAt.value = before;
    } else if (isOwn && now === came) {
      isOwn = false;
      classAt.value = startsAt;
    } else if (isOwn) mine = now;
    else came = now;
  });
}
