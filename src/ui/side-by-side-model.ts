// Two runs in, their facts beside each other out: what differed first, and what was the same behind it.
import type { RunRecord } from "../logbook/run-record.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { bathName } from "./field-names.ts";
import { lateWords, words, writing } from "./language.ts";
import {
  dayAndTime,
  developerLine,
  endingLine,
  filmLines,
  otherwiseLines,
  titleOf,
} from "./write-up-model.ts";

/** The same fact of either run, as a person reads it; empty where nothing is known. */
export interface Pair {
  readonly name: string;
  readonly a: string;
  readonly b: string;
}

export interface SideBySide {
  readonly differed: readonly Pair[];
  readonly same: readonly Pair[];
}

export function sideBySide(a: RunRecord, b: RunRecord): SideBySide {
  const [ofA, ofB] = [factsOf(a), factsOf(b)];
  const names = [...new Set([...ofA.keys(), ...ofB.keys()])];
  const pairs = names.map((name) => ({ name, a: ofA.get(name) ?? "", b: ofB.get(name) ?? "" }));
  return {
    differed: pairs.filter((pair) => pair.a !== pair.b),
    same: pairs.filter((pair) => pair.a === pair.b && pair.a !== ""),
  };
}

function factsOf(run: RunRecord): ReadonlyMap<string, string> {
  const { write, beside, stars, otherwise, negatives } = lateWords.value;
  const { worksheet, planned, developmentSeconds, developedSeconds } = run;
  const { agitation, tank, developer } = worksheet;
  const every = beside.agitation(
    writeClockTime(agitation.first),
    writeClockTime(agitation.every),
    writeClockTime(agitation.for),
  );
  const seen = run.negatives;
  return new Map([
    [beside.begun, dayAndTime(run.begunAt)],
    [beside.title, titleOf(run)],
    [write.films, filmLines(run).join("\n")],
    [write.developer, developerLine(run)],
    [beside.temperature, writing.value.temperature(developer.temperature)],
    [beside.planned, writeClockTime(developmentSeconds)],
    [beside.done, writeClockTime(developedSeconds ?? developmentSeconds)],
    [beside.method, words.value.choices["tank.method"][tank.method]],
    [beside.agitated, every],
    [beside.tank, tank.label ?? ""],
    ...(planned ?? [])
      .filter(({ bath }) => bath !== "developer")
      .map(({ bath, seconds }): [string, string] => [bathName(bath), writeClockTime(seconds)]),
    [otherwise.title, otherwiseLines(run).join("\n")],
    [write.ended, endingLine(run)],
    [stars.asks, run.stars ? stars.each(run.stars, stars.words[run.stars]) : ""],
    [negatives.density, seen?.density ? negatives.densities[seen.density] : ""],
    [negatives.edge, seen?.edges ? negatives.edges[seen.edges] : ""],
    [negatives.mark, (seen?.marks ?? []).map((mark) => negatives.marks[mark]).join("\n")],
    [write.note, run.note.trim()],
  ]);
}
