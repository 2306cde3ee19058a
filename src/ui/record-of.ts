// A run that is on, or has ended, in; what Write up keeps of it out: what was planned, and what happened.
// Times are those of the run, so that a wall clock that was set in the midst of it misdates nothing.
import { type Entry, pressesOf, readingsIn, timed } from "../live/journal.ts";
import type { Session } from "../live/runs.ts";
import type { Otherwise, RunRecord } from "../logbook/run-record.ts";

export function recordOf(session: Session, ended: RunRecord["ended"]): RunRecord {
  const { id, worksheet, plan, timeline, begunAt } = session;
  const { entries } = session.run.journal();
  const at = (seconds: number) => Math.round(begunAt + seconds * 1000);
  const presses = pressesOf(entries).map((press) => ({ ...press, at: at(press.at) }));
  const otherwise = otherwiseIn(entries, at);
  const developed = timeline.plan.developmentSeconds;
  return {
    id,
    begunAt,
    worksheet,
    developmentSeconds: plan.developmentSeconds,
    planned: plannedIn(session),
    presses,
    ...(otherwise.length === 0 ? {} : { otherwise }),
    ...(developed === plan.developmentSeconds ? {} : { developedSeconds: developed }),
    ...(ended === "left" ? { pouredIn: pouredInBy(session, entries) } : {}),
    ended,
    note: "",
  };
}

/** Each bath once, though a wash may be poured in again and again. */
function plannedIn({ plan, timeline }: Session): NonNullable<RunRecord["planned"]> {
  return plan.baths.flatMap(({ id, seconds }) => {
    const section = timeline.sections.find(({ moments }) =>
      moments.some((moment) => moment.do === "pour-in" && moment.bath === id),
    );
    return section === undefined ? [] : [{ bath: id, section: section.id, seconds }];
  });
}

/** Each bath once whose pour-in had come by the last entry, as the run had it by then. */
function pouredInBy({ timeline }: Session, entries: readonly Entry[]): readonly string[] {
  const presses = pressesOf(entries);
  const last = presses.at(-1);
  const since = (timed(entries).at(-1)?.at ?? 0) - (last?.at ?? 0);
  const baths = timeline.sections.flatMap(({ id, moments }) => {
    if (!presses.some(({ section }) => section === id)) return [];
    const come = id === last?.section ? since : Number.POSITIVE_INFINITY;
    return moments.flatMap((it) =>
      it.do === "pour-in" && it.bath !== null && it.at <= come ? [it.bath] : [],
    );
  });
  return [...new Set(baths)];
}

/** A gap that nobody heard, shorter than this, seconds, is not worth writing down. */
const WORTH_KEEPING = 1;

function otherwiseIn(
  entries: readonly Entry[],
  at: (seconds: number) => number,
): readonly Otherwise[] {
  const readings = readingsIn(entries);
  let reading = 0;
  return timed(entries).flatMap(({ entry, at: seconds }): readonly Otherwise[] => {
    const when = at(seconds);
    switch (entry.kind) {
      case "poured":
      case "emptied":
        return [{ kind: entry.kind, at: when, bath: entry.bath, by: entry.by }];
      case "read": {
        const after = readings[reading]?.at ?? 0;
        reading += 1;
        return [{ kind: "read", at: when, temperature: entry.temperature, after }];
      }
      case "woke":
        if (entry.lost < WORTH_KEEPING) return [];
        return [{ kind: "lost", at: when, how: entry.from, lost: entry.lost }];
      case "wrong":
        return [{ kind: "wrong", at: when, wrong: entry.wrong }];
      case "clock-set":
        return [{ kind: "clock-set", at: when, by: entry.by }];
      default:
        return [];
    }
  });
}
