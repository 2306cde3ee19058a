// Ten thousand runs of the volunteers at Gullrock Light, made up: the same ones each time.
import type { RunRecord } from "../../src/logbook/run-record.ts";
import { demos } from "../../src/ui/demo.ts";

const words = ["thin", "dense", "good", "even", "streaks", "fog", "gull", "lamp", "tide", "horn"];
const films = ["Gullrock 125", "Foghorn 400", "Skerry 50", "Beacon 100"];
const DAY = 86_400_000;

export function madeRuns(count: number): readonly RunRecord[] {
  let seed = 1;
  const next = (below: number): number => {
    seed = (seed * 48_271) % 2_147_483_647;
    return seed % below;
  };
  return Array.from({ length: count }, (_, i): RunRecord => {
    const begunAt = Date.UTC(2006, 0, 1) + Math.floor((i * 20 * 365 * DAY) / count);
    const worksheet = i % 3 === 0 ? demos.foghorn : demos.gullrock;
    return {
      id: `run-${i}`,
      begunAt,
      worksheet: {
        ...worksheet,
        title: `Evening ${i}`,
        films: [{ label: films[next(4)] ?? "", size: "135-36", count: 1 + next(3) }],
        developer: { ...worksheet.developer, temperature: { f: 66 + next(80) / 10 } },
      },
      developmentSeconds: 400 + next(400),
      planned: [
        { bath: "developer", section: "developer", seconds: 569 },
        { bath: "stop", section: "developer", seconds: 30 },
        { bath: "fixer", section: "fixer", seconds: 300 },
      ],
      presses: ["lay-out", "lights-out", "close", "developer", "fixer", "hang"].map(
        (section, at) => ({
          section,
          at: begunAt + at * 120_000,
        }),
      ),
      otherwise: [{ kind: "emptied", at: begunAt, bath: "developer", by: next(120) / 10 - 4 }],
      ended: next(10) === 0 ? "left" : "done",
      note: Array.from({ length: 20 }, () => words[next(10)] ?? "").join(" "),
      stars: next(6) as 0 | 1 | 2 | 3 | 4 | 5,
    };
  });
}
