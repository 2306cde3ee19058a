// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { LeftRun } from "../../src/ui/left-run.tsx";
import { gullrock } from "../plan/worksheets.ts";
import { silentRuns } from "./run-stand-ins.ts";
import "./late-words.ts";

afterEach(cleanup);

async function closed(dropUnfinished: () => Promise<"dropped" | "elsewhere" | "gone">) {
  const unfinished = async () => ({ worksheet: gullrock, begunAt: 0, isFresh: false });
  render(<LeftRun runs={silentRuns({ unfinished, dropUnfinished }).runs} />);
  fireEvent.click(await screen.findByRole("button", { name: "Close it" }));
}

test("A left run that is closed says so", async () => {
  await closed(async () => "dropped");
  expect((await screen.findByRole("status")).textContent).toMatch(/closed/i);
});

test("A left run that another page leads is not said to be closed", async () => {
  await closed(async () => "elsewhere");
  expect((await screen.findByRole("status")).textContent).toMatch(/another/i);
});
