// Wires the page to the world: storage, files, timers, sound, the address bar. Nothing is decided here.
// Whatever sounds is fetched behind the first screen. Past 200 lines because all the ports are here.
import { signal } from "@preact/signals";
import { type ComponentType, render } from "preact";
import type { BrowserRuns } from "./live/browser-runs.ts";
import { mayBeUnfinished } from "./live/run-flag.ts";
import { delayStore } from "./logbook/delay-store.ts";
import type { Keeping } from "./logbook/keeping.ts";
import { languageOfVisit, languageStore } from "./logbook/language-store.ts";
import { runStore } from "./logbook/run-store.ts";
import { sensesStore } from "./logbook/senses-store.ts";
import { speakerStore } from "./logbook/speaker-store.ts";
import { tankStore } from "./logbook/tank-store.ts";
import { voiceStore } from "./logbook/voice-store.ts";
import { worksheetStore } from "./logbook/worksheet-store.ts";
import { shelfHere } from "./main-shelf.tsx";
import type { Worksheet } from "./plan/worksheet.ts";
import { followDark, isBlack, lightByPress } from "./ui/black.ts";
import { chooseFile, saveFile } from "./ui/files.ts";
import { Frame } from "./ui/frame.tsx";
import type { Hands } from "./ui/hands.ts";
import type { InstallOffer } from "./ui/install.tsx";
import { speak, withLateWords } from "./ui/language.ts";
import { late } from "./ui/late.tsx";
import { placeAt } from "./ui/place.ts";
import { openSenses } from "./ui/senses.ts";
import { openSpeakers } from "./ui/speakers.ts";
import { openWorkOut } from "./ui/work-out-state.ts";
import "./ui/paper.css";
import "./ui/frame.css";
import "./ui/work-out.css";
import "./ui/field.css";
import "./ui/answer.css";

/** Heard of early, or not at all. */
const installOffer = signal<InstallOffer | null>(null);
window.addEventListener("beforeinstallprompt", (event) => {
  event.preventDefault();
  installOffer.value = event as InstallOffer;
});

void begin();

/** A function, so that the script itself waits for nothing: what is fetched meanwhile may import from it. */
async function begin(): Promise<void> {
  const store = runStore();
  const bottles = shelfHere(store);
  const speakers = openSpeakers(
    voiceStore(),
    speakerStore(() => localStorage),
  );

  const senses = openSenses(sensesStore(() => localStorage));
  const delays = delayStore(() => localStorage);
  /** For the page's life: a thermometer stays connected whatever place is shown. */
  let hands: Hands | null = null;

  async function runViewPorts() {
    const [ports, { openHands }, { keepAwake }] = await Promise.all([
      runs(),
      import("./ui/hands.ts"),
      import("./live/screen-lock.ts"),
    ]);
    hands ??= openHands(ports.current, () => localStorage);
    // Seconds are counted there, for ten minutes and more: it costs as little as it can.
    const often = every(250);
    return { runs: ports, knocks: ports.knocks, senses, ...hands, keepAwake, toWriteUp, often };

    function toWriteUp(): void {
      const rehearsed = ports.current.value?.rehearsal !== undefined;
      ports.leave();
      location.hash = rehearsed ? "#walk-through" : "#write-up";
    }
  }

  /** One for the page's life: a run goes on whatever place is shown. */
  let opened: Promise<BrowserRuns> | null = null;
  function runs(): Promise<BrowserRuns> {
    opened ??= Promise.all([import("./live/browser-runs.ts"), import("./ui/record-of.ts")]).then(
      ([{ browserRuns }, { recordOf }]) =>
        browserRuns({
          told(session, ended) {
            const record = recordOf(session, ended);
            void store.keep(record);
            if (ended !== null) bottles.drawnBy(record);
          },
          speakerOf: speakers.speaker,
          senses: () => senses.now.value,
          pocketTrack: () => import("./track/pocket-track.ts"),
          delay: delays.load,
        }),
    );
    return opened;
  }

  const askForLeftRun = () => runs().then((ports) => ports.unfinished());
  // A run that was on when its page died is not kept waiting for anything.
  const leftRun = mayBeUnfinished() ? askForLeftRun() : null;

  const chosenLanguages = languageStore();
  // English comes with the page; it stays where another cannot be fetched.
  await speak(languageOfVisit(chosenLanguages, navigator.languages));

  const workOut = await openWorkOut({
    store: worksheetStore(),
    tanks: tankStore(),
    bottles: bottles.shelf,
    asides: async () => (await withLateWords(import("./plan/asides.ts"))).asidesIn,
    saveFile,
    now: () => Date.now(),
    after,
  });

  // A run that may be on is not kept waiting for the drawings of another place.
  const first = leftRun === null ? "work-out" : "lights-out";
  const place = signal(placeAt(location.hash) ?? first);
  window.addEventListener("hashchange", () => {
    const next = placeAt(location.hash);
    // No way back leads out of the dark, where only a run's screen can be pressed; and what is turned about is
    // put on top, or the next one back would leave the page.
    if (isBlack() && next !== "lights-out") location.hash = "#lights-out";
    // Any other hash, as the skip link's, leaves the place as it is, and the address says so.
    else if (next === null) history.replaceState(null, "", `#${place.value}`);
    else place.value = next;
  });
  window.addEventListener("pagehide", workOut.keepNow);
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") workOut.keepNow();
  });

  /** One for the page's life: a browser is asked for nothing twice. */
  let asksToKeep: Promise<Keeping> | null = null;
  function keeping(): Promise<Keeping> {
    asksToKeep ??= import("./logbook/keeping.ts").then(({ browserKeeping }) => browserKeeping());
    return asksToKeep;
  }
  // What sounds is fetched once the first screen stands, so that a press is answered at once.
  const whenIdle = window.requestIdleCallback ?? ((act: () => void) => setTimeout(act, 300));
  const idle = new Promise<void>((resolve) => whenIdle(() => resolve()));

  const Unsaid = late(async () => {
    await idle;
    const { unsaidWith } = await withLateWords(import("./ui/unsaid.tsx"));
    return unsaidWith({ compile: (await runs()).compile, speaker: speakers.choice, after });
  });

  const ByEar = late(async () => {
    await idle;
    const [{ byEarWith }, { voice }] = await Promise.all([
      withLateWords(import("./ui/by-ear.tsx")),
      runs(),
    ]);
    const toLightsOut = () => {
      location.hash = "#lights-out";
    };
    return byEarWith({ sounds: voice, after, toLightsOut });
  });

  const WhoSpeaks = late(async () => {
    await idle;
    const [{ whoSpeaksWith }, { browserRecorder }, { browserSynthesiser }, ports] =
      await Promise.all([
        withLateWords(import("./ui/who-speaks.tsx")),
        import("./live/recorder.ts"),
        import("./live/synthesiser.ts"),
        runs(),
      ]);
    return whoSpeaksWith({
      runs: ports,
      sounds: ports.voice,
      recorder: browserRecorder(),
      synthesiser: browserSynthesiser(),
      speakers,
      senses,
      saveFile,
      chooseFile,
      often: every(100),
    });
  });

  const News = late(async () => {
    await idle;
    const parts = Promise.all([
      withLateWords(import("./ui/news.tsx")),
      import("./live/updates.ts"),
      runs(),
    ]);
    return orNothing(
      parts.then(async ([{ newsWith }, { browserUpdates }, { current }]) => {
        const leads = () => current.value !== null;
        const reload = () => location.reload();
        return newsWith({ updates: await browserUpdates({ leads, reload, after }), current });
      }),
    );
  });

  const Statement = late(async () => {
    const { Statement } = await withLateWords(import("./ui/statement.tsx"));
    return Statement;
  });

  const Install = late(async () => {
    await idle;
    const part = withLateWords(import("./ui/install.tsx"));
    return orNothing(part.then(({ installWith }) => installWith(installOffer)));
  });

  const root = document.getElementById("tankside");
  if (!root) throw new Error("the page has no place to show anything in");
  render(
    <Frame
      place={place}
      workOut={workOut}
      ByEar={ByEar}
      Unsaid={Unsaid}
      WhoSpeaks={WhoSpeaks}
      languageStore={chosenLanguages}
      News={News}
      Install={Install}
      Statement={Statement}
      hearAPour={async () => {
        const [ports, { hearAPour }] = await Promise.all([runs(), import("./ui/taste.ts")]);
        await hearAPour(ports);
      }}
      fetches={{
        "walk-through": async () => {
          const { walkThroughWith } = await withLateWords(import("./ui/walk-through.tsx"));
          return walkThroughWith({ ...(await runViewPorts()), print: () => window.print() });
        },
        "lights-out": async () => {
          const { lightsOutWith } = await withLateWords(import("./ui/lights-out.tsx"));
          const { vibration } = await import("./live/vibration.ts");
          const ports = await runViewPorts();
          return lightsOutWith({
            ...ports,
            soundCheck: ports.runs.check,
            sounds: ports.runs.voice,
            vibrate: vibration(),
            delays,
            after,
            keeping: await keeping(),
          });
        },
        "write-up": async () => {
          const { writeUpWith } = await withLateWords(import("./ui/write-up.tsx"));
          const [kept, { Shelf }] = [await keeping(), bottles];
          return writeUpWith({ store, keeping: kept, saveFile, useWorksheet, after, Shelf });
        },
      }}
    />,
    root,
  );

  void goOn();

  async function goOn(): Promise<void> {
    try {
      const left = await (leftRun ?? idle.then(askForLeftRun));
      const ports = await runs();
      followDark(ports.current);
      if (left?.isFresh) {
        location.hash = "#lights-out";
        await ports.goOnWithUnfinished();
      } else ports.prepare(workOut.worksheet.value?.language);
      if (ports.current.value === null) lightByPress();
    } catch (error) {
      lightByPress();
      throw error;
    }
  }
  if ("serviceWorker" in navigator && import.meta.env.PROD) {
    void navigator.serviceWorker.register(new URL("sw.js", document.baseURI));
  }

  function useWorksheet(worksheet: Worksheet): void {
    workOut.open(worksheet.title ?? "", JSON.stringify(worksheet));
    location.hash = "#work-out";
  }
}

/** What the page does as well without is not complained of where it cannot be fetched. */
function orNothing(part: Promise<ComponentType>): Promise<ComponentType> {
  return part.catch(() => () => null);
}

function after(ms: number, act: () => void): () => void {
  const timer = setTimeout(act, ms);
  return () => clearTimeout(timer);
}

/** Calls back every so many ms, until the returned function is called. */
function every(ms: number): (show: () => void) => () => void {
  return (show) => {
    const timer = setInterval(show, ms);
    return () => clearInterval(timer);
  };
}
