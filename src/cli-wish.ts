// What the command line was asked to render in, as it was typed; the file wished for out, or the fault of the
// first option that cannot be used.
import { readPlannedTime } from "./track/calendar.ts";
import { type FileKind, type FileWish, soundKinds, textKinds } from "./track/files.ts";
import { longestGap, waitKinds } from "./track/track.ts";

export interface WishFault {
  readonly path: string;
  readonly holds: string | null;
  readonly may: string;
}

interface Typed {
  readonly gap: string;
  readonly waits: string;
  readonly at?: string | undefined;
}

/** The sheet has a command of its own. */
const kinds: readonly FileKind[] = [...soundKinds, ...textKinds].filter((kind) => kind !== "txt");
const endings = kinds.map((kind) => `.${kind}`);

/** @param out where it is to be written; null where nothing is. */
export function wishOf(out: string | null, typed: Typed): FileWish | WishFault {
  const ending = out?.toLowerCase().match(/\.(\w+)$/)?.[1];
  const kind = kinds.find((each) => each === ending) ?? null;
  if (out !== null && kind === null) {
    const may = `a path that ends in ${endings.slice(0, -1).join(", ")} or ${endings.at(-1)}`;
    return { path: "OUT", holds: out === "" ? null : out, may };
  }
  const gap = Number(typed.gap);
  if (typed.gap.trim() === "" || !(gap >= 0 && gap <= longestGap)) {
    return { path: "--gap", holds: typed.gap, may: `seconds from 0 to ${longestGap}` };
  }
  const waits = waitKinds.find((each) => each === typed.waits);
  if (waits === undefined) {
    return { path: "--waits", holds: typed.waits, may: waitKinds.join(" or ") };
  }
  const at = typed.at === undefined ? undefined : readPlannedTime(typed.at);
  if (at === null || (kind === "ics" && at === undefined)) {
    const may = "a date and time such as 2026-12-05T18:30";
    return { path: "--at", holds: typed.at ?? null, may };
  }
  return { kind: kind ?? "wav", gap, waits, at };
}
