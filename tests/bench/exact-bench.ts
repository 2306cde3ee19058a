// How long the compiler takes to choose a one-hour session's words, beside an integer program that
// finds the same value, in the same order of wishes and in any.
import { choose } from "../../src/timeline/choose.ts";
import { lengthsOf } from "../../src/timeline/lengths.ts";
import { quietOf } from "../../src/timeline/quiet.ts";
import { bestValue, type Instance, instancesOf, worthOf } from "../timeline/integer-program.ts";
import { compiler, packIndex, sessionOf } from "./sessions.ts";
import { spread, type Table } from "./table.ts";

const WARM = 30;
const RUNS = 20;

/** Middle time of some runs, milliseconds. */
function milliseconds(runs: number, work: () => void): number {
  const times = Array.from({ length: runs }, () => {
    const from = performance.now();
    work();
    return performance.now() - from;
  });
  return spread(times).median;
}

export async function exactBench(): Promise<Table> {
  const session = sessionOf(1);
  const compile = compiler(session);
  const instances = instancesOf(session, lengthsOf(packIndex, 1)).filter(
    ({ stretches }) => stretches.length > 0,
  );
  const chosen = ({ windows, stretches }: Instance) =>
    worthOf(windows, choose(windows, quietOf(stretches)));
  for (let i = 0; i < WARM; i += 1) {
    compile();
    instances.map(chosen);
  }
  const rows = instances.map((instance) => {
    const value = chosen(instance);
    return {
      section: instance.section,
      wishes: instance.windows.length,
      "choose ms": milliseconds(RUNS, () => chosen(instance)).toFixed(3),
      "HiGHS ms, same order": milliseconds(3, () => bestValue(instance, "kept")).toFixed(1),
      "HiGHS ms, any order": milliseconds(3, () => bestValue(instance, "free")).toFixed(1),
      value,
      "more by HiGHS": bestValue(instance, "kept") - value,
      "more in any order": bestValue(instance, "free") - value,
    };
  });
  const whole = milliseconds(RUNS, compile).toFixed(2);
  return { title: `Choice of words, one hour (the whole of compile: ${whole} ms)`, rows };
}
