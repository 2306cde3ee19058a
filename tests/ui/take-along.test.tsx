// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { readLink } from "../../src/plan/worksheet-link.ts";
import type { FileWish } from "../../src/track/files.ts";
import { demos } from "../../src/ui/demo.ts";
import { takeAlongWith } from "../../src/ui/take-along.tsx";
import type { TakePorts } from "../../src/ui/take-port.ts";
import { take } from "../../src/ui/words/en/take.ts";
import "./late-words.ts";

afterEach(cleanup);

/** A world in which files are made when the test says so. */
function shown(more: Partial<TakePorts> = {}) {
  const wishes: FileWish[] = [];
  const saved: string[] = [];
  const copied: string[] = [];
  let cancelled = 0;
  let told = (_done: number) => {};
  let finish = (_file: Blob | "too-long") => {};
  let fail = () => {};
  const Take = takeAlongWith({
    async make(_worksheet, wish, tell) {
      wishes.push(wish);
      told = tell;
      const file = new Promise<Blob | "too-long">((resolve, reject) => {
        finish = resolve;
        fail = () => reject(new Error("no worker"));
      });
      return {
        file,
        cancel() {
          cancelled += 1;
        },
      };
    },
    holdReady: () => () => {},
    deviceSpeaks: async () => false,
    saveFile: (name) => void saved.push(name),
    print() {},
    now: () => new Date(2026, 10, 1, 12).getTime(),
    address: () => "https://gullrock.example/tankside/",
    async copy(text) {
      copied.push(text);
      return true;
    },
    share: null,
    ...more,
  });
  const page = render(<Take worksheet={demos.gullrock} />);
  return {
    ...page,
    wishes,
    saved,
    copied,
    cancelled: () => cancelled,
    tell: (done: number) => act(() => told(done)),
    finish: (file: Blob | "too-long" = new Blob()) => act(async () => finish(file)),
    fail: () => act(async () => fail()),
  };
}

const button = (name: string) => screen.getByRole("button", { name });
const press = (name: string) =>
  act(async () => {
    fireEvent.click(button(name));
  });
const type = (label: string, value: string) =>
  act(async () => {
    fireEvent.input(screen.getByLabelText(label), { target: { value } });
  });
const statuses = () => screen.getAllByRole("status").map((it) => it.textContent);

describe("The track", () => {
  test("is made as it was chosen, tells how far it is in tenths, and is saved by the worksheet's name", async () => {
    const world = shown();
    await act(async () => {
      fireEvent.click(screen.getByLabelText(take.kinds.stay));
    });
    await type(take.gap, "20");
    await press(take.makes.mp3);
    expect(world.wishes).toEqual([{ kind: "mp3", gap: 20, waits: "stay" }]);
    await world.tell(0.57);
    expect(screen.getByRole("progressbar").getAttribute("value")).toBe("0.57");
    expect(statuses()).toContain(take.making("50\u00a0%"));
    await world.finish();
    expect(world.saved).toEqual(["gullrock-light-thursday-evening.mp3"]);
    expect(statuses()).toContain(take.saved("gullrock-light-thursday-evening.mp3"));
    expect(screen.queryByRole("progressbar")).toBeNull();
  });

  test("has its sounds held ready from before it is asked for until the place is left", async () => {
    const held: string[] = [];
    const { unmount } = shown({
      holdReady({ title }) {
        held.push(`holds ${title}`);
        return () => void held.push(`lets go of ${title}`);
      },
    });
    await press(take.makes.wav);
    expect(held).toEqual([`holds ${demos.gullrock.title}`]);
    await act(async () => void unmount());
    expect(held.slice(1)).toEqual([`lets go of ${demos.gullrock.title}`]);
  });

  test("is made once, however often it is pressed for", async () => {
    const { wishes } = shown();
    await press(take.makes.wav);
    await press(take.makes.wav);
    await press(take.makes.mp3);
    expect(wishes).toHaveLength(1);
  });

  test("cancelled is not saved, and can be made again", async () => {
    const world = shown();
    await press(take.makes.mp3);
    await press(take.cancel);
    expect(world.cancelled()).toBe(1);
    await world.finish();
    expect(world.saved).toEqual([]);
    expect(statuses()).toContain(take.cancelled);
    await press(take.makes.mp3);
    expect(world.wishes).toHaveLength(2);
  });

  test("is called off where the place is left", async () => {
    const world = shown();
    await press(take.makes.mp3);
    world.unmount();
    await world.finish();
    expect(world.cancelled()).toBe(1);
    expect(world.saved).toEqual([]);
  });

  test("that cannot be made, or is too long, is said so", async () => {
    const world = shown();
    await press(take.makes.wav);
    await world.fail();
    expect(statuses()).toContain(take.failed);
    await press(take.makes.wav);
    await world.finish("too-long");
    expect(statuses()).toContain(take.tooLong);
    expect(world.saved).toEqual([]);
  });

  test.each(["", "ten", "-1", "3601", "1.5"])("waits for no “%s” seconds", async (typed) => {
    const { wishes } = shown();
    await type(take.gap, typed);
    expect(statuses()).toContain(take.gapMay("3600"));
    await press(take.makes.mp3);
    expect(wishes).toEqual([]);
  });
});

test("Where a voice of the device speaks the worksheet's language, it is told that none of it is in a file", async () => {
  const asked: string[] = [];
  const speaks = (does: boolean) =>
    shown({
      async deviceSpeaks(language) {
        asked.push(language);
        return does;
      },
    });
  const { unmount } = speaks(false);
  await act(async () => {});
  expect(screen.queryByText(take.notDevice)).toBeNull();
  unmount();
  speaks(true);
  expect(await screen.findByText(take.notDevice)).toBeTruthy();
  expect(asked).toEqual(["en", "en"]);
});

test("An entry for a calendar wants its day and time first", async () => {
  const { wishes } = shown();
  await press(take.makes.ics);
  expect(wishes).toEqual([]);
  expect(statuses()).toContain(take.wantsTime);
  await type(take.planned, "2026-12-05T18:30");
  await press(take.makes.ics);
  expect(wishes).toEqual([{ kind: "ics", gap: 60, waits: "pass", at: "2026-12-05T18:30" }]);
});

describe("The link", () => {
  const read = (link = "") => readLink(link.slice(link.indexOf("#")));

  test("carries the worksheet, and the minute of a class where one starts together", async () => {
    const { copied } = shown();
    await press(take.copy);
    expect(copied[0]).toMatch(/^https:\/\/gullrock\.example\/tankside\/#/);
    expect(read(copied[0])).toMatchObject({
      reading: { kind: "worksheet", worksheet: demos.gullrock },
      startsAt: null,
    });
    await type(take.planned, "2026-12-05T18:30");
    await act(async () => {
      fireEvent.click(screen.getByLabelText(take.together));
    });
    await press(take.copy);
    expect(read(copied[1])).toMatchObject({ startsAt: new Date(2026, 11, 5, 18, 30).getTime() });
  });

  const tickTogether = () =>
    act(async () => {
      fireEvent.click(screen.getByLabelText(take.together));
    });

  test("is not said to be copied once another stands there", async () => {
    shown();
    await press(take.copy);
    expect(statuses()).toContain(take.copied);
    await type(take.planned, "2026-12-05T18:30");
    expect(statuses()).toContain(take.copied);
    await tickTogether();
    expect(statuses()).not.toContain(take.copied);
  });

  test.each([
    ["no time was chosen", "", take.wantsTime],
    ["the time has passed", "2026-11-01T12:00", take.isPast],
  ])("of a class is not handed on while %s, and it is said at the field", async (_, at, says) => {
    const shared: string[] = [];
    const { copied } = shown({ share: async (_title, url) => void shared.push(url) });
    await type(take.planned, at);
    await tickTogether();
    const field = screen.getByLabelText(take.planned);
    const said = document.getElementById(field.getAttribute("aria-describedby") ?? "");
    expect(said?.textContent).toBe(says);
    expect(field.getAttribute("aria-invalid")).toBe("true");
    expect(screen.queryByRole("img", { name: take.code })).toBeNull();
    for (const name of [take.copy, take.share]) {
      button(name).focus();
      await press(name);
      expect(document.activeElement).toBe(field);
    }
    expect([copied, shared]).toEqual([[], []]);
    await type(take.planned, "2026-11-01T12:01");
    expect(said?.textContent).toBe("");
    expect(field.getAttribute("aria-invalid")).toBe("false");
    await press(take.copy);
    expect(read(copied[0])).toMatchObject({ startsAt: new Date(2026, 10, 1, 12, 1).getTime() });
  });

  test("of a class whose minute passes while the page stands open is not handed on either", async () => {
    let now = new Date(2026, 10, 1, 12).getTime();
    const { copied } = shown({ now: () => now });
    await type(take.planned, "2026-11-01T12:01");
    await tickTogether();
    await press(take.copy);
    expect(copied).toHaveLength(1);
    now += 60_000;
    await press(take.copy);
    expect(copied).toHaveLength(1);
    expect(screen.getByText(take.isPast)).toBeTruthy();
    expect(statuses()).not.toContain(take.copied);
  });

  test("says the same instant as the calendar, in the hour that is left out in spring as well", async () => {
    const zone = process.env.TZ;
    process.env.TZ = "Europe/Amsterdam";
    try {
      const { copied, wishes } = shown();
      await type(take.planned, "2027-03-28T02:30");
      await tickTogether();
      await press(take.copy);
      await press(take.makes.ics);
      expect(read(copied[0])).toMatchObject({ startsAt: Date.UTC(2027, 2, 28, 1, 30) });
      expect(wishes.map(({ at }) => at)).toEqual(["2027-03-28T03:30"]);
    } finally {
      if (zone === undefined) delete process.env.TZ;
      else process.env.TZ = zone;
    }
  });

  test("stands there whole where it cannot be copied", async () => {
    shown({ copy: async () => false });
    await press(take.copy);
    const whole = screen.getByRole<HTMLInputElement>("textbox", { name: take.link });
    expect(read(whole.value)).toMatchObject({ reading: { kind: "worksheet" } });
  });

  test("is handed on where the browser can", async () => {
    const shared: string[] = [];
    shown({ share: async (_title, url) => void shared.push(url) });
    await press(take.share);
    expect(read(shared[0])).toMatchObject({ reading: { kind: "worksheet" } });
  });

  test("is a code, black on white, with four modules of white around it", () => {
    shown();
    const code = screen.getByRole("img", { name: take.code });
    const [, , size = 0] = (code.getAttribute("viewBox") ?? "").split(" ").map(Number);
    const bars = [
      ...(code.querySelector("path")?.getAttribute("d") ?? "").matchAll(/M(\d+) (\d+)h(\d+)/g),
    ].map(([, x, y, length]) => [Number(x), Number(y), Number(length)] as const);
    expect(bars.length).toBeGreaterThan(500);
    expect(code.querySelector("rect")?.getAttribute("fill")).toBe("#ffffff");
    for (const [x, y, length] of bars) {
      expect(Math.min(x, y)).toBeGreaterThanOrEqual(4);
      expect(Math.max(x + length, y + 1)).toBeLessThanOrEqual(size - 4);
    }
    // The three corners by which a camera finds it: seven black, at the top to the left and to the right.
    expect(bars).toContainEqual([4, 4, 7]);
    expect(bars).toContainEqual([size - 11, 4, 7]);
    expect(bars).toContainEqual([4, size - 5, 7]);
  });

  test("says so where the worksheet is too long for a code, or for a link", () => {
    const films = (count: number) =>
      Array.from({ length: count }, (_, i) => ({
        label: Array.from({ length: 30 }, (_, j) => ((i + 7) * (j + 11) ** 3).toString(36)).join(
          " ",
        ),
        size: "120",
        count: 1,
      }));
    const ports: TakePorts = {
      make: () => Promise.reject(new Error("not asked for")),
      holdReady: () => () => {},
      deviceSpeaks: async () => false,
      saveFile() {},
      print() {},
      now: () => 0,
      address: () => "https://gullrock.example/",
      copy: async () => true,
      share: null,
    };
    const Take = takeAlongWith(ports);
    const { rerender } = render(<Take worksheet={{ ...demos.gullrock, films: films(12) }} />);
    expect(screen.getByText(take.codeTooLong)).toBeTruthy();
    expect(button(take.copy)).toBeTruthy();
    rerender(<Take worksheet={{ ...demos.gullrock, films: films(300) }} />);
    expect(screen.getByText(take.linkTooLong)).toBeTruthy();
    expect(screen.queryByRole("button", { name: take.copy })).toBeNull();
  });
});
