// @vitest-environment happy-dom
import { effect, signal } from "@preact/signals";
import { act, cleanup, fireEvent, render, screen, waitFor, within } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import type { Written } from "../../src/logbook/run-store.ts";
import { demos } from "../../src/ui/demo.ts";
import {
  again as againWords,
  beside,
  dictate,
  everything as fileWords,
  find,
  overTime,
  pictures as pictureWords,
  stars as starWords,
} from "../../src/ui/words/en/log.ts";
import { negatives as said } from "../../src/ui/words/en/negatives.ts";
import { shelf as shelfWords } from "../../src/ui/words/en/shelf.ts";
import { steps as stepWords, write as writeWords } from "../../src/ui/words/en/write.ts";
import { writeUpWith } from "../../src/ui/write-up.tsx";
import { dayAndTime, pressLines } from "../../src/ui/write-up-model.ts";
import { openWriteUp } from "../../src/ui/write-up-state.ts";
import { foghorn } from "../plan/worksheets.ts";
import { compiled } from "../timeline/scene.ts";
import { bottleOf, fixerB, shelfByHand } from "./shelf-by-hand.ts";
import { begunAt, gullrock, night, type Says, writeUpWorld as world } from "./write-up-world.tsx";
import "./late-words.ts";

afterEach(cleanup);

async function shown(it: ReturnType<typeof world>) {
  const Place = writeUpWith(it.ports);
  const page = render(<Place worksheet={signal(null)} plan={signal(null)} />);
  await act(async () => {});
  return page;
}

/** Files are read and stores answer a little later. */
const answered = () => new Promise((resolve) => setTimeout(resolve, 5));
const press = (name: string | RegExp) =>
  act(async () => {
    fireEvent.click(screen.getByRole("button", { name }));
    await answered();
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
  test.each([
    [true, [[2, true]]],
    [
      false,
      [
        [2, false],
        [2, true],
      ],
    ],
  ] as const)(
    "are drawn with all lines in one go where these were read before (%s)",
    async (linesKnown, drawn) => {
      const seen: (readonly [number, boolean])[] = [];
      const writeUp = openWriteUp({ ...world({ linesKnown }).ports, done: signal([]) });
      effect(() => {
        if (writeUp.shown.value.length > 0)
          seen.push([writeUp.shown.value.length, writeUp.whole.value]);
      });
      await answered();
      expect(seen).toEqual(drawn);
    },
  );

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
    await shown(world({ runs: [] }));
    expect(screen.getByText(writeWords.empty, { exact: false })).toBeTruthy();
    // Bottles, tanks and the room's lists can be saved without a run.
    expect(screen.getByRole("button", { name: writeWords.saveAll })).toBeTruthy();
    expect(screen.queryByRole("button", { name: fileWords.table })).toBeNull();
  });

  test("that the browser keeps not, or not all, are said to go with the page", async () => {
    await shown(world({ kind: "refused", runs: [gullrock] }));
    expect(screen.getByText(writeWords.refused)).toBeTruthy();
    expect(titles()).toHaveLength(1);
    cleanup();
    await shown(world({ onlyHere: ["night"], unread: 2 }));
    expect(screen.getByText(writeWords.onlyHere(1))).toBeTruthy();
    expect(screen.getByText(writeWords.unread(2))).toBeTruthy();
  });

  test("can all be saved to one file, with what is being typed", async () => {
    const it = world();
    await shown(it);
    await write("thin");
    await press(writeWords.saveAll);
    expect(it.saved.map(({ name }) => name)).toEqual([writeWords.file]);
    // What is typed is given to the store first.
    expect(it.told).toEqual(["note night “thin”", "all, 0 held"]);
    const { runs, tanks, settings } = JSON.parse(it.saved[0]?.text ?? "");
    expect({ runs, tanks, settings }).toEqual({ runs: [gullrock, night], tanks: [], settings: {} });
  });

  test("that go with the page are in the file too", async () => {
    const it = world({ kind: "refused" });
    await shown(it);
    await press(writeWords.saveAll);
    expect(it.told).toEqual(["all, 2 held"]);
  });

  test("are not saved in part where what is kept cannot be read, which is told", async () => {
    const it = world({ unreadable: true });
    await shown(it);
    for (const name of [writeWords.saveAll, fileWords.table]) {
      await press(name);
      expect(screen.getByText(fileWords.notSaved)).toBeTruthy();
    }
    expect(it.saved).toEqual([]);
  });

  test("that are more than the browser makes a file of are told of", async () => {
    const it = world();
    it.ports.saveFile = () => {
      throw new RangeError("Invalid string length");
    };
    await shown(it);
    await press(writeWords.saveAll);
    expect(screen.getByText(fileWords.notSaved)).toBeTruthy();
  });

  test("can be saved as a table, the newest first", async () => {
    const it = world({ runs: [night, gullrock] });
    await shown(it);
    await press(fileWords.table);
    expect(it.saved.map(({ name }) => name)).toEqual([fileWords.tableFile]);
    const rows = it.saved[0]?.text.split("\r\n") ?? [];
    expect(rows.map((row) => row.replace("\ufeff", "").split(",")[0])).toEqual([
      "id",
      "gullrock",
      "night",
      "",
    ]);
  });
});

describe("doing a run again", () => {
  const asked = async (says: Says = {}) => {
    const it = world(says);
    await shown(it);
    await press(/^Do this again \(Night exercise/);
    const field = night_().getByLabelText(againWords.asks) as HTMLInputElement;
    const type = (text: string) =>
      act(async () => {
        fireEvent.input(field, { target: { value: text } });
      });
    return { it, type };
  };

  test("asks for today's temperature, and makes today's worksheet of the rest", async () => {
    const { it, type } = await asked();
    expect(night_().getByText(againWords.hint("21 °C"))).toBeTruthy();
    await type("22,5 C");
    await press(againWords.make);
    const { developer, mixing, tempering, ...rest } = it.again[0] ?? demos.gullrock;
    const { filmsBefore: _, ...asBefore } = foghorn.developer;
    expect(developer).toEqual({ ...asBefore, temperature: { c: 22.5 } });
    expect([mixing, tempering]).toEqual([undefined, undefined]);
    expect(rest.tank).toEqual(foghorn.tank);
  });

  test("lends a bare number the scale of the old run", async () => {
    const { it, type } = await asked();
    await type("20.5");
    await press(againWords.make);
    expect(it.again[0]?.developer.temperature).toEqual({ c: 20.5 });
  });

  test("fills in from a bottle as it stands on the shelf now, and goes on without a shelf", async () => {
    const worksheet = {
      ...foghorn,
      baths: { fixer: { time: "5:00", bottle: "Fixer B", filmsBefore: 19 } },
    };
    const runs = [{ ...night, worksheet }];
    const { shelf } = shelfByHand({ bottles: [bottleOf(fixerB)] });
    for (const bottles of [async () => shelf, undefined]) {
      const { it, type } = await asked(bottles ? { runs, bottles } : { runs });
      await type("21 °C");
      await press(againWords.make);
      expect(it.again).toHaveLength(1);
      expect(it.again[0]?.baths?.fixer).toEqual({
        time: "5:00",
        bottle: "Fixer B",
        ...(bottles ? { filmsPerLitre: 20, filmsBefore: 0, kept: { ml: 1000 } } : {}),
      });
      cleanup();
    }
  });

  test("says what may stand there where it is no temperature, or none of a bath", async () => {
    const { it, type } = await asked();
    await press(againWords.make);
    expect(night_().getByText(/^Needed: a temperature with its unit/)).toBeTruthy();
    await type("300 °C");
    await press(againWords.make);
    expect(night_().getByText(/^“300 °C” cannot be used/)).toBeTruthy();
    expect(it.again).toEqual([]);
    await press(againWords.leave);
    expect(night_().queryByLabelText(againWords.asks)).toBeNull();
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
    const worksheet = {
      ...demos.gullrock,
      developer: { ...developer, bottle: "Kelp stock" },
      baths: { ...baths, fixer: { ...baths?.fixer, bottle: "Fixer B" } },
    };
    await shown(world({ runs: [{ ...gullrock, worksheet }] }));
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
    const it = world({ notes: "refused" });
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
    await act(async () => {});
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

  test("can still be undone after another place was shown meanwhile", async () => {
    const it = world();
    const Place = writeUpWith(it.ports);
    const place = <Place worksheet={signal(null)} plan={signal(null)} />;
    render(place);
    await act(async () => {});
    await press(/^Take out \(Night exercise/);
    cleanup();
    render(place);
    await act(async () => {});
    expect(titles()).toEqual(["Gullrock Light, Thursday evening"]);
    expect(screen.getByText(writeWords.takenOut("Night exercise"))).toBeTruthy();
    await press(writeWords.undo);
    expect(titles()).toEqual(["Gullrock Light, Thursday evening", "Night exercise"]);
  });

  test("that cannot be put back with its pictures is told of, and can be tried again", async () => {
    const image = new Blob(["an image"]);
    const size = { width: 2, height: 3 };
    const picture = { id: "p", run: "night", alt: "", addedAt: 1, changedAt: 1, image, ...size };
    const says = { putting: "no room" as Written, takenWith: [picture] };
    await shown(world(says));
    await press(/^Take out \(Night exercise/);
    await press(writeWords.undo);
    expect(screen.getByText(writeWords.notPutBack("Night exercise"))).toBeTruthy();
    expect(titles()).toEqual(["Gullrock Light, Thursday evening"]);
    says.putting = "kept";
    await press(writeWords.undo);
    expect(titles()).toEqual(["Gullrock Light, Thursday evening", "Night exercise"]);
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

describe("stars", () => {
  test("are a choice of words with their numbers, kept at once, and can be taken back", async () => {
    const it = world();
    await shown(it);
    const group = () =>
      within(night_().getByRole("group", { name: starWords.asks })).getAllByRole("radio");
    expect(group().map((radio) => radio.parentElement?.textContent)).toEqual([
      ...[1, 2, 3, 4, 5].map((n) => starWords.each(n, Object.values(starWords.words)[n - 1] ?? "")),
      starWords.unsaid,
    ]);
    for (const at of [3, 5])
      await act(async () => {
        fireEvent.click(group()[at] as HTMLElement);
      });
    expect(it.told.filter((one) => one.startsWith("stars"))).toEqual([
      "stars night 4",
      "stars night 0",
    ]);
  });
});

describe("finding", () => {
  const many = Array.from({ length: 25 }, (_, i) => ({
    ...(i % 5 === 0 ? night : gullrock),
    id: `run ${i}`,
    begunAt: begunAt - i * 40 * 86_400_000,
    note: i === 7 ? "Éclat, at the edge" : "",
    stars: i === 3 ? (5 as const) : (0 as const),
  }));
  async function choose(name: string, value: RegExp): Promise<void> {
    const select = screen.getByLabelText(name) as HTMLSelectElement;
    // What else could be chosen is counted once the runs are drawn.
    const chosen = await waitFor(() => {
      const option = [...select.options].find(({ text }) => value.test(text));
      if (option === undefined) throw new Error(`${name} offers no ${value}`);
      return option.value;
    });
    await act(async () => void fireEvent.change(select, { target: { value: chosen } }));
  }
  const search = (text: string) =>
    act(async () => {
      fireEvent.input(screen.getByLabelText(find.search), { target: { value: text } });
    });

  test("shows ten runs, and ten more at a press", async () => {
    await shown(world({ runs: many }));
    expect(titles()).toHaveLength(10);
    expect(screen.getByText(find.count(25, 25))).toBeTruthy();
    await press(find.more(10));
    await press(find.more(5));
    expect(titles()).toHaveLength(25);
    expect(screen.queryByRole("button", { name: /^Show \d+ more/ })).toBeNull();
  });

  test("by words needs all of them, and minds neither capitals nor accents", async () => {
    await shown(world({ runs: many }));
    await search("ECLAT  edge");
    expect(titles()).toHaveLength(1);
    expect(screen.getByText(find.count(1, 25))).toBeTruthy();
    await search("eclat nowhere");
    expect(titles()).toEqual([]);
    expect(screen.getByText(find.none, { exact: false })).toBeTruthy();
    await press(find.clear);
    expect(titles()).toHaveLength(10);
  });

  test("by film, developer, year and stars tells how many each would leave", async () => {
    await shown(world({ runs: many }));
    await choose(find.film, /^Foghorn 400 \(5\)/);
    expect(screen.getByText(find.count(5, 25))).toBeTruthy();
    await choose(find.year, /^2025/);
    const left = screen.getByText(/^\d of 25 runs$/).textContent;
    expect(left).toBe(find.count(2, 25));
    await choose(find.film, new RegExp(`^${find.all}$`));
    await choose(find.year, new RegExp(`^${find.all}$`));
    await choose(find.stars, /^5: /);
    expect(titles()).toHaveLength(1);
    const options = [...(screen.getByLabelText(find.stars) as HTMLSelectElement).options];
    expect(options.map(({ text }) => text)).toEqual([
      find.all,
      `${starWords.each(5, starWords.words[5])} (1)`,
      `${starWords.unsaid} (24)`,
    ]);
  });

  test.each([
    ["two", [gullrock, night]],
    ["three", [gullrock, night, { ...gullrock, id: "more", begunAt: begunAt - 1000 }]],
  ])(
    "is shown for as long as it holds, also once the last of %s runs of a film is gone",
    async (_, runs) => {
      await shown(world({ runs }));
      await choose(find.film, /^Foghorn 400/);
      await press(/^Take out/);
      expect(titles()).toEqual([]);
      const select = screen.getByLabelText(find.film) as HTMLSelectElement;
      expect(select.selectedOptions[0]?.text).toBe(find.choice("Foghorn 400", 0));
      await choose(find.film, new RegExp(`^${find.all}$`));
      expect(titles()).toHaveLength(runs.length - 1);
      const left = screen.getByLabelText(find.film) as HTMLSelectElement;
      expect([...left.options].some(({ text }) => text.startsWith("Foghorn"))).toBe(false);
    },
  );

  test("takes a run that was said to be otherwise out of the choice at once", async () => {
    await shown(world({ runs: many }));
    await choose(find.stars, /^5: /);
    await act(async () => {
      fireEvent.click(screen.getByLabelText(starWords.each(2, starWords.words[2])));
    });
    expect(titles()).toEqual([]);
  });
});

describe("two runs beside each other", () => {
  test("tell what differed first, then the same, and can be put away", async () => {
    await shown(world());
    await press(/^Compare \(Night exercise/);
    expect(screen.getByText(beside.hint)).toBeTruthy();
    await press(/^Compare \(Gullrock/);
    const [differed, same] = screen.getAllByRole("table").filter((it) => it.closest(".two-runs"));
    const rows = (table: HTMLElement | undefined) =>
      within(table as HTMLElement)
        .getAllByRole("row")
        .slice(1)
        .map((row) => [...row.children].map((cell) => cell.textContent));
    expect(rows(differed)).toContainEqual([beside.planned, "13:45", "9:29"]);
    expect(rows(differed)).toContainEqual([writeWords.note, "—", "good"]);
    expect(rows(same).every(([, a, b]) => a === b)).toBe(true);
    expect(rows(same).length).toBeGreaterThan(0);
    expect(document.activeElement?.textContent).toBe(beside.name);
    await press(beside.leave);
    expect(screen.queryByText(beside.name)).toBeNull();
  });

  test("are no longer shown once one is taken out", async () => {
    await shown(world());
    await press(/^Compare \(Night exercise/);
    await press(/^Compare \(Gullrock/);
    await press(/^Take out \(Gullrock/);
    expect(screen.queryByText(beside.name)).toBeNull();
    expect(screen.getByText(beside.hint)).toBeTruthy();
  });
});

describe("the months", () => {
  const strayed = (id: string, month: number, f: number, by: number) => ({
    ...gullrock,
    id,
    begunAt: new Date(2026, month, 3).getTime(),
    worksheet: {
      ...demos.gullrock,
      developer: { ...demos.gullrock.developer, temperature: { f } },
    },
    otherwise: [{ kind: "emptied" as const, at: begunAt, bath: "developer", by }],
  });

  test("stand as a drawing and as a table with the same figures, in the scale of the last run", async () => {
    await shown(
      world({
        runs: [
          strayed("a", 0, 68, 4),
          strayed("b", 0, 70, -2),
          strayed("c", 0, 71, 0),
          strayed("d", 2, 69, 9),
        ],
      }),
    );
    expect(document.querySelectorAll(".over-time table")).toHaveLength(0);
    const fold = screen.getByText(overTime.name).parentElement as HTMLDetailsElement;
    await act(async () => {
      fold.open = true;
      fireEvent(fold, new Event("toggle"));
    });
    const table = screen.getByRole("table", { name: overTime.temperature });
    expect(within(table).getByText(overTime.span("70 °F", "68 °F", "71 °F"))).toBeTruthy();
    expect(within(table).getByText("69 °F")).toBeTruthy();
    const late = screen.getByRole("table", { name: overTime.late("Developer") });
    expect(within(late).getByText(overTime.span("0 s", "−2 s", "4 s"))).toBeTruthy();
    expect(document.querySelectorAll(".over-time circle")).toHaveLength(4);
  });

  test("are not drawn of one month alone", async () => {
    await shown(world({ runs: [gullrock, { ...gullrock, id: "b" }] }));
    expect(screen.queryByText(overTime.name)).toBeNull();
  });
});

describe("pictures of the negatives", () => {
  const add = (...files: readonly File[]) =>
    act(async () => {
      const input = night_().getByLabelText(pictureWords.add);
      Object.defineProperty(input, "files", { value: files, configurable: true });
      fireEvent.change(input);
      await answered();
    });
  const photo = new File(["x"], "photo.jpg", { type: "image/jpeg" });

  test("are added, described, taken out, and brought back", async () => {
    const it = world();
    await shown(it);
    await add(photo, photo);
    expect(night_().getAllByRole("img")).toHaveLength(2);
    const first = night_().getAllByLabelText(pictureWords.alt)[0] as HTMLInputElement;
    await act(async () => {
      fireEvent.change(first, { target: { value: "Six thin frames" } });
    });
    expect(night_().getByRole("img", { name: "Six thin frames" })).toBeTruthy();
    expect(it.pictured.map(({ run, alt }) => [run, alt])).toEqual([
      ["night", "Six thin frames"],
      ["night", ""],
    ]);
    await press(new RegExp(`^${pictureWords.remove} Six`));
    await waitFor(() => expect(night_().getAllByRole("img")).toHaveLength(1));
    expect(screen.getByText(pictureWords.removed)).toBeTruthy();
    await press(writeWords.undo);
    expect(await night_().findByRole("img", { name: "Six thin frames" })).toBeTruthy();
  });

  test.each([
    ["as it was being kept", fireEvent.change],
    ["and was not even left", fireEvent.input],
  ])(
    "come back with the description that was typed last before they were taken out, %s",
    async (_, type) => {
      const slow = <Came,>(came: Promise<Came>) => answered().then(() => came);
      const it = world();
      const { keep } = it.ports.pictures;
      it.ports.pictures.keep = (picture) => slow(keep(picture));
      await shown(it);
      await add(photo);
      await act(async () => void (await answered()));
      const field = night_().getByLabelText(pictureWords.alt);
      await act(async () => {
        type(field, { target: { value: "Six thin frames" } });
        fireEvent.click(night_().getByRole("button", { name: new RegExp(pictureWords.remove) }));
        await answered();
        await answered();
      });
      expect(it.pictured).toEqual([]);
      await press(writeWords.undo);
      expect(await night_().findByRole("img", { name: "Six thin frames" })).toBeTruthy();
      expect(it.pictured.map(({ alt }) => alt)).toEqual(["Six thin frames"]);
    },
  );

  test("that are none, or find no room, are said, and nothing else changes", async () => {
    const it = world({ picturing: "no room" });
    await shown(it);
    await add(new File(["x"], "notes.txt", { type: "text/plain" }));
    expect(screen.getByText(pictureWords.notPicture("notes.txt"))).toBeTruthy();
    await add(photo);
    expect(screen.getByText(pictureWords.noRoom)).toBeTruthy();
    expect(it.pictured).toEqual([]);
  });
});

describe("dictating", () => {
  function dictation(here: boolean) {
    const started: { onlyHere: boolean; heard: (words: string) => void; end: () => void }[] = [];
    return {
      started,
      port: {
        here: async () => here,
        start({ onlyHere, heard, over }: Parameters<NonNullable<Says["dictation"]>["start"]>[0]) {
          const end = () => over("stopped");
          started.push({ onlyHere, heard, end });
          return end;
        },
      },
    };
  }
  const dictates = () =>
    act(async () => {
      fireEvent.click(night_().getByRole("button", { name: dictate.start }));
    });
  const text = () => (night_().getByLabelText(writeWords.note) as HTMLTextAreaElement).value;

  test("is not offered where the browser has none", async () => {
    await shown(world());
    expect(night_().queryByRole("button", { name: dictate.start })).toBeNull();
  });

  test("on the device begins at a press, and puts what is understood behind what is typed", async () => {
    const { port, started } = dictation(true);
    await shown(world({ dictation: port }));
    expect(started).toEqual([]);
    await write("A little");
    await dictates();
    expect(started.map(({ onlyHere }) => onlyHere)).toEqual([true]);
    await act(async () => started[0]?.heard("thin"));
    await act(async () => started[0]?.heard("at the edge"));
    expect(text()).toBe("A little thin at the edge");
    await act(async () => {
      fireEvent.click(night_().getByRole("button", { name: dictate.stop }));
    });
    expect(night_().getByRole("button", { name: dictate.start })).toBeTruthy();
  });

  test("that may send sound away opens no microphone before it has been said and agreed to", async () => {
    const { port, started } = dictation(false);
    await shown(world({ dictation: port }));
    await dictates();
    expect(night_().getByText(dictate.away)).toBeTruthy();
    expect(started).toEqual([]);
    await press(dictate.decline);
    expect(night_().queryByText(dictate.away)).toBeNull();
    await dictates();
    await press(dictate.agree);
    expect(started.map(({ onlyHere }) => onlyHere)).toEqual([false]);
  });
});

describe("a file taken in", () => {
  const other = { ...gullrock, id: "other", begunAt: begunAt + 1000 };
  const content = {
    tankside: 1,
    version: 2,
    runs: [other],
    worksheets: [{ name: "worksheet", texts: { title: "x" } }],
  };
  const file = (text: string) => new File([text], "mine.json", { type: "application/json" });
  const none = { adds: 0, replaces: 0, skips: 0 };
  const looked = [
    { shelf: "runs", ...none, adds: 1 },
    { shelf: "worksheets", ...none, adds: 1 },
  ] as const;
  const whole = { file: file(JSON.stringify(content)), looked };

  test("is asked about, with what it would do, before anything is done", async () => {
    const it = world(whole);
    await shown(it);
    await press(fileWords.choose);
    expect(screen.getByText(fileWords.offer("mine.json"))).toBe(document.activeElement);
    const row = screen.getByRole("row", { name: /^Runs/ });
    expect([...row.children].map((cell) => cell.textContent)).toEqual(["Runs", "1", "0", "0"]);
    expect(it.told).not.toContain("take in");
    await press(fileWords.leave);
    expect(it.told).not.toContain("take in");
    expect(screen.queryByText(fileWords.offer("mine.json"))).toBeNull();
    await press(fileWords.choose);
    await press(fileWords.take);
    expect(it.told).toContain("take in");
    expect(it.texts).toEqual([{ title: "x" }]);
    expect(screen.getByText(fileWords.taken)).toBeTruthy();
    expect(titles()).toHaveLength(3);
    expect(it.lookedBeside).toHaveLength(1);
  });

  test.each([
    ["foreign", { file: file("no JSON") }, fileWords.foreign("mine.json")],
    [
      "of a newer version",
      { file: file('{"tankside":1,"version":3,"runs":[]}') },
      fileWords.newer("mine.json"),
    ],
    [
      "damaged",
      { file: file(JSON.stringify({ ...content, runs: [{ ...other, note: 7 }] })) },
      fileWords.damaged("mine.json", "runs[0].note"),
    ],
    [
      "old news",
      { ...whole, looked: [{ shelf: "runs", ...none, skips: 1 } as const] },
      fileWords.nothingNew("mine.json"),
    ],
    ["not to be looked at", { file: whole.file }, fileWords.refused],
  ])("that is %s is refused at once, in words", async (_, says, words) => {
    const it = world(says);
    await shown(it);
    await press(fileWords.choose);
    expect(screen.getByText(words)).toBeTruthy();
    expect(screen.queryByRole("button", { name: fileWords.take })).toBeNull();
  });

  test("for which there is no room is said so, before it is tried and after", async () => {
    for (const says of [
      { ...whole, room: 10 },
      { ...whole, taken: { kind: "not taken", why: "no room" } as const },
    ]) {
      await shown(world(says));
      await press(fileWords.choose);
      await press(fileWords.take);
      expect(screen.getByText(fileWords.noRoom)).toBeTruthy();
      cleanup();
    }
  });

  test("can be undone whole, with the worksheet that came, and the focus goes along", async () => {
    const it = world(whole);
    await shown(it);
    await press(fileWords.choose);
    await press(fileWords.take);
    expect(document.activeElement).toBe(screen.getByRole("button", { name: writeWords.undo }));
    await press(writeWords.undo);
    expect(it.told.at(-1)).toBe("take back");
    expect(it.texts).toEqual([]);
    expect(titles()).toEqual(["Gullrock Light, Thursday evening", "Night exercise"]);
    const said = screen.getByText(fileWords.takenBack(0));
    expect(document.activeElement).toBe(said);
    expect(screen.queryByRole("button", { name: writeWords.undo })).toBeNull();
  });

  test("is undone in turn with what was done before and after it, what is typed kept first", async () => {
    const it = world({ ...whole, stays: 2 });
    await shown(it);
    await press(/^Take out \(Night exercise/);
    await press(fileWords.choose);
    await press(fileWords.take);
    const older = screen.getAllByRole("button", { name: /^Take out \(Gullrock/ }).at(-1);
    await act(async () => {
      fireEvent.click(older as HTMLElement);
      await answered();
    });
    expect(it.told.at(-1)).toBe("remove gullrock");
    await press(writeWords.undo);
    expect(screen.getByText(fileWords.taken)).toBeTruthy();
    const [note] = screen.getAllByLabelText(writeWords.note);
    await act(async () => {
      fireEvent.input(note as HTMLElement, { target: { value: "typed" } });
    });
    await press(writeWords.undo);
    expect(it.told.slice(-2)).toEqual(["note other “typed”", "take back"]);
    expect(screen.getByText(fileWords.takenBack(2))).toBeTruthy();
    await press(writeWords.undo);
    expect(titles()).toEqual(["Gullrock Light, Thursday evening", "Night exercise"]);
  });

  test("that the browser would not take back says so, and it can be asked again", async () => {
    const it = world({ ...whole, stays: null });
    await shown(it);
    await press(fileWords.choose);
    await press(fileWords.take);
    await press(writeWords.undo);
    expect(screen.getByText(fileWords.notTakenBack)).toBeTruthy();
    expect(it.texts).toHaveLength(1);
    expect(screen.getByRole("button", { name: writeWords.undo })).toBeTruthy();
  });
});
