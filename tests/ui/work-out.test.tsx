// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen, within } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { demos } from "../../src/ui/demo.ts";
import type { Draft } from "../../src/ui/draft.ts";
import { draftOf, emptyDraft } from "../../src/ui/draft-of.ts";
import { tanks } from "../../src/ui/words/en/bench.ts";
import { greeting, sheet as sheetWords } from "../../src/ui/words/en/frame.ts";
import { WorkOutPlace } from "../../src/ui/work-out.tsx";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { world } from "./ports.ts";

afterEach(cleanup);

const demo = draftOf(demos.gullrock);

function shown(draft: Draft = demo, hearAPour = async () => {}) {
  const it = world();
  const workOut = makeWorkOut(draft, null, it.ports);
  render(<WorkOutPlace workOut={workOut} hearAPour={hearAPour} />);
  return { ...it, workOut };
}

const field = (label: string, at = 0) => {
  const found = screen.getAllByLabelText(label)[at];
  if (!(found instanceof HTMLInputElement)) throw new Error(`no field is labelled ${label}`);
  return found;
};

const typed = (input: HTMLInputElement, text: string) =>
  fireEvent.input(input, { target: { value: text } });

describe("a field", () => {
  test("says in words what is wrong once it is left, and keeps what was typed", async () => {
    const { pass } = shown();
    const input = field("In the mixed bath now");
    await typed(input, "warm");
    expect(input.getAttribute("aria-invalid")).toBe("false");
    await fireEvent.blur(input);
    await act(() => pass(250));
    expect(input.value).toBe("warm");
    expect(input.getAttribute("aria-invalid")).toBe("true");
    const told = document.getElementById(input.getAttribute("aria-describedby") ?? "");
    expect(told?.textContent).toContain("It may hold a temperature with its unit");
  });

  test("is linked from the count of faults, even inside a closed disclosure", async () => {
    const { pass } = shown();
    const room = field("The room");
    await typed(room, "cold");
    await fireEvent.blur(room);
    await act(() => pass(250));
    expect(screen.getByText("1 field to mend:")).toBeTruthy();
    await fireEvent.click(screen.getByRole("link", { name: "The room" }));
    expect(document.activeElement).toBe(room);
    expect(room.closest("details")?.open).toBe(true);
  });

  test("changes the answer as it is typed", async () => {
    shown();
    expect(screen.getByText("9:29", { selector: "strong" })).toBeTruthy();
    await typed(field("In the mixed bath now"), "71 °F");
    expect(screen.getByText("8:34", { selector: "strong" })).toBeTruthy();
  });

  test("tells why it is asked when the reason is asked for", async () => {
    shown();
    const why = screen.getByRole("button", { name: "why? Dilution" });
    const reason = document.getElementById(why.getAttribute("aria-controls") ?? "");
    expect(reason?.hidden).toBe(true);
    await fireEvent.click(why);
    expect(reason?.hidden).toBe(false);
  });
});

describe("the keyboard", () => {
  test("meets the fields in the order in which they are read", () => {
    shown();
    const stops = [...document.querySelectorAll("form input, form select")].map(({ id }) => id);
    expect(stops.slice(0, 9)).toEqual([
      "title",
      "films[0].label",
      "films[0].size",
      "films[0].count",
      "films[0].boxSpeed",
      "films[0].exposureIndex",
      "developer.label",
      "developer.dilution",
      "developer.leaflet[0].temperature",
    ]);
    expect(document.querySelectorAll("[tabindex]:not([tabindex='-1'])")).toHaveLength(0);
  });

  test("loses nothing by Enter", async () => {
    const { workOut } = shown();
    const form = document.querySelector("form");
    const sent = form && (await fireEvent.submit(form));
    expect(sent).toBe(false);
    expect(workOut.draft.value).toBe(demo);
  });

  test("stays near a row that was taken out, and undo brings the row back", async () => {
    shown();
    await fireEvent.click(screen.getByRole("button", { name: "Take out Row 1" }));
    expect(document.activeElement?.textContent).toBe("Add a row of the leaflet");
    expect(field("Temperature").value).toBe("68 °F");
    expect(screen.getByText("Row 1 is taken out. Undo brings it back.")).toBeTruthy();
    await fireEvent.click(screen.getByRole("button", { name: sheetWords.undo }));
    expect(field("Temperature").value).toBe("65 °F");
  });
});

describe("an empty page", () => {
  test("asks for what is needed without calling anything wrong", () => {
    shown(emptyDraft());
    expect(document.querySelectorAll("[aria-invalid='true']")).toHaveLength(0);
    expect(screen.getByText(/fields to fill in:$/)).toBeTruthy();
    expect(screen.getByRole("link", { name: "Film 1: Size" })).toBeTruthy();
  });
});

describe("a bath", () => {
  test("hides its fields when it is not used, and gives them back as they were", async () => {
    shown();
    const stop = screen.getByRole("group", { name: "Stop bath" });
    const used = within(stop).getByRole("checkbox");
    await typed(field("Time", 4), "0:50");
    await fireEvent.click(used);
    expect(within(stop).queryByLabelText("Time")).toBeNull();
    await fireEvent.click(used);
    expect(within(stop).getByLabelText("Time")).toHaveProperty("value", "0:50");
  });
});

describe("a file that cannot be used", () => {
  test("is told with its faults, and the page stays as it was", async () => {
    shown();
    const chooser = document.querySelector<HTMLInputElement>("input[type=file]");
    if (!chooser) throw new Error("no way to choose a file");
    const bad = new File(['{ "tankside": 2 }'], "old.json");
    Object.defineProperty(chooser, "files", { value: [bad] });
    await fireEvent.change(chooser);
    expect(await screen.findByText(/^tankside holds 2; it may hold/)).toBeTruthy();
    expect(field("Film").value).toBe("Gullrock 125");
  });
});

describe("the greeting", () => {
  test("plays a pour once, however often it is pressed", async () => {
    let plays = 0;
    let end = () => {};
    shown(demo, () => {
      plays += 1;
      return new Promise((resolve) => {
        end = resolve;
      });
    });
    await fireEvent.click(screen.getByRole("button", { name: new RegExp(greeting.hear) }));
    await fireEvent.click(screen.getByRole("button", { name: new RegExp(greeting.hearing) }));
    expect(plays).toBe(1);
    end();
    expect(await screen.findByRole("button", { name: new RegExp(greeting.hear) })).toBeTruthy();
  });

  test("says so where no sound can be made", async () => {
    shown(demo, () => Promise.reject(new Error("no sound")));
    await fireEvent.click(screen.getByRole("button", { name: new RegExp(greeting.hear) }));
    expect(await screen.findByText(greeting.notHeard)).toBeTruthy();
  });
});

describe("a kept tank", () => {
  test("is forgotten and brought back from one place, which the focus never leaves", async () => {
    const { workOut } = shown();
    const press = (name: string) => {
      const button = screen.getByRole("button", { name });
      button.focus();
      return act(async () => {
        fireEvent.click(button);
        // The store answers a few turns later.
        await new Promise((resolve) => setTimeout(resolve, 5));
      });
    };
    const focused = () => document.activeElement?.textContent;
    await press(tanks.keep);
    expect(screen.queryByRole("button", { name: /^Bring back/ })).toBeNull();
    const forget = `${tanks.forget} two-reel steel`;
    await press(forget);
    expect(workOut.shelf.tanks.value).toEqual([]);
    expect(focused()).toBe(tanks.bringBack("two-reel steel"));
    await press(tanks.bringBack("two-reel steel"));
    expect(workOut.shelf.tanks.value).toHaveLength(1);
    expect(focused()).toBe(forget);
  });
});
