// A disclosure of Work out: closed until it is asked for, and open from the start where it holds something.
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
  const [open] = useState(() =>
    Object.entries(draft.peek()).some(
      ([path, text]) => text.trim() !== "" && holds.some((start) => path.startsWith(start)),
    ),
  );
  return (
    <details class="more" open={open}>
      <summary>{summary}</summary>
      {children}
    </details>
  );
}
