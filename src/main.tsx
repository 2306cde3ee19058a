// Wires the page to the world: storage, files, timers, sound, the address bar. Nothing is decided here.
// Whatever sounds is fetched behind the first screen. Past 200 lines because all the ports are here.
import { signal } from "@preact/signals";
import { render } from "preact";
import { mayBeUnfinished } from "./live/run-flag.ts";
import { logbookBase } from "./logbook/base.ts";
import { classStore } from "./logbook/class-store.ts";
import { delayStore } from "./logbook/delay-store.ts";
import { languageOfVisit, languageStore } from "./logbook/language-store.ts";
import { sensesStore } from "./logbook/senses-store.ts";
import { speakerStore } from "./logbook/speaker-store.ts";
import { tankStore } from "./logbook/tank-store.ts";
import { voiceStore } from "./logbook/voice-store.ts";
import { type KeptTexts, worksheetStore } from "./logbook/worksheet-store.ts";
import { besideThePage } from "./main-beside.tsx";
import { shelfHere } from "./main-shelf.tsx";
import { once } from "./once.ts";
import type { Worksheet } from "./plan/worksheet.ts";
import { after, every } from "./timers.ts";
import { openAddress } from "./ui/address.ts";
import { followDark, isBlack, lightByPress } from "./ui/black.ts";
import { chooseFile, saveFile } from "./ui/files.ts";
import { Frame } from "./ui/frame.tsx";
import type { Hands } from "./ui/hands.ts";
import type { InstallOffer } from "./ui/install.tsx";
import { speak, withLateWords } from "./ui/language.ts";
import { late } from "./ui/late.tsx";
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
  const base = logbookBase();
  /** One for the page's life: it holds what the browser would not keep. */
  const records = once(async () => (await import("./logbook/run-store.ts")).runStore(base));
  const bottles = shelfHere(base, records);
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
    return { runs: ports, knocks: ports.knocks, senses, ...hands, keepAwake, toWriteUp, after };

    function toWriteUp(): void {
      const rehearsed = ports.current.value?.rehearsal !== undefined;
      ports.leave();
      location.hash = rehearsed ? "#walk-through" : "#write-up";
    }
  }

  /** One for the page's life: a run goes on whatever place is shown. */
  const runs = once(async () => {
    const [{ browserRuns }, { recordOf }, store] = await Promise.all([
      import("./live/browser-runs.ts"),
      import("./ui/record-of.ts"),
      records(),
    ]);
    return browserRuns({
      told(session, ended) {
        const record = recordOf(session, ended);
        void store.keep(record);
        if (ended !== null) bottles.drawnBy(record);
      },
      speakerOf: speakers.speaker,
      senses: () => senses.now.value,
      pocketTrack: () => import("./track/pocket-track.ts"),
      delay: delays.load,
    });
  });

  const askForLeftRun = () => runs().then((ports) => ports.unfinished());
  // A run that was on when its page died is not kept waiting for anything.
  const leftRun = mayBeUnfinished() ? askForLeftRun() : null;

  const chosenLanguages = languageStore();
  // English comes with the page; it stays where another cannot be fetched.
  await speak(languageOfVisit(chosenLanguages, navigator.languages));

  const workOut = await openWorkOut({
    store: worksheetStore(base),
    tanks: tankStore(base),
    bottles: bottles.shelf,
    asides: async () => (await withLateWords(import("./plan/asides.ts"))).asidesIn,
    saveFile,
    now: () => Date.now(),
    after,
  });

  const classes = classStore(() => localStorage);
  /** ms since 1970 of the minute at which the class of a link's worksheet starts. */
  const classAt = signal(classes.load(Date.now()));
  classAt.subscribe(classes.keep);
  // A run that may be on is not kept waiting for the drawings of another place.
  const first = leftRun === null ? "work-out" : "lights-out";
  const { place, brought } = openAddress(first, isBlack);
  window.addEventListener("pagehide", workOut.keepNow);
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") workOut.keepNow();
  });

  /** One for the page's life: a browser is asked for nothing twice. */
  const keeping = once(async () => (await import("./logbook/keeping.ts")).browserKeeping());
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

  const BroughtLate = late(async () => {
    const [{ broughtWith }, { current }] = await Promise.all([
      withLateWords(import("./ui/brought.tsx")),
      runs(),
    ]);
    return broughtWith({ brought, classAt, workOut, current, toWorkOut });
  });
  const Brought = () => (brought.value === null ? null : <BroughtLate />);

  const TakeAlong = late(async () => {
    const [{ takeAlongWith }, { browserTakeAlong }] = await Promise.all([
      withLateWords(import("./ui/take-along.tsx")),
      import("./take-along-page.ts"),
    ]);
    const print = () => window.print();
    return takeAlongWith(browserTakeAlong({ speakerOf: speakers.speaker, saveFile, print }));
  });

  const { News, Install, Statement } = besideThePage({ idle, runs, installOffer });

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
      Brought={Brought}
      Install={Install}
      Statement={Statement}
      hearAPour={async () => {
        const [ports, { hearAPour }] = await Promise.all([runs(), import("./ui/taste.ts")]);
        await hearAPour(ports);
      }}
      fetches={{
        "walk-through": async () => {
          const { walkThroughWith } = await withLateWords(import("./ui/walk-through.tsx"));
          const print = () => window.print();
          const ports = await runViewPorts();
          return walkThroughWith({ ...ports, sounds: ports.runs.voice, print, TakeAlong });
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
            often: every(250),
            keeping: await keeping(),
            classAt,
          });
        },
        "write-up": async () => {
          const { writeUpIn } = await withLateWords(import("./ui/write-up-ports.ts"));
          const [store, kept] = await Promise.all([records(), keeping()]);
          const useTexts = (texts: KeptTexts) => {
            const before = workOut.draft.value;
            workOut.put(texts, null);
            return () => workOut.takeBack(texts, before);
          };
          const ports = {
            store,
            keeping: kept,
            useWorksheet,
            useTexts,
            after,
            bottles: bottles.shelf,
            Shelf: bottles.Shelf,
            lookBeside: bottles.lookAgain,
          };
          return writeUpIn(base, ports);
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
      if (ports.current.value !== null) return;
      lightByPress();
      // What kept runs are shown with, and their lines: of thousands, more than a person waits for gladly. The newest are
      // read once besides, since checking the first ones takes a browser twenty times as long as checking them again.
      whenIdle(() => {
        const read = records().then((store) => store.lines().then(() => store.newest(10)));
        // What cannot be fetched now is asked for again by who comes there.
        Promise.all([import("./ui/write-up-ports.ts"), read]).catch(() => {});
      });
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
    toWorkOut();
  }

  function toWorkOut(): void {
    location.hash = "#work-out";
  }
}
