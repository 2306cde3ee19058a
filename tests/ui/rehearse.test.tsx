// @vitest-environment happy-dom
import { signal } from "@preact/signals";
import { act, cleanup, fireEvent, render, screen, within } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import type { Runs, Session } from "../../src/live/runs.ts";
import { planOf } from "../../src/plan/plan.ts";
import type { Rehearsal } from "../../src/process/rehearsal.ts";
import { demos } from "../../src/ui/demo.ts";
import { walkThroughWith } from "../../src/ui/walk-through.tsx";
import { rehearse as words } from "../../src/ui/words/en/rehearse.ts";
import { beforeRun, duringRun } from "../../src/ui/words/en/run.ts";
import { runByHand } from "../live/by-hand.ts";
import { sessionOf, silentRuns, walkThroughPorts } from "./run-stand-ins.ts";
import "./late-words.ts";

afterEach(cleanup);

const worksheet = demos.gullrock;
const rehearsal: Rehearsal = { factor: 1 / 4, why: false };

async function shown(more: Partial<Runs> = {}) {
  const begun: (Rehearsal | undefined)[] = [];
  const { runs, current } = silentRuns({
    async begin(_worksheet, _plan, rehearsal) {
      begun.push(rehearsal);
      return "begun";
    },
    leave() {
      current.value = null;
    },
    ...more,
  });
  const ports = { ...walkThroughPorts(runs), toWriteUp: runs.leave };
  const Place = walkThroughWith(ports);
  render(<Place worksheet={signal(worksheet)} plan={signal(planOf(worksheet))} />);
  await act(async () => {});
  return { begun, current };
}

const press = (name: string | RegExp) =>
  act(async () => {
    fireEvent.click(screen.getByRole("button", { name }));
  });
const begin = () => press(new RegExp(`^${words.begin}`));

/** A rehearsal that has come to its end, each pour marked so much off. */
function rehearsed(off: (bath: string, deed: string) => number | null, detail: Partial<Session>) {
  const hand = runByHand(worksheet, { rehearsal });
  hand.press();
  while (hand.run.position().kind !== "over") {
    const position = hand.run.position();
    if (position.kind === "waiting") hand.press();
    else {
      const from = hand.run.begunAt();
      for (const { at, do: deed, bath } of position.section?.moments ?? []) {
        const by = deed === "pour-in" || deed === "pour-out" ? off(bath ?? "", deed) : null;
        if (by === null) continue;
        hand.wait(from + at + by - hand.clocks().steady);
        hand.press();
      }
      hand.wait(from + (position.section?.seconds ?? 0) - hand.clocks().steady);
    }
    hand.wait(5);
  }
  return sessionOf(hand, worksheet, { rehearsal, ...detail });
}

describe("Before a rehearsal", () => {
  test("one press begins it, with a quarter of the rests and no reasons unless asked otherwise", async () => {
    const { begun } = await shown();
    await begin();
    await act(() => {
      fireEvent.click(screen.getByRole("radio", { name: words.factors.least }));
      fireEvent.click(screen.getByRole("checkbox", { name: words.why }));
    });
    await begin();
    expect(begun).toEqual([
      { factor: 1 / 4, why: false },
      { factor: 0, why: true },
    ]);
  });

  test("how long it takes by the clock is told for each choice, the shorter the rests the less", async () => {
    await shown();
    const group = within(screen.getByRole("group", { name: words.rests }));
    const clocks: number[] = [];
    for (const radio of group.getAllByRole("radio")) {
      await act(() => {
        fireEvent.click(radio);
      });
      const button = screen.getByRole("button", { name: new RegExp(`^${words.begin}`) });
      const [minutes = 0, seconds = 0] = (/(\d+):(\d+)/.exec(button.textContent ?? "") ?? [])
        .slice(1)
        .map(Number);
      clocks.push(60 * minutes + seconds);
    }
    expect(clocks).toHaveLength(4);
    expect(clocks.toSorted((a, b) => b - a)).toEqual(clocks);
    expect(new Set(clocks).size).toBe(4);
  });

  test("what holds it back is said: a run elsewhere, or a voice that cannot be had", async () => {
    await shown({ begin: async () => "elsewhere" });
    await begin();
    expect(screen.getByText(beforeRun.elsewhere)).toBeTruthy();
    cleanup();
    await shown({ begin: () => Promise.reject(new Error("no voice to be had")) });
    await begin();
    expect(screen.getByText(beforeRun.failed)).toBeTruthy();
  });

  test("nothing is offered while a run is on", async () => {
    const { current } = await shown();
    current.value = sessionOf(runByHand(worksheet), worksheet);
    await act(async () => {});
    expect(screen.queryByRole("button", { name: new RegExp(`^${words.begin}`) })).toBeNull();
    expect(screen.queryByRole("dialog")).toBeNull();
  });
});

describe("During a rehearsal", () => {
  test("its screen lies over the place, tells neither late hands nor readings, and is left at one press", async () => {
    const { current } = await shown();
    const hand = runByHand(worksheet, { rehearsal });
    const at = hand.planned.sections.findIndex(({ id }) => id === "developer");
    hand.pressThrough(at + 1);
    hand.wait(30);
    current.value = sessionOf(hand, worksheet, { rehearsal });
    await act(async () => {});
    const dialog = within(screen.getByRole("dialog", { name: words.title }));
    expect(dialog.getByText("Developer and stop bath")).toBeTruthy();
    expect(dialog.queryByRole("button", { name: /only now|°/ })).toBeNull();
    await press(duringRun.leave);
    expect(current.value).toBeNull();
    expect(screen.queryByRole("dialog")).toBeNull();
  });

  test("its end shows what was told to practise, and leads back to the place", async () => {
    const { current } = await shown();
    current.value = rehearsed((bath) => (bath === "fixer" ? 4 : 0), {});
    await act(async () => {});
    const dialog = within(screen.getByRole("dialog", { name: words.title }));
    expect(dialog.getByText(/The fixer can go in a little sooner/)).toBeTruthy();
    expect(dialog.getByText(words.overHint)).toBeTruthy();
    await press(words.back);
    expect(current.value).toBeNull();
  });
});

describe("After a rehearsal", () => {
  async function ended(off: (bath: string, deed: string) => number | null) {
    const { current } = await shown();
    current.value = rehearsed(off, {});
    await act(async () => {});
    await press(words.back);
    return within(screen.getByRole("region", { name: words.found }));
  }

  test("all that was off stands in order of time, with seconds, and what to practise before it", async () => {
    const found = await ended((bath, deed) => {
      if (bath === "developer" && deed === "pour-out") return 2.5;
      if (bath === "fixer") return deed === "pour-in" ? -1.75 : null;
      return 1;
    });
    const items = (name: string) =>
      within(found.getByRole("list", { name }))
        .getAllByRole("listitem")
        .map(({ textContent }) => textContent?.replace(/\u00a0/g, " "));
    expect(items(words.practise)).toEqual([
      "Developer · Pour out",
      "Fixer · Pour out",
      "Fixer · Pour in",
    ]);
    const [developer, pourIn, pourOut, ...more] = items(words.all);
    expect(developer).toMatch(/^Developer · Pour out, \d+:\d\d 2\.5 s late$/);
    expect(pourIn).toMatch(/^Fixer · Pour in, 0:08 1\.8 s early$/);
    expect(pourOut).toMatch(/^Fixer · Pour out, \d+:\d\d no press$/);
    expect(more).toEqual([]);
    expect(found.getByText(/^9 of 12 moments were well done: within 1\.5 s\.$/)).toBeTruthy();
    expect(document.activeElement?.textContent).toBe(words.found);
  });

  test("nothing is listed where all went well", async () => {
    const found = await ended(() => 0);
    expect(found.getByText(/^12 of 12/)).toBeTruthy();
    expect(found.queryByRole("list")).toBeNull();
  });

  test("nobody is judged who marked nothing", async () => {
    const found = await ended(() => null);
    expect(found.getByText(words.unmarked)).toBeTruthy();
    expect(found.queryByRole("list")).toBeNull();
  });
});
