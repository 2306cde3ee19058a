// The screens' sound and runs, in a browser: fetches words and sounds once, compiles, and plays.
// A run belongs to the page and not to a screen: it goes on whatever place is shown. Past 200 lines because
// runs and hearings share the one context and fall silent for each other.
import { signal } from "@preact/signals";
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import type { Rehearsal } from "../process/rehearsal.ts";
import { lengthsFor } from "../timeline/lengths.ts";
import type { Section, Timeline } from "../timeline/score.ts";
import { compile } from "../timeline/timeline.ts";
import { type Language, spokenIn } from "../units/language.ts";
import type { Senses, WhoSpeaks } from "../voice/senses.ts";
import { bundled, type Speaker } from "../voice/speaker.ts";
import { browserAudio } from "./browser-audio.ts";
import { browserJournal, type RunHeader, unkeptJournal } from "./browser-journal.ts";
import { browserElement } from "./browser-pocket.ts";
import { soundCheckOn } from "./browser-sound-check.ts";
import { fetchEarPack, fetchSounds, type Sounds } from "./browser-sounds.ts";
import { playerFor, samplesBy, silenceFor, withoutItsWords } from "./browser-speaker.ts";
import { voiceSoundsOn } from "./browser-voice-sounds.ts";
import { flagOf } from "./flag-of.ts";
import { type Entry, lastOf, type Way } from "./journal.ts";
import { type KnockPort, openKnockPort } from "./knock-port.ts";
import type { OwnSound } from "./knocks.ts";
import { openLeftRun } from "./left-run.ts";
import { claimRun } from "./one-runner.ts";
import type { PocketTrack } from "./pocket-shape.ts";
import { runCompiler } from "./run-compiler.ts";
import { flagRun } from "./run-flag.ts";
import type { Hearing, Runs, Session } from "./runs.ts";
import { openHearing } from "./section-hearing.ts";
import { type OpenSession, openSession } from "./session.ts";
import type { SoundCheck } from "./sound-check.ts";
import { vibration } from "./vibration.ts";
import type { VoiceSounds } from "./voice-sounds.ts";

/** A run that goes on or ends is told to whoever keeps the record. */
type Told = (session: Session, ended: "done" | "left" | null) => void;

export interface BrowserRuns extends Runs {
  readonly voice: VoiceSounds;
  readonly check: SoundCheck;
  readonly knocks: KnockPort;
}

interface BrowserRunsParts {
  readonly told: Told;
  /** Who speaks a language, as chosen on this device. */
  readonly speakerOf: (language: Language) => Promise<Speaker>;
  /** By which senses a run reaches this person. */
  readonly senses: () => Senses;
  /** Seconds by which what is played is heard late on this device. */
  readonly delay: () => number;
  /** What makes a run one track, fetched when it is first wanted. */
  readonly pocketTrack: () => Promise<PocketTrack>;
}

export function browserRuns(parts: BrowserRunsParts): BrowserRuns {
  const { told, speakerOf, senses, delay, pocketTrack } = parts;
  const current = signal<Session | null>(null);
  const sounds = onceEach(fetchSounds);
  const audio = browserAudio();
  const element = browserElement();
  const journal = browserJournal();
  /** Whose lengths a timeline was compiled with: it is to be played in no other voice. */
  const speakers = new WeakMap<Timeline, Speaker>();
  let close = () => {};
  let go: (way: Way) => void = () => {};
  let wake = () => {};
  let ownSounds: () => readonly OwnSound[] = () => [];
  let stopHearing = () => {};

  async function compiled(worksheet: Worksheet, plan: Plan, lead?: number): Promise<Timeline> {
    const speaker = await speakerOf(spokenIn(worksheet.language));
    const { script, index } = await sounds(spokenIn(worksheet.language));
    const lengths = lengthsFor(speaker, index, worksheet.voice?.rate ?? 1);
    const timeline = compile(worksheet, plan, script, lengths, lead);
    speakers.set(timeline, speaker);
    return timeline;
  }

  const speaksHere = (): WhoSpeaks => senses().speaks ?? "program";

  /** Both that a run may be heard by; to be called from a press. */
  function awake(): Promise<unknown> {
    if (current.value === null) element.bed();
    else wake();
    return audio.awake();
  }

  const restIfNone = () => void (current.value === null && element.stop());

  async function begin(
    worksheet: Worksheet,
    plan: Plan,
    rehearsal?: Rehearsal,
  ): Promise<"begun" | "elsewhere"> {
    if (current.value !== null) return "elsewhere";
    const waking = awake();
    const header = { id: crypto.randomUUID(), worksheet, plan, rehearsal, begunAt: Date.now() };
    const led = await lead(header, [], waking).finally(restIfNone);
    if (led === null) return "elsewhere";
    led.run.goOn(audio.clocks().steady);
    return "begun";
  }

  /** Opens a run, if no other page leads one; what is fetched is fetched before anything is claimed. */
  async function lead(
    header: RunHeader,
    entries: readonly Entry[],
    waking: Promise<unknown>,
  ): Promise<OpenSession | null> {
    const { worksheet } = header;
    const loaded = await sounds(spokenIn(worksheet.language));
    const byReader = speaksHere() === "reader";
    const speaker = byReader ? bundled : await speakerOf(spokenIn(worksheet.language));
    await waking;
    const letGo = await claimRun();
    if (letGo === null) return null;
    try {
      stopHearing();
      if (header.rehearsal === undefined && entries.length === 0) await journal.begin(header);
      return opened(header, entries, loaded, speaker, letGo);
    } catch (error) {
      letGo();
      throw error;
    }
  }

  function opened(
    header: RunHeader,
    entries: readonly Entry[],
    loaded: Sounds,
    chosen: Speaker,
    letGo: () => void,
  ): OpenSession {
    const { worksheet, plan, rehearsal } = header;
    const rate = worksheet.voice?.rate ?? 1;
    let speaker = chosen;
    const lengths = {
      // Another may have taken over meanwhile.
      spoken: (phrases: readonly string[]) =>
        lengthsFor(speaker, loaded.index, rate).spoken(phrases),
    };
    const compiledFor = runCompiler(header, loaded.script, lengths);
    const speaks = speaksHere();
    const wanted = speaks === "tones" ? "tones" : worksheet.voice?.detail;
    const detail = lastOf(entries, "detail")?.detail ?? wanted ?? "full";
    const voice = { language: loaded.script.source.language, rate };
    const speaking = playerFor(audio, loaded, voice, speaker, delay(), bundledTakesOver);
    const player = speaks === "reader" ? withoutItsWords(speaking) : speaking;
    const samples = samplesBy(loaded, voice, speaker);
    let shown: OpenSession | null = null;
    let tookOver = false;
    const session = openSession({
      header,
      timeline: compiledFor({ happened: {}, readings: [], detail, judged: [] }),
      detail,
      entries,
      audio,
      player,
      element,
      pocketTrack,
      soundOf: (cue) =>
        speaks === "reader" && cue.channel === "voice" ? silenceFor(cue) : samples(cue),
      vibrate: () => (senses().vibrates ? vibration() : null),
      delay: delay(),
      script: loaded.script,
      lengths,
      journal: rehearsal === undefined ? journal : unkeptJournal,
      compiled: compiledFor,
      changed: show,
      wake: () => void awake(),
      leave,
    });
    const { run, guide, presser } = session;
    ownSounds = session.sounding;
    close = () => {
      session.close();
      element.stop();
      letGo();
    };
    go = session.go;
    wake = session.wake;
    shown = session;
    show();
    session.look();
    return session;

    /** From here on, where the voice of the device has failed: what is left is compiled for it anew. */
    function bundledTakesOver(): void {
      speaker = bundled;
      tookOver = true;
      run.sayAt(run.detail());
    }

    /** What the screens show and the record keeps, anew. */
    function show(): void {
      // The first change may come while it is being opened.
      if (shown === null) return;
      current.value = {
        id: header.id,
        worksheet,
        rehearsal,
        plan,
        timeline: run.journal().timeline,
        begunAt: header.begunAt,
        detail: run.detail(),
        hushed: run.isHushed(),
        speaks,
        ...session.state(),
        tookOver,
        run,
        guide,
        presser,
      };
      if (rehearsal === undefined) flagRun(flagOf(run));
      performance.mark("tankside-begun", { detail: run.begunAt() });
      tell(current.value, run.position().kind === "over" ? "done" : null);
    }
  }

  function leave(): void {
    const session = current.value;
    if (session === null) return;
    const how = session.run.position().kind === "over" ? "done" : "left";
    session.run.ended(how);
    if (session.rehearsal === undefined) flagRun(null);
    tell(session, how);
    close();
    current.value = null;
  }

  /** A rehearsal leaves no record. */
  function tell(session: Session, ended: "done" | "left" | null): void {
    if (session.rehearsal === undefined) told(session, ended);
  }

  async function hear(timeline: Timeline, section: Section, from = 0): Promise<Hearing> {
    const waking = audio.awake();
    const loaded = await sounds(spokenIn(timeline.voice.language));
    await waking;
    stopHearing();
    const speaker = speakers.get(timeline) ?? bundled;
    const player = playerFor(audio, loaded, timeline.voice, speaker, delay(), () => {});
    const hearing = openHearing(audio, player, section, from);
    stopHearing = hearing.stop;
    return hearing;
  }

  const prepare = (language?: string) => void sounds(spokenIn(language)).catch(() => {});
  const voice = voiceSoundsOn({ sounds, earPack: onceEach(fetchEarPack), awake: audio.awake });
  const leftRun = openLeftRun({
    journal,
    audio,
    isOn: () => current.value !== null,
    awake,
    fetchSounds: sounds,
    lead: async (...left) => (await lead(...left).finally(restIfNone)) !== null,
  });
  const knocks = openKnockPort({
    audio,
    heard: (at) => current.value?.presser.knock(at),
    ownSounds: () => ownSounds(),
  });
  const check = soundCheckOn({ audio, speakerOf, sounds, delay });
  return {
    prepare,
    compile: compiled,
    begin,
    current,
    ...leftRun,
    wake: async () => void (await awake()),
    go: async (way) => go(way),
    leave,
    hear,
    voice,
    check,
    knocks,
  };
}

/** Fetched once a language; a fetch that failed is tried again the next time. */
function onceEach<T>(
  fetchOne: (language: Language) => Promise<T>,
): (language: Language) => Promise<T> {
  const fetched = new Map<Language, Promise<T>>();
  return (language) => {
    const known = fetched.get(language);
    if (known !== undefined) return known;
    const coming = fetchOne(language).catch((error: unknown) => {
      fetched.delete(language);
      throw error;
    });
    fetched.set(language, coming);
    return coming;
  };
}
