// @vitest-environment happy-dom
import { signal } from "@preact/signals";
import { cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { demos } from "../../src/ui/demo.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { type Fetches, Frame } from "../../src/ui/frame.tsx";
import { type PlaceId, type PlaceProps, placeAt, placeIds } from "../../src/ui/place.ts";
import { frame as frameWords, places as placeWords } from "../../src/ui/words/en/frame.ts";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { world } from "./ports.ts";

afterEach(cleanup);

const Titled = ({ worksheet }: PlaceProps) => <p>the worksheet is {worksheet.value?.title}</p>;

function shown(fetches: Partial<Fetches> = {}) {
  const place = signal<PlaceId>("work-out");
  const workOut = makeWorkOut(draftOf(demos.gullrock), null, world().ports);
  const all: Fetches = {
    "walk-through": async () => Titled,
    "lights-out": async () => Titled,
    "write-up": async () => Titled,
    ...fetches,
  };
  render(
    <Frame
      place={place}
      workOut={workOut}
      fetches={all}
      languageStore={{ load: () => null, keep: () => true }}
      hearAPour={async () => {}}
    />,
  );
  return place;
}

test("a hash names one of the four places, or none", () => {
  expect(placeIds.map((id) => placeAt(`#${id}`))).toEqual(placeIds);
  expect(placeAt("")).toBeNull();
  expect(placeAt("#page")).toBeNull();
});

test("the place one is in is marked, titled and headed, and the keyboard goes along", async () => {
  const place = shown();
  expect(document.title).toBe("Work out · Tankside");
  expect(document.activeElement).toBe(document.body);
  place.value = "write-up";
  const heading = await screen.findByRole("heading", { level: 1, name: "Write up" });
  expect(await screen.findByText("the worksheet is Gullrock Light, Thursday evening")).toBeTruthy();
  expect(document.title).toBe("Write up · Tankside");
  expect(document.activeElement).toBe(heading);
  const here = document.querySelectorAll("[aria-current]");
  expect([...here].map((it) => it.getAttribute("href"))).toEqual(["#write-up"]);
});

test("every place is a plain link, the first of them Work out", () => {
  shown();
  const links = screen.getByRole("navigation").querySelectorAll("a");
  expect([...links].map((it) => it.querySelector("b")?.textContent)).toEqual(
    placeIds.map((id) => placeWords[id].name),
  );
});

test("a place that cannot be fetched says so, and can be tried again", async () => {
  let tries = 0;
  const place = shown({
    "lights-out": async () => {
      tries += 1;
      if (tries === 1) throw new TypeError("network");
      return Titled;
    },
  });
  place.value = "lights-out";
  expect((await screen.findByRole("alert")).textContent).toContain(frameWords.notOpened);
  await fireEvent.click(screen.getByRole("button", { name: frameWords.again }));
  expect(await screen.findByText(/the worksheet is/)).toBeTruthy();
});
