// @vitest-environment happy-dom
import { signal } from "@preact/signals";
import { act, cleanup, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test, vi } from "vitest";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { unsaidWith } from "../../src/ui/unsaid.tsx";
import { WorkOutProvider } from "../../src/ui/work-out-context.ts";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled } from "../timeline/scene.ts";
import { world } from "./ports.ts";

afterEach(cleanup);

const hasty: Worksheet = { ...gullrock, tank: { ...gullrock.tank, pourIn: 2, pourOut: 2 } };

/** Shows the part for a worksheet; `rest` lets a second go by. */
function shown(worksheet: Worksheet) {
  const { ports, pass } = world();
  const workOut = makeWorkOut(draftOf(worksheet), null, ports);
  const compile = vi.fn(async (sheet: Worksheet) => compiled(sheet));
  const speaker = signal("bundled");
  const Unsaid = unsaidWith({ compile, speaker, after: ports.after });
  render(
    <WorkOutProvider value={workOut}>
      <Unsaid />
    </WorkOutProvider>,
  );
  return { workOut, compile, speaker, rest: () => pass(1000) };
}

describe("what the voice will leave out", () => {
  test("stands in Work out by its step, each sentence with its reason", async () => {
    const { rest } = shown(hasty);
    rest();
    const wanted = compiled(hasty).sections.flatMap(({ left }) => left);
    expect(wanted.length).toBeGreaterThan(0);
    await screen.findByText(new RegExp(`^${wanted.length} sentences? left out`));
    for (const { wanted: sentence } of wanted)
      expect(screen.getAllByText(sentence).length).toBeGreaterThan(0);
  });

  test("is nothing where tones alone are wanted, and it says so", async () => {
    const { rest } = shown({ ...hasty, voice: { detail: "tones" } });
    rest();
    await screen.findByText("All that ought to be said finds its room.");
  });

  test("is compiled only once typing rests, and not at all without a worksheet", async () => {
    const { workOut, compile, rest } = shown(hasty);
    expect(compile).not.toHaveBeenCalled();
    await act(() => workOut.type("tank.pourIn", "nonsense"));
    rest();
    expect(compile).not.toHaveBeenCalled();
    await act(() => workOut.type("tank.pourIn", "4 s"));
    rest();
    expect(compile).toHaveBeenCalledTimes(1);
  });

  test("is compiled anew when another speaks, since another takes another time", async () => {
    const { compile, speaker, rest } = shown(hasty);
    rest();
    await act(() => {
      speaker.value = "own";
    });
    rest();
    expect(compile).toHaveBeenCalledTimes(2);
  });
});
