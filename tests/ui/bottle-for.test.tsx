// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import type { Act, Bottle, Contents } from "../../src/logbook/bottle.ts";
import { stateOf } from "../../src/logbook/bottle-state.ts";
import type { RunRecord } from "../../src/logbook/run-record.ts";
import { BottleFor } from "../../src/ui/bottle-for.tsx";
import { demos } from "../../src/ui/demo.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { pick } from "../../src/ui/words/en/shelf.ts";
import { WorkOutProvider } from "../../src/ui/work-out-context.ts";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { world } from "./ports.ts";
import { bottleOf, fixerB, shelfByHand } from "./shelf-by-hand.ts";

afterEach(cleanup);

const mq: Contents = {
  name: "Kelp working",
  kind: "developer",
  state: "working",
  strength: "1+3",
  mixedOn: "2026-05-04",
  volume: { ml: 1000 },
  keeps: { full: { count: 1, unit: "weeks" } },
  filmsPerLitre: 8,
  addPerFilm: 0.05,
};
const stock: Contents = { ...mq, name: "Kelp stock", state: "stock", volume: { ml: 100 } };
const withActs = (bottle: Bottle, ...acts: readonly Act[]): Bottle => ({
  ...bottle,
  entries: [
    ...bottle.entries,
    ...acts.map((it, at) => ({ ...it, id: `${bottle.id}-${at}`, at, on: "2026-05-05" })),
  ],
});
const rolls = (count: number): Act => ({ kind: "films", films: [{ size: "135-36", count }] });
const tested = (seconds: number): Act => ({ kind: "tested", seconds, film: "Gullrock 125" });

const settled = () => act(() => new Promise((resolve) => setTimeout(resolve, 5)));

async function shown(bath: string, ...bottles: readonly Bottle[]) {
  const hand = shelfByHand({ bottles });
  const ports = { ...world().ports, bottles: async () => hand.shelf };
  const workOut = makeWorkOut(draftOf(demos.gullrock), null, ports);
  render(
    <WorkOutProvider value={workOut}>
      <BottleFor bath={bath} />
    </WorkOutProvider>,
  );
  await settled();
  return { workOut, ...hand };
}

const choose = (name: string) => {
  fireEvent.change(screen.getByRole("combobox"), { target: { value: name } });
  return settled();
};
const offered = () => screen.getAllByRole("option").map(({ textContent }) => textContent);

describe("a bath of Work out", () => {
  test("is offered nothing where the shelf has no bottle for it", async () => {
    await shown("fixer", bottleOf(mq));
    expect(document.body.textContent).toBe("");
  });

  test("is offered the bottles of its kind that stand there, concentrates to the developer alone", async () => {
    const away = withActs(bottleOf({ ...fixerB, name: "Old" }), { kind: "poured-away" });
    const gone = withActs(bottleOf({ ...fixerB, name: "Gone" }), { kind: "removed" });
    const strong = bottleOf({ ...fixerB, name: "Strong", state: "stock" });
    await shown("fixer", bottleOf(fixerB), away, gone, strong, bottleOf(mq));
    expect(offered()).toEqual([pick.none, "Fixer B"]);
    cleanup();
    await shown("developer", bottleOf(stock), bottleOf(mq), bottleOf(fixerB));
    expect(offered()).toEqual([pick.none, "Kelp stock", "Kelp working"]);
  });

  test("takes from a fixer what went through it, its volume, capacity and clearing tests", async () => {
    const { workOut } = await shown(
      "fixer",
      withActs(bottleOf(fixerB), tested(25), rolls(19), tested(40)),
    );
    await choose("Fixer B");
    expect(workOut.worksheet.value?.baths?.fixer).toEqual({
      time: "5:00",
      bottle: "Fixer B",
      filmsPerLitre: 20,
      filmsBefore: 19,
      kept: { ml: 1000 },
      clearing: { time: "0:40", fresh: "0:25" },
    });
    // 19 before and 2 now are more than 20: the plan's own warning.
    expect(workOut.plan.value?.warnings.map(({ id }) => id)).toContain("past-capacity");
    act(() => workOut.undo());
    expect(workOut.worksheet.value).toEqual(demos.gullrock);
  });

  test("is given the last clearing time of a fixer, and no fresh one where that was another film’s", async () => {
    const other: Act = { kind: "tested", seconds: 90, film: "Foghorn 400" };
    const { workOut } = await shown(
      "fixer",
      withActs(bottleOf(fixerB), tested(30), rolls(8), other),
    );
    await choose("Fixer B");
    expect(workOut.worksheet.value?.baths?.fixer?.clearing).toEqual({ time: "1:30" });
  });

  test("takes from a working developer its strength and its films, and the time they add", async () => {
    const { workOut } = await shown("developer", withActs(bottleOf(mq), rolls(4)));
    const before = workOut.plan.value?.developmentSeconds ?? 0;
    await choose("Kelp working");
    const { developer, baths } = workOut.worksheet.value ?? demos.foghorn;
    expect(developer).toMatchObject({
      label: "Kelp MQ",
      dilution: "1+3",
      bottle: "Kelp working",
      filmsBefore: 4,
      perFilmBefore: 0.05,
      kept: { ml: 1000 },
    });
    expect(baths?.developer?.afterwards).toBe("return");
    // 1 + 0.05 · 4, by the arithmetic of reuse.
    expect((workOut.plan.value?.developmentSeconds ?? 0) / before).toBeCloseTo(1.2, 2);
    expect(screen.getByText(new RegExp(pick.past("May 11, 2026")))).toBeTruthy();
  });

  test("is told when a bottle of stock holds too little, and counts no films for it", async () => {
    const { workOut } = await shown("developer", bottleOf(stock));
    await choose("Kelp stock");
    expect(workOut.worksheet.value?.developer.filmsBefore).toBeUndefined();
    expect(screen.getByText(new RegExp(pick.little("100 ml", "160 ml")))).toBeTruthy();
  });

  test("is told of a bottle that is spent, set aside, or not on this shelf", async () => {
    const { workOut } = await shown(
      "fixer",
      withActs(bottleOf(fixerB), tested(25), tested(60), { kind: "set-aside" }),
    );
    await choose("Fixer B");
    for (const line of [pick.aside, pick.spent])
      expect(screen.getByText(new RegExp(line))).toBeTruthy();
    act(() => workOut.type("baths.fixer.bottle", "Nobody’s"));
    expect(screen.getByText(new RegExp(pick.gone("Nobody’s")))).toBeTruthy();
    await choose("");
    expect(workOut.worksheet.value?.baths?.fixer?.bottle).toBeUndefined();
  });

  test("can be filled in anew once the bottle stands otherwise", async () => {
    const { workOut, shelf } = await shown("fixer", bottleOf(fixerB));
    await choose("Fixer B");
    expect(screen.queryByRole("button")).toBeNull();
    await act(async () => {
      await shelf.act("Fixer-B", rolls(3), "2026-05-10");
    });
    await settled();
    fireEvent.click(screen.getByRole("button"));
    await settled();
    expect(workOut.worksheet.value?.baths?.fixer?.filmsBefore).toBe(3);
    expect(screen.queryByRole("button")).toBeNull();
  });
});

describe("a run that ended", () => {
  const { baths } = demos.gullrock;
  const record: RunRecord = {
    id: "run 1",
    begunAt: new Date(2026, 4, 14, 9).getTime(),
    worksheet: { ...demos.gullrock, baths: { ...baths, fixer: { bottle: "Fixer B" } } },
    developmentSeconds: 569,
    presses: [],
    ended: "done",
    note: "",
  };
  const films = (kept: readonly Bottle[]) => kept.map((it) => stateOf(it).films);

  test("is written down once, however often it is told and wherever it is told again", async () => {
    const { shelf, kept } = shelfByHand({ bottles: [bottleOf(fixerB)], runs: [record] });
    await Promise.all([shelf.draw(record), shelf.draw(record)]);
    await shelf.draw(record);
    expect(films(kept())).toEqual([2]);
    expect(kept()[0]?.entries).toHaveLength(2);
    const again = shelfByHand({ bottles: kept(), runs: [record] });
    await settled();
    expect(again.kept()).toEqual(kept());
  });

  test("while nothing could be written is written when the shelf is opened next; one that is on is not", async () => {
    const on = { ...record, id: "run 2", ended: null };
    const cutOff = { ...on, id: "run 3", begunAt: record.begunAt - 3 * 86_400_000 };
    const { kept } = shelfByHand({ bottles: [bottleOf(fixerB)], runs: [record, on, cutOff] });
    await settled();
    // Of the one that was cut off nothing was pressed for.
    expect(films(kept())).toEqual([2]);
  });

  test("ages no second bottle that was given the name on the same day", async () => {
    const { shelf, kept } = shelfByHand({ bottles: [bottleOf(fixerB)] });
    await shelf.draw(record);
    await shelf.act("Fixer-B", { kind: "poured-away" }, "2026-05-14");
    await shelf.mix({ ...fixerB, mixedOn: "2026-05-14" });
    const next = shelfByHand({ bottles: kept(), runs: [record] });
    await settled();
    await next.shelf.draw(record);
    expect(films(next.kept())).toEqual([2, 0]);
  });

  test("and was taken back stays so", async () => {
    const { shelf, kept } = shelfByHand({ bottles: [bottleOf(fixerB)] });
    await shelf.draw(record);
    const drawn = kept()[0]?.entries[1]?.id ?? "";
    await shelf.undo("Fixer-B", drawn);
    await shelf.draw(record);
    expect(films(kept())).toEqual([0]);
  });
});
