// A worksheet that came with the page's address: told of, and taken only when it is asked for, since a person's own
// stands on the page. One that cannot be used is told of by its fields, and changes nothing.
import type { ReadonlySignal, Signal } from "@preact/signals";
import type { ComponentType } from "preact";
import { useEffect, useMemo, useRef } from "preact/hooks";
import type { Session } from "../live/runs.ts";
import { readLink } from "../plan/worksheet-link.ts";
import { lateWords } from "./language.ts";
import type { WorkOut } from "./work-out-state.ts";
import { dayAndTime } from "./write-up-model.ts";

interface BroughtPorts {
  /** The part of the address that came; null where none did, or it has been dealt with. */
  readonly brought: Signal<string | null>;
  /** ms since 1970 of the minute at which the class of the worksheet in use starts. */
  readonly classAt: Signal<number | null>;
  readonly workOut: Pick<WorkOut, "open">;
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
    if (link.kind === "read") workOut.open(title ?? words.name, link.text);
    if (usable !== null) classAt.value = startsAt;
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
