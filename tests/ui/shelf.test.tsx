// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen, waitFor, within } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import type { Act, Bottle, Contents } from "../../src/logbook/bottle.ts";
import { stateOf } from "../../src/logbook/bottle-state.ts";
import { emptyRoom, type RoomLists } from "../../src/logbook/room-store.ts";
import { shelfWith } from "../../src/ui/shelf.tsx";
import { notices } from "../../src/ui/words/en/frame.ts";
import { room as roomWords } from "../../src/ui/words/en/room.ts";
import { shelf as say } from "../../src/ui/words/en/shelf.ts";
import { bottleForm, bottleLabels, fixerWords } from "../../src/ui/words/en/shelf-form.ts";
import { write as writeWords } from "../../src/ui/words/en/write.ts";
import { bottleOf, fixerB, roomByHand, shelfByHand } from "./shelf-by-hand.ts";
import "./late-words.ts";

afterEach(cleanup);

const withActs = (bottle: Bottle, acts: readonly (readonly [string, Act])[]): Bottle => ({
  ...bottle,
  entries: [
    ...bottle.entries,
    ...acts.map(([on, it], at) => ({ ...it, id: `${bottle.id} ${at}`, at, on })),
  ],
});

async function shown(
  told: Parameters<typeof shelfByHand>[0] = {},
  lists: RoomLists = emptyRoom,
  keepsLists = true,
) {
  const hand = shelfByHand(told);
  const house = roomByHand(lists, keepsLists);
  const printed: string[] = [];
  const print = () => {
    printed.push(document.body.querySelector(".print-out")?.textContent ?? "");
  };
  const Shelf = shelfWith({ shelf: hand.shelf, room: house.room, newId: hand.newId, print });
  render(<Shelf />);
  await settled();
  return { ...hand, house, printed };
}

/** The store answers a few turns later. */
const settled = () => act(() => new Promise((resolve) => setTimeout(resolve, 5)));
const press = (name: string | RegExp) => {
  fireEvent.click(screen.getByRole("button", { name }));
  return settled();
};
const type = (label: string | RegExp, value: string) => {
  fireEvent.input(screen.getByLabelText(label), { target: { value } });
  return settled();
};
const choose = (label: string, value: string) => {
  fireEvent.change(screen.getByLabelText(label), { target: { value } });
  return settled();
};
const send = (name: string) => {
  fireEvent.submit(screen.getByRole("button", { name }).closest("form") as HTMLFormElement);
  return settled();
};
const bottle = (name: string) => within(screen.getByRole("article", { name }));
const names = () =>
  screen.queryAllByRole("article").map((it) => within(it).getAllByRole("heading")[0]?.textContent);

describe("a bottle", () => {
  test("is put on the shelf as it was typed, and what is wrong is said beside its field", async () => {
    const it = await shown();
    expect(screen.getByText(say.empty)).toBeTruthy();
    await press(say.add);
    await type(bottleForm.volume, "lots");
    await send(bottleForm.add);
    const name = screen.getByLabelText(bottleForm.name);
    expect(name.getAttribute("aria-invalid")).toBe("true");
    expect(screen.getByLabelText(bottleForm.volume).getAttribute("aria-invalid")).toBe("true");
    await waitFor(() => expect(document.activeElement).toBe(name));
    expect(it.kept()).toEqual([]);

    await type(bottleForm.name, "Fixer B");
    await choose(bottleForm.kind, "fixer");
    await type(bottleForm.strength, "1+4");
    await type(bottleForm.volume, "1 l");
    await type(bottleForm.mixedOn, "2026-04-01");
    await type(bottleForm.by, "E. M.");
    await type(bottleForm.from, "concentrate");
    await type(bottleForm.opened, "2");
    await type(bottleForm.filmsPerLitre, "20");
    await send(bottleForm.add);
    expect(it.kept().map((kept) => stateOf(kept).contents)).toEqual([fixerB]);
    expect(names()).toEqual(["Fixer B"]);
    expect(bottle("Fixer B").getByText("Fixer, working solution, 1+4")).toBeTruthy();
    expect(bottle("Fixer B").getByText("April 1, 2026, by E. M., from concentrate")).toBeTruthy();
    expect(bottle("Fixer B").getByText("0 of 20")).toBeTruthy();
  });

  test("of a name that another has is refused, and a poured one's name is free again", async () => {
    const away = withActs(bottleOf({ ...fixerB, name: "Old" }), [
      ["2026-05-01", { kind: "poured-away" }],
    ]);
    await shown({ bottles: [bottleOf(fixerB), away] });
    const add = async (name: string) => {
      await type(bottleForm.name, name);
      await type(bottleForm.volume, "1 l");
      await send(bottleForm.add);
    };
    await press(say.add);
    await add("Fixer B");
    expect(screen.getByRole("alert").textContent).toBe(say.refusals["name-taken"]);
    await add("Old");
    expect(screen.queryByRole("alert")?.textContent ?? "").toBe("");
    expect(names().filter((name) => name === "Old")).toHaveLength(2);
  });

  test("takes what is done with it, and each line of its history can be taken back", async () => {
    const it = await shown({ bottles: [bottleOf(fixerB)] });
    await press(/^Films through it/);
    await type(bottleForm.size, "120");
    await type(bottleForm.count, "3");
    await send(bottleForm.writeDown);
    expect(bottle("Fixer B").getByText("3 of 20 (3 × 120)")).toBeTruthy();
    expect(screen.getByText(say.kept("Fixer B"))).toBeTruthy();
    // What was pressed is gone: the way back is next, beside the bottle.
    const undo = bottle("Fixer B").getByRole("button", { name: say.undoLast });
    expect(document.activeElement).toBe(undo);
    await press(say.undoLast);
    expect(bottle("Fixer B").getByText("0 of 20")).toBeTruthy();
    expect(document.activeElement?.textContent).toBe("Fixer B");
    await press(/^Put back.*3 × 120/);

    await press(/^Some poured off/);
    await type(bottleForm.volume, "1.5 l");
    await send(bottleForm.writeDown);
    expect(screen.getByRole("alert").textContent).toBe(say.refusals["more-than-left"]);
    await type(bottleForm.volume, "500 ml");
    await send(bottleForm.writeDown);
    expect(bottle("Fixer B").getByText("500 ml of 1000 ml")).toBeTruthy();
    expect(bottle("Fixer B").getByText(say.counted("1.5 of 10"))).toBeTruthy();

    await press(/^Take back.*500 ml poured off/);
    expect(bottle("Fixer B").getByText("1000 ml of 1000 ml")).toBeTruthy();
    await press(/^Put back.*500 ml poured off/);
    expect(bottle("Fixer B").getByText("500 ml of 1000 ml")).toBeTruthy();
    // Nothing that was written is ever gone.
    expect(it.kept()[0]?.entries.map(({ kind }) => kind)).toEqual([
      "mixed",
      "films",
      "undone",
      "redone",
      "taken",
      "undone",
      "redone",
    ]);
  });

  test("that is deleted can be brought back at once, and later", async () => {
    await shown({ bottles: [bottleOf(fixerB)] });
    await press(/^Delete/);
    expect(screen.getByText(say.removed(1))).toBeTruthy();
    expect(screen.getByText(say.empty)).toBeTruthy();
    await press(say.undoLast);
    expect(screen.queryByText(say.removed(1))).toBeNull();
    await press(/^Delete/);
    await press(/^Put back \(Fixer B\)$/);
    expect(screen.queryByText(say.removed(1))).toBeNull();
  });

  test("is corrected with what stood there filled in", async () => {
    const it = await shown({ bottles: [bottleOf(fixerB)] });
    await press(/^Correct/);
    expect((screen.getByLabelText(bottleForm.strength) as HTMLInputElement).value).toBe("1+4");
    await type(bottleForm.name, "Fixer C");
    await send(bottleForm.correct);
    expect(names()).toEqual(["Fixer C"]);
    const [kept] = it.kept();
    expect(kept && stateOf(kept).contents).toEqual({ ...fixerB, name: "Fixer C" });
  });

  test("is said to be past its day, set aside, or not kept, in words", async () => {
    const past: Contents = { ...fixerB, keeps: { full: { count: 1, unit: "months" } } };
    await shown({ bottles: [bottleOf(past)], keeps: false });
    expect(
      bottle("Fixer B").getByText(/May 1, 2026 \(mixed on April 1, 2026\): past its day/),
    ).toBeTruthy();
    await press(/^Set aside/);
    await send(bottleForm.writeDown);
    expect(screen.getByRole("alert").textContent).toBe(say.notKept);
    cleanup();
    await shown({ refuses: true });
    expect(screen.getByText(say.refused)).toBeTruthy();
  });
});

describe("a fixer", () => {
  const tested = (seconds: number): Act => ({ kind: "tested", seconds, film: "Gullrock 125" });
  const rolls = (count: number): Act => ({ kind: "films", films: [{ size: "135-36", count }] });

  test("has its tally and its tests side by side, and says which to trust where they disagree", async () => {
    await shown({
      bottles: [
        withActs(bottleOf(fixerB), [
          ["2026-04-01", tested(25)],
          ["2026-04-20", rolls(8)],
          ["2026-04-21", tested(52)],
          ["2026-04-22", rolls(2)],
        ]),
      ],
    });
    const life = within(screen.getByRole("region", { name: fixerWords.title }));
    expect(life.getByText(fixerWords.tallySays.good("10", "20"))).toBeTruthy();
    expect(life.getByText(fixerWords.testSays.spent("2.08"))).toBeTruthy();
    expect(life.getByText(new RegExp(fixerWords.trust.test))).toBeTruthy();
    expect(life.getByText(/twice as long .*NAVEDTRA 14209.* 2 films/)).toBeTruthy();
    expect(life.getByRole("img", { name: new RegExp(fixerWords.says(2, "0:52")) })).toBeTruthy();
    expect(
      life
        .getAllByRole("row")
        .slice(1)
        .map(({ textContent }) => textContent),
    ).toEqual(["April 1, 20260:25Gullrock 1250", "April 21, 20260:52Gullrock 1258"]);
  });

  test("whose last test was of another film than the fresh one’s is called neither good nor spent by it", async () => {
    const other: Act = { kind: "tested", seconds: 90, film: "Foghorn 400" };
    await shown({
      bottles: [
        withActs(bottleOf(fixerB), [
          ["2026-04-01", tested(30)],
          ["2026-04-20", rolls(8)],
          ["2026-04-21", other],
        ]),
      ],
    });
    expect(screen.getByText(fixerWords.testSays.silent)).toBeTruthy();
  });

  test("that was never tested is told how: fresh first", async () => {
    await shown({ bottles: [bottleOf(fixerB)] });
    expect(screen.getByText(bottleForm.freshFirst)).toBeTruthy();
    await press(/^Clearing test/);
    await type(bottleForm.time, "25");
    await type(bottleForm.film, "Gullrock 125");
    await send(bottleForm.writeDown);
    expect(screen.getByText(fixerWords.testSays.good("1"))).toBeTruthy();
  });
});

describe("on paper", () => {
  test("labels stand by themselves, with the person's own hazard statements and no others", async () => {
    const hazards = "H319 Causes serious eye irritation.\nP264 Wash hands.";
    const stock: Contents = { ...fixerB, name: "Kelp", kind: "developer", hazards };
    const it = await shown({
      bottles: [
        withActs(bottleOf(fixerB), [
          ["2026-04-20", { kind: "films", films: [{ size: "120", count: 7 }] }],
        ]),
        bottleOf(stock),
      ],
    });
    await press(bottleLabels.print(2));
    expect(document.documentElement.dataset.prints).toBe("part");
    const labels = [...document.querySelectorAll(".print-out .label")];
    expect(labels.map((label) => label.querySelector(".hazards")?.textContent)).toEqual([
      "",
      hazards,
    ]);
    const boxes = labels[0]?.querySelector(".boxes")?.textContent ?? "";
    expect([boxes.split("☒").length - 1, boxes.split("☐").length - 1]).toEqual([7, 13]);
    expect(labels[0]?.textContent).toContain("April 1, 2026");
    window.dispatchEvent(new Event("afterprint"));
    expect(document.querySelector(".print-out")).toBeNull();
    expect(document.documentElement.dataset.prints).toBeUndefined();

    await act(async () => {
      fireEvent.click(screen.getByRole("checkbox", { name: "Kelp" }));
    });
    await press(bottleLabels.print(1));
    expect(it.printed[1]).not.toContain("Kelp");
    window.dispatchEvent(new Event("afterprint"));
  });
});

describe("the room's lists", () => {
  const lists: RoomLists = {
    opening: [
      { text: "Fan on", done: false },
      { text: "Blind down", done: false },
    ],
    closing: [],
    waste: [{ text: "Fixer: blue can", done: false }],
  };

  test("are empty at first, and invite; Gullrock Light's come only when asked for", async () => {
    const it = await shown();
    for (const invite of Object.values(roomWords.invite))
      expect(screen.getByText(invite)).toBeTruthy();
    expect(it.house.lists()).toEqual(emptyRoom);
    await press(roomWords.demo);
    expect(it.house.lists().closing.length).toBeGreaterThan(2);
    expect(screen.queryByRole("button", { name: roomWords.demo })).toBeNull();
  });

  test("are written, ticked, untangled of all ticks and printed", async () => {
    const it = await shown({}, lists);
    await act(async () => {
      fireEvent.click(screen.getByLabelText("Fan on"));
    });
    expect(screen.getByText(roomWords.ticked(1, 2))).toBeTruthy();
    await press(/^Write this list.*Opening/);
    await type(roomWords.lists.opening, "Fan on\nTaps looked at");
    await send(roomWords.keep);
    expect(it.house.lists().opening).toEqual([
      { text: "Fan on", done: true },
      { text: "Taps looked at", done: false },
    ]);
    await press(roomWords.print);
    expect(it.printed[0]).toContain("☐ Taps looked at");
    expect(it.printed[0]).toContain("Fixer: blue can");
    window.dispatchEvent(new Event("afterprint"));
    await press(roomWords.reset);
    expect(it.house.lists().opening.some(({ done }) => done)).toBe(false);
  });

  test("that lost lines or ticks have them back by a press, which the focus is on and does not fall from", async () => {
    const it = await shown({}, lists);
    const undo = () => screen.queryByRole("button", { name: writeWords.undo });
    expect(undo()).toBeNull();
    await press(/^Write this list.*Opening/);
    await type(roomWords.lists.opening, "Fan on");
    await send(roomWords.keep);
    expect(screen.queryByText("Blind down")).toBeNull();
    expect(document.activeElement).toBe(undo());
    await press(writeWords.undo);
    expect(it.house.lists()).toEqual(lists);
    expect(undo()).toBeNull();
    expect(document.activeElement?.textContent).toBe(notices.undone);
  });

  test("that the browser would not keep say so", async () => {
    await shown({}, lists, false);
    await act(async () => {
      fireEvent.click(screen.getByLabelText("Fan on"));
    });
    await settled();
    expect(screen.getByText(roomWords.notKept)).toBeTruthy();
  });
});

describe("what a file brought", () => {
  test("stands there at once, on the shelf and in the lists", async () => {
    const it = await shown();
    const brought = bottleOf({ ...fixerB, name: "Brought" });
    it.changedElsewhere([brought]);
    it.house.changedElsewhere({ ...emptyRoom, opening: [{ text: "Lamp tested", done: false }] });
    await Promise.all([it.shelf.lookAgain(), it.house.room.lookAgain()]);
    await settled();
    expect(names()).toEqual(["Brought"]);
    expect(screen.getByLabelText("Lamp tested")).toBeTruthy();
  });
});

describe("the shelf of Gullrock Light", () => {
  test("is put there only when asked for, and its fixer's tally and test disagree", async () => {
    const it = await shown();
    expect(it.kept()).toEqual([]);
    await press(say.demo);
    await settled();
    expect(names()).toHaveLength(3);
    expect(screen.getByText(new RegExp(fixerWords.disagree))).toBeTruthy();
    expect(screen.queryByRole("button", { name: say.demo })).toBeNull();
    for (const { entries } of it.kept()) {
      for (const entry of entries)
        if (entry.kind === "mixed") expect(entry.contents.hazards).toBeUndefined();
    }
  });
});
