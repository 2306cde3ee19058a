// @vitest-environment happy-dom
import { signal } from "@preact/signals";
import { act, cleanup, fireEvent, render, screen, within } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import type { Judgement, RunRecord } from "../../src/logbook/run-record.ts";
import type { FoundRuns } from "../../src/logbook/run-store.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { demos } from "../../src/ui/demo.ts";
import { negatives as said } from "../../src/ui/words/en/negatives.ts";
import { shelf as shelfWords } from "../../src/ui/words/en/shelf.ts";
import { steps as stepWords, write as writeWords } from "../../src/ui/words/en/write.ts";
import { writeUpWith } from "../../src/ui/write-up.tsx";
import { dayAndTime, pressLines } from "../../src/ui/write-up-model.ts";
import { foghorn } from "../plan/worksheets.ts";
import { compiled } from "../timeline/scene.ts";
import { world as clockAndFiles, keepingThat } from "./ports.ts";
import "./late-words.ts";

afterEach(cleanup);

const begunAt = Date.UTC(2026, 2, 12, 19, 42, 7);
const gullrock: RunRecord = {
  id: "gullrock",
  begunAt,
  worksheet: demos.gullrock,
  developmentSeconds: 569,
  presses: [
    { section: "lay-out", at: begunAt },
    { section: "open-2", at: begunAt + 31_000 },
    { section: "developer", at: begunAt + 181_000 },
  ],
  ended: "done",
  note: "good",
};
const night: RunRecord = {
  ...gullrock,
  id: "night",
  begunAt: begunAt - 86_400_000,
  worksheet: foghorn,
  developmentSeconds: 825,
  ended: "left",
  note: "",
};

interface Refusals {
  readonly found?: FoundRuns;
  readonly notes?: boolean;
  readonly removing?: boolean;
}

/** A store that says what the test has it say, and remembers what it was told. */
function world({ found, notes = true, removing = true }: Refusals = {}) {
  const { ports, pass, saved } = clockAndFiles();
  const told: string[] = [];
  const again: Worksheet[] = [];
  const all = found ?? { kind: "found", runs: [gullrock, night], onlyHere: [], unread: 0 };
  return {
    told,
    again,
    pass,
    saved,
    ports: {
      keeping: keepingThat("kept"),
      Shelf: () => <p>the bottles</p>,
      saveFile: ports.saveFile,
      after: ports.after,
      useWorksheet: (worksheet: Worksheet) => again.push(worksheet),
      store: {
        all: async () => all,
        async keep(record: RunRecord) {
          told.push(`keep ${record.id} “${record.note}”`);
          return true;
        },
        async judge(id: string, { note, negatives }: Judgement) {
          if (negatives !== undefined) told.push(`see ${id} ${negatives.density}`);
          told.push(`note ${id} “${note}”`);
          return notes;
        },
        async remove(id: string) {
          told.push(`remove ${id}`);
          return removing;
        },
      },
    },
  };
}

async function shown(it: ReturnType<typeof world>) {
  const Place = writeUpWith(it.ports);
  const page = render(<Place worksheet={signal(null)} plan={signal(null)} />);
  await act(async () => {});
  return page;
}

const press = (name: string | RegExp) =>
  act(async () => {
    fireEvent.click(screen.getByRole("button", { name }));
  });
const run = (name: string) => within(screen.getByRole("article", { name }));
const night_ = () => run("Night exercise");
const titles = () => screen.queryAllByRole("heading", { level: 2 }).map((it) => it.textContent);
const write = (note: string) =>
  act(async () => {
    fireEvent.input(night_().getByLabelText(writeWords.note), { target: { value: note } });
  });

describe("the negatives of a run", () => {
  const choose = (name: string) =>
    act(async () => {
      fireEvent.click(night_().getByLabelText(name));
    });

  test("tell what it was and what to change as they are described, and are kept at once", async () => {
    const it = world();
    await shown(it);
    await choose(said.densities.thin);
    expect(night_().getByText(said.causes["thin-either"].was, { exact: false })).toBeTruthy();
    await choose(said.edges.faint);
    await choose(said.marks.milky);
    const causes = night_().getAllByRole("listitem");
    expect(causes.map(({ textContent }) => textContent)).toEqual([
      expect.stringContaining(said.mend),
      expect.stringContaining(said.causes["under-developed"].change),
    ]);
    expect(it.told.filter((one) => one.startsWith("see"))).toHaveLength(3);
  });
});

describe("the runs", () => {
  test("each stand with date, name, films and ratings, developer, time, temperature and end", async () => {
    await shown(world());
    expect(titles()).toEqual(["Gullrock Light, Thursday evening", "Night exercise"]);
    const facts = night_();
    expect(facts.getByText(dayAndTime(night.begunAt))).toBeTruthy();
    expect(facts.getByText("2 × Foghorn 400, 120, at 800, box speed 400")).toBeTruthy();
    expect(facts.getByText("4 × Foghorn 400, 4x5in, at 800, box speed 400")).toBeTruthy();
    expect(facts.getByText("Kelp MQ 1+1.5")).toBeTruthy();
    expect(facts.getByText("13:45 at 21 °C")).toBeTruthy();
    expect(facts.getByText("left after: Developer")).toBeTruthy();
  });

  test("are dated as the person's locale writes it", () => {
    // At noon UTC it is the twelfth from Honolulu to Auckland's west.
    const noon = Date.UTC(2026, 2, 12, 12);
    expect(dayAndTime(noon, "de")).toMatch(/^Donnerstag, 1[23]\. März 2026/);
    expect(dayAndTime(noon, "en-GB")).toMatch(/^Thursday,? 1[23] March 2026/);
  });

  test("list each press with the time since the one before", () => {
    expect(pressLines(gullrock).map(({ step, after }) => [step, after])).toEqual([
      ["Lay out", null],
      ["Open the film", "0:31"],
      ["Developer", "2:30"],
    ]);
  });

  test("have a name for every step there is", () => {
    const steps = [demos.gullrock, foghorn].flatMap((it) => compiled(it).sections);
    const presses = steps.map(({ id }) => ({ section: id, at: begunAt }));
    const names = pressLines({ ...gullrock, presses }).map(({ step }) => step);
    expect(names.length).toBeGreaterThan(20);
    for (const [i, name] of names.entries()) expect(name).not.toBe(steps[i]?.id);
    expect(Object.keys(stepWords).length).toBeGreaterThan(8);
  });

  test("that were none say what will appear", async () => {
    await shown(world({ found: { kind: "found", runs: [], onlyHere: [], unread: 0 } }));
    expect(screen.getByText(writeWords.empty, { exact: false })).toBeTruthy();
    expect(screen.queryByRole("button", { name: writeWords.saveAll })).toBeNull();
  });

  test("that the browser keeps not, or not all, are said to go with the page", async () => {
    await shown(world({ found: { kind: "refused", runs: [gullrock] } }));
    expect(screen.getByText(writeWords.refused)).toBeTruthy();
    expect(titles()).toHaveLength(1);
    cleanup();
    await shown(
      world({ found: { kind: "found", runs: [gullrock, night], onlyHere: ["night"], unread: 2 } }),
    );
    expect(screen.getByText(writeWords.onlyHere(1))).toBeTruthy();
    expect(screen.getByText(writeWords.unread(2))).toBeTruthy();
  });

  test("can all be saved to one file, with what is being typed", async () => {
    const it = world();
    await shown(it);
    await write("thin");
    await press(writeWords.saveAll);
    expect(it.saved.map(({ name }) => name)).toEqual([writeWords.file]);
    expect(JSON.parse(it.saved[0]?.text ?? "")).toEqual({
      tankside: 1,
      runs: [gullrock, { ...night, note: "thin" }],
    });
  });

  test("can be done again", async () => {
    const it = world();
    await shown(it);
    await press(/^Do this again \(Night exercise/);
    expect(it.again).toEqual([foghorn]);
  });
});

describe("the shelf of bottles", () => {
  test("is fetched when its fold is opened, and not before", async () => {
    await shown(world());
    expect(screen.queryByText("the bottles")).toBeNull();
    const fold = screen.getByText(shelfWords.title).closest("details") as HTMLDetailsElement;
    await act(async () => {
      fold.open = true;
      fireEvent(fold, new Event("toggle"));
    });
    expect(screen.getByText("the bottles")).toBeTruthy();
  });

  test("stands beside a run by the names of the bottles that it was poured from", async () => {
    const { developer, baths } = demos.gullrock;
    const worksheet: Worksheet = {
      ...demos.gullrock,
      developer: { ...developer, bottle: "Kelp stock" },
      baths: { ...baths, fixer: { ...baths?.fixer, bottle: "Fixer B" } },
    };
    await shown(
      world({
        found: { kind: "found", runs: [{ ...gullrock, worksheet }], onlyHere: [], unread: 0 },
      }),
    );
    expect(screen.getByText("Developer: Kelp stock")).toBeTruthy();
    expect(screen.getByText("Fixer: Fixer B")).toBeTruthy();
  });
});

describe("a note", () => {
  test("is kept as typed, once the person pauses, and says so", async () => {
    const it = world();
    await shown(it);
    await write("  a little");
    await act(async () => it.pass(500));
    await write("  a little thin\n");
    await act(async () => it.pass(500));
    expect(it.told).toEqual([]);
    await act(async () => it.pass(100));
    expect(it.told).toEqual(["note night “  a little thin\n”"]);
    expect(night_().getByText(writeWords.noteKept)).toBeTruthy();
    expect(run("Gullrock Light, Thursday evening").queryByText(writeWords.noteKept)).toBeNull();
    await write("  a little thin\nand more");
    expect(night_().queryByText(writeWords.noteKept)).toBeNull();
  });

  test("that the browser would not keep says so", async () => {
    const it = world({ notes: false });
    await shown(it);
    await write("thin");
    await act(async () => it.pass(600));
    expect(night_().getByText(writeWords.noteNotKept)).toBeTruthy();
  });

  test("is kept at once when the place or the page is left", async () => {
    const it = world();
    const { unmount } = await shown(it);
    await write("thin");
    window.dispatchEvent(new Event("pagehide"));
    expect(it.told).toEqual(["note night “thin”"]);
    await write("dense");
    unmount();
    expect(it.told.at(-1)).toBe("note night “dense”");
  });
});

describe("taking a run out", () => {
  test("can be undone, with what was typed last, and the focus goes along", async () => {
    const it = world();
    await shown(it);
    await write("thin");
    await press(/^Take out \(Night exercise/);
    expect(it.told).toEqual(["remove night"]);
    expect(titles()).toEqual(["Gullrock Light, Thursday evening"]);
    expect(screen.getByText(writeWords.takenOut("Night exercise"))).toBeTruthy();
    expect(document.activeElement).toBe(screen.getByRole("button", { name: writeWords.undo }));
    await press(writeWords.undo);
    expect(it.told.at(-1)).toBe("keep night “thin”");
    expect(titles()).toEqual(["Gullrock Light, Thursday evening", "Night exercise"]);
    expect(document.activeElement?.textContent).toBe("Night exercise");
    expect(screen.queryByRole("button", { name: writeWords.undo })).toBeNull();
  });

  test("twice is undone in turn, the last one first", async () => {
    await shown(world());
    await press(/^Take out \(Night exercise/);
    await press(/^Take out \(Gullrock/);
    expect(titles()).toEqual([]);
    await press(writeWords.undo);
    expect(titles()).toEqual(["Gullrock Light, Thursday evening"]);
    expect(screen.getByText(writeWords.takenOut("Night exercise"))).toBeTruthy();
    await press(writeWords.undo);
    expect(titles()).toEqual(["Gullrock Light, Thursday evening", "Night exercise"]);
  });

  test("that the browser would not do puts it back and says so", async () => {
    await shown(world({ removing: false }));
    await press(/^Take out \(Night exercise/);
    expect(screen.getByText(writeWords.notTakenOut("Night exercise"))).toBeTruthy();
    expect(titles()).toHaveLength(2);
  });
});
