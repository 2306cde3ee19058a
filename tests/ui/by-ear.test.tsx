// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test, vi } from "vitest";
import { byEarWith } from "../../src/ui/by-ear.tsx";
import { draftOf } from "../../src/ui/draft-of.ts";
import { byEar as words } from "../../src/ui/words/en/hear.ts";
import { WorkOutProvider } from "../../src/ui/work-out-context.ts";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { gullrock } from "../plan/worksheets.ts";
import { english } from "../timeline/scene.ts";
import { world } from "./ports.ts";

afterEach(cleanup);

/** A sheet whose words are over when the test says so. */
async function opened() {
  const { ports, pass } = world();
  const workOut = makeWorkOut(draftOf(gullrock), null, ports);
  const said: string[] = [];
  const went: string[] = [];
  let end = () => {};
  const sounds = {
    script: async () => english,
    say: (text: string) =>
      new Promise<void>((resolve) => {
        said.push(text);
        end = resolve;
      }),
    play: async () => {},
    hush: () => end(),
  };
  const ByEar = byEarWith({ sounds, after: ports.after, toLightsOut: () => went.push("run") });
  render(
    <WorkOutProvider value={workOut}>
      <ByEar />
    </WorkOutProvider>,
  );
  await act(async () => {
    fireEvent.click(screen.getByRole("button", { name: words.open }));
  });
  await vi.waitFor(() => expect(said).not.toEqual([]));
  const key = (name: string) =>
    act(async () => {
      fireEvent.keyDown(document.activeElement ?? document.body, { key: name });
    });
  return {
    workOut,
    said,
    went,
    key,
    /** Lets what is being said, and the pauses behind it, come to their end, until it says so. */
    async until(text: string) {
      for (let i = 0; i < 400 && said.at(-1) !== text; i += 1) {
        await act(async () => {
          end();
          pass(2000);
        });
      }
      expect(said.at(-1)).toBe(text);
    },
  };
}

describe("the sheet by ear", () => {
  test("fills in a number by one key alone, and goes on to the run", async () => {
    const it = await opened();
    await it.until("How long you take to fill it.");
    await it.until("To change it, press.");
    await it.key(" ");
    await it.until("One.");
    await it.key(" ");
    await it.until("Four.");
    await it.key(" ");
    await it.until("If that is all, press.");
    await it.key(" ");
    expect(it.workOut.draft.value["tank.pourIn"]).toBe("14");
    await it.until("The development time is");
    await it.until("To go on to the run, press.");
    await it.key(" ");
    expect(it.went).toEqual(["run"]);
    expect(screen.queryByRole("dialog")).toBeNull();
  });

  test("takes the keys of a keyboard at any time, and one step back in the page undoes it", async () => {
    const it = await opened();
    const before = it.workOut.draft.value;
    for (let i = 0; i < 11; i += 1) await it.key("ArrowDown");
    for (const key of ["7", "0", ",", "5", "Enter"]) await it.key(key);
    expect(it.workOut.draft.value["developer.temperature"]).toBe("70.5");
    expect(it.workOut.worksheet.value?.developer.temperature).toEqual({ f: 70.5 });
    await it.key("Escape");
    expect(screen.queryByRole("dialog")).toBeNull();
    it.workOut.undo();
    expect(it.workOut.draft.value).toEqual(before);
  });

  test("chooses a value by one key alone, as it is told", async () => {
    const it = await opened();
    await it.until("How it is agitated.");
    await it.until("To change it, press.");
    await it.key(" ");
    await it.until("Press at the one you want.");
    await it.until("A tray.");
    await it.key(" ");
    expect(it.workOut.worksheet.value?.tank.method).toBe("tray");
    await it.until("Taken.");
    await it.until("How it is agitated.");
    await it.until("A tray.");
    expect(document.activeElement?.textContent).toContain("Tray");
  });

  test("steps through values by arrows, each told, and Enter takes one; C and F set a unit", async () => {
    const it = await opened();
    for (let i = 0; i < 12; i += 1) await it.key("ArrowDown");
    await it.until("How it is agitated.");
    await it.key("ArrowRight");
    await it.until("A twisted spindle.");
    await it.key("ArrowDown");
    await it.until("A drum that rolls.");
    await it.key("ArrowLeft");
    await it.until("A twisted spindle.");
    await it.key("Enter");
    expect(it.workOut.worksheet.value?.tank.method).toBe("twist");
    await it.key("ArrowUp");
    for (const key of ["2", "1", "c"]) await it.key(key);
    expect(it.workOut.worksheet.value?.developer.temperature).toEqual({ c: 21 });
    expect(it.workOut.draft.value["developer.temperature"]).toBe("21 °C");
  });

  test("goes in by a bath's gate with one key, and shows where it stands", async () => {
    const it = await opened();
    await it.until("To hear the rest of it, press.");
    await it.key(" ");
    await it.until("How long one inversion takes.");
    await it.until("The stop bath.");
    await it.until("To hear the rest of it, press.");
    expect(document.activeElement?.textContent).toContain("More about the stop bath");
    await it.key(" ");
    await it.until("Its temperature.");
    for (const key of ["1", "9", "c"]) await it.key(key);
    expect(it.workOut.worksheet.value?.baths?.stop?.temperature).toEqual({ c: 19 });
    await it.until("The language I speak.");
    expect(document.activeElement?.textContent).toContain("English");
    await it.key("ArrowRight");
    await it.until("German.");
    await it.key("Enter");
    expect(it.workOut.worksheet.value?.language).toBe("de");
    expect(document.activeElement?.textContent).toContain("Deutsch");
  });

  test("takes a name by its letters, each said as it comes, a space among them, and back by one", async () => {
    const it = await opened();
    expect(it.said).toEqual(["What you call the film."]);
    await it.key("Shift");
    expect(it.said).toEqual(["What you call the film."]);
    for (const key of ["F", "o", "x", "Backspace", "g", " ", "4", "."]) {
      await it.key(key);
      await it.until(
        { " ": "Space.", Backspace: "One taken back.", "4": "Four.", ".": "Point." }[key] ??
          `${key.toUpperCase()}.`,
      );
      expect(document.activeElement?.textContent).toContain(key === "Backspace" ? "Fo" : key);
    }
    await it.key("Enter");
    expect(it.workOut.draft.value["films[0].label"]).toBe("Fog 4.");
    // Once it is taken, the space bar is a press again.
    await it.until("To change it, press.");
    await it.key(" ");
    await it.until("Press at each letter you want.");
    await it.until("B.");
    await it.key(" ");
    await it.until("A.");
    await it.key(" ");
    await it.until("Space.");
    await it.key(" ");
    await it.until("If that is all, press.");
    await it.key(" ");
    expect(it.workOut.worksheet.value?.films[0]?.label).toBe("Ba");
  });

  test("shows what it says, and the number as it stands", async () => {
    const it = await opened();
    await it.until("The developer's temperature now.");
    const press = document.activeElement;
    expect(press?.textContent).toContain("The developer's temperature now.");
    expect(press?.textContent).toContain("69 °F");
  });
});
