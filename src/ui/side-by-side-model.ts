// Two runs in, their facts beside each other out: what differed first, and what was the same behind it.
import type { RunRecord } from "../logbook/run-record.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { bathName } from "./field-names.ts";
import { lateWords, words, writing } from "./language.ts";
import { inPageOrder } from "./work-out-model.ts";
import { type Fact, worksheetFacts } from "./worksheet-facts.ts";
import {
  dayAndTime,
  developerLine,
  endingLine,
  filmLines,
  otherwiseLines,
  pressedAfter,
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
  const pairs = [
    ...pairsOf(ofA.before, ofB.before),
    ...pairsOf(ofA.sheet, ofB.sheet, inPageOrder),
    ...pairsOf(ofA.after, ofB.after),
  ];
  return {
    differed: pairs.filter((pair) => pair.a !== pair.b),
    same: pairs.filter((pair) => pair.a === pair.b && pair.a !== ""),
  };
}

/** @param order where one of them may have facts that the other has not. */
function pairsOf(
  a: readonly Fact[],
  b: readonly Fact[],
  order: (idA: string, idB: string) => number = () => 0,
): readonly Pair[] {
  const [ofA, ofB] = [a, b].map((facts) => new Map(facts.map((fact) => [fact.id, fact])));
  const ids = [...new Set([...a, ...b].map(({ id }) => id))].toSorted(order);
  return ids.map((id) => {
    const [inA, inB] = [ofA?.get(id), ofB?.get(id)];
    return { name: (inA ?? inB)?.name ?? "", a: inA?.text ?? "", b: inB?.text ?? "" };
  });
}

interface Facts {
  readonly before: readonly Fact[];
  /** Those of the worksheet that nothing else tells. */
  readonly sheet: readonly Fact[];
  readonly after: readonly Fact[];
}

function factsOf(run: RunRecord): Facts {
  const { write, beside, stars, otherwise, negatives } = lateWords.value;
  const { worksheet, developmentSeconds, developedSeconds } = run;
  const { agitation, tank, developer } = worksheet;
  const every = beside.agitation(
    writeClockTime(agitation.first),
    writeClockTime(agitation.every),
    writeClockTime(agitation.for),
  );
  const seen = run.negatives;
  const before: readonly (readonly [string, string])[] = [
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
    ...bathTimes(run).map(([bath, time]) => [bathName(bath), time] as const),
  ];
  const after: readonly (readonly [string, string])[] = [
    [beside.pressed, pressedAfter(run).join("\n")],
    [otherwise.title, otherwiseLines(run).join("\n")],
    [write.ended, endingLine(run)],
    [stars.asks, run.stars ? stars.each(run.stars, stars.words[run.stars]) : ""],
    [negatives.density, seen?.density ? negatives.densities[seen.density] : ""],
    [negatives.edge, seen?.edges ? negatives.edges[seen.edges] : ""],
    [negatives.mark, (seen?.marks ?? []).map((mark) => negatives.marks[mark]).join("\n")],
    [write.note, run.note.trim()],
  ];
  const factOf = ([name, text]: readonly [string, string]): Fact => ({ id: name, name, text });
  return {
    before: before.map(factOf),
    sheet: worksheetFacts(worksheet),
    after: after.map(factOf),
  };
}

/** As planned; in records of the first versions, as the worksheet asks for. */
function bathTimes({ planned, worksheet }: RunRecord): readonly (readonly [string, string])[] {
  if (planned === undefined) {
    const asked = Object.entries(worksheet.baths ?? {});
    return asked.flatMap(([bath, { time, skip }]) =>
      time && !skip ? [[bath, time] as const] : [],
    );
  }
  return planned
    .filter(({ bath }) => bath !== "developer")
    .map(({ bath, seconds }) => [bath, writeClockTime(seconds)]);
}
