// How long the schedule compiler takes for sessions of one hour and of ten, and the score to draw of them.
import { withLateWords } from "../../src/ui/language.ts";
import { scoreOf } from "../../src/ui/score-model.ts";
import { compiler, sessionOf } from "./sessions.ts";
import { spread, type Table } from "./table.ts";

const WARM = 30;
const RUNS = 40;

function timesOf(act: () => unknown): readonly number[] {
  return Array.from({ length: RUNS }, () => {
    const from = performance.now();
    act();
    return performance.now() - from;
  });
}

export async function compileBench(): Promise<Table> {
  await withLateWords(Promise.resolve());
  const rows = [1, 10].map((hours) => {
    const compile = compiler(sessionOf(hours));
    for (let i = 0; i < WARM; i += 1) compile();
    const { least, median, most } = spread(timesOf(compile));
    const { sections } = compile();
    const cues = sections.reduce((sum, section) => sum + section.cues.length, 0);
    const score = spread(timesOf(() => sections.map((section) => scoreOf(section))));
    return {
      session: `${hours} h`,
      cues,
      "least ms": least.toFixed(2),
      "median ms": median.toFixed(2),
      "most ms": most.toFixed(2),
      "score, median ms": score.median.toFixed(2),
    };
  });
  return { title: `Compile, once loaded (${RUNS} runs each)`, rows };
}
