// @vitest-environment happy-dom
import { signal } from "@preact/signals";
import { act, cleanup, fireEvent, render, screen, within } from "@testing-library/preact";
import type { ComponentType } from "preact";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { type Position, positionAt } from "../../src/live/position.ts";
import type { Session } from "../../src/live/runs.ts";
import type { RunRecord } from "../../src/logbook/run-record.ts";
import { planOf } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { linkOf } from "../../src/plan/worksheet-link.ts";
import { methods } from "../../src/trade/method.ts";
import { broughtWith } from "../../src/ui/brought.tsx";
import { demos } from "../../src/ui/demo.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { ContrastPictures, LeafletPicture, TemperingPicture } from "../../src/ui/drawings.tsx";
import { Frame } from "../../src/ui/frame.tsx";
import { type InstallOffer, installWith } from "../../src/ui/install.tsx";
import { KeptHere } from "../../src/ui/kept-here.tsx";
import { asideWords, planWords, speak } from "../../src/ui/language.ts";
import { lightsOutWith } from "../../src/ui/lights-out.tsx";
import { newsWith } from "../../src/ui/news.tsx";
import type { PlaceId, PlaceProps } from "../../src/ui/place.ts";
import { PressAlong } from "../../src/ui/press-along.tsx";
import { shelfWith } from "../../src/ui/shelf.tsx";
import { dayText } from "../../src/ui/shelf-model.ts";
import { Sink } from "../../src/ui/sink.tsx";
import { takeAlongWith } from "../../src/ui/take-along.tsx";
import { TapAlong } from "../../src/ui/tap-along.tsx";
import { walkThroughWith } from "../../src/ui/walk-through.tsx";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { writeUpWith } from "../../src/ui/write-up.tsx";
import { dayAndTime, pressLines } from "../../src/ui/write-up-model.ts";
import { languageNames } from "../../src/units/language.ts";
import { runByHand } from "../live/by-hand.ts";
import { benchInCelsius, benchInFahrenheit } from "../plan/bench-worksheets.ts";
import { compiled } from "../timeline/scene.ts";
import { checkByHand } from "./check-by-hand.ts";
import { markedCatalogue, textsIn, unmarked } from "./marked-words.ts";
import { keepingThat, world } from "./ports.ts";
import { emptyHands, sessionOf, silentRuns, walkThroughPorts } from "./run-stand-ins.ts";
import { roomByHand, shelfByHand } from "./shelf-by-hand.ts";
import { writeUpWorld } from "./write-up-world.tsx";
import "./late-words.ts";

beforeAll(async () => {
  expect(await speak("de", markedCatalogue)).toBe(true);
});
afterAll(() => speak("en"));
afterEach(cleanup);

/** What a person calls things. */
const named = (worksheet: Worksheet): readonly string[] => [
  worksheet.title ?? "",
  worksheet.developer.label,
  worksheet.developer.dilution ?? "",
  worksheet.tank.label ?? "",
  ...worksheet.films.flatMap(({ label, size }) => [label, size]),
];

/** What the script says and names: in the worksheet's language, not the page's. */
function scripted(worksheet: Worksheet): readonly string[] {
  return compiled(worksheet).sections.flatMap((section) => [
    section.title,
    ...section.cues.flatMap(({ says }) => (says === undefined ? [] : [says, ...says.split(" ")])),
    ...section.left.flatMap(({ wanted, why }) => [wanted, why]),
  ]);
}

function expectMarked(own: readonly string[], least: number): void {
  const texts = [...textsIn(document.body), document.title].filter((text) => /\p{L}/u.test(text));
  expect(texts.filter((text) => text.includes("‹")).length).toBeGreaterThan(least);
  // Languages are called as their speakers call them, in every language.
  const kept = [...own, ...Object.values(languageNames)].filter((it) => it !== "");
  expect(texts.filter((text) => unmarked(text, kept) !== "")).toEqual([]);
}

const settled = () => act(async () => {});

describe("in a language of marks, no place shows a word of its own", () => {
  test.each([
    ["the practice worksheet", demos.foghorn],
    ["everything measured in °F", benchInFahrenheit],
    ["everything measured in °C", benchInCelsius],
  ] as const)("Work out, %s", async (_, worksheet) => {
    const it = world();
    const workOut = makeWorkOut(draftOf(worksheet), null, it.ports);
    const Nothing = () => null;
    render(
      <Frame
        place={signal<PlaceId>("work-out")}
        workOut={workOut}
        hearAPour={async () => {}}
        languageStore={{ load: () => null, keep: () => false }}
        fetches={{
          "walk-through": async () => Nothing,
          "lights-out": async () => Nothing,
          "write-up": async () => Nothing,
        }}
      />,
    );
    await settled();
    for (const asks of ["What did your test films show?", "How does it come to temperature?"]) {
      await screen.findByText(`‹${asks}›`, {}, { timeout: 10_000 });
    }
    expectMarked(named(worksheet), 100);
    // Every field at fault or wanting, row by row; then every act that is answered by a notice.
    const hidden = /^(?:process|language|unit\..*|.*@unit|.*\.use)$/;
    for (const path of Object.keys(workOut.draft.value).filter((it) => !hidden.test(it))) {
      await act(() => workOut.type(path, path.endsWith("label") ? "" : "?!"));
    }
    await act(() => it.pass(2000));
    expectMarked(["?!"], 100);
    for (const deed of [
      () => workOut.save(),
      () => workOut.open("mine.json", "{}"),
      () => workOut.refuseFile(),
      () => workOut.removeRow("films", 0),
      () => workOut.undo(),
      () => workOut.redo(),
      () => workOut.startEmpty(),
      () => workOut.startDemo("gullrock"),
      () => workOut.speakIn("fr"),
    ]) {
      await act(deed);
      expectMarked([...named(demos.gullrock), "?!", "mine.json"], 50);
    }
  });

  test("Walk through, every step of it", async () => {
    const { runs, current } = silentRuns();
    await shownIn(walkThroughWith(walkThroughPorts(runs)), demos.foghorn);
    const own = [...named(demos.foghorn), ...scripted(demos.foghorn)];
    for (const step of within(screen.getByRole("navigation")).getAllByRole("button")) {
      await act(() => {
        fireEvent.click(step);
      });
      expectMarked(own, 10);
    }
    await act(async () => {
      fireEvent.click(screen.getByRole("button", { name: "‹Hear this step›" }));
    });
    expectMarked(own, 10);
    current.value = sessionOf(runByHand(demos.foghorn), demos.foghorn);
    await settled();
    expectMarked(own, 10);
    cleanup();
    await shownIn(walkThroughWith(walkThroughPorts(runs)), null);
    expectMarked([], 1);
  });

  test("taking a session along, what a link brought, and a class that starts together", async () => {
    const worksheet = demos.gullrock;
    const Take = takeAlongWith({
      make: () => Promise.reject(new Error("no worker")),
      holdReady: () => () => {},
      deviceSpeaks: async () => true,
      saveFile() {},
      print() {},
      now: () => 0,
      address: () => "",
      copy: async () => false,
      share: async () => {},
    });
    render(<Take worksheet={worksheet} />);
    for (const button of screen.getAllByRole("button")) {
      await act(async () => {
        fireEvent.click(button);
      });
    }
    await act(async () => {
      fireEvent.input(screen.getByLabelText(/Seconds of waiting/), { target: { value: "?!" } });
      fireEvent.click(screen.getByRole("checkbox"));
    });
    expectMarked(["?!"], 20);
    cleanup();
    const startsAt = Date.now() + 60_000;
    for (const link of [linkOf(worksheet, startsAt), "#w1.??"]) {
      const Brought = broughtWith({
        brought: signal<string | null>(link),
        classAt: signal<number | null>(null),
        workOut: { open() {}, draft: signal({}) },
        current: signal(null),
        toWorkOut() {},
      });
      render(<Brought />);
      expectMarked(named(worksheet), 3);
      cleanup();
    }
    for (const at of [startsAt, 0]) {
      await shownIn(
        lightsOutWith({
          ...walkThroughPorts(silentRuns().runs),
          soundCheck: checkByHand().port,
          delays: { load: () => 0, keep: () => true },
          keeping: keepingThat("kept"),
          often: () => () => {},
          classAt: signal<number | null>(at),
        }),
        worksheet,
      );
      expectMarked(named(worksheet), 10);
      cleanup();
    }
  });

  test("a rehearsal, before, during and after it", async () => {
    const { runs, current } = silentRuns({ begin: async () => "elsewhere" });
    const rehearsal = { factor: 0, why: true };
    const hand = runByHand(demos.gullrock, { rehearsal });
    await shownIn(walkThroughWith(walkThroughPorts(runs)), demos.gullrock);
    const own = () => [
      ...named(demos.gullrock),
      ...scripted(demos.gullrock),
      ...hand.run
        .journal()
        .timeline.sections.flatMap(({ title, cues }) => [
          title,
          ...cues.flatMap((it) => it.says ?? []),
        ]),
    ];
    await act(async () => {
      fireEvent.click(screen.getByRole("button", { name: /Begin the rehearsal/ }));
    });
    expectMarked(own(), 20);
    // What was pressed far off is found late, early or missed.
    while (hand.run.position().kind !== "over") {
      hand.press();
      current.value = sessionOf(hand, demos.gullrock, { rehearsal, timeline: hand.planned });
      await settled();
      expectMarked(own(), 20);
      hand.wait(11);
      hand.press();
      hand.wait(hand.run.position().section?.seconds ?? 0);
      hand.wait(30);
    }
    current.value = sessionOf(hand, demos.gullrock, { rehearsal });
    await settled();
    expectMarked(own(), 20);
    current.value = null;
    await settled();
    expectMarked(own(), 25);
    expect(screen.getAllByText(/late›/).length).toBeGreaterThan(0);
    expect(screen.getAllByText(/no press/).length).toBeGreaterThan(0);
  });

  test("Lights out, before a run and at every turn of it", async () => {
    const { runs, current } = silentRuns({
      begin: async () => {
        throw new Error("no voice to be had");
      },
      unfinished: async () => ({ worksheet: demos.gullrock, begunAt: 0, isFresh: false }),
    });
    let show = () => {};
    const soundCheck = checkByHand();
    const Place = lightsOutWith({
      runs,
      soundCheck: soundCheck.port,
      delays: { load: () => 0.2, keep: () => false },
      after(_ms, act) {
        show = act;
        return () => {};
      },
      keeping: keepingThat("nothing is kept"),
      ...emptyHands,
      toWriteUp() {},
      keepAwake() {},
      often: () => () => {},
    });
    const own = [...named(demos.gullrock), ...scripted(demos.gullrock)];
    await shownIn(Place, null);
    expectMarked([], 1);
    cleanup();
    await shownIn(Place, demos.gullrock);
    expectMarked(own, 8);
    const press = (name: RegExp) =>
      act(async () => {
        fireEvent.click(screen.getByRole("button", { name }));
      });
    await press(/Play the test/);
    await soundCheck.refuse();
    expectMarked(own, 9);
    await press(/Play the test/);
    expectMarked(own, 9);
    await soundCheck.end();
    for (const answer of [/I did not/, /I heard it/]) {
      await press(answer);
      expectMarked(own, 12);
    }
    await press(/No delay/);
    expectMarked(own, 12);
    await press(/Begin/);
    expectMarked(own, 9);

    const timeline = compiled(demos.gullrock);
    const hand = runByHand(demos.gullrock);
    let position: Position = hand.run.position();
    const session = (method: (typeof methods)[number], detail: Session["detail"]): Session =>
      sessionOf(
        { ...hand, run: { ...hand.run, position: () => position, canTakeBack: () => true } },
        { ...demos.gullrock, tank: { ...demos.gullrock.tank, method } },
        { id: `${method} ${detail}`, detail, kept: false, tookOver: true },
      );
    const details = ["full", "brief", "tones", "full", "full"] as const;
    for (const [i, method] of methods.entries()) {
      current.value = session(method, details[i] ?? "full");
      await settled();
      for (const [index, { moments }] of timeline.sections.entries()) {
        // Without moments a section only waits, whenever it is looked at.
        for (const at of moments.length === 0 ? [0] : [0, 1, 12, 30, 60, 300, 570, 580, 1e6]) {
          position = positionAt(timeline, { index, pressedAt: 0 }, at);
          act(show);
          expectMarked(own, 5);
        }
      }
    }
    current.value = {
      ...session("inversion", "full"),
      sounding: false,
      hushed: true,
      way: "pocket",
    };
    await settled();
    expectMarked(own, 5);
    await act(async () => {
      fireEvent.click(screen.getByRole("button", { name: "‹Where are we?›" }));
    });
    position = positionAt(timeline, { index: 1, pressedAt: 0 }, 1);
    act(show);
    await act(async () => {
      fireEvent.click(screen.getByRole("button", { name: "‹Leave the run›" }));
    });
    expectMarked(own, 5);
  });

  test("Write up, with runs and without", async () => {
    const begunAt = Date.UTC(2026, 2, 12, 19, 42, 7);
    const record = (id: string, more: Partial<RunRecord>): RunRecord => ({
      id,
      begunAt,
      worksheet: demos.gullrock,
      developmentSeconds: 569,
      presses: compiled(demos.gullrock).sections.map((section) => ({
        section: section.id,
        at: begunAt,
      })),
      ended: "done",
      note: "",
      ...more,
    });
    const { title: _, ...untitled } = demos.foghorn;
    const runs = [
      record("a", {}),
      record("b", { ended: "left", worksheet: untitled }),
      record("c", { ended: null, presses: [{ section: "open-2", at: begunAt }] }),
      record("d", { ended: "left", presses: [], begunAt: begunAt - 40 * 86_400_000, stars: 3 }),
    ];
    const months = ["März 2026", "Februar 2026", "January 2026", "Januar 2026"];
    const own = [
      ...named(demos.gullrock),
      ...named(demos.foghorn),
      ...runs.map((run) => dayAndTime(run.begunAt)),
      ...months,
      ...runs.flatMap((run) => pressLines(run).map(({ at }) => at)),
    ];
    const shelf = { shelf: "runs", adds: 1, replaces: 0, skips: 0 } as const;
    const file = new File(['{"tankside":1,"version":2,"runs":[]}'], "mine.json");
    const placeFor = (kind: "found" | "refused", some: readonly RunRecord[]) => {
      const says = {
        kind,
        runs: some,
        onlyHere: some.map(({ id }) => id),
        unread: some.length,
        notes: "no room",
        looked: [shelf, { ...shelf, shelf: "settings" }],
        file,
        dictation: { here: async () => false, start: () => () => {} },
      } as const;
      return writeUpWith({
        ...writeUpWorld(says).ports,
        keeping: keepingThat("may be cleared"),
        Shelf: () => null,
      });
    };
    await shownIn(placeFor("found", runs), null);
    expectMarked(own, 30);
    const fold = document.querySelector<HTMLDetailsElement>(".over-time");
    await act(async () => {
      if (fold !== null) fireEvent(Object.assign(fold, { open: true }), new Event("toggle"));
    });
    expect(document.querySelectorAll(".over-time table").length).toBeGreaterThan(1);
    const pressed = [/Save all/, /Take in a file/, /Leave it/, /Do this again/, /Work it out/];
    const more = [/^‹Dictate/, /^‹Compare/, /^‹Compare/, /^‹Take out/, /Undo/];
    for (const name of [...pressed, ...more]) {
      await act(async () => {
        fireEvent.click(screen.getAllByRole("button", { name })[0] as HTMLElement);
        // A file is read a little later.
        await new Promise((resolve) => setTimeout(resolve, 5));
      });
      expectMarked([...own, "mine.json"], 30);
    }
    cleanup();
    await shownIn(placeFor("found", []), null);
    expectMarked([], 2);
    cleanup();
    await shownIn(placeFor("refused", []), null);
    expectMarked([], 2);
  });

  test("the shelf of bottles, its forms, its labels and the room's lists", async () => {
    const { shelf, newId } = shelfByHand();
    const Shelf = shelfWith({ shelf, newId, room: roomByHand().room, print() {} });
    render(<Shelf />);
    await settled();
    expectMarked([], 15);
    const press = (name: RegExp) =>
      act(async () => {
        fireEvent.click(screen.getAllByRole("button", { name })[0] as HTMLElement);
        await new Promise((resolve) => setTimeout(resolve, 5));
      });
    await press(/Put Gullrock Light/);
    await press(/Fill in Gullrock Light/);
    const days = shelf.bottles.value.flatMap(({ entries }) => entries.map(({ on }) => dayText(on)));
    const due = shelf.states.value.flatMap((it) => (it.due ? [dayText(it.due.on)] : []));
    const own = [...days, ...due, dayText(shelf.today()), "E. M.", "Gullrock 125", "135-36"];
    expectMarked(own, 60);
    for (const name of [/Add a bottle/, /^‹Films through/, /^‹Clearing test/, /^‹Some poured/]) {
      await press(name);
      const form = document.querySelector("form") as HTMLFormElement;
      await act(async () => {
        fireEvent.submit(form);
      });
      expectMarked(own, 60);
    }
    for (const name of [/^‹Delete/, /^‹Print 2/, /Print the lists/, /Write this list/]) {
      await press(name);
      expectMarked(own, 50);
    }
    window.dispatchEvent(new Event("afterprint"));
  });

  test("a newer version, the offer to install, and what is kept", async () => {
    const news = signal<"ready" | "taken-elsewhere">("ready");
    for (const came of ["run-is-on", "other-pages", "failed"] as const) {
      cleanup();
      const News = newsWith({ updates: { news, take: async () => came }, current: signal(null) });
      render(<News />);
      await act(async () => {
        fireEvent.click(screen.getByRole("button"));
      });
      expectMarked([], 2);
    }
    act(() => {
      news.value = "taken-elsewhere";
    });
    expectMarked([], 2);
    cleanup();
    const offer = Object.assign(new Event("offer"), { prompt: async () => {} });
    const Install = installWith(signal<InstallOffer | null>(offer));
    render(<Install />);
    for (const kept of ["may be cleared", "no room", "nothing is kept"] as const) {
      render(<KeptHere keeping={keepingThat(kept)} beside="the first press" />);
      render(<KeptHere keeping={keepingThat(kept)} beside="the records" />);
    }
    await settled();
    expectMarked([], 5);
  });

  test("the sheets for wet hands, from the first press to the last", async () => {
    for (const what of ["pour-in", "pour-out", "inversion"] as const) {
      let now = 0;
      render(
        <PressAlong
          what={what}
          now={() => now}
          keep={() => {}}
          leave={() => {}}
          often={() => () => {}}
        />,
      );
      for (let press = 0; press < 6; press += 1) {
        expectMarked([], 5);
        now += 5000 + press * 700;
        await act(() => {
          fireEvent.keyDown(document.body, { key: " " });
        });
      }
      expectMarked([], 8);
      cleanup();
    }
    const beats = checkByHand();
    let waited = () => {};
    render(
      <TapAlong
        language="en"
        soundCheck={beats.port}
        keep={() => {}}
        leave={() => {}}
        after={(_, act) => {
          waited = act;
          return () => {};
        }}
      />,
    );
    const tap = () =>
      act(async () => {
        fireEvent.keyDown(document.body, { key: " " });
      });
    for (const step of [tap, beats.refuse, tap, beats.begin, tap, beats.end]) {
      expectMarked([], 4);
      await step();
    }
    await act(waited);
    expectMarked([], 4);
    cleanup();
    for (const readings of [[], [{ at: 90, temperature: { c: 22.5 } }]]) {
      render(
        <Sink
          title=""
          like={{ c: 20.5 }}
          readings={readings}
          says=""
          stamp={() => {}}
          takeBack={() => {}}
          leave={() => {}}
        />,
      );
      expectMarked([], 5);
      cleanup();
    }
  });

  test("the drawings beside the questions", () => {
    for (const worksheet of [demos.foghorn, benchInCelsius, benchInFahrenheit]) {
      render(<LeafletPicture worksheet={worksheet} />);
      if (worksheet.tempering) render(<TemperingPicture wish={worksheet.tempering} />);
      if (worksheet.contrast) render(<ContrastPictures wish={worksheet.contrast} />);
      expectMarked([], 5);
      cleanup();
    }
  });
});

async function shownIn(
  Place: ComponentType<PlaceProps>,
  worksheet: Worksheet | null,
): Promise<void> {
  const plan = worksheet && planOf(worksheet, { ...asideWords.value, ...planWords.value });
  render(<Place worksheet={signal(worksheet)} plan={signal(plan)} />);
  await settled();
}
