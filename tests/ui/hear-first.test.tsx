// @vitest-environment happy-dom
import { signal } from "@preact/signals";
import { act, cleanup, fireEvent, render, screen, within } from "@testing-library/preact";
import { afterEach, describe, expect, test, vi } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { demos } from "../../src/ui/demo.ts";
import { lightsOutWith } from "../../src/ui/lights-out.tsx";
import { hearFirst as words } from "../../src/ui/words/en/hear.ts";
import { beforeRun } from "../../src/ui/words/en/run.ts";
import { runByHand } from "../live/by-hand.ts";
import { checkByHand } from "./check-by-hand.ts";
import { keepingThat } from "./ports.ts";
import { emptyHands, sessionOf, silentRuns } from "./run-stand-ins.ts";
import "./late-words.ts";

afterEach(cleanup);

/** Lights out before a run; `begun` are the worksheets that runs were begun with. */
async function shown(worksheet: Worksheet = demos.gullrock) {
  const begun: Worksheet[] = [];
  const { runs, current } = silentRuns({
    async begin(sheet) {
      begun.push(sheet);
      current.value = sessionOf(runByHand(sheet), sheet, { id: String(begun.length) });
      return "begun";
    },
    leave() {
      current.value = null;
    },
  });
  const check = checkByHand();
  const Place = lightsOutWith({
    runs,
    soundCheck: check.port,
    delays: { load: () => 0, keep: () => true },
    keeping: keepingThat("kept"),
    ...emptyHands,
    after: () => () => {},
    toWriteUp() {},
    keepAwake() {},
    often: () => () => {},
  });
  const page = render(<Place worksheet={signal(worksheet)} plan={signal(planOf(worksheet))} />);
  await act(async () => {});
  return { check, runs, begun, page };
}

const button = (name: string | RegExp) => screen.getByRole("button", { name });
const press = (name: string | RegExp) =>
  act(async () => {
    fireEvent.click(button(name));
  });
const begin = () => button(/^Begin/);
/** The buttons drawn as the one to press now. */
const firsts = () =>
  [...document.querySelectorAll("button.first:not(.second)")].map((it) => it.textContent);
const told = () =>
  within(screen.getByRole("region", { name: words.title }))
    .getAllByRole("status")
    .map((it) => it.textContent)
    .join("");
const pressed = (name: string) => button(name).getAttribute("aria-pressed");

describe("Before a run", () => {
  test("the test is the first thing to press, and beginning unheard stays possible but second", async () => {
    const { begun } = await shown();
    expect(firsts()).toEqual([words.play + words.playHint]);
    expect(begin().textContent).toBe(words.begin + words.beginHint);
    const test = button(/^Play the test/);
    expect(test.compareDocumentPosition(begin())).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
    await press(/^Begin/);
    expect(begun).toEqual([demos.gullrock]);
  });

  test("the page asks to let the tap run, and to stand where one will work", async () => {
    await shown();
    expect(screen.getByText(words.how).textContent).toMatch(/tap.*stand where.*run/s);
  });

  test("the test is played in the worksheet's voice, and only then is it asked what was heard", async () => {
    const { check } = await shown({ ...demos.gullrock, language: "de" });
    expect(screen.queryByRole("button", { name: words.heard })).toBeNull();
    await press(/^Play the test/);
    expect(check.asked).toEqual([{ what: "say", language: "de" }]);
    expect(told()).toBe(words.listen);
    expect(screen.queryByRole("button", { name: words.heard })).toBeNull();
    await check.end();
    expect(told()).toBe(words.ask);
    expect([pressed(words.heard), pressed(words.notHeard)]).toEqual(["false", "false"]);
    // Neither having played it nor being asked is an answer.
    expect(firsts()).toEqual([]);
    expect(begin().textContent).toContain(words.begin);
  });

  test("only “I heard it” makes Begin the one to press, and leaves the focus where it was", async () => {
    const { check } = await shown();
    await press(/^Play the test/);
    await check.end();
    button(words.heard).focus();
    await press(words.heard);
    expect(firsts()).toEqual([beforeRun.begin + beforeRun.beginHint]);
    expect(told()).toContain(words.good);
    // The bounce of a wet finger is not to begin the run.
    expect(document.activeElement).toBe(button(words.heard));
    expect(pressed(words.heard)).toBe("true");
  });

  test("“I did not” says what may be wrong, and to play it again is the one to press", async () => {
    const { check } = await shown();
    await press(/^Play the test/);
    await check.end();
    await press(words.notHeard);
    for (const line of [words.mend, ...words.advice]) expect(screen.getByText(line)).toBeTruthy();
    expect(firsts()).toEqual([words.playAgain + words.playHint]);
    expect(begin().textContent).toContain(words.begin);
    await press(/^Play it again/);
    expect(screen.queryByText(words.mend)).toBeNull();
    await check.end();
    await press(words.heard);
    expect(firsts()).toEqual([beforeRun.begin + beforeRun.beginHint]);
  });

  test("an answer can be changed, and is taken back by playing the test again", async () => {
    const { check } = await shown();
    await press(/^Play the test/);
    await check.end();
    await press(words.heard);
    await press(words.notHeard);
    expect(begin().textContent).toContain(words.begin);
    await press(words.heard);
    expect(begin().textContent).toContain(beforeRun.beginHint);
    await press(/^Play it again/);
    expect(begin().textContent).toContain(words.begin);
  });

  test("a test that is played anew is not over when the one before it is", async () => {
    const { check } = await shown();
    await press(/^Play the test/);
    const { stops } = check;
    await press(/^Playing/);
    expect(check.asked).toHaveLength(2);
    expect(told()).toBe(words.listen);
    await check.end();
    expect(told()).toBe(words.ask);
    expect(stops()).toBe(0);
  });

  test("a voice that cannot be fetched is told of, and nothing is asked", async () => {
    const { check } = await shown();
    await press(/^Play the test/);
    await check.refuse();
    expect(told()).toBe(words.failed);
    expect(screen.queryByRole("button", { name: words.heard })).toBeNull();
    await press(/^Play the test/);
    await check.end();
    expect(told()).toBe(words.ask);
  });

  test("beginning ends the test that is heard, and so does leaving the place", async () => {
    const begun = await shown();
    await press(/^Play the test/);
    await press(/^Begin/);
    expect(begun.check.stops()).toBeGreaterThan(0);
    cleanup();
    const left = await shown();
    await press(/^Play the test/);
    expect(left.check.stops()).toBe(0);
    left.page.unmount();
    await vi.waitFor(() => expect(left.check.stops()).toBe(1));
  });

  test("it is asked anew before every run", async () => {
    const { check, runs } = await shown();
    await press(/^Play the test/);
    await check.end();
    await press(words.heard);
    await press(/^Begin/);
    await act(async () => runs.leave());
    expect(firsts()).toEqual([words.play + words.playHint]);
    expect(begin().textContent).toBe(words.begin + words.beginHint);
    expect(screen.queryByRole("button", { name: words.heard })).toBeNull();
  });

  test("there is one button alone whose name starts with Begin, whatever was answered", async () => {
    const { check } = await shown();
    expect(screen.getAllByRole("button", { name: /^Begin/ })).toHaveLength(1);
    await press(/^Play the test/);
    await check.end();
    for (const answer of [words.notHeard, words.heard]) {
      await press(answer);
      expect(screen.getAllByRole("button", { name: /^Begin/ })).toHaveLength(1);
    }
  });
});
