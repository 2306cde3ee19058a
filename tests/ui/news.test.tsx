// @vitest-environment happy-dom
import { signal } from "@preact/signals";
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import type { Session } from "../../src/live/runs.ts";
import type { Updates } from "../../src/live/updates.ts";
import type { Kept } from "../../src/logbook/keeping.ts";
import { demos } from "../../src/ui/demo.ts";
import { type InstallOffer, installWith } from "../../src/ui/install.tsx";
import { KeptHere } from "../../src/ui/kept-here.tsx";
import { newsWith } from "../../src/ui/news.tsx";
import { keeping as keptWords, news as newsWords } from "../../src/ui/words/en/keep.ts";
import { runByHand } from "../live/by-hand.ts";
import { keepingThat } from "./ports.ts";
import { sessionOf } from "./run-stand-ins.ts";

afterEach(cleanup);

const press = () =>
  act(async () => {
    fireEvent.click(screen.getByRole("button"));
  });

/** @param answers what comes of each press. */
function told(...answers: readonly Awaited<ReturnType<Updates["take"]>>[]) {
  const news = signal<"none" | "ready" | "taken-elsewhere">("none");
  const current = signal<Session | null>(null);
  const left = [...answers];
  const News = newsWith({
    updates: { news, take: async () => left.shift() ?? "failed" },
    current,
  });
  render(<News />);
  return { news, current, left };
}

describe("a newer version", () => {
  test("is told of once it is ready, and taken by a press", async () => {
    const { news, left } = told("taken");
    expect(screen.queryByRole("button")).toBeNull();
    act(() => {
      news.value = "ready";
    });
    expect(screen.getByRole("status").textContent).toContain(newsWords.ready);
    await press();
    expect(left).toEqual([]);
  });

  test("says what is in the way of it, and may be pressed for again", async () => {
    const { news } = told("run-is-on", "other-pages");
    act(() => {
      news.value = "ready";
    });
    await press();
    expect(screen.getByRole("status").textContent).toContain(newsWords.waits["run-is-on"]);
    await press();
    expect(screen.getByRole("status").textContent).toContain(newsWords.waits["other-pages"]);
  });

  test("is not spoken of over a run, and is once that is over", () => {
    const { news, current } = told();
    act(() => {
      current.value = sessionOf(runByHand(demos.gullrock), demos.gullrock);
      news.value = "ready";
    });
    expect(document.body.textContent).toBe("");
    act(() => {
      current.value = null;
    });
    expect(screen.getByRole("status").textContent).toContain(newsWords.ready);
  });
});

test("the browser's offer to install stands for one press", async () => {
  let asked = 0;
  const offer = Object.assign(new Event("offer"), {
    prompt: async () => {
      asked += 1;
    },
  });
  const offered = signal<InstallOffer | null>(null);
  const Install = installWith(offered);
  render(<Install />);
  expect(document.body.textContent).toBe("");
  act(() => {
    offered.value = offer;
  });
  await press();
  expect(asked).toBe(1);
  expect(document.body.textContent).toBe("");
});

test.each<[Kept, "the first press" | "the records", string]>([
  ["nothing is kept", "the first press", keptWords.nothing],
  ["no room", "the first press", keptWords.noRoom],
  ["may be cleared", "the first press", ""],
  ["kept", "the first press", ""],
  ["nothing is kept", "the records", ""],
  ["no room", "the records", keptWords.noMoreRoom],
  ["may be cleared", "the records", keptWords.mayBeCleared],
  ["kept", "the records", ""],
])("where “%s” is the answer, what stands beside %s is “%3$s”", async (kept, beside, said) => {
  render(<KeptHere keeping={keepingThat(kept)} beside={beside} />);
  await act(async () => {});
  expect(document.body.textContent).toBe(said);
});
