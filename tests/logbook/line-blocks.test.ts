// The lines of runs as they lie on their shelf: right after whatever was done, by whatever version.
import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { inOne, logbookBase } from "../../src/logbook/base.ts";
import { writeLines } from "../../src/logbook/line-blocks.ts";
import { isRunLine, LINES, lineOf } from "../../src/logbook/run-line.ts";
import type { RunRecord } from "../../src/logbook/run-record.ts";
import type { TakenOut } from "../../src/logbook/run-shelf.ts";
import { type RunStore, runStore } from "../../src/logbook/run-store.ts";
import type { Before } from "../../src/logbook/taken-back.ts";
import { madeRuns } from "../ui/made-runs.ts";
import { anyRuns } from "./any-run.ts";
import { browser, contentOf } from "./browser-by-hand.ts";
import { abortsAt } from "./full-disk.ts";
import { firstRun, firstVersion, judgedRun, olderRuns } from "./older-versions.ts";

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

type There = Awaited<ReturnType<typeof browser>>;

/** What any page would list now, which must be a line for every run, made of what is kept of it. */
async function expectLinesOfRuns({ open, base }: Pick<There, "open" | "base">) {
  const { kind, lines } = await runStore(open).lines();
  expect(kind).toBe("found");
  const runs = (await base.getAll("runs")) as RunRecord[];
  expect(new Map(lines.map((line) => [line.id, line]))).toEqual(
    new Map(runs.map((run) => [run.id, lineOf(run)])),
  );
  expect(lines).toHaveLength(runs.length);
  expect(lines.map(({ begunAt }) => begunAt)).toEqual(
    runs.map(({ begunAt }) => begunAt).toSorted((a, b) => b - a),
  );
}

const content = (runs: readonly object[]) =>
  contentOf(JSON.stringify({ tankside: 1, version: 2, runs }));

const acts = ["keep", "judge", "take out", "put back", "take in", "take back"] as const;

test("A line lies there for every run and for nothing else, whatever is done to runs, one by one and by files", async () => {
  const done = new Map<string, number>();
  const anyActs = fc.array(fc.tuple(fc.constantFrom(...acts), fc.nat()), {
    minLength: 4,
    maxLength: 12,
  });
  await fc.assert(
    fc.asyncProperty(anyRuns, anyRuns, anyActs, async (own, others, all) => {
      const there = await browser({ runs: own });
      const store = runStore(there.open);
      const out: TakenOut[] = [];
      const came: Before[] = [];
      await store.lines();
      for (const [act, which] of all) {
        if (await does(act, which, { there, store, own, others, out, came }))
          done.set(act, (done.get(act) ?? 0) + 1);
      }
      await expectLinesOfRuns(there);
    }),
    { numRuns: 40 },
  );
  for (const act of acts) expect([act, done.get(act) ?? 0]).not.toEqual([act, 0]);
});

interface Doing {
  readonly there: There;
  readonly store: RunStore;
  readonly own: readonly RunRecord[];
  readonly others: readonly RunRecord[];
  readonly out: TakenOut[];
  readonly came: Before[];
}

/** @returns whether there was anything to do it to. */
async function does(act: (typeof acts)[number], which: number, doing: Doing): Promise<boolean> {
  const { there, store, own, others, out, came } = doing;
  const all = [...own, ...others];
  const run = all[which % all.length];
  if (run === undefined) return false;
  switch (act) {
    case "keep":
      return (await store.keep({ ...run, ended: "done" })) === "kept";
    case "judge":
      return (await store.judge(run.id, { note: `said ${which}` })) === "kept";
    case "take out": {
      const taken = await store.takeOut(run.id);
      if (taken !== null) out.push(taken);
      return taken !== null;
    }
    case "put back": {
      const taken = out.pop();
      return taken !== undefined && (await store.putBack(taken)) === "kept";
    }
    case "take in": {
      const taken = await there.all.takeIn(content(others));
      if (taken.kind === "taken") came.push(taken.before);
      return taken.kind === "taken" && taken.before.changed.length > 0;
    }
    case "take back": {
      const before = came.pop();
      return before !== undefined && (await there.all.takeBack(before)).kind === "taken back";
    }
    default:
      return act satisfies never;
  }
}

test("A thousand lines lie in a few records of about one size", async () => {
  const there = await browser();
  await there.all.takeIn(content(madeRuns(1000)));
  const sizes = (await there.base.getAll("lines")).map((block) => String(block).length);
  expect(sizes.length).toBeLessThanOrEqual(16);
  expect(Math.max(...sizes)).toBeLessThan(2 * Math.min(...sizes));
  await expectLinesOfRuns(there);
});

describe("Lines of an older version", () => {
  /** As that version wrote them: a record each, by the run's id, of make 1. */
  async function ofFirstMake() {
    const there = await browser({ runs: olderRuns });
    for (const run of olderRuns) {
      const { text, ...rest } = lineOf(run as RunRecord);
      await there.base.put("lines", { ...rest, text: `of old ${text}` }, run.id);
    }
    await there.base.put("notes", 1, "lines are of");
    await there.base.put("notes", 0.5, "lines were changed");
    return there;
  }

  test("are made anew of the runs, and nothing of them is left", async () => {
    const there = await ofFirstMake();
    await expectLinesOfRuns(there);
    expect((await there.base.getAll("lines")).some(isRunLine)).toBe(false);
    expect(await there.base.get("notes", "lines are of")).toBe(LINES);
  });

  test("are made anew of the second make, which knew no bottle of a bath", async () => {
    const baths = { fixer: { time: "5:00", bottle: "Fixer B" } };
    const run = { ...firstRun, worksheet: { ...firstRun.worksheet, baths } } as RunRecord;
    const there = await browser({ runs: [run] });
    const { text, ...rest } = lineOf(run);
    await inOne(there.base, ["lines", "notes"], (making) =>
      writeLines(making, [{ ...rest, text: text.replace("fixer b", "") }]),
    );
    await there.base.put("notes", 2, "lines are of");
    const { lines } = await runStore(there.open).lines();
    expect(lines[0]?.text).toContain("fixer b");
  });

  test("are made anew after a run was kept, judged and taken out beside them, too", async () => {
    const there = await ofFirstMake();
    const store = runStore(there.open);
    await store.keep({ ...(firstRun as RunRecord), id: "new" });
    await store.judge(firstRun.id, { note: "thin" });
    await store.takeOut(judgedRun.id);
    await expectLinesOfRuns(there);
  });

  test("stay as they were where they are refused at any change of making them anew, and are read all the same", async () => {
    const first = await ofFirstMake();
    const count = abortsAt(Number.POSITIVE_INFINITY);
    await expectLinesOfRuns(first);
    const changes = count();
    vi.restoreAllMocks();
    expect(changes).toBeGreaterThan(3);
    for (let at = 1; at <= changes; at += 1) {
      const there = await ofFirstMake();
      const was = await there.base.getAll("lines");
      abortsAt(at);
      // Lines that cannot be kept hide no run.
      await expectLinesOfRuns(there);
      vi.restoreAllMocks();
      expect(await there.base.getAll("lines")).toEqual(was);
      expect(await there.base.get("notes", "lines are of")).toBe(1);
      await expectLinesOfRuns(there);
    }
  });

  test("of the base's first version are made anew in one that is brought up to date", async () => {
    const first = await firstVersion();
    await first.put("runs", firstRun, firstRun.id);
    await first.put("lines", { ...lineOf(firstRun as RunRecord), text: "of old" }, firstRun.id);
    await first.put("notes", 1, "lines are of");
    first.close();
    const open = logbookBase();
    await expectLinesOfRuns({ open, base: await open() });
  });

  test("written beside those of this one, by a version that was gone back to, are found out", async () => {
    const there = await browser({ runs: olderRuns });
    const store = runStore(there.open);
    await store.lines();
    await there.base.put("runs", { ...firstRun, id: "theirs" }, "theirs");
    await there.base.put("lines", { ...lineOf(firstRun as RunRecord), id: "theirs" }, "theirs");
    await expectLinesOfRuns(there);
    expect((await store.lines()).lines).toHaveLength(olderRuns.length + 1);
  });
});

test("A damaged record of lines is made anew, whether it is read first or written", async () => {
  for (const damaged of ["", "{", "{}", '["a line"]', 7]) {
    for (const writes of [false, true]) {
      const there = await browser({ runs: olderRuns });
      const store = runStore(there.open);
      await store.lines();
      for (const key of await there.base.getAllKeys("lines"))
        await there.base.put("lines", damaged, key);
      if (writes) await store.judge(firstRun.id, { note: "thin" });
      await expectLinesOfRuns(there);
    }
  }
});
