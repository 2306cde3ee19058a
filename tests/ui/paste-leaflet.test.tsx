// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { demos } from "../../src/ui/demo.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { PasteLeaflet } from "../../src/ui/paste-leaflet.tsx";
import { paste as words } from "../../src/ui/words/en/bench.ts";
import { WorkOutProvider } from "../../src/ui/work-out-context.ts";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { world } from "./ports.ts";

afterEach(cleanup);

const demo = draftOf(demos.gullrock);

function shown() {
  const workOut = makeWorkOut(demo, null, world().ports);
  render(
    <WorkOutProvider value={workOut}>
      <PasteLeaflet />
    </WorkOutProvider>,
  );
  return workOut;
}

function place(): HTMLTextAreaElement {
  const found = screen.getByLabelText(words.label);
  if (!(found instanceof HTMLTextAreaElement)) throw new Error("no place to paste into");
  return found;
}
const paste = (text: string) => fireEvent.input(place(), { target: { value: text } });
const fill = () => fireEvent.click(screen.getByRole("button", { name: words.fill }));
const told = () => {
  const beneath = document.getElementById("paste-leaflet:faults");
  return [...(beneath?.querySelectorAll("p") ?? [])].map(({ textContent }) => textContent);
};

const good = "Temperature\tTime\n68 °F\t10:00\n70 °F\t9 min\n\n72 °F\t8:15 EI 200";

describe("a leaflet's table", () => {
  test("that is sound fills the rows, clears the text and says how many", async () => {
    const workOut = shown();
    await paste(good);
    await fill();
    expect(workOut.worksheet.value?.developer.leaflet).toEqual([
      { temperature: { f: 68 }, time: "10:00" },
      { temperature: { f: 70 }, time: "9:00" },
      { temperature: { f: 72 }, time: "8:15", exposureIndex: 200 },
    ]);
    expect(place().value).toBe("");
    expect(told()).toEqual([]);
    expect(workOut.notice.value?.says).toBe(words.filled(3));
  });

  test("is one step: undo brings the old rows back", async () => {
    const workOut = shown();
    await paste(good);
    await fill();
    workOut.undo();
    expect(workOut.draft.value).toEqual(demo);
    expect(workOut.canUndo.value).toBe(false);
  });

  test("says of one row that it is one", async () => {
    const workOut = shown();
    await paste("68 °F 10:00");
    await fill();
    expect(workOut.notice.value?.says).toBe(words.filled(1));
  });

  test("with bad lines names each of them, keeps the text and fills nothing in", async () => {
    const workOut = shown();
    const typed = "68 °F 10:00\n\n70 °F, 9.30\n72 °F 8:15\n74 °F";
    await paste(typed);
    await fill();
    expect(told()).toEqual([
      expect.stringMatching(
        /^Line 3: “70 °F, 9.30” cannot be used\. It may hold a temperature.*\.$/,
      ),
      expect.stringMatching(/^Line 5: “74 °F” cannot be used\. It may hold a temperature.*\.$/),
    ]);
    expect(place().value).toBe(typed);
    expect(place().getAttribute("aria-invalid")).toBe("true");
    expect(workOut.draft.value).toBe(demo);
    expect(workOut.canUndo.value).toBe(false);
  });

  test("is blamed for nothing before it has been tried", async () => {
    shown();
    await paste("no 1 row");
    expect(told()).toEqual([]);
    expect(place().getAttribute("aria-invalid")).toBe("false");
  });

  test("once tried, is judged anew as it is mended, and then fills in", async () => {
    const workOut = shown();
    await paste("68 °F 10:00\n70 °F");
    await fill();
    expect(told()).toHaveLength(1);
    await paste("68 °F 10:00\n70 °F 9:00");
    expect(told()).toEqual([]);
    expect(place().getAttribute("aria-invalid")).toBe("false");
    await fill();
    expect(workOut.worksheet.value?.developer.leaflet).toHaveLength(2);
    expect(place().value).toBe("");
  });

  test.each(["", "  \n\n", "Temperature and time\nby hand"])(
    "without a row in it is told so, and stays: %j",
    async (typed) => {
      const workOut = shown();
      await paste(typed);
      await fill();
      expect(told()).toEqual([words.nothing]);
      expect(place().value).toBe(typed);
      expect(place().getAttribute("aria-invalid")).toBe("true");
      expect(workOut.draft.value).toBe(demo);
    },
  );

  test("once filled in, leaves the empty place blameless for the next one", async () => {
    shown();
    await fill();
    expect(told()).toEqual([words.nothing]);
    await paste(good);
    await fill();
    expect(told()).toEqual([]);
    expect(place().getAttribute("aria-invalid")).toBe("false");
  });

  test("has its faults told to those who listen, beside what it may hold", () => {
    shown();
    const ids = place().getAttribute("aria-describedby")?.split(" ") ?? [];
    expect(ids.map((id) => document.getElementById(id)?.id)).toEqual(ids);
    expect(document.getElementById(ids[0] ?? "")?.textContent).toBe(words.why);
    expect(document.getElementById(ids[1] ?? "")?.getAttribute("aria-live")).toBe("polite");
  });
});
