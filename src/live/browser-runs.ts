// The screens' sound and runs, in a browser: fetches words and sounds once, compiles, and plays.
// A run belongs to the page and not to a screen: it goes on whatever place is shown.
import { signal } from "@preact/signals";
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { lengthsOf } from "../timeline/lengths.ts";
import type { Section, Timeline } from "../timeline/score.ts";
import { compile } from "../timeline/timeline.ts";
import { type Language, spokenIn } from "../units/language.ts";
import { openBrowserPlayer } from "./browser-player.ts";
import { fetchSounds, type Sounds, sourcesAt } from "./browser-sounds.ts";
import { openRun } from "./run.ts";
import type { Detail, Hearing, Runs, Session } from "./runs.ts";

/** A run that goes on or ends is told to whoever keeps the record. */
export type Told = (session: Session, ended: "done" | "left" | null) => void;

/** How long the loudspeaker may need to wake before the first sound of a hearing, seconds. */
const WAKE = 0.1;

export function browserRuns(told: Told): Runs {
  const current = signal<Session | null>(null);
  const fetched = new Map<Language, Promise<Sounds>>();
  let context: AudioContext | null = null;
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
    const { script, index } = await sounds(spokenIn(worksheet.language));
    const lengths = lengthsOf(index, worksheet.voice?.rate ?? 1);
    return compile(worksheet, plan, script, lengths, lead);
  }

  async function begin(worksheet: Worksheet, plan: Plan): Promise<void> {
    const waking = awake();
    const timeline = await compiled(worksheet, plan);
    const { script, index, ...rest } = await sounds(spokenIn(worksheet.language));
    const audio = await waking;
    stopHearing();
    const { rate } = timeline.voice;
    const player = openBrowserPlayer(audio, sourcesAt({ script, index, ...rest }, rate));
    const run = openRun({
      timeline,
      script,
      lengths: lengthsOf(index, rate),
      player,
      everySecond: everySecond,
      utc: Date.now,
    });
    const detail = worksheet.voice?.detail ?? "full";
    const session = { id: crypto.randomUUID(), worksheet, timeline, detail, run: telling() };
    planned = plan;
    closeRun = () => {
      run.close();
      player.close();
    };
    current.value = session;
    session.run.press();

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
    const timeline = await compiled({ ...session.worksheet, voice }, planned);
    // Left, or begun anew, while it was compiled.
    if (current.value?.id !== session.id) return;
    session.run.follow(timeline);
    current.value = { ...session, timeline, detail };
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
    const player = openBrowserPlayer(audio, sourcesAt(loaded, timeline.voice.rate));
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
  return { prepare, compile: compiled, begin, current, say, leave, hear };
}

function everySecond(look: () => void): () => void {
  const timer = setInterval(look, 1000);
  return () => clearInterval(timer);
}
