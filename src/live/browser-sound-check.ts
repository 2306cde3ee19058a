// The check of the sound in a browser: by the player of a run, through what a run goes through.
import { lengthsFor } from "../timeline/lengths.ts";
import type { Cue } from "../timeline/score.ts";
import type { Language } from "../units/language.ts";
import type { Speaker } from "../voice/speaker.ts";
import type { BrowserAudio } from "./browser-audio.ts";
import { type BrowserPlayer, openBrowserPlayer } from "./browser-player.ts";
import { type Sounds, sourcesAt } from "./browser-sounds.ts";
import { playerFor } from "./browser-speaker.ts";
import { rhythm } from "./latency.ts";
import { checkCues, type SoundCheck, toneAt } from "./sound-check.ts";

interface World {
  readonly audio: BrowserAudio;
  /** Who speaks a language, as chosen on this device. */
  readonly speakerOf: (language: Language) => Promise<Speaker>;
  readonly sounds: (language: Language) => Promise<Sounds>;
  /** Seconds by which what is played is heard late on this device. */
  readonly delay: () => number;
}

/** How long a loudspeaker, or a wireless link, may need to wake before the first sound, seconds. */
const WAKE = 0.3;
/** As a worksheet's, where it says nothing of it. */
const RATE = 1;

export function soundCheckOn({ audio, speakerOf, sounds, delay }: World): SoundCheck {
  /** Counts what was asked for: what was stopped, or asked for again, while it was fetched is not heard. */
  let asked = 0;
  let hush = () => {};

  function stop(): number {
    hush();
    hush = () => {};
    asked += 1;
    return asked;
  }

  /** Places all of it at once; resolves, when it is over, with when it began on the steady clock, null if stopped. */
  function played(player: BrowserPlayer, cues: readonly Cue[]) {
    audio.check();
    const start = player.now() + delay() + WAKE;
    const placed = cues.map((cue) => player.play(cue, start + cue.at));
    const end = Math.max(...cues.map(({ until }) => until));
    return new Promise<number | null>((resolve) => {
      const timer = setTimeout(() => close(start), (delay() + WAKE + end) * 1000);
      hush = () => close(null);

      function close(began: number | null): void {
        clearTimeout(timer);
        hush = () => {};
        for (const sound of placed) sound.stop();
        player.close();
        resolve(began);
      }
    });
  }

  return {
    async say(language) {
      const mine = stop();
      const waking = audio.awake();
      const [loaded, speaker] = await Promise.all([sounds(language), speakerOf(language)]);
      await waking;
      if (mine !== asked) return;
      const cues = checkCues(loaded.script, lengthsFor(speaker, loaded.index, RATE));
      const voice = { language, rate: RATE };
      await played(
        playerFor(audio, loaded, voice, speaker, delay(), () => {}),
        cues,
      );
    },

    async beats(language) {
      const mine = stop();
      const waking = audio.awake();
      const loaded = await sounds(language);
      await waking;
      if (mine !== asked) return { over: Promise.resolve(null) };
      const cues = rhythm.map((at) => toneAt("count", at, "beat"));
      // Nothing is sent ahead here: how late it comes is what is asked.
      const player = openBrowserPlayer(audio, sourcesAt(loaded, RATE), 0);
      const over = played(player, cues).then((start) =>
        start === null ? null : rhythm.map((beat) => start + beat),
      );
      return { over };
    },

    stop: () => void stop(),
  };
}
