// The screens' sound and runs, in a browser: fetches words and sounds once, compiles, and plays.
// A run belongs to the page and not to a screen: it goes on whatever place is shown. Past 200 lines
// because runs and hearings share the one context and fall silent for each other.
import { signal } from "@preact/signals";
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { lengthsFor } from "../timeline/lengths.ts";
import type { Section, Timeline } from "../timeline/score.ts";
import { compile } from "../timeline/timeline.ts";
import { type Language, spokenIn } from "../units/language.ts";
import { bundled, type Speaker } from "../voice/speaker.ts";
import { fetchSounds, type Sounds } from "./browser-sounds.ts";
import { playerFor } from "./browser-speaker.ts";
import { voiceSoundsOn } from "./browser-voice-sounds.ts";
import { claimRun } from "./one-runner.ts";
import { openRun } from "./run.ts";
import type { Detail, Hearing, Runs, Session } from "./runs.ts";
import type { VoiceSounds } from "./voice-sounds.ts";

/** A run that goes on or ends is told to whoever keeps the record. */
export type Told = (session: Session, ended: "done" | "left" | null) => void;

/** How long the loudspeaker may need to wake before the first sound of a hearing, seconds. */
const WAKE = 0.1;

export interface BrowserRuns extends Runs {
  readonly voice: VoiceSounds;
}

/** @param speakerOf who speaks a language, as chosen on this device. */
export function browserRuns(
  told: Told,
  speakerOf: (language: Language) => Promise<Speaker>,
): BrowserRuns {
  const current = signal<Session | null>(null);
  const fetched = new Map<Language, Promise<Sounds>>();
  let context: AudioContext | null = null;
  /** Whose lengths a timeline was compiled with: it is to be played in no other voice. */
  const speakers = new WeakMap<Timeline, Speaker>();
  /** The plan of the run that is on. */
  let planned: Plan | null = null;
  let closeRun = () => {};
  let stopHearing = () => {};

  /** Fetched once a language; a fetch that failed is tried again the next time. */
  function sounds(language: Language): Promise<Sounds> {
    const known = fetched.get(language);
    if (known !== undefined) return known;
    const coming = fetchSounds(language).catch((error: unknown) => {
      fetched.delete(language);
      throw error;
    });
    fetched.set(language, coming);
    return coming;
  }

  /** One context for the page's life, made and woken within a press. */
  async function awake(): Promise<AudioContext> {
    context ??= new AudioContext({ latencyHint: "balanced" });
    await context.resume();
    return context;
  }

  async function compiled(worksheet: Worksheet, plan: Plan, lead?: number): Promise<Timeline> {
    const speaker = await speakerOf(spokenIn(worksheet.language));
    return compiledFor(speaker, worksheet, plan, lead);
  }

  async function compiledFor(
    speaker: Speaker,
    worksheet: Worksheet,
    plan: Plan,
    lead?: number,
  ): Promise<Timeline> {
    const { script, index } = await sounds(spokenIn(worksheet.language));
    const lengths = lengthsFor(speaker, index, worksheet.voice?.rate ?? 1);
    const timeline = compile(worksheet, plan, script, lengths, lead);
    speakers.set(timeline, speaker);
    return timeline;
  }

  const speakerIn = (timeline: Timeline): Speaker => speakers.get(timeline) ?? bundled;

  async function begin(worksheet: Worksheet, plan: Plan): Promise<"begun" | "elsewhere"> {
    const waking = awake();
    const timeline = await compiled(worksheet, plan);
    const loaded = await sounds(spokenIn(worksheet.language));
    const audio = await waking;
    const letGo = await claimRun();
    if (letGo === null) return "elsewhere";
    stopHearing();
    const id = crypto.randomUUID();
    const takeOver = () => void bundledTakesOver(id);
    const player = playerFor(audio, loaded, timeline, speakerIn(timeline), takeOver);
    const run = openRun({
      timeline,
      script: loaded.script,
      lengths: {
        // Another may have taken over meanwhile.
        spoken(phrases) {
          const speaker = speakerIn(current.value?.timeline ?? timeline);
          return lengthsFor(speaker, loaded.index, timeline.voice.rate).spoken(phrases);
        },
      },
      player,
      everySecond: everySecond,
      utc: Date.now,
    });
    const detail = worksheet.voice?.detail ?? "full";
    const session = { id, worksheet, timeline, detail, run: telling() };
    planned = plan;
    closeRun = () => {
      run.close();
      player.close();
      letGo();
    };
    current.value = session;
    session.run.press();
    return "begun";

    /** The run, telling the record after each press. */
    function telling(): typeof run {
      return {
        ...run,
        press(ago) {
          run.press(ago);
          performance.mark("tankside-begun", { detail: run.begunAt() });
          told(session, run.position().kind === "over" ? "done" : null);
        },
      };
    }
  }

  async function say(detail: Detail): Promise<void> {
    const session = current.value;
    if (session === null || planned === null) return;
    const voice = { ...session.worksheet.voice, detail };
    const speaker = speakerIn(session.timeline);
    const timeline = await compiledFor(speaker, { ...session.worksheet, voice }, planned);
    // Left, or begun anew, while it was compiled.
    if (current.value?.id !== session.id) return;
    session.run.follow(timeline);
    current.value = { ...session, timeline, detail };
  }

  /** From here on, where the voice of the device has failed: what is left is compiled for it anew. */
  async function bundledTakesOver(id: string): Promise<void> {
    const failed = current.value;
    if (failed?.id !== id || planned === null) return;
    const voice = { ...failed.worksheet.voice, detail: failed.detail };
    const timeline = await compiledFor(bundled, { ...failed.worksheet, voice }, planned);
    const session = current.value;
    if (session?.id !== id) return;
    session.run.follow(timeline);
    current.value = { ...session, timeline, tookOver: true };
  }

  function leave(): void {
    const session = current.value;
    if (session === null) return;
    told(session, session.run.position().kind === "over" ? "done" : "left");
    closeRun();
    current.value = null;
  }

  async function hear(timeline: Timeline, section: Section, from = 0): Promise<Hearing> {
    const waking = awake();
    const loaded = await sounds(spokenIn(timeline.voice.language));
    const audio = await waking;
    stopHearing();
    const player = playerFor(audio, loaded, timeline, speakerIn(timeline), () => {});
    const start = audio.currentTime + WAKE - from;
    const cues = section.cues.filter((cue) => cue.at >= from);
    const last = cues.reduce((end, cue) => Math.max(end, cue.until), from);
    let placedTo = 0;
    const look = () => {
      const to = audio.currentTime - start + 40;
      for (const cue of cues) {
        if (cue.at >= placedTo && cue.at < to) player.play(cue, start + cue.at);
      }
      placedTo = to;
      if (audio.currentTime - start > last) stop();
    };
    let resolve = () => {};
    const over = new Promise<void>((done) => {
      resolve = done;
    });
    const stopLooking = everySecond(look);
    function stop(): void {
      stopLooking();
      player.close();
      resolve();
    }
    stopHearing = stop;
    look();
    performance.mark("tankside-hearing", { detail: start });
    return { elapsed: () => audio.currentTime - start, stop, over };
  }

  const prepare = (language?: string) => void sounds(spokenIn(language)).catch(() => {});
  const voice = voiceSoundsOn({ sounds, awake });
  return { prepare, compile: compiled, begin, current, say, leave, hear, voice };
}

function everySecond(look: () => void): () => void {
  const timer = setInterval(look, 1000);
  return () => clearInterval(timer);
}
