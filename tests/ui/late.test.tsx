// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import type { ComponentType } from "preact";
import { afterEach, describe, expect, test } from "vitest";
import { late } from "../../src/ui/late.tsx";
import { latePart as lateWords } from "../../src/ui/words/en/bench.ts";
import { frame } from "../../src/ui/words/en/frame.ts";

afterEach(cleanup);

interface Named {
  readonly name: string;
}
const Part = ({ name }: Named) => <p>here is {name}</p>;

/** A part that comes, or fails to, when the test says so. */
function fetching() {
  const asked: { come(): void; fail(): void }[] = [];
  const Late = late<Named>(
    () =>
      new Promise<ComponentType<Named>>((resolve, reject) => {
        asked.push({
          come: () => resolve(Part),
          fail: () => reject(new Error("no network")),
        });
      }),
  );
  return { asked, Late };
}

const settled = (end: (() => void) | undefined) =>
  act(async () => {
    end?.();
    await Promise.resolve();
  });

describe("a part fetched when it is first shown", () => {
  test("is not fetched before", () => {
    const { asked } = fetching();
    expect(asked).toHaveLength(0);
  });

  test("has nothing in its place until it is there, and then stands there", async () => {
    const { asked, Late } = fetching();
    const { container } = render(<Late name="a drawing" />);
    expect(asked).toHaveLength(1);
    expect(container.innerHTML).toBe("");
    await settled(asked[0]?.come);
    expect(container.innerHTML).toBe("<p>here is a drawing</p>");
  });

  test("is handed what has changed since it was asked for", async () => {
    const { asked, Late } = fetching();
    const { rerender } = render(<Late name="a drawing" />);
    rerender(<Late name="another" />);
    await settled(asked[0]?.come);
    expect(screen.getByText("here is another")).toBeTruthy();
    rerender(<Late name="a third" />);
    expect(screen.getByText("here is a third")).toBeTruthy();
    expect(asked).toHaveLength(1);
  });

  test("is fetched once, however often it is shown", async () => {
    const { asked, Late } = fetching();
    render(
      <>
        <Late name="one" />
        <Late name="two" />
      </>,
    );
    await settled(asked[0]?.come);
    expect(screen.getByText("here is two")).toBeTruthy();
    cleanup();
    render(<Late name="three" />);
    await settled(undefined);
    expect(screen.getByText("here is three")).toBeTruthy();
    expect(asked).toHaveLength(1);
  });

  test("that cannot be fetched says so", async () => {
    const { asked, Late } = fetching();
    render(<Late name="a drawing" />);
    expect(screen.queryByText(lateWords.notFetched, { exact: false })).toBeNull();
    await settled(asked[0]?.fail);
    expect(screen.getByText(lateWords.notFetched, { exact: false })).toBeTruthy();
  });

  test("is tried again by a press, and says so again where that fails", async () => {
    const { asked, Late } = fetching();
    render(<Late name="a drawing" />);
    await settled(asked[0]?.fail);
    fireEvent.click(screen.getByRole("button", { name: frame.again }));
    await settled(undefined);
    expect(asked).toHaveLength(2);
    await settled(asked[1]?.fail);
    fireEvent.click(screen.getByRole("button", { name: frame.again }));
    await settled(undefined);
    await settled(asked[2]?.come);
    expect(screen.getByText("here is a drawing")).toBeTruthy();
    expect(screen.queryByText(lateWords.notFetched, { exact: false })).toBeNull();
  });

  test("is tried again when it is next shown", async () => {
    const { asked, Late } = fetching();
    const { unmount } = render(<Late name="a drawing" />);
    await settled(asked[0]?.fail);
    unmount();
    render(<Late name="a drawing" />);
    expect(asked).toHaveLength(2);
    expect(screen.queryByText(lateWords.notFetched, { exact: false })).toBeNull();
    await settled(asked[1]?.come);
    expect(screen.getByText("here is a drawing")).toBeTruthy();
  });

  test("that went away before it was there is no one's fault, and is there at once later", async () => {
    const { asked, Late } = fetching();
    const { container, unmount } = render(<Late name="a drawing" />);
    unmount();
    await settled(asked[0]?.come);
    expect(container.innerHTML).toBe("");
    render(<Late name="a drawing" />);
    await settled(undefined);
    expect(screen.getByText("here is a drawing")).toBeTruthy();
    expect(asked).toHaveLength(1);
  });

  test("that fails after it went away is tried again when it is next shown", async () => {
    const { asked, Late } = fetching();
    const { unmount } = render(<Late name="a drawing" />);
    unmount();
    await settled(asked[0]?.fail);
    render(<Late name="a drawing" />);
    expect(asked).toHaveLength(2);
  });
});
