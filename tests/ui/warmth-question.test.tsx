// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen, within } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import { warningsAbout } from "../../src/ui/answer-model.ts";
import { demos } from "../../src/ui/demo.ts";
import type { Draft } from "../../src/ui/draft.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { NoticeLine } from "../../src/ui/sheet-tools.tsx";
import { poursAnswer } from "../../src/ui/warmth-model.ts";
import { WarmthQuestion } from "../../src/ui/warmth-question.tsx";
import { answers as answerWords } from "../../src/ui/words/en/answers.ts";
import { mixing as mixingWords, tempering as words } from "../../src/ui/words/en/bench.ts";
import { faults as faultWords } from "../../src/ui/words/en/faults.ts";
import { more as benchMore } from "../../src/ui/words/en/questions.ts";
import { sink as sinkWords } from "../../src/ui/words/en/wet.ts";
import { WorkOutProvider } from "../../src/ui/work-out-context.ts";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { world } from "./ports.ts";

afterEach(cleanup);

const demo = draftOf(demos.gullrock);
const pushed = draftOf(demos.foghorn);

/** The question on a page of its own, with its arithmetic fetched. */
async function shown(draft: Draft) {
  const it = world();
  const workOut = makeWorkOut(draft, null, it.ports);
  render(
    <WorkOutProvider value={workOut}>
      <NoticeLine />
      <WarmthQuestion />
    </WorkOutProvider>,
  );
  await act(async () => {
    await it.ports.asides();
  });
  return { ...it, workOut };
}

function disclosure(summary: string): HTMLDetailsElement {
  const found = screen.getByText(summary).closest("details");
  if (!found) throw new Error(`nothing opens by ${summary}`);
  return found;
}
const valueAt = (path: string) => {
  const found = document.getElementById(path);
  return found instanceof HTMLInputElement ? found.value : null;
};

async function atTheSink(): Promise<HTMLElement> {
  await fireEvent.click(screen.getByRole("button", { name: new RegExp(`^${words.sink}`) }));
  return screen.findByRole("dialog", { name: words.title });
}

let stamp = 0;
/** A press a second after the one before, so that none is a bounce. */
async function press(button: HTMLElement): Promise<void> {
  const event = new PointerEvent("pointerdown", { bubbles: true, isPrimary: true, button: 0 });
  stamp += 1000;
  Object.defineProperty(event, "timeStamp", { value: stamp });
  await act(() => {
    button.dispatchEvent(event);
  });
}
const key = (sheet: HTMLElement, name: string) => within(sheet).getByRole("button", { name });
const readKey = (sheet: HTMLElement) => within(sheet).getByRole("button", { name: /^Read / });
const read = (sheet: HTMLElement) => press(readKey(sheet));
const told = (sheet: HTMLElement) => sheet.querySelector("[aria-live]")?.textContent;
const stood = (sheet: HTMLElement) =>
  within(sheet)
    .queryAllByRole("listitem")
    .map(({ textContent }) => textContent);

describe("what is mixed from two taps", () => {
  test("is shown as what to pour together, with its working beneath", async () => {
    await shown(pushed);
    const mixing = disclosure(benchMore.mixing);
    expect(mixing.open).toBe(true);
    // 1+1 of 320 ml, to marks of 5 ml: the half is stock, and the two taps make the other half.
    expect(poursAnswer(demos.foghorn)).toMatch(/^160 ml of stock \+ \d+ ml cold \+ \d+ ml hot$/);
    const figure = within(mixing).getByText(mixingWords.take).parentElement;
    expect(figure?.textContent).toBe(`${mixingWords.take} ${poursAnswer(demos.foghorn)}`);
    const labels = within(within(mixing).getByRole("list", { name: answerWords.working }))
      .getAllByRole("listitem")
      .map((line) => line.querySelector(".label")?.textContent);
    expect(labels).toEqual([
      "Water to add",
      "From the hot tap",
      "From the cold tap",
      "To the marks",
    ]);
  });

  test("half filled in, is answered by what is to fill in, each a way to its field", async () => {
    const { workOut } = await shown({ ...demo, "mixing.target": "68 °F" });
    const mixing = disclosure(benchMore.mixing);
    expect(within(mixing).queryByText(mixingWords.take)).toBeNull();
    expect(within(mixing).getByText(faultWords.wanted(3))).toBeTruthy();
    const links = within(mixing).getAllByRole("link");
    expect(links.map(({ textContent }) => textContent)).toEqual([
      "The stock has",
      "The cold tap",
      "The hot tap",
    ]);
    await fireEvent.click(links[1] ?? mixing);
    expect(document.activeElement?.id).toBe("mixing.cold");
    expect(workOut.plan.value?.developmentSeconds).toBe(planOf(demos.gullrock).developmentSeconds);
    expect(within(disclosure(benchMore.tempering)).queryByRole("link")).toBeNull();
  });

  test("is answered as soon as the last field is filled in", async () => {
    const { workOut } = await shown({ ...pushed, "mixing.hot": "" });
    const mixing = disclosure(benchMore.mixing);
    expect(within(mixing).getByText(faultWords.wanted(1))).toBeTruthy();
    await act(() => workOut.type("mixing.hot", "108 °F"));
    expect(within(mixing).queryByText(faultWords.wanted(1))).toBeNull();
    expect(within(mixing).getByText(mixingWords.take)).toBeTruthy();
  });

  test("says in the disclosure what is wrong with it, once the field is left", async () => {
    const { workOut, pass } = await shown(pushed);
    const mixing = disclosure(benchMore.mixing);
    await act(() => workOut.type("mixing.cold", "icy"));
    expect(within(mixing).queryByText(faultWords.summary(1))).toBeNull();
    await act(() => {
      workOut.leave();
      pass(250);
    });
    expect(within(mixing).getByText(faultWords.summary(1))).toBeTruthy();
    expect(within(mixing).getByRole("link").textContent).toBe("The cold tap");
  });

  test("is closed and silent where nothing of it is asked", async () => {
    await shown(demo);
    for (const summary of [benchMore.mixing, benchMore.tempering]) {
      expect(disclosure(summary).open).toBe(false);
      expect(disclosure(summary).querySelector(".answer")?.textContent).toBe("");
    }
  });
});

describe("what stands in a water bath", () => {
  test("has its advice beneath the readings", async () => {
    await shown(pushed);
    const tempering = disclosure(benchMore.tempering);
    const warnings = warningsAbout(planOf(demos.foghorn), ["tempering"]);
    expect(warnings.length).toBeGreaterThan(0);
    const advice = within(tempering).getByRole("list", { name: answerWords.warnings });
    for (const { text } of warnings) expect(advice.textContent).toContain(text);
    expect(within(tempering).getByRole("list", { name: answerWords.working })).toBeTruthy();
  });

  test("is read at the sink with what was read so far, and what follows from it", async () => {
    await shown(pushed);
    const sheet = await atTheSink();
    expect(stood(sheet)).toEqual(["0:00 75 °F", "3:00 72.5 °F", "6:00 71 °F"]);
    expect(sheet.querySelector("output")?.textContent).toBe("71 °F");
    const advice = warningsAbout(planOf(demos.foghorn), ["tempering"]).map(({ text }) => text);
    expect(told(sheet)).toBe(advice.join(" "));
  });

  test("has every press stamped by the clock, as a row of the worksheet", async () => {
    const { pass, workOut } = await shown(demo);
    const sheet = await atTheSink();
    expect(told(sheet)).toBe(words.noTarget);
    // Nothing was read yet: the bath as it was measured is the nearest that is known.
    expect(readKey(sheet).textContent).toBe(sinkWords.read("69\u00a0°F"));
    await read(sheet);
    pass(200_000);
    await press(key(sheet, sinkWords.less));
    await read(sheet);
    expect(stood(sheet)).toEqual(["0:00 69 °F", "3:20 68.5 °F"]);
    expect(valueAt("tempering.readings[0].at")).toBe("0:00");
    expect(valueAt("tempering.readings[1].at")).toBe("3:20");
    expect(valueAt("tempering.readings[1].temperature")).toBe("68.5 °F");
    expect(valueAt("tempering.began")).toBe("12:00:00");
    await act(() => workOut.type("tempering.target", "68 °F"));
    expect(workOut.worksheet.value?.tempering).toEqual({
      target: { f: 68 },
      began: "12:00:00",
      readings: [
        { at: "0:00", temperature: { f: 69 } },
        { at: "3:20", temperature: { f: 68.5 } },
      ],
    });
  });

  test("is told at the sink what one reading comes to", async () => {
    const { workOut } = await shown({
      ...demo,
      "tempering.target": "68 °F",
      "developer.temperature": "75 °F",
    });
    const sheet = await atTheSink();
    expect(told(sheet)).toBe("");
    await read(sheet);
    const worksheet = workOut.worksheet.value;
    const advice = worksheet ? warningsAbout(planOf(worksheet), ["tempering"]) : [];
    expect(advice).toHaveLength(1);
    expect(told(sheet)).toBe(advice[0]?.text);
  });

  test("takes back the last reading, on the sheet and in the worksheet", async () => {
    const { workOut } = await shown(pushed);
    const sheet = await atTheSink();
    await fireEvent.click(key(sheet, sinkWords.takeBack));
    expect(stood(sheet)).toEqual(["0:00 75 °F", "3:00 72.5 °F"]);
    expect(workOut.worksheet.value?.tempering?.readings).toHaveLength(2);
  });

  test("has each press undone like any other change", async () => {
    const { workOut, pass } = await shown({ ...pushed, "tempering.began": "11:50" });
    const sheet = await atTheSink();
    await read(sheet);
    pass(60_000);
    await read(sheet);
    expect(stood(sheet).slice(3)).toEqual(["10:00 71 °F", "11:00 71 °F"]);
    await act(() => workOut.undo());
    expect(stood(sheet).slice(3)).toEqual(["10:00 71 °F"]);
    await act(() => workOut.undo());
    expect(workOut.draft.value).toEqual({ ...pushed, "tempering.began": "11:50" });
  });

  test("begins afresh over readings without a time of day, and says so on the page", async () => {
    const { workOut } = await shown({ ...pushed, "tempering.began": "" });
    const sheet = await atTheSink();
    await read(sheet);
    expect(stood(sheet)).toEqual(["0:00 71 °F"]);
    expect(workOut.notice.value?.says).toBe(words.afresh);
    await act(() => workOut.undo());
    expect(stood(sheet)).toHaveLength(3);
  });

  test("shows a warm day's water first where nothing was ever measured", async () => {
    await shown({ ...demo, "developer.temperature": "" });
    expect(readKey(await atTheSink()).textContent).toBe(sinkWords.read("72\u00a0°F"));
    cleanup();
    await shown({ ...demo, "developer.temperature": "", "unit.temperature": "c" });
    expect(readKey(await atTheSink()).textContent).toBe(sinkWords.read("22\u00a0°C"));
  });

  test("is left as it was found, and the way back to the sink has the focus", async () => {
    await shown(pushed);
    const opener = screen.getByRole("button", { name: new RegExp(`^${words.sink}`) });
    opener.focus();
    const sheet = await atTheSink();
    await fireEvent.click(key(sheet, sinkWords.done));
    expect(screen.queryByRole("dialog")).toBeNull();
    expect(document.activeElement).toBe(opener);
  });
});
