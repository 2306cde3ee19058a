// The present, as a line across the stretch of the score that is sounding.
import { type ReadonlySignal, useComputed } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import type { Stretch } from "./score-shape.ts";

interface PresentProps {
  readonly stretch: Stretch;
  readonly elapsed: ReadonlySignal<number | null>;
}

export function Present({ stretch, elapsed }: PresentProps) {
  const place = useComputed(() => {
    const now = elapsed.value;
    if (now === null || now < stretch.from || now >= stretch.to) return null;
    const seconds = now - stretch.from;
    return stretch.kind === "open"
      ? `calc(var(--unit) * ${Math.round(seconds * stretch.scale)})`
      : `${Math.round((100 * seconds) / (stretch.to - stretch.from))}%`;
  }).value;
  const line = useRef<HTMLElement>(null);
  useEffect(() => {
    if (place !== null && line.current) keepInSight(line.current);
  }, [place]);
  if (place === null) return null;
  return <i ref={line} class="present" style={`inset-inline-start: ${place}`} />;
}

/** Where a long line scrolls, it is turned like a page, and never slides. */
function keepInSight(line: HTMLElement): void {
  const system = line.closest(".system");
  if (!system || system.scrollWidth <= system.clientWidth) return;
  const view = system.getBoundingClientRect();
  const x = line.getBoundingClientRect().left - view.left;
  if (x < 0 || x > view.width * 0.9) system.scrollLeft += x - view.width * 0.1;
}
