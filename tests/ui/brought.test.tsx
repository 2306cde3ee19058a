// @vitest-environment happy-dom
import { signal } from "@preact/signals";
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { deflateSync, strToU8 } from "fflate";
import { afterEach, expect, test } from "vitest";
import type { Session } from "../../src/live/runs.ts";
import { linkOf } from "../../src/plan/worksheet-link.ts";
import { broughtWith } from "../../src/ui/brought.tsx";
import { demos } from "../../src/ui/demo.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { brought as words } from "../../src/ui/words/en/take.ts";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { runByHand } from "../live/by-hand.ts";
import { world } from "./ports.ts";
import { sessionOf } from "./run-stand-ins.ts";

afterEach(cleanup);

const STARTS = Date.UTC(2026, 11, 5, 17, 30);

/** A page on which a person's own draft stands, not even half filled in, as a link arrives. */
async function opened(hash: string, session: Session | null = null) {
  const workOut = makeWorkOut(
    { ...draftOf(demos.foghorn), title: "Mine, unfinished", "tank.pourIn": "?!" },
    null,
    world().ports,
  );
  const brought = signal<string | null>(hash);
  const classAt = signal<number | null>(null);
  const current = signal(session);
  let went = 0;
  const Brought = broughtWith({
    brought,
    classAt,
    workOut,
    current,
    toWorkOut() {
      went += 1;
    },
  });
  render(<Brought />);
  await act(async () => {});
  return { workOut, brought, classAt, current, went: () => went };
}
const press = (name: string) =>
  act(async () => {
    fireEvent.click(screen.getByRole("button", { name }));
  });

test("a worksheet that came with a link is asked about first, and nothing has changed until then", async () => {
  const { workOut, classAt } = await opened(linkOf(demos.gullrock, STARTS));
  expect(document.activeElement).toBe(screen.getByRole("heading", { name: words.title }));
  expect(screen.getByText(/Gullrock Light, Thursday evening/)).toBeTruthy();
  expect(workOut.draft.value.title).toBe("Mine, unfinished");
  expect(classAt.value).toBeNull();
});

test("used, it is on the page with its class, and undo brings one's own back as it was typed", async () => {
  const { workOut, brought, classAt, went } = await opened(linkOf(demos.gullrock, STARTS));
  await press(words.use);
  expect(workOut.worksheet.value).toEqual(demos.gullrock);
  expect(classAt.value).toBe(STARTS);
  expect(brought.value).toBeNull();
  expect(went()).toBe(1);
  expect(screen.queryByRole("heading")).toBeNull();
  act(() => workOut.undo());
  expect(workOut.draft.value.title).toBe("Mine, unfinished");
  expect(workOut.draft.value["tank.pourIn"]).toBe("?!");
});

test("taken back, it takes its class along, and brings it again; one's own class stays one's own", async () => {
  const { workOut, classAt } = await opened(linkOf(demos.gullrock, STARTS));
  classAt.value = STARTS + 60_000;
  await press(words.use);
  workOut.type("title", "with a word of mine");
  act(() => workOut.undo());
  expect(classAt.value).toBe(STARTS + 60_000);
  workOut.redo();
  expect(workOut.draft.value.title).toBe("with a word of mine");
  expect(classAt.value).toBe(STARTS);
  workOut.undo();
  workOut.type("title", "Mine, finished");
  expect(classAt.value).toBe(STARTS + 60_000);
  workOut.redo();
  workOut.undo();
  expect(workOut.draft.value.title).toBe("Mine, finished");
  expect(classAt.value).toBe(STARTS + 60_000);
});

test("left, it is gone", async () => {
  const { workOut, brought, classAt } = await opened(linkOf(demos.gullrock, STARTS));
  await press(words.leave);
  expect(brought.value).toBeNull();
  expect(classAt.value).toBeNull();
  expect(workOut.canUndo.value).toBe(false);
});

test("one that cannot be used is told of by field, and changes nothing", async () => {
  const bad = { ...demos.gullrock, tank: { ...demos.gullrock.tank, pourIn: "ten" } };
  const packed = deflateSync(strToU8(JSON.stringify(bad)));
  const hash = `#w1.${Buffer.from(packed).toString("base64url")}`;
  const { workOut, brought } = await opened(hash);
  expect(brought.value).toBeNull();
  expect(workOut.draft.value.title).toBe("Mine, unfinished");
  expect(workOut.notice.value?.says).toContain(words.name);
  expect(workOut.notice.value?.lines.join()).toContain("tank.pourIn");
});

test("one that is cut off says so", async () => {
  const { workOut } = await opened(linkOf(demos.gullrock).slice(0, 90));
  expect(screen.getByText(words.broken)).toBeTruthy();
  expect(screen.queryByRole("button", { name: words.use })).toBeNull();
  await press(words.leave);
  expect(workOut.draft.value.title).toBe("Mine, unfinished");
});

test("over a run, nothing is asked before it has ended", async () => {
  const session = sessionOf(runByHand(demos.gullrock), demos.gullrock);
  const { current } = await opened(linkOf(demos.gullrock), session);
  expect(screen.queryByRole("heading")).toBeNull();
  act(() => {
    current.value = null;
  });
  expect(screen.getByRole("heading", { name: words.title })).toBeTruthy();
});
