// @vitest-environment happy-dom
import { signal } from "@preact/signals";
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { ClassStart } from "../../src/ui/class-start.tsx";
import { classStart as words } from "../../src/ui/words/en/take.ts";
import { english } from "../timeline/scene.ts";
import "./late-words.ts";

afterEach(cleanup);

const STARTS = Date.UTC(2026, 11, 5, 17, 30);

/** A class that starts in so many seconds, on a clock that the test moves. */
async function waiting(seconds: number, held = false) {
  let now = STARTS - seconds * 1000;
  let ticks: (() => void)[] = [];
  const said: string[] = [];
  const awake: boolean[] = [];
  let begun = 0;
  const classAt = signal<number | null>(STARTS);
  const page = render(
    <ClassStart
      at={STARTS}
      language="en"
      held={held}
      classAt={classAt}
      begin={() => {
        begun += 1;
      }}
      sounds={{
        script: async () => english,
        say: async (text) => void said.push(text),
        hush() {},
      }}
      now={() => now}
      keepAwake={(on) => awake.push(on)}
      often={(show) => {
        ticks.push(show);
        return () => {
          ticks = ticks.filter((it) => it !== show);
        };
      }}
    />,
  );
  await act(async () => {});
  return {
    ...page,
    said,
    awake,
    classAt,
    begun: () => begun,
    /** In steps of a quarter of a second, or in one where the page slept. */
    async wait(seconds: number, step = 0.25) {
      for (let waited = 0; waited < seconds; waited += step) {
        now += step * 1000;
        await act(async () => {
          for (const tick of ticks) tick();
        });
      }
    },
  };
}
const press = (name: string) =>
  act(async () => {
    fireEvent.click(screen.getByRole("button", { name }));
  });

test("whoever is ready is told how soon it starts, and it begins by itself at that minute", async () => {
  const it = await waiting(125);
  await press(words.ready);
  expect(screen.getByText(words.waits)).toBeTruthy();
  await it.wait(124.75);
  expect(it.said).toEqual([
    "It starts in",
    "two minutes.",
    "It starts in",
    "one minute.",
    "It starts in",
    "half a minute.",
    "It starts in",
    "ten seconds.",
  ]);
  expect(it.begun()).toBe(0);
  await it.wait(0.5);
  expect(it.begun()).toBe(1);
  expect(it.classAt.value).toBeNull();
  await it.wait(5);
  expect(it.begun()).toBe(1);
});

test("nothing begins where nobody said so, or where it was taken back", async () => {
  const it = await waiting(60);
  await it.wait(10);
  await press(words.ready);
  await press(words.notReady);
  expect(it.awake).toEqual([true, false]);
  await it.wait(70);
  expect(it.begun()).toBe(0);
});

test("a stop is to be accepted first", async () => {
  const it = await waiting(60, true);
  await press(words.ready);
  expect(screen.getByText(words.stopFirst)).toBeTruthy();
  await it.wait(61);
  expect(it.begun()).toBe(0);
});

test("a page that slept over its minute begins nothing, and says that the time has passed", async () => {
  const it = await waiting(60);
  await press(words.ready);
  await it.wait(300, 300);
  expect(it.begun()).toBe(0);
  expect(screen.getByText(words.passed, { exact: false })).toBeTruthy();
  expect(screen.queryByRole("button")).toBeNull();
});

test("put aside, it is over: nothing is waited for, and nothing begins", async () => {
  const it = await waiting(60);
  await press(words.ready);
  await press(words.putAside);
  expect(it.classAt.value).toBeNull();
  await it.wait(61);
  expect(it.begun()).toBe(0);
});
