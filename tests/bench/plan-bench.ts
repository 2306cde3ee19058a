// How long the page takes to answer a keystroke: a draft read, checked and planned, with everything asked.
import { asides } from "../../src/plan/asides.ts";
import { demos } from "../../src/ui/demo.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { readDraft } from "../../src/ui/work-out-model.ts";
import { benchInFahrenheit } from "../plan/bench-worksheets.ts";
import { spread, type Table } from "./table.ts";

const WARM = 50;
const RUNS = 100;

export async function planBench(): Promise<Table> {
  const worksheets = { plain: demos.gullrock, "everything asked": benchInFahrenheit };
  const rows = Object.entries(worksheets).map(([worksheet, it]) => {
    const draft = draftOf(it);
    for (let i = 0; i < WARM; i += 1) readDraft(draft, asides);
    const times = Array.from({ length: RUNS }, () => {
      const from = performance.now();
      readDraft(draft, asides);
      return performance.now() - from;
    });
    const { least, median, most } = spread(times);
    return {
      worksheet,
      "least ms": least.toFixed(2),
      "median ms": median.toFixed(2),
      "most ms": most.toFixed(2),
    };
  });
  return { title: `Read and plan a page (${RUNS} runs each)`, rows };
}
