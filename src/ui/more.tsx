// A disclosure of Work out: closed until it is asked for, and open of itself where it holds something.
import { useComputed } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { useWorkOut } from "./work-out-context.ts";

interface MoreProps {
  readonly summary: string;
  /** Where the paths of its fields begin: `"mixing."`. */
  readonly holds: readonly string[];
  readonly children: ComponentChildren;
}

export function More({ summary, holds, children }: MoreProps) {
  const { draft } = useWorkOut();
  const [chosen, choose] = useState<boolean | null>(null);
  const filled = useComputed(() =>
    Object.entries(draft.value).some(
      ([path, text]) => text.trim() !== "" && holds.some((start) => path.startsWith(start)),
    ),
  ).value;
  const open = chosen ?? filled;
  return (
    <details class="more" open={open}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: a summary is pressed like a button by every means. */}
      <summary
        onClick={(event) => {
          event.preventDefault();
          choose(!open);
        }}
      >
        {summary}
      </summary>
      {children}
    </details>
  );
}
