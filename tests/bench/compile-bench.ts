// How long the schedule compiler takes for sessions of one hour and of ten.
import { compiler, sessionOf } from "./sessions.ts";
import { spread, type Table } from "./table.ts";

const WARM = 30;
const RUNS = 40;

export async function compileBench(): Promise<Table> {
  const rows = [1, 10].map((hours) => {
    const compile = compiler(sessionOf(hours));
    for (let i = 0; i < WARM; i += 1) compile();
    const times = Array.from({ length: RUNS }, () => {
      const from = performance.now();
      compile();
      return performance.now() - from;
    });
    const { least, median, most } = spread(times);
    const cues = compile().sections.reduce((sum, section) => sum + section.cues.length, 0);
    return {
      session: `${hours} h`,
      cues,
      "least ms": least.toFixed(2),
      "median ms": median.toFixed(2),
      "most ms": most.toFixed(2),
    };
  });
  return { title: `Compile, once loaded (${RUNS} runs each)`, rows };
}
