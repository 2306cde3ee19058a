// @vitest-environment happy-dom
import { act, cleanup, render, screen } from "@testing-library/preact";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { Announcer, DevelopmentAnswer } from "../../src/ui/answers.tsx";
import { draftOf } from "../../src/ui/draft-of.ts";
import { WorkOutProvider } from "../../src/ui/work-out-context.ts";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { gullrock } from "../plan/worksheets.ts";
import { world } from "./ports.ts";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

function shown() {
  const workOut = makeWorkOut(draftOf(gullrock), null, world().ports);
  const { container } = render(
    <WorkOutProvider value={workOut}>
      <DevelopmentAnswer />
      <Announcer />
    </WorkOutProvider>,
  );
  return {
    type: (time: string) => act(() => workOut.type("developer.leaflet[0].time", time)),
    pass: (ms: number) => act(() => void vi.advanceTimersByTime(ms)),
    told: () => screen.getByRole("status").textContent,
    read: () => container.textContent?.match(/Develop for/g)?.length,
  };
}

describe("What Work out comes to", () => {
  test("is told once when it has changed and the page is still, and stands to be read once", () => {
    const page = shown();
    page.pass(60_000);
    expect(page.told()).toBe("");
    expect(page.read()).toBe(1);
    page.type("1");
    page.pass(1000);
    page.type("12:00");
    page.pass(1400);
    expect(page.told()).toBe("");
    page.pass(200);
    expect(page.told()).toMatch(/^Develop for 10:\d\d\. Mix 75 ml of stock/);
    page.pass(4000);
    expect(page.told()).toBe("");
    expect(page.read()).toBe(1);
    page.pass(60_000);
    expect(page.told()).toBe("");
  });

  test("is told again where it has become what it was, and not where it did so before it was told", () => {
    const page = shown();
    page.type("12:00");
    page.type("10:00");
    page.pass(60_000);
    expect(page.told()).toBe("");
    page.type("12:00");
    page.pass(10_000);
    page.type("10:00");
    page.pass(1500);
    expect(page.told()).toMatch(/^Develop for 9:29\./);
  });

  test("stays for its time where another comes, which is told in its place", () => {
    const page = shown();
    page.type("12:00");
    page.pass(1500);
    page.type("10:00");
    page.pass(1500);
    expect(page.told()).toMatch(/^Develop for 9:29\./);
    page.pass(3900);
    expect(page.told()).toMatch(/^Develop for 9:29\./);
    page.pass(200);
    expect(page.told()).toBe("");
  });
});
