// @vitest-environment happy-dom
import { signal } from "@preact/signals";
import { act, cleanup, fireEvent, render, screen, within } from "@testing-library/preact";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { Hearing, Runs } from "../../src/live/runs.ts";
import type { VoiceSounds } from "../../src/live/voice-sounds.ts";
import { planOf } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import type { Section, Timeline } from "../../src/timeline/score.ts";
import { demos } from "../../src/ui/demo.ts";
import { walkThroughWith } from "../../src/ui/walk-through.tsx";
import { take } from "../../src/ui/words/en/take.ts";
import { walk as walkWords } from "../../src/ui/words/en/walk.ts";
import { runByHand } from "../live/by-hand.ts";
import { changed } from "../plan/worksheets.ts";
import { compiled } from "../timeline/scene.ts";
import { emptyHands, sessionOf, silentRuns, walkThroughPorts } from "./run-stand-ins.ts";
import "./late-words.ts";

afterEach(cleanup);
beforeEach(() => {
  vi.useFakeTimers({ toFake: ["requestAnimationFrame", "cancelAnimationFrame"] });
  return () => {
    vi.useRealTimers();
  };
});

interface Heard {
  readonly section: Section;
  readonly from: number | undefined;
  elapsed: number;
  stopped: boolean;
  end(): void;
}

/** Sound that stands where the test puts it. */
function world({ refuses = 0, mute = false }: { refuses?: number; mute?: boolean } = {}) {
  const heard: Heard[] = [];
  let refusals = refuses;
  const { runs, current } = silentRuns({
    async compile(worksheet): Promise<Timeline> {
      if (refusals > 0) {
        refusals -= 1;
        throw new Error("no words to be had");
      }
      return compiled(worksheet);
    },
    async hear(_timeline, section, from): Promise<Hearing> {
      if (mute) throw new Error("no sound to be had");
      let end = () => {};
      const over = new Promise<void>((resolve) => {
        end = resolve;
      });
      const it: Heard = { section, from, elapsed: from ?? 0, stopped: false, end };
      heard.push(it);
      return {
        over,
        elapsed: () => it.elapsed,
        stop() {
          it.stopped = true;
          end();
        },
      };
    },
  });
  return { runs, heard, current };
}

async function shown(
  runs: Runs,
  worksheet: Worksheet | null = demos.gullrock,
  print: () => void = () => {},
  sounds: VoiceSounds = emptyHands.sounds,
) {
  const Walk = walkThroughWith({ ...walkThroughPorts(runs, print), sounds });
  const plan = worksheet && planOf(worksheet);
  const page = render(<Walk worksheet={signal(worksheet)} plan={signal(plan)} />);
  await act(async () => {});
  return page;
}

/** Lets what was begun by the press settle as well. */
const press = (name: string | RegExp) =>
  act(async () => {
    fireEvent.click(screen.getByRole("button", { name }));
  });
const steps = () => within(screen.getByRole("navigation", { name: walkWords.steps }));
const choose = async (name: RegExp) => {
  await act(() => {
    fireEvent.click(steps().getByRole("button", { name }));
  });
};
/** Of steps: the rehearsal beneath them has its own. */
const headings = () =>
  screen.getAllByRole("heading", { level: 2 }).filter(({ id }) => id !== "rehearse-title");
const title = () => {
  const [heading, ...more] = headings();
  expect(more).toEqual([]);
  return heading?.textContent;
};
const nextFrame = () =>
  act(() => {
    vi.advanceTimersByTime(20);
  });

describe("before there is anything to walk through", () => {
  test("the way to Work out is shown while the worksheet cannot be used", async () => {
    await shown(world().runs, null);
    expect(screen.getByRole("link", { name: walkWords.toWorkOut }).getAttribute("href")).toBe(
      "#work-out",
    );
  });

  test("what could not be put together can be tried again", async () => {
    await shown(world({ refuses: 1 }).runs);
    expect(screen.getByRole("alert").textContent).toContain(walkWords.failed);
    await press(walkWords.again);
    // The attempt begins once the press is dealt with, and takes its own time.
    await act(async () => {});
    expect(title()).toBe("Lay out");
  });

  test("a stop warning stands first, and the steps are shown all the same", async () => {
    const short = changed(demos.gullrock, { developer: { stockPerFilm: { ml: 900 } } });
    await shown(world().runs, short);
    const warnings = screen.getByRole("list", { name: walkWords.stops });
    expect(warnings.textContent).toContain("would be used up");
    const order = warnings.compareDocumentPosition(headings()[0] as HTMLElement);
    expect(order & Node.DOCUMENT_POSITION_FOLLOWING).toBeTruthy();
  });

  test("a caution is left to Work out", async () => {
    const quick = changed(demos.gullrock, {
      developer: { leaflet: [{ temperature: { f: 69 }, time: "4:30" }] },
    });
    expect(planOf(quick).warnings.map(({ severity }) => severity)).toEqual(["caution"]);
    await shown(world().runs, quick);
    expect(screen.queryByRole("list", { name: walkWords.stops })).toBeNull();
  });
});

describe("the steps", () => {
  test("are all listed, each with its light and its time", async () => {
    await shown(world().runs);
    const sections = compiled(demos.gullrock).sections;
    expect(steps().getAllByRole("button")).toHaveLength(sections.length);
    expect(steps().getByRole("button", { name: /Developer and stop bath/ }).textContent).toContain(
      "light, 10:47",
    );
    expect(steps().getByRole("button", { name: /Onto the reel/ }).textContent).toContain(
      "dark, no clock",
    );
  });

  test("chosen, shows itself and takes the focus there", async () => {
    await shown(world().runs);
    await choose(/Fixer/);
    expect(title()).toBe("Fixer");
    expect(document.activeElement).toBe(headings()[0] as HTMLElement);
    expect(steps().getByRole("button", { name: /Fixer/ }).getAttribute("aria-current")).toBe(
      "step",
    );
  });

  test("can be gone through one by one, and end at either end", async () => {
    await shown(world().runs);
    await press(walkWords.previous);
    expect(title()).toBe("Lay out");
    await press(walkWords.next);
    expect(title()).toBe("Dry reels");
    await choose(/Hang to dry/);
    await press(walkWords.next);
    expect(title()).toBe("Hang to dry");
    expect(screen.getByRole("button", { name: walkWords.next }).getAttribute("aria-disabled")).toBe(
      "true",
    );
  });

  test("say in the dark that the screen is black", async () => {
    await shown(world().runs);
    expect(screen.queryByText(walkWords.screenBlack, { exact: false })).toBeNull();
    await choose(/Onto the reel/);
    expect(screen.getByText(walkWords.screenBlack, { exact: false })).toBeTruthy();
  });

  test("show one picture for each bath, with a short name, and the same as a list", async () => {
    await shown(world().runs);
    await choose(/Developer/);
    const names = screen.getAllByRole("img").map((picture) => picture.getAttribute("aria-label"));
    expect(names).toEqual(["Score of developer", "Score of stop bath"]);
    const list = within(screen.getByRole("list", { name: walkWords.inWords }));
    expect(list.getByText("pour in the stop bath")).toBeTruthy();
    expect(list.getByText("Get ready to pour out the developer.")).toBeTruthy();
  });

  test("tell what was left unsaid, with its reason, where anything was", async () => {
    const hurried = changed(demos.gullrock, { tank: { pourIn: 1, pourOut: 1, handover: 0 } });
    const left = compiled(hurried).sections.find((section) => section.left.length > 0);
    expect(left).toBeDefined();
    await shown(world().runs, hurried);
    expect(screen.queryByText(walkWords.leftWhy)).toBeNull();
    await choose(new RegExp(left?.title ?? ""));
    expect(screen.getByText(walkWords.left(left?.left.length ?? 0))).toBeTruthy();
    const told = screen.getByText(walkWords.leftWhy).parentElement?.textContent ?? "";
    expect(told).toContain(left?.left[0]?.wanted);
    expect(told).toContain(left?.left[0]?.why);
  });
});

describe("hearing a step", () => {
  test("marks the present in the score and in the list, until it is over", async () => {
    const { runs, heard } = world();
    const { container } = await shown(runs);
    await choose(/Developer/);
    await press(walkWords.hear);
    const it = heard[0];
    if (it === undefined) throw new Error("nothing was heard");
    expect(it.section.id).toBe("developer");
    it.elapsed = 20;
    await nextFrame();
    expect(container.querySelectorAll(".present")).toHaveLength(1);
    const current = screen
      .getByRole("list", { name: walkWords.inWords })
      .querySelector("[aria-current]");
    expect(current?.textContent).toContain("invert 12 times");
    expect(screen.getByText("0:20 of 10:47")).toBeTruthy();
    await act(async () => it.end());
    expect(container.querySelectorAll(".present")).toHaveLength(0);
    expect(screen.getByRole("button", { name: walkWords.hear })).toBeTruthy();
  });

  test("tells why and how of a step when asked, each thing once, in words too, and stops for the step's own sound", async () => {
    const { runs, heard } = world();
    const said: string[] = [];
    let over = () => {};
    const sounds = {
      ...emptyHands.sounds,
      say: (text: string) =>
        new Promise<void>((resolve) => {
          said.push(text);
          over = resolve;
        }),
      hush: () => over(),
    };
    await shown(runs, undefined, undefined, sounds);
    // Nothing more is to be said of it.
    expect(screen.queryByRole("button", { name: walkWords.hearWhy })).toBeNull();
    await choose(/Developer/);
    await press(walkWords.hearWhy);
    await act(async () => over());
    expect(said).toEqual([
      "The film develops until the next bath.",
      "A stop bath ends development evenly.",
    ]);
    expect(screen.getByText("Tapping frees bubbles that leave spots.")).toBeTruthy();
    await press(walkWords.hear);
    expect(heard).toHaveLength(1);
    expect(said).toHaveLength(2);
    // One press stops the step and begins the telling, another stops that.
    await press(walkWords.hearWhy);
    expect(heard[0]?.stopped).toBe(true);
    await press(walkWords.stopHearing);
    expect(said).toHaveLength(3);
    expect(screen.getByRole("button", { name: walkWords.hearWhy })).toBeTruthy();
    await choose(/Onto the reel/);
    await press(walkWords.hearWhy);
    expect(said.at(-1)).toBe("A soft hiss is right, a crackle is not.");
    cleanup();
    await act(async () => over());
    expect(said).toHaveLength(4);
  });

  test("says so where why and how cannot be had, and can be asked again", async () => {
    const { runs } = world();
    const script = vi.fn(emptyHands.sounds.script);
    script.mockRejectedValueOnce(new Error("no network"));
    await shown(runs, undefined, undefined, { ...emptyHands.sounds, script });
    await choose(/Developer/);
    await press(walkWords.hearWhy);
    expect(screen.getByText(walkWords.notHeard)).toBeTruthy();
    await press(walkWords.hearWhy);
    expect(screen.queryByText(walkWords.notHeard)).toBeNull();
    expect(screen.getByText("Tapping frees bubbles that leave spots.")).toBeTruthy();
  });

  test("is stopped by the button that began it", async () => {
    const { runs, heard } = world();
    await shown(runs);
    await press(walkWords.hear);
    await press(walkWords.stopHearing);
    expect(heard[0]?.stopped).toBe(true);
    expect(screen.getByRole("button", { name: walkWords.hear })).toBeTruthy();
  });

  test("is stopped by another step, and by leaving the place", async () => {
    const { runs, heard } = world();
    const { unmount } = await shown(runs);
    await press(walkWords.hear);
    await press(walkWords.next);
    expect(heard[0]?.stopped).toBe(true);
    await press(walkWords.hear);
    expect(heard[1]?.stopped).toBe(false);
    unmount();
    expect(heard[1]?.stopped).toBe(true);
  });

  test("that begins only after the place was left is stopped at once", async () => {
    const { runs, heard } = world();
    const { unmount } = await shown(runs);
    fireEvent.click(screen.getByRole("button", { name: walkWords.hear }));
    unmount();
    await act(async () => {});
    expect(heard.map(({ stopped }) => stopped)).toEqual([true]);
  });

  test("can start at any entry of a long section, and not of a short one", async () => {
    const { runs, heard } = world();
    await shown(runs);
    expect(screen.queryAllByRole("button", { name: /^hear from/ })).toHaveLength(0);
    await choose(/Developer/);
    await press("hear from 1:08");
    expect(heard[0]?.from).toBe(68);
  });

  test("that cannot be had is said, and nothing is left hanging", async () => {
    await shown(world({ mute: true }).runs);
    await press(walkWords.hear);
    await act(async () => {});
    expect(screen.getByText(walkWords.notHeard)).toBeTruthy();
    expect(screen.getByRole("button", { name: walkWords.hear })).toBeTruthy();
  });
});

describe("while a run is on", () => {
  async function running() {
    const { runs, current } = world();
    await shown(runs);
    const hand = runByHand(demos.foghorn);
    const timeline = hand.planned;
    const at = timeline.sections.findIndex(({ id }) => id === "developer");
    await act(() => {
      hand.pressThrough(at + 1);
      current.value = sessionOf(hand, demos.foghorn);
    });
    nextFrame();
    return { timeline, press: hand.press, wait: hand.wait };
  }

  test("its own steps are shown, the one it is at first, and the present is marked in it", async () => {
    const { timeline, wait } = await running();
    const developer = timeline.sections.find(({ id }) => id === "developer");
    expect(title()).toBe(developer?.title);
    wait(20);
    nextFrame();
    expect(document.querySelectorAll(".present")).toHaveLength(1);
    expect(document.querySelectorAll('.entries [aria-current="time"]')).toHaveLength(1);
  });

  test("a step that it is not at has no present, and the next one is gone to with it", async () => {
    const { timeline, press: pressKey, wait } = await running();
    wait(20);
    await press(walkWords.next);
    nextFrame();
    expect(document.querySelector(".present")).toBeNull();
    await act(() => {
      wait(timeline.sections.find(({ id }) => id === "developer")?.seconds ?? 0);
      pressKey();
    });
    nextFrame();
    await act(async () => {});
    expect(title()).toBe("Fixer");
  });

  test("no step can be heard, and Lights out is a press away", async () => {
    await running();
    expect(screen.queryByRole("button", { name: walkWords.hear })).toBeNull();
    expect(screen.queryAllByRole("button", { name: /^hear from/ })).toHaveLength(0);
    expect(screen.getByRole("link", { name: walkWords.lightsOut }).getAttribute("href")).toBe(
      "#lights-out",
    );
  });
});

describe("the score on paper", () => {
  test("holds every step and the key to its signs, and the page comes back after it", async () => {
    const print = vi.fn(() => {
      window.dispatchEvent(new Event("beforeprint"));
    });
    await shown(world().runs, demos.gullrock, print);
    const named = steps().getAllByRole("button").length;
    expect(named).toBeGreaterThan(8);
    await press(walkWords.print);
    expect(print).toHaveBeenCalledTimes(1);
    expect(headings()).toHaveLength(named);
    expect(document.querySelector<HTMLDetailsElement>("details.score-key")?.open).toBe(true);
    await act(async () => {
      window.dispatchEvent(new Event("afterprint"));
    });
    expect(headings()).toHaveLength(1);
  });
});

describe("the fold to take a session along", () => {
  test("is made as soon as someone comes to it, and stays with what was typed", async () => {
    const TakeAlong = () => <input aria-label="typed" />;
    const Walk = walkThroughWith({ ...walkThroughPorts(world().runs), TakeAlong });
    const { gullrock } = demos;
    render(<Walk worksheet={signal(gullrock)} plan={signal(planOf(gullrock))} />);
    await act(async () => {});
    const fold = screen.getByText(take.title).closest("details");
    const typed = () => fold?.querySelector("input") ?? null;
    expect(typed()).toBeNull();
    await act(async () => void fireEvent.focus(screen.getByText(take.title)));
    fireEvent.input(typed() as HTMLInputElement, { target: { value: "15" } });
    for (const open of [true, false]) {
      await act(async () => {
        (fold as HTMLDetailsElement).open = open;
        fireEvent(fold as HTMLDetailsElement, new Event("toggle"));
      });
    }
    expect(typed()?.value).toBe("15");
  });

  test("holds nothing of a session that must not be run as it is, before that has been read", async () => {
    const Walk = walkThroughWith({
      ...walkThroughPorts(world().runs),
      TakeAlong: () => <b>all</b>,
    });
    const short = changed(demos.gullrock, { developer: { stockPerFilm: { ml: 900 } } });
    const shorter = changed(demos.gullrock, { developer: { stockPerFilm: { ml: 950 } } });
    const plan = signal(planOf(short));
    render(<Walk worksheet={signal(short)} plan={plan} />);
    await act(async () => {});
    const fold = within(screen.getByText(take.title).closest("details") as HTMLDetailsElement);
    await act(async () => void fireEvent.focus(screen.getByText(take.title)));
    expect(fold.queryByText("all")).toBeNull();
    expect(fold.getByText("would be used up", { exact: false })).toBeTruthy();
    const accept = () => act(async () => void fireEvent.click(fold.getByRole("checkbox")));
    await accept();
    expect(fold.getByText("all")).toBeTruthy();
    // What is to be read now is something else.
    await act(async () => {
      plan.value = planOf(shorter);
    });
    expect(fold.queryByText("all")).toBeNull();
    await accept();
    expect(fold.getByText("all")).toBeTruthy();
  });
});
